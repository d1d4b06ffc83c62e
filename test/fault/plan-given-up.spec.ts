import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { databaseOfTest, TEST_KEY, type TestDatabase } from '../e2e/database-of-test.js';
import { runService, type RunningService } from './running-service.js';

/** Shorter than the search that is given up: were it not ended, its only thread would still be taken. */
jest.setTimeout(100_000);
const LONGEST_SEARCH_S = 120;

const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };
const sloping = (k: number) => ({
  id: `p${k}`,
  outline: [
    [0, 0],
    [150 + 7 * k, 0],
    [130 + 5 * k, 90 + 3 * k],
    [20, 110],
  ],
  count: 3,
  turnsDeg: [0, 180],
});
const plan = (settings: object): string =>
  JSON.stringify({
    pieces: Array.from({ length: 12 }, (_, k) => sloping(k)),
    roll: { widthMm: 900 },
    kerfMm: 2,
    edgeTrimMm: 0,
    ...settings,
  });

let place: TestDatabase;
let service: RunningService;
beforeAll(async () => {
  place = await databaseOfTest();
  service = await runService({ ...place.environment, REQUEST_TIMEOUT_MS: '600000' });
});
afterAll(async () => {
  service.child.kill('SIGTERM');
  await service.ended;
  await place.remove();
});

test('a search whose caller goes away ends, and so do those that wait behind it; health answers meanwhile', async () => {
  const url = `${service.url}/v1/estimating/cutting-plan`;
  const gone = new AbortController();
  const given = [1, 2, 3].map(() =>
    fetch(url, {
      method: 'POST',
      headers,
      body: plan({ workUnits: 1_000_000, timeLimitS: LONGEST_SEARCH_S }),
      signal: gone.signal,
    }).then(
      () => 'answered',
      () => 'given up',
    ),
  );
  await new Promise((resolve) => {
    setTimeout(resolve, 1500);
  });
  expect((await fetch(`${service.url}/health/live`)).status).toBe(200);
  gone.abort();
  expect(await Promise.all(given)).toEqual(['given up', 'given up', 'given up']);
  const small = await fetch(url, { method: 'POST', headers, body: plan({ workUnits: 1 }) });
  expect(small.status).toBe(200);
});

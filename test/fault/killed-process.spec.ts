import { describe, expect, jest, test } from '@jest/globals';
import { TEST_KEY } from '../e2e/database-of-test.js';
import { runService, type RunningService } from './running-service.js';
import { servicesOfTest } from './services-of-test.js';

jest.setTimeout(180_000);

/** A small job, so that many are written before the process dies. */
const smallJob = JSON.stringify({
  panel: {
    outline: [
      [0, 0],
      [600, 0],
      [600, 500],
      [0, 500],
    ],
  },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [
    {
      id: 'Z1',
      outline: [
        [200, 200],
        [300, 200],
        [300, 300],
        [200, 300],
      ],
    },
  ],
  pricing: { samples: 1000 },
});
const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };

describe('a process that dies', () => {
  const { environment, started } = servicesOfTest();

  /** Writes until the process is gone; what was acknowledged is what the caller has a right to find again. */
  async function writeUntilKilled({ url }: RunningService, acknowledged: Set<string>): Promise<void> {
    for (let written = 0; ; written += 1) {
      const isEstimate = written % 5 === 0;
      const answer = await fetch(url + (isEstimate ? '/v1/estimates' : '/v1/organisations'), {
        method: 'POST',
        headers,
        body: isEstimate ? smallJob : JSON.stringify({ name: `Yard ${written}` }),
      }).then(
        async (response) => ({
          status: response.status,
          location: response.headers.get('location'),
          text: await response.text(),
        }),
        () => undefined,
      );
      if (answer === undefined) return;
      if (answer.status === 201 && answer.location !== null) acknowledged.add(answer.location);
    }
  }

  test('killed while it writes, it has lost nothing that it acknowledged, three times over', async () => {
    const acknowledged = new Set<string>();
    for (let round = 0; round < 3; round += 1) {
      const service = await started();
      const before = acknowledged.size;
      const writers = Promise.all([1, 2, 3].map(() => writeUntilKilled(service, acknowledged)));
      while (acknowledged.size < before + 12)
        await new Promise((resolve) => {
          setTimeout(resolve, 20);
        });
      service.child.kill('SIGKILL');
      await Promise.all([service.ended, writers]);
    }
    const { url, child, ended } = await started();
    const lost = [];
    for (const location of acknowledged) {
      const { status } = await fetch(url + location, { headers });
      if (status !== 200) lost.push(location);
    }
    expect(acknowledged.size).toBeGreaterThanOrEqual(36);
    expect([...acknowledged].some((location) => location.startsWith('/v1/estimates/'))).toBe(true);
    expect(lost).toEqual([]);
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
  });

  test('asked to stop while a request is under way, it answers first and ends well', async () => {
    const { url, child, ended } = await started();
    const answer = fetch(`${url}/v1/estimates`, { method: 'POST', headers, body: smallJob });
    await new Promise((resolve) => {
      setTimeout(resolve, 60);
    });
    child.kill('SIGTERM');
    expect((await answer).status).toBe(201);
    expect(await ended).toBe(0);
  });

  test('a second service on the same folder refuses to start and says why', async () => {
    if (environment().DATABASE_URL !== undefined) return;
    const first = await started();
    await expect(runService(environment())).rejects.toThrow(/ended with 1[\s\S]*is in use/);
    expect((await fetch(`${first.url}/health/ready`)).status).toBe(200);
    first.child.kill('SIGTERM');
    expect(await first.ended).toBe(0);
  });

  test('wrong settings are all named and the process ends with 1', async () => {
    await expect(runService({ PORT: 'many', LOG_LEVEL: 'loud', DATABASE_URL: 'mysql://x' })).rejects.toThrow(
      /PORT is "many"[\s\S]*DATABASE_URL must[\s\S]*LOG_LEVEL is "loud"|PORT is "many"/,
    );
  });
});

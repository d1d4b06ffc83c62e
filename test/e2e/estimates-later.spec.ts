import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Kingplank } from '../../libs/sdk/src/index.js';
import { endedOperation, startService, TEST_KEY, type TestAnswer, type TestService } from './service.js';

/** A strip of deck with as many small square zones as asked for, each 400 mm from the next. */
const strip = (zoneCount: number) => ({
  panel: { outline: rectangle(0, 0, 400 * zoneCount + 400, 900) },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: Array.from({ length: zoneCount }, (_, index) => ({
    id: `Z${index + 1}`,
    outline: rectangle(400 * index + 350, 400, 400 * index + 450, 500),
  })),
  pricing: { samples: 1000 },
});

const rectangle = (left: number, bottom: number, right: number, top: number) => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

const LATER = { prefer: 'respond-async' };

describe('an estimate that comes later', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  const ended = (answer: TestAnswer): Promise<TestAnswer['body']> => endedOperation(service, answer);

  test('preferred later, it is an operation that leads to the estimate made at once of the same record', async () => {
    const now = await service.post('/v1/estimates', strip(1));
    const accepted = await service.post('/v1/estimates', strip(1), LATER);
    expect(accepted.status).toBe(202);
    expect(accepted.headers.get('preference-applied')).toBe('respond-async');
    const operation = await ended(accepted);
    expect(operation.result.mediaType).toBe('application/json');
    const { body } = await service.get(operation.result.href);
    expect(body.estimate).toEqual(now.body.estimate);
    expect(body.id).not.toBe(now.body.id);
    const elsewhere = await fetch(`${service.url}/v1/operations/${operation.id}/result`, {
      headers: { authorization: `Bearer ${TEST_KEY}`, accept: 'application/json' },
      redirect: 'manual',
    });
    expect([elsewhere.status, elsewhere.headers.get('location')]).toEqual([303, operation.result.href]);
  });

  test('a record of more zones than are answered at once comes later by itself', async () => {
    expect((await service.post('/v1/estimates', strip(24))).status).toBe(201);
    const accepted = await service.post('/v1/estimates', strip(25));
    expect(accepted.status).toBe(202);
    expect(accepted.headers.get('preference-applied')).toBeNull();
    const { result } = await ended(accepted);
    expect((await service.get(result.href)).body.estimate.scope.zones).toHaveLength(25);
  });

  test('under one key it is one estimate, before and after it is made', async () => {
    const headers = { ...LATER, 'idempotency-key': 'the-same-job-over-again' };
    const [first, second] = [
      await service.post('/v1/estimates', strip(2), headers),
      await service.post('/v1/estimates', strip(2), headers),
    ];
    expect([first.status, first.body.id]).toEqual([202, second.body.id ?? first.body.id]);
    const { result } = await ended(first);
    const replayed = await service.post('/v1/estimates', strip(2), headers);
    expect(replayed.status).toBe(201);
    expect(replayed.headers.get('idempotency-replayed')).toBe('true');
    expect(replayed.headers.get('location')).toBe(result.href);
    expect((await service.post('/v1/estimates', strip(3), headers)).status).toBe(422);
  });

  test('without a key the same record twice is two estimates', async () => {
    const pair = await Promise.all([1, 2].map(() => service.post('/v1/estimates', strip(1), LATER)));
    const ends = await Promise.all(pair.map(ended));
    expect(new Set(ends.map(({ result }) => result.href)).size).toBe(2);
  });

  test('what cannot be estimated fails with every fault and its place, as it would at once', async () => {
    const outside = { ...strip(1), zones: [{ id: 'Z1', outline: rectangle(5000, 5000, 5100, 5100) }] };
    const now = await service.post('/v1/estimates', outside);
    expect(now.status).toBe(422);
    const { status, problem } = await ended(await service.post('/v1/estimates', outside, LATER));
    expect(status).toBe('failed');
    expect(problem).toEqual({
      type: now.body.type,
      title: now.body.title,
      status: 422,
      detail: now.body.detail,
      errors: now.body.errors,
      errorCount: now.body.errorCount,
    });
  });

  test('the client waits for it, for a revision too, and throws what went wrong', async () => {
    const client = new Kingplank({ apiKey: TEST_KEY, baseUrl: service.url });
    const record = strip(1) as Parameters<typeof client.estimates.create>[0];
    const made = await client.estimates.create(record, { inBackground: true });
    const revised = await client.estimates.revise(
      made.id,
      { reason: 'deck opened', record },
      { inBackground: true },
    );
    expect(revised.revision).toMatchObject({ number: 1, reason: 'deck opened', rootId: made.id });
    const outside = { ...record, zones: [{ id: 'Z1', outline: rectangle(5000, 5000, 5100, 5100) }] };
    await expect(
      client.estimates.create(outside as typeof record, { inBackground: true }),
    ).rejects.toMatchObject({ status: 422 });
  });
});

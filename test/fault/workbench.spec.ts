import { afterEach, describe, expect, jest, test } from '@jest/globals';
import type { LaneSize } from '../../apps/api/src/workbench/lane.js';
import { compiledFile, compiledModule } from '../support/compiled.js';

jest.setTimeout(60_000);

type Lanes = typeof import('../../apps/api/src/workbench/lane.js');
const { Lane } = await compiledModule<Lanes>('apps/api/src/workbench/lane.ts');
type Lane = InstanceType<Lanes['Lane']>;

const lanes: Lane[] = [];
const aLane = (size: Partial<LaneSize> = {}): Lane => {
  const lane = new Lane({
    runsIn: 'thread',
    hands: 1,
    reserved: 0,
    memoryMb: 64,
    longestWaitMs: 10_000,
    longestJobMs: 30_000,
    errandsEach: 100,
    ...size,
  });
  lanes.push(lane);
  return lane;
};
afterEach(async () => {
  await Promise.all(lanes.splice(0).map((lane) => lane.close()));
});

const file = (name: string): string => compiledFile(`test/fault/errands/${name}.work.ts`);
const turning = (forMs: number, turns?: SharedArrayBuffer) => ({
  file: file('turning'),
  order: { forMs, ...(turns === undefined ? {} : { turns }) },
});
const never = new AbortController().signal;
const from = (organisationId: string, expectedMs = 100) => ({ organisationId, expectedMs });
const after = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

describe('cancel', () => {
  test.each([['thread'], ['process']] as const)(
    'in a %s, work that nobody waits for ends within 100 ms, and the next order is done',
    async (runsIn) => {
      const lane = aLane({ runsIn });
      await lane.do(turning(1), from('A'), never);
      const turns = new SharedArrayBuffer(4);
      const gone = new AbortController();
      const given = lane.do(turning(20_000, runsIn === 'thread' ? turns : undefined), from('A'), gone.signal);
      const refused = expect(given).rejects.toMatchObject({ kind: 'unavailable' });
      await after(300);
      gone.abort();
      await after(100);
      await refused;
      const counted = new Int32Array(turns)[0];
      await after(100);
      expect(new Int32Array(turns)[0]).toBe(counted);
      if (runsIn === 'thread') expect(counted).toBeGreaterThan(0);
      expect((await lane.do(turning(1), from('A'), never)).answer).toBe('turned for 1 ms');
      expect(lane.counts.cancelled).toBe(1);
    },
  );

  test('what waits is withdrawn without being begun', async () => {
    const lane = aLane();
    const first = lane.do(turning(400), from('A'), never);
    const gone = new AbortController();
    const second = expect(lane.do(turning(20_000), from('A'), gone.signal)).rejects.toMatchObject({
      kind: 'unavailable',
    });
    gone.abort();
    await second;
    expect(lane.waiting).toBe(0);
    await first;
    expect(lane.counts.done).toBe(1);
  });
});

describe('limits end the job, not the process', () => {
  test('of time', async () => {
    const lane = aLane({ longestJobMs: 1000 });
    await expect(lane.do(turning(20_000), from('A'), never)).rejects.toMatchObject({ kind: 'unavailable' });
    expect(lane.counts.overBudget).toBe(1);
    expect((await lane.do(turning(1), from('A'), never)).answer).toBe('turned for 1 ms');
  });

  test.each([['thread'], ['process']] as const)('of memory, in a %s', async (runsIn) => {
    const lane = aLane({ runsIn });
    const hoarding = { file: file('hoarding'), order: undefined };
    await expect(lane.do(hoarding, from('A'), never)).rejects.toMatchObject({
      kind: 'unprocessable',
      problems: [{ code: 'not-supported' }],
    });
    expect(lane.counts.overBudget).toBe(1);
    expect((await lane.do(turning(1), from('A'), never)).answer).toBe('turned for 1 ms');
  });
});

describe('more work than hands', () => {
  test('a newcomer that would wait too long is told how long, at once', async () => {
    const lane = aLane({ longestWaitMs: 10_000 });
    const waiting = [1, 2, 3].map(() => lane.do(turning(50), from('A', 4000), never));
    await expect(lane.do(turning(50), from('A', 100), never)).rejects.toMatchObject({
      kind: 'unavailable',
      headers: { 'Retry-After': '12' },
    });
    expect(lane.counts.refused).toBe(1);
    // Another organisation would wait for what is under way and take its turn.
    expect((await lane.do(turning(1), from('B', 100), never)).answer).toBe('turned for 1 ms');
    await Promise.all(waiting);
  });

  test('one organisation never fills the last hand: another is served at once', async () => {
    const lane = aLane({ hands: 2, reserved: 1 });
    await lane.warm([turning(1)]);
    const theirs = Promise.all([1, 2, 3].map(() => lane.do(turning(500), from('A', 500), never)));
    expect(lane.running).toBe(1);
    const began = performance.now();
    await lane.do(turning(10), from('B'), never);
    expect(performance.now() - began).toBeLessThan(400);
    await theirs;
  });
});

test('stock is sent to a hand once and kept under its key', async () => {
  const lane = aLane();
  const asked = (order: string, key: string, value: readonly string[]) =>
    lane.do({ file: file('stock'), order, stock: { key, value } }, from('A'), never);
  expect((await asked('one', 'k', ['resin'])).answer).toBe('one with resin');
  // The same key is the same stock: what comes with it is not looked at again.
  expect((await asked('two', 'k', ['glass'])).answer).toBe('two with resin');
  expect((await asked('three', 'l', ['glass'])).answer).toBe('three with glass');
  for (let n = 0; n < 12; n += 1) await asked('many', `m${n}`, [`stock ${n}`]);
  expect((await asked('again', 'k', ['balsa'])).answer).toBe('again with balsa');
});

test('a fault of the work reaches whoever asked, as a fault of ours', async () => {
  const lane = aLane();
  await expect(lane.do({ file: file('missing'), order: 1 }, from('A'), never)).rejects.toThrow(
    /missing\.work/,
  );
  expect((await lane.do(turning(1), from('A'), never)).answer).toBe('turned for 1 ms');
});

test('a lane that closes says so to all who wait, and to all who come', async () => {
  const lane = aLane();
  const waiting = Promise.allSettled([1, 2, 3].map(() => lane.do(turning(5000), from('A'), never)));
  await lane.close();
  expect((await waiting).map((one) => (one.status === 'rejected' ? one.reason.kind : 'done'))).toEqual([
    'unavailable',
    'unavailable',
    'unavailable',
  ]);
  await expect(lane.do(turning(1), from('A'), never)).rejects.toMatchObject({ kind: 'unavailable' });
});

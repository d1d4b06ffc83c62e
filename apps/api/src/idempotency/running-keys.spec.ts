import { expect, test } from '@jest/globals';
import { RunningKeys } from './running-keys.js';

test('a key at work is refused with 409 and a time to wait; another key, or the same one later, is not', async () => {
  const keys = new RunningKeys();
  let finish: (value: string) => void = () => undefined;
  const first = keys.alone(
    ['org', 'estimates', 'k'],
    () =>
      new Promise<string>((resolve) => {
        finish = resolve;
      }),
  );
  await expect(keys.alone(['org', 'estimates', 'k'], () => Promise.resolve('second'))).rejects.toMatchObject({
    kind: 'conflict',
    headers: { 'Retry-After': '1' },
  });
  expect(await keys.alone(['other', 'estimates', 'k'], () => Promise.resolve('theirs'))).toBe('theirs');
  finish('done');
  expect(await first).toBe('done');
  expect(await keys.alone(['org', 'estimates', 'k'], () => Promise.resolve('again'))).toBe('again');
});

test('a key is free again after its work failed', async () => {
  const keys = new RunningKeys();
  await expect(keys.alone(['k'], () => Promise.reject(new Error('no')))).rejects.toThrow('no');
  expect(await keys.alone(['k'], () => Promise.resolve(1))).toBe(1);
});

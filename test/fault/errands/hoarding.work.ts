import { closeSync } from 'node:fs';
import { isMainThread } from 'node:worker_threads';

const STDERR = 2;

/** Work for the tests of the workbench that never has enough memory. */
export function run(): number {
  // The runner of the tests reads the last words of a process that dies so as its own worker's, and gives the suite up.
  if (isMainThread) closeSync(STDERR);
  const hoard: string[][] = [];
  for (;;) hoard.push(Array.from({ length: 100_000 }, (_, index) => `${index} of ${hoard.length}`));
}

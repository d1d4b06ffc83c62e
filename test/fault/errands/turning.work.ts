/** Work for the tests of the workbench: it turns for as long as it is told, and others can see that it turns. */
export interface Turning {
  readonly forMs: number;
  /** Counts while the work goes on; shared with whoever asked. */
  readonly turns?: SharedArrayBuffer;
}

export function run({ forMs, turns }: Turning): string {
  const counter = turns === undefined ? undefined : new Int32Array(turns);
  const end = performance.now() + forMs;
  while (performance.now() < end) if (counter !== undefined) Atomics.add(counter, 0, 1);
  return `turned for ${forMs} ms`;
}

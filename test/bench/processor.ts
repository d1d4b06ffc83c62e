import { randomStream } from '#lib/kernel';

/** Arithmetic, small objects and sorting in about the mixture of an estimate; never changed, or every ratio moves. */
export function reference(): number {
  const random = randomStream(7);
  let sum = 0;
  for (let round = 0; round < 12; round += 1) {
    const points = Array.from({ length: 4000 }, () => ({ x: random(), y: random() }));
    points.sort((a, b) => a.x - b.x);
    for (const { x, y } of points) sum += Math.exp(-x) * Math.cos(y) + Math.hypot(x, y);
  }
  return sum;
}

/** Processor time of all threads, the collector's and the compiler's too. */
export function processorMs(work: () => unknown): number {
  const used = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(used);
  return (user + system) / 1000;
}

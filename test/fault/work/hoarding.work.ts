/** Work for the tests of the workbench that never has enough memory. */
export function run(): number {
  const hoard: string[][] = [];
  for (;;) hoard.push(Array.from({ length: 100_000 }, (_, index) => `${index} of ${hoard.length}`));
}

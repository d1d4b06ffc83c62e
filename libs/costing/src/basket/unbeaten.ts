/** Something that costs, and counts towards sums that have to be reached. */
export interface Priced {
  readonly cost: number;
  /** Minor units of goods for each watched supplier; beyond what is to be reached it need not be counted. */
  readonly goods: readonly number[];
}

/** Those that nothing else beats: no dearer, and no less towards any sum. */
export function unbeaten<T extends Priced>(all: readonly T[]): readonly T[] {
  const kept: T[] = [];
  for (const one of [...all].sort((a, b) => a.cost - b.cost || total(b) - total(a))) {
    if (!kept.some(({ goods }) => goods.every((minor, place) => minor >= one.goods[place]))) kept.push(one);
  }
  return kept;
}

const total = ({ goods }: Priced): number => goods.reduce((sum, minor) => sum + minor, 0);

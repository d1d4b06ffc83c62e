import type { BatchCard } from '#lib/estimate';

/** Pots that are weighed alike, in the order they are mixed; one card serves them all. */
export interface PotRun {
  readonly first: BatchCard;
  readonly pots: readonly { readonly number: number; readonly covers: readonly string[] }[];
}

/** Parts of one step are shared out in tenths of a gram, so that equal pots may differ by the last of them. */
const ALIKE_G = 0.25;
/** More lines than this do not fit on a card beside what is to be weighed. */
const MOST_ON_A_CARD = 10;

/** One card for each run of equal pots of a step; a pot like no other has a card of its own. */
export function potRuns(batches: readonly BatchCard[]): readonly PotRun[] {
  const runs: PotRun[] = [];
  for (const batch of batches) {
    const pot = { number: batch.number, covers: batch.covers };
    const index = runs.findIndex(({ first, pots }) => pots.length < MOST_ON_A_CARD && isAlike(first, batch));
    if (index < 0) runs.push({ first: batch, pots: [pot] });
    else runs[index] = { ...runs[index], pots: [...runs[index].pots, pot] };
  }
  return runs;
}

const isAlike = (a: BatchCard, b: BatchCard): boolean =>
  a.step === b.step &&
  a.title === b.title &&
  a.limitedBy === b.limitedBy &&
  a.pumps === b.pumps &&
  a.weigh.length === b.weigh.length &&
  a.weigh.every(
    ({ what, name, addG }, index) =>
      what === b.weigh[index].what &&
      name === b.weigh[index].name &&
      Math.abs(addG - b.weigh[index].addG) <= ALIKE_G,
  );

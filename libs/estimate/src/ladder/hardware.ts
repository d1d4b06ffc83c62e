import { fittingCard, type FittingCard } from '#lib/methods';
import { stated } from '../job/fitting-stated.js';
import type { Job } from '../job/job.js';

/** Cards of the fittings named, in the order of the record. */
export function cardsFor({ record, answers }: Job, ids: readonly string[]): readonly FittingCard[] {
  const stack = {
    outerSkinMm: answers.outerSkin.thicknessMm.value,
    coreMm: answers.core.thicknessMm.value,
    innerSkinMm: answers.innerSkin.thicknessMm.value,
  };
  return (record.fittings ?? [])
    .filter(({ id }) => ids.includes(id))
    .map((fitting) => fittingCard(stated(fitting), stack));
}

import { materialsOf } from '#lib/catalogue';
import type { CautionContext } from '#lib/cautions';
import { isKnown, type Known } from '#lib/kernel';
import type { BatchPlan } from '#lib/resin';
import type { Need } from '#lib/takeoff';
import type { Job } from '../job/job.js';

/** Some of the facts that cautions read. */
export type Facts<K extends keyof CautionContext> = Pick<CautionContext, K>;

/** What the record alone says. */
export const recordFacts = ({
  answers: { panel, method, conditions, craft, cause },
  record,
}: Job): Facts<
  | 'surface'
  | 'finishExtent'
  | 'application'
  | 'usesPumps'
  | 'yearBuilt'
  | 'under'
  | 'cause'
  | 'temperatureC'
  | 'relativeHumidityPercent'
  | 'isInnerSkinAirtight'
  | 'plugs'
> => ({
  surface: panel.surface.value,
  finishExtent: method.finish.value,
  application: method.application.value,
  usesPumps: isKnown(method.pumpResinMlPerStroke),
  yearBuilt: valueOf(craft.yearBuilt),
  under: valueOf(panel.under),
  cause: isKnown(cause) ? cause.cause.value : 'unknown',
  temperatureC: conditions.temperatureC.value,
  relativeHumidityPercent: conditions.relativeHumidityPercent.value,
  isInnerSkinAirtight: valueOf(panel.isInnerSkinAirtight),
  plugs: record.survey?.readings.filter(({ kind }) => kind === 'plug').length ?? 0,
});

const valueOf = <T>(answer: Known<{ readonly value: T }>): Known<T> =>
  isKnown(answer) ? answer.value : 'unknown';

/** Resin, hardener and what is stirred into them, and the pots they stand in. */
export const mixedFacts = (
  { resin, catalogue }: Job,
  { resin: { hardener }, demand, batches, findings }: BatchPlan,
): Facts<'resin' | 'hardener' | 'fillers' | 'largestPotG' | 'forgottenPotPeakC' | 'batchFindings'> => ({
  resin,
  hardener,
  fillers: materialsOf(catalogue, 'filler').filter(({ code }) =>
    demand.totals.fillers.some(({ filler }) => filler === code),
  ),
  largestPotG: Math.max(0, ...batches.map(({ mixedG }) => mixedG)),
  forgottenPotPeakC: Math.max(0, ...batches.map(({ forgottenPotPeakC }) => forgottenPotPeakC)),
  batchFindings: findings.map(({ code }) => code),
});

/** Highly flammable liquids among what is used up. */
export const usesSolvent = ({ catalogue }: Job, needs: readonly Need[]): boolean => {
  const solvents = materialsOf(catalogue, 'consumable')
    .filter(({ hazards }) => hazards?.includes('H225'))
    .map(({ code }) => code);
  return needs.some(({ material, required }) => solvents.includes(material) && required.value > 0);
};

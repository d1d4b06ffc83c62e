import type { ZoneShape } from '#lib/extent';
import { sumOf } from '#lib/provenance';
import type { Job } from '../job/job.js';
import { noArea, type JobQuantities } from '../stages/labour-drivers.js';
import type { BesideWork } from './beside-opening.js';
import { besidesOf, isLiningByKind } from './besides.js';
import type { LadderWork } from './method-ladder.js';
import { openedIn } from './opened-in.js';

export const openedZones = <T extends ZoneShape>(
  { combination }: LadderWork,
  zones: readonly T[],
): readonly T[] => openedIn(combination, zones);

/** What this rung and this deck take besides the opening, and the lining counted by its kind where that is known. */
export function withBesides(
  job: Job,
  { chosen, combination }: LadderWork,
  quantities: JobQuantities,
  beside: BesideWork,
): JobQuantities {
  const places = combination.flatMap(({ place, rung }) => (rung.method.reach === 'opening' ? [place] : []));
  return beside.added({
    ...quantities,
    liningM2: isLiningByKind(job)
      ? sumOf('m2', 'lining counted by its kind', { none: noArea })
      : quantities.liningM2,
    besides: {
      ...quantities.besides,
      ...besidesOf(job, chosen, { openedM2: quantities.openedM2, places }),
    },
  });
}

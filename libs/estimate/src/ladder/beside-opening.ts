import type { FittingCard, Method, PlaceChoice } from '#lib/methods';
import { sumOf, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import type { NeedRequest } from '#lib/takeoff';
import type { Job } from '../job/job.js';
import type { JobQuantities } from '../stages/labour-drivers.js';
import type { PlyWork } from '../stages/laminate-stage.js';
import { cardsFor, fittingsBeside, pottedCards, pottingSteps, type FittingOff } from './hardware.js';
import { leakWork } from './leak-work.js';
import { counted, framesIn, placeWork } from './place-work.js';

/** Places that are mended closed while the deck is open elsewhere: their own work, and a set-up that is paid already. */
export interface BesideWork {
  readonly steps: readonly ResinStepRequest[];
  /** Tapes over the slots of strips. */
  readonly plies: readonly PlyWork[];
  /** Fittings that come off for their own sake. */
  readonly off: readonly FittingOff[];
  readonly needs: readonly NeedRequest[];
  readonly isLeakTreated: boolean;
  readonly added: (quantities: JobQuantities) => JobQuantities;
}

interface OpeningBeside {
  readonly method: Pick<Method, 'edgeWork'>;
  readonly offAnyway: readonly { readonly id: string }[];
}

/** What the combination does beside its openings; fittings that the openings take off anyway are left to them. */
export function besideOpening(
  job: Job,
  combination: readonly PlaceChoice[],
  { method, offAnyway }: OpeningBeside,
): BesideWork {
  const bedded = (job.record.fittings ?? [])
    .filter(({ id }) => offAnyway.some((one) => one.id === id))
    .map(({ kind }) => kind);
  const leak = leakWork(job, method, bedded);
  const places = combination.filter(({ rung }) => rung.method.reach !== 'opening');
  const work = placeWork(job, places);
  const off = fittingsOff(places, offAnyway);
  const cards = cardsFor(job, off);
  const withHours = fittingsBeside(
    job,
    offAnyway.map(({ id }) => ({ id, isOnOpening: true })),
    { off, unlisted: [...leak.unlisted, ...framesIn(job.record, places)] },
  );
  return {
    steps: [...pottingSteps(job, pottedCards(cards)), ...work.steps, ...leak.steps],
    plies: [...work.plies, ...leak.plies],
    needs: leak.needs,
    isLeakTreated: leak.isTreated,
    off,
    added: (quantities) => ({
      ...quantities,
      holes: holesWith(quantities, cards),
      ...withHours(quantities),
      injectedM2: work.injectedM2,
      injectionHoles: work.injectionHoles,
      besides: { ...quantities.besides, ...work.besides, ...leak.besides },
    }),
  };
}

/** Holes to pot beside the opening are added to its own; hours are those of the cards of all that come off. */
function holesWith({ holes }: Pick<JobQuantities, 'holes'>, cards: readonly FittingCard[]): Figure<'1'> {
  const more = pottedCards(cards).reduce((sum, { fasteners }) => sum + fasteners, 0);
  return more === 0
    ? holes
    : sumOf('1', holes.meaning, { opening: holes, beside: counted('holes beside the opening', more) });
}

const fittingsOff = (
  places: readonly PlaceChoice[],
  offAnyway: readonly { readonly id: string }[],
): readonly FittingOff[] => {
  const known = new Set(offAnyway.map(({ id }) => id));
  const ids = places.flatMap(({ place, rung }) =>
    rung.method.reach === 'spot' && place.kind === 'fitting' ? place.fittings.map(({ id }) => id) : [],
  );
  return [...new Set(ids)].filter((id) => !known.has(id)).map((id) => ({ id, isOnOpening: false }));
};

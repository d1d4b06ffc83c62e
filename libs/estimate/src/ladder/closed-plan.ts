import type { FittingCard, PlaceChoice } from '#lib/methods';
import type { ResinStepRequest } from '#lib/resin';
import type { OperationFlags } from '#lib/work';
import type { Job } from '../job/job.js';
import {
  bareFinishArea,
  circumstancesOf,
  coatsAndCycles,
  noArea,
  noLength,
  noVolume,
  none,
  type Besides,
  type JobQuantities,
} from '../stages/labour-drivers.js';
import { cardsFor, fittingFigures, pottingSteps, type FittingFigures, type FittingOff } from './hardware.js';
import { leakWork, type LeakWork } from './leak-work.js';
import { finishFlag, isLaidAgain } from '../stages/coatings.js';
import { overlaySteps } from '../stages/overlay-needs.js';
import { overlayBesides } from './besides.js';
import { area, areaM2Of, counted, framesIn, placeWork, taking, type PlaceWork } from './place-work.js';
import type { RungPlan } from './rung-work.js';

/** Rungs that leave the deck closed: what each place takes, and a set-up that is counted once. */
export function closedPlan(job: Job, places: readonly PlaceChoice[]): RungPlan & ClosedLeak {
  const cards = closedCards(job, places);
  const work = placeWork(job, places);
  const leak = leakWork(
    job,
    { edgeWork: 'none' },
    cards.all.map(({ kind }) => kind),
  );
  const hours = fittingFigures(
    job,
    cards.all.map(({ id }) => ({ id, isOnOpening: false })),
    [...leak.unlisted, ...framesIn(job.record, places)],
  );
  const plies = [...work.plies, ...leak.plies];
  const quantities = withLeak(
    closedQuantities(job, work, { ...cards, hours, overlay: overlayOver(job, places) }),
    leak,
  );
  return {
    job,
    quantities,
    flags: closedFlags(job, places),
    steps: [...holeSteps(job, cards), ...work.steps, ...leak.steps, ...overlaySteps(job, quantities)],
    core: { sheets: [] },
    laminate: {
      plies,
      plyCount: plies.length,
      sessions: Math.min(1, plies.length),
      largestPlyM2: plies.at(0)?.areaM2 ?? noArea,
    },
    cards: cards.all,
    needsBesides: leak.needs,
    isLeakTreated: leak.isTreated,
  };
}

export interface ClosedLeak {
  readonly isLeakTreated: boolean;
}

const withLeak = (quantities: JobQuantities, { besides }: LeakWork): JobQuantities => ({
  ...quantities,
  besides: { ...quantities.besides, ...besides },
});

export interface ClosedCards {
  readonly all: readonly FittingCard[];
  /** Those whose holes are dug out and potted. */
  readonly potted: readonly FittingCard[];
}

export function closedCards(job: Job, places: readonly PlaceChoice[]): ClosedCards {
  const offAt = (chosen: readonly PlaceChoice[]): readonly FittingOff[] =>
    chosen.flatMap(({ place }) => place.fittings.map(({ id }) => ({ id, isOnOpening: false })));
  return {
    all: cardsFor(job, offAt(places)),
    potted: cardsFor(job, offAt(taking(places, 'ream-and-pot'))),
  };
}

interface ClosedBesides {
  readonly hours: FittingFigures;
  readonly overlay: Besides;
}

/** Planks that go for good go whatever is mended under them; planks that stay on the deck are left under a fitting. */
function overlayOver(job: Job, places: readonly PlaceChoice[]): Besides {
  const under = places.filter(({ place }) => place.kind !== 'fitting');
  return under.length === 0 && isLaidAgain(job.record.panel.overlay)
    ? {}
    : overlayBesides(job, { openedM2: area('mended under the overlay', areaM2Of(under)) });
}

function closedQuantities(
  job: Job,
  work: PlaceWork,
  { potted, hours, overlay }: ClosedCards & ClosedBesides,
): JobQuantities {
  const finishM2 = bareFinishArea(job);
  const holesOf = (cards: readonly FittingCard[]): number =>
    cards.reduce((sum, { fasteners }) => sum + fasteners, 0);
  return {
    openedM2: noArea,
    baredM2: noArea,
    keptCoreM2: noArea,
    driedM2: noArea,
    coredM2: noArea,
    solidL: noVolume,
    looseSkinM2: noArea,
    heldSkinM2: noArea,
    looseCoreM2: noArea,
    heldCoreM2: noArea,
    coveringM2: noArea,
    cutM: noLength,
    lipM: noLength,
    topcoatM2: finishM2,
    taperM: noLength,
    laminateM2: noArea,
    extraPlyM2: noArea,
    laminatePauseM2: noArea,
    fairedM2: noArea,
    liningM2: noArea,
    ...coatsAndCycles(job, noArea),
    finishM2,
    oldFinishM2: noArea,
    nonskidM2: noArea,
    injectedM2: work.injectedM2,
    injectionHoles: work.injectionHoles,
    holes: counted('holes to dig out and pot', holesOf(potted)),
    ...hours,
    inserts: none,
    plates: none,
    besides: { ...work.besides, ...overlay },
  };
}

function closedFlags(job: Job, places: readonly PlaceChoice[]): OperationFlags {
  return {
    ...circumstancesOf(job),
    skin: taking(places, 'inject').length > 0 ? 'inject' : 'closed',
    condition: taking(places, 'inject').length === places.length ? 'dry-debonded' : 'wet-bonded',
    props: 'not-needed',
    panel: 'flat',
    access: 'from-above',
    finish: bareFinishArea(job).value > 0 ? finishFlag(job) : 'none',
    nonskid: 'no',
  };
}

/** What neat resin takes of the bare edge of a dry hole. From memory. */
const BARE_EDGE_MM = 2;

/** Holes of fittings that stay on core: potted where it was wet, wetted where it is bare. */
function holeSteps(job: Job, cards: ClosedCards): readonly ResinStepRequest[] {
  const depthMm = job.answers.core.thicknessMm.value;
  const bedded = cards.all.filter(({ id }) => !cards.potted.some((one) => one.id === id));
  return [
    ...pottingSteps(job, cards.potted),
    ...bedded.map(({ id, fasteners, fastenerMm }): ResinStepRequest => ({
      step: 'potting',
      title: `Wet the bare core in the holes of ${id}`,
      holes: fasteners,
      diameterMm: fastenerMm + BARE_EDGE_MM,
      depthMm,
    })),
  ];
}

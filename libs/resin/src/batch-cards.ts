import type { Filler, Hardener, ResinSystem } from '#lib/catalogue';
import type { BatchRequest, PlannedBatch, StepPots, Weighing } from './batch-request.js';
import { equalPots, potsByPiece, type PotShare } from './pieces-to-pots.js';
import type { PotClock } from './pot-life.js';
import { paceOf, SMALLEST_POT_G } from './pot-limits.js';
import { toTenths } from './resin-demand.js';
import type { BeddedPiece } from './resin-request.js';
import { shareOut } from './share-out.js';

/** All that the cards of one job share. */
export interface CardContext {
  readonly request: BatchRequest;
  readonly resin: ResinSystem;
  readonly hardener: Hardener;
  readonly clock: PotClock;
  readonly edgeOpenMin: number;
}

/** The cards of one step, numbered from 1 within it; masses add up to the step's to a tenth of a gram. */
export function cardsOf(pots: StepPots, context: CardContext): readonly PlannedBatch[] {
  const { demand, totalG } = pots;
  if (totalG === 0) return [];
  const shares = sharesOf(pots, context.request);
  const weights = shares.map(({ share }) => share);
  const [resin, hardener, filler] = [demand.resinG, demand.hardenerG, demand.fillerG].map((total) =>
    shareOut(total, weights),
  );
  return shares.map((share, index) =>
    card({ pots, share, context, resinG: resin[index], hardenerG: hardener[index], fillerG: filler[index] }),
  );
}

function sharesOf(
  { demand, totalG, largestG, limitedBy }: StepPots,
  request: BatchRequest,
): readonly PotShare[] {
  const step = request.steps[demand.index];
  const pieces: readonly BeddedPiece[] = step.pieces ?? labelledPlies(step.plies);
  const most = Math.max(largestG, SMALLEST_POT_G);
  return pieces.length === 0
    ? equalPots(totalG, most, { limitedBy, title: demand.title })
    : potsByPiece(pieces, most / totalG, limitedBy);
}

const labelledPlies = (plies: BatchRequest['steps'][number]['plies']): readonly BeddedPiece[] =>
  (plies ?? []).map(({ label, areaM2 }, index) => ({ label: label ?? `ply ${index + 1}`, areaM2 }));

interface CardParts {
  readonly pots: StepPots;
  readonly share: PotShare;
  readonly context: CardContext;
  readonly resinG: number;
  readonly hardenerG: number;
  readonly fillerG: number;
}

function card({ pots, share, context, resinG, hardenerG, fillerG }: CardParts): PlannedBatch {
  const { demand, minutesPerG } = pots;
  const mixedG = toTenths(resinG + hardenerG + fillerG);
  const { lifeMin } = context.clock.lifeOf(mixedG);
  return {
    number: 0,
    stepIndex: demand.index,
    step: demand.step,
    title: demand.title,
    resinG,
    hardenerG,
    fillerG,
    ...(demand.filler === undefined ? {} : { filler: demand.filler }),
    mixedG,
    mixedMl: mixedG / demand.densityGPerCm3,
    weigh: weighings(context, demand.filler, { resinG, hardenerG, fillerG }),
    ...pumpsOf(context, resinG),
    covers: share.covers,
    spreadMin: mixedG * minutesPerG,
    useWithinMin: lifeMin * paceOf(context.request).usableFraction,
    potLifeMin: lifeMin,
    forgottenPotPeakC: context.clock.potPeakC(mixedG),
    limitedBy: share.limitedBy,
    edgeOpenMin: context.edgeOpenMin,
  };
}

interface Masses {
  readonly resinG: number;
  readonly hardenerG: number;
  readonly fillerG: number;
}

/** Resin first, hardener on top, stir, then the filler: the scale's readings add up. */
function weighings(
  { resin, hardener, request }: CardContext,
  fillerCode: string | undefined,
  { resinG, hardenerG, fillerG }: Masses,
): readonly Weighing[] {
  const filler = request.fillers.find(({ code }) => code === fillerCode);
  return [
    {
      what: 'resin',
      name: resin.name,
      addG: resinG,
      scaleShowsG: resinG,
      volumeMl: resinG / resin.densityGPerCm3.value,
    },
    {
      what: 'hardener',
      name: hardener.name,
      addG: hardenerG,
      scaleShowsG: toTenths(resinG + hardenerG),
      volumeMl: hardenerG / hardener.densityGPerCm3.value,
    },
    ...fillerWeighing(filler, fillerG, toTenths(resinG + hardenerG + fillerG)),
  ];
}

const fillerWeighing = (
  filler: Filler | undefined,
  fillerG: number,
  scaleShowsG: number,
): readonly Weighing[] =>
  filler === undefined
    ? []
    : [
        {
          what: 'filler',
          name: filler.name,
          addG: fillerG,
          scaleShowsG,
          volumeMl: fillerG / filler.bulkDensityGPerCm3.value,
        },
      ];

function pumpsOf({ request, resin, hardener }: CardContext, resinG: number): { readonly pumps?: string } {
  if (request.pumpResinMlPerStroke === undefined) return {};
  const strokes = resinG / resin.densityGPerCm3.value / request.pumpResinMlPerStroke;
  const ratio = `100 : ${hardener.partsByVolume.value} by volume`;
  return { pumps: `${strokes.toFixed(1)} strokes of each pump, set to ${ratio}` };
}

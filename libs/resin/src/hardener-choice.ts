import type { Hardener } from '#lib/catalogue';
import type { BatchRequest, HardenerVerdict, StepPots } from './batch-request.js';
import { potClock, type PotClock } from './pot-life.js';
import { paceOf, potsFor, SMALLEST_POT_G } from './pot-limits.js';
import { resinDemand, type ResinDemand } from './resin-demand.js';
import { rateRatioOf } from '#lib/cure';

/** A hardener tried on this job at this temperature. */
export interface HardenerTrial {
  readonly hardener: Hardener;
  readonly demand: ResinDemand;
  readonly clock: PotClock;
  readonly pots: readonly StepPots[];
  readonly edgeOpenMin: number;
  readonly potCount: number;
  readonly objections: readonly string[];
}

/** Share of the film's gel time within which a new pot may still meet an old edge. From memory. */
const EDGE_SHARE = 0.5;
/** Temperature at which the spec's film times stand. */
const REFERENCE_C = 25;
/** A pot this size is calm to use; smaller ones hurry the crew. From memory. */
const CALM_POT_G = 150;
/** More pots than this times the fewest mean that the pot, not the work, sets the pace. From memory. */
const MOST_POTS_RATIO = 1.4;
/** So many more pots are mixed in half an hour, whatever the fewest: a day of waiting for a slower resin is dearer. */
const FEW_MORE_POTS = 6;

export function tryHardener(request: BatchRequest, hardener: Hardener): HardenerTrial | undefined {
  const demand = resinDemand({ ...request, hardener: hardener.code });
  if (!demand.ok) return undefined;
  const clock = potClock(request.resin, hardener, request.temperatureC);
  const pots = demand.value.steps.map((step) => potsFor(step, request, clock));
  const edgeOpenMin = edgeOpen(request, hardener);
  const trial = { hardener, demand: demand.value, clock, pots, edgeOpenMin, potCount: countOf(pots) };
  return { ...trial, objections: objectionsTo(request, trial) };
}

function edgeOpen(request: BatchRequest, hardener: Hardener): number {
  const deckC = request.deckTemperatureC ?? request.temperatureC;
  const filmGelMin =
    (hardener.gelH.value * 60) /
    rateRatioOf(request.resin.activationEnergyKJPerMol.value, REFERENCE_C, deckC);
  return filmGelMin * EDGE_SHARE;
}

const countOf = (pots: readonly StepPots[]): number =>
  pots.reduce((sum, { totalG, largestG }) => sum + Math.ceil(totalG / Math.max(largestG, SMALLEST_POT_G)), 0);

type Tried = Omit<HardenerTrial, 'objections'>;

function objectionsTo(request: BatchRequest, trial: Tried): readonly string[] {
  return [
    ...temperatureObjections(request, trial.hardener),
    ...trial.pots.flatMap((pots) => potObjections(request, trial, pots)),
  ];
}

function temperatureObjections(
  request: BatchRequest,
  { name, lowestTemperatureC, highestTemperatureC }: Hardener,
): readonly string[] {
  const deckC = request.deckTemperatureC ?? request.temperatureC;
  const coldestC = Math.min(deckC, request.temperatureC);
  const warmestC = Math.max(deckC, request.temperatureC);
  return [
    ...(coldestC < lowestTemperatureC.value
      ? [
          `${name} stops curing below ${lowestTemperatureC.value} degC; it is ${Number(coldestC.toFixed(1))} degC`,
        ]
      : []),
    ...(warmestC > highestTemperatureC.value
      ? [
          `${name} is too quick above ${highestTemperatureC.value} degC; it is ${Number(warmestC.toFixed(1))} degC`,
        ]
      : []),
  ];
}

function potObjections(
  request: BatchRequest,
  { hardener, edgeOpenMin }: Tried,
  { demand, totalG, largestG, minutesPerG }: StepPots,
): readonly string[] {
  if (totalG === 0) return [];
  const needed = Math.min(totalG, SMALLEST_POT_G);
  if (largestG < needed)
    return [
      `${demand.title}: a pot of ${needed.toFixed(0)} g cannot be mixed and spread within half the pot life of ${hardener.name}`,
    ];
  const worst = largestPieceOf(request, demand.index, totalG);
  if (worst === undefined) return [];
  const minutes = pieceMinutes(request, worst.massG, { largestG, minutesPerG });
  return minutes <= edgeOpenMin
    ? []
    : [
        `${demand.title}: piece ${worst.label} takes ${minutes.toFixed(0)} min, its first edge stays open for ${edgeOpenMin.toFixed(0)} min`,
      ];
}

/** Time from the first pot on a piece until its last edge is down. */
export function pieceMinutes(
  request: BatchRequest,
  massG: number,
  { largestG, minutesPerG }: { readonly largestG: number; readonly minutesPerG: number },
): number {
  const { mixingMinutes, people } = paceOf(request);
  const extraPots = Math.ceil(massG / Math.max(largestG, SMALLEST_POT_G)) - 1;
  return massG * minutesPerG + (people === 1 ? extraPots * mixingMinutes : 0);
}

export function largestPieceOf(
  request: BatchRequest,
  index: number,
  totalG: number,
): { readonly label: string; readonly massG: number; readonly areaM2: number } | undefined {
  const pieces = request.steps[index].pieces ?? [];
  const area = pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return [...pieces]
    .sort((a, b) => b.areaM2 - a.areaM2)
    .map(({ label, areaM2 }) => ({ label, areaM2, massG: (totalG * areaM2) / area }))[0];
}

const speeds = ['fast', 'medium', 'slow', 'extra-slow'];
const bySpeed = (a: HardenerTrial, b: HardenerTrial): number =>
  speeds.indexOf(a.hardener.speed) - speeds.indexOf(b.hardener.speed);

/** The quickest hardener that leaves the crew calm pots and not many more of them; else the one with the fewest objections, the slower on a tie. */
export function chooseHardener(trials: readonly HardenerTrial[]): HardenerTrial {
  const ordered = [...trials].sort(bySpeed);
  const workable = ordered.filter(({ objections }) => objections.length === 0);
  const fewest = Math.min(...workable.map(({ potCount }) => potCount));
  const most = Math.max(fewest * MOST_POTS_RATIO, fewest + FEW_MORE_POTS);
  const calm = workable.find((trial) => trial.pots.every(isCalm) && trial.potCount <= most);
  if (calm !== undefined) return calm;
  if (workable.length > 0) return workable[workable.length - 1];
  return [...ordered].reverse().sort((a, b) => a.objections.length - b.objections.length)[0];
}

const isCalm = ({ totalG, largestG }: StepPots): boolean => largestG >= Math.min(totalG, CALM_POT_G);

export function verdictsOn(
  trials: readonly HardenerTrial[],
  chosen: HardenerTrial,
): readonly HardenerVerdict[] {
  return trials.map((trial) => ({
    code: trial.hardener.code,
    name: trial.hardener.name,
    verdict: trial === chosen ? 'chosen' : trial.objections.length === 0 ? 'workable' : 'refused',
    reasons: trial.objections.length > 0 ? trial.objections : [strengthsOf(trial)],
  }));
}

export const strengthsOf = ({ hardener, clock, potCount, edgeOpenMin }: HardenerTrial): string =>
  `${hardener.name}: 100 g last ${clock.at100G.value.toFixed(0)} min, ${potCount === 1 ? '1 pot' : `${potCount} pots`} in all, a spread edge stays open for ${edgeOpenMin.toFixed(0)} min`;

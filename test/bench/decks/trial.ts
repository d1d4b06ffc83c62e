import {
  extentAndOpenings,
  planOpenings,
  type Extent,
  type ExtentAndOpenings,
  type ExtentAndOpeningsRequest,
  type OpeningPlan,
  type Quantiles,
  type Survey,
} from '#lib/extent';
import { containsPoint, type Point, type Region } from '#lib/geometry';
import { randomStream, type RandomStream } from '#lib/kernel';
import { oracleChances, type Known } from './oracle.js';
import type { Crew } from './survey.js';
import type { Deck } from './truth.js';

/** A deck and who reads it, with what its oracle may know. */
export interface Simulated {
  readonly deck: Deck;
  readonly crew: Crew;
  readonly known: Known;
}

export interface Setting {
  readonly damage: string;
  readonly team: string;
  readonly count: number;
  readonly seed: number;
  /** Median of the bad share and its spread in the logarithm. */
  readonly share: readonly [median: number, spread: number];
  readonly made: (share: number, random: RandomStream) => Simulated;
}

/** What one deck, one survey and one plan came to. */
export interface Trial {
  readonly damage: string;
  readonly team: string;
  readonly count: number;
  readonly share: number;
  readonly brier: number;
  readonly oracleBrier: number;
  readonly isMapHolding: boolean;
  readonly isPriceHolding: boolean;
  readonly isBelow: boolean;
  readonly isPriceBelow: boolean;
  readonly isEmpty: boolean;
  readonly isEmptySilent: boolean;
  /** Of cells: chance, oracle's chance, truth. */
  readonly cells: readonly (readonly [number, number, boolean])[];
  readonly enclosed: number;
  readonly opened: number;
  readonly costH: number;
  readonly costByThresholdH: readonly number[];
  readonly ms: number;
}

export const THRESHOLDS: readonly number[] = [0.05, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5];

/** Hours that a square metre of bad core left in costs in the end; the default of the service. */
export const LEAVE_H_PER_M2 = 120;

const SHOWN_EVERY = 9;

export const build = {
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
};

export function shareFor(random: () => number, [median, spread]: Setting['share']): number {
  const score = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  return Math.min(0.75, Math.max(0.02, median * Math.exp(spread * score)));
}

export function trial(setting: Setting): Trial {
  const random = randomStream(setting.seed);
  const { deck, crew, known } = setting.made(shareFor(random, setting.share), random);
  const survey = crew.survey(setting.count);
  const request = requestFor(deck, survey);
  const start = process.cpuUsage().user;
  const found = answered(request);
  const ms = (process.cpuUsage().user - start) / 1000;
  const cells = deck.cells.filter((_, index) => index % SHOWN_EVERY === 0);
  const places = cells.map(({ at }) => at);
  const chances = chancesAt(found.extent, places);
  const oracle = oracleChances(survey, places, known);
  const badM2 = (deck.badShare * deck.cells.length * 400) / 1e6;
  return {
    damage: setting.damage,
    team: setting.team,
    count: setting.count,
    ms,
    share: deck.badShare,
    brier: brierOf(chances, cells),
    oracleBrier: brierOf(oracle, cells),
    isMapHolding: holds(found.extent.mapSpreadM2, badM2),
    isPriceHolding: holds(found.extent.damagedAreaM2, badM2),
    isBelow: badM2 < (found.extent.mapSpreadM2?.p10 ?? 0),
    isPriceBelow: badM2 < found.extent.damagedAreaM2.p10,
    isEmpty: found.plan === undefined,
    isEmptySilent:
      found.plan === undefined && !found.extent.findings.some(({ text }) => /next|settle/i.test(text)),
    cells: cells.map(({ isBad }, index) => [chances[index], oracle[index], isBad]),
    ...judged(deck, found.plan),
    costByThresholdH: costsByThreshold(deck, request, found),
  };
}

export const requestFor = (deck: Deck, survey: Survey): ExtentAndOpeningsRequest => ({
  panel: { outline: deck.outline, holes: deck.holes },
  ...build,
  survey,
  fittings: deck.fittings.map(({ at, isLeaking }, index) => ({
    id: `f${index}`,
    kind: 'pad-eye',
    at,
    isLeaking,
  })),
  map: { contourProbabilities: THRESHOLDS },
});

export function answered(request: ExtentAndOpeningsRequest): ExtentAndOpenings {
  const outcome = extentAndOpenings(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const holds = (range: Quantiles | undefined, value: number): boolean =>
  range !== undefined && range.p10 <= value && value <= range.p90;

const brierOf = (chances: ArrayLike<number>, cells: readonly { readonly isBad: boolean }[]): number =>
  cells.reduce((sum, { isBad }, index) => sum + (chances[index] - (isBad ? 1 : 0)) ** 2, 0) / cells.length;

/** Chances at places, by distance from the nearest four cells of the map. */
export function chancesAt(extent: Extent, places: readonly Point[]): Float64Array {
  const { cells, stepMm } = extent.map ?? { cells: [], stepMm: 1 };
  const buckets = new Map<string, { readonly at: Point; readonly chance: number }[]>();
  for (const cell of cells) {
    const key = `${Math.floor(cell.at[0] / stepMm)} ${Math.floor(cell.at[1] / stepMm)}`;
    buckets.set(key, [...(buckets.get(key) ?? []), cell]);
  }
  return Float64Array.from(places, (place) => {
    const [column, row] = place.map((value) => Math.floor(value / stepMm));
    const near = [-1, 0, 1].flatMap((c) =>
      [-1, 0, 1].flatMap((r) => buckets.get(`${column + c} ${row + r}`) ?? []),
    );
    return interpolated(near, place, stepMm) ?? nearest(cells, place);
  });
}

type Cell = { readonly at: Point; readonly chance: number };

function interpolated(near: readonly Cell[], [x, y]: Point, stepMm: number): number | undefined {
  const shares = near.map(
    ({ at }) => Math.max(0, 1 - Math.abs(at[0] - x) / stepMm) * Math.max(0, 1 - Math.abs(at[1] - y) / stepMm),
  );
  const total = shares.reduce((sum, share) => sum + share, 0);
  return total > 0
    ? near.reduce((sum, { chance }, index) => sum + shares[index] * chance, 0) / total
    : undefined;
}

const nearest = (cells: readonly { readonly at: Point; readonly chance: number }[], [x, y]: Point): number =>
  cells.reduce<readonly [number, number]>(
    (best, { at, chance }) => {
      const away = Math.hypot(at[0] - x, at[1] - y);
      return away < best[0] ? [away, chance] : best;
    },
    [Infinity, 0],
  )[1];

/** Bad core opened or reamed out, area opened, and hours: of the work done, and of what is left for later. */
export function judged(
  deck: Deck,
  plan: OpeningPlan | undefined,
): Pick<Trial, 'enclosed' | 'opened' | 'costH'> {
  const dealt: Region = plan?.openings.flatMap(({ area, undercut }) => [area, ...undercut]) ?? [];
  const cellM2 = 400 / 1e6;
  const bad = deck.cells.filter(({ isBad }) => isBad);
  const inside = deck.cells.filter(({ at }) => containsPoint(dealt, at));
  const enclosed = inside.filter(({ isBad }) => isBad).length;
  return {
    enclosed: enclosed / bad.length,
    opened: inside.length / bad.length,
    costH: hoursOf(plan) + LEAVE_H_PER_M2 * (bad.length - enclosed) * cellM2,
  };
}

const hoursOf = (plan: OpeningPlan | undefined): number =>
  plan === undefined
    ? 0
    : 1.45 * plan.cutLengthM +
      16 * (plan.openedAreaM2 + plan.undercutAreaM2) +
      plan.openings.reduce((sum, { sawLine }) => sum + 1 + 0.05 * sawLine.length, 0);

function costsByThreshold(
  deck: Deck,
  request: ExtentAndOpeningsRequest,
  { extent }: ExtentAndOpenings,
): readonly number[] {
  return THRESHOLDS.map((threshold) => {
    const areas = extent.contours.find(({ probability }) => probability === threshold)?.areas ?? [];
    const zones = areas
      .filter(({ outer }) => outer.length > 3)
      .map(({ outer, holes }, index) => ({ id: `z${index}`, outline: outer, holes }))
      .slice(0, 40);
    if (zones.length === 0) return judged(deck, undefined).costH;
    const planned = planOpenings({ ...request, zones, method: { cutMarginMm: 0 } });
    return judged(deck, planned.ok ? planned.value : undefined).costH;
  });
}

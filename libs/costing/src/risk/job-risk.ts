import { growthLevels, type GrowthLaw, type NewAreas } from '#lib/extent';
import { deviation, mean, quantileOfSorted, steadyQuantile } from './sample-statistics.js';
import { LATTICE_POINTS, latticeLevels, latticeScores } from './lattice.js';

/** The job planned at one extent: mean money and hours, and the variance that each line has of its own. */
export interface JobAtExtent {
  readonly extentFactor: number;
  readonly openedM2: number;
  readonly labourH: number;
  readonly labour: number;
  readonly goods: number;
  /** Charges of the yard that do not go by the day. */
  readonly charges: number;
  readonly labourVariance: number;
  readonly goodsVariance: number;
}

export interface JobDays {
  readonly calendarDays: number;
  readonly workingDays: number;
}

/** One area elsewhere that turns up, on top of the work under way. */
export interface NewAreaWork {
  readonly cost: number;
  readonly labourH: number;
  readonly days: JobDays;
}

export interface JobRiskRequest {
  /** Rising; one of them is the recorded extent, 1. */
  readonly extents: readonly JobAtExtent[];
  readonly law: GrowthLaw;
  readonly newAreas: NewAreas & NewAreaWork;
  /** Whose pace it goes at: that of an owner is less sure. */
  readonly hands: keyof typeof paceSigma;
  /** What the recorded extent costs on average: the sum of its lines with loadings. */
  readonly base: number;
  /** Whether the contingency is to be told apart by kind of risk. */
  readonly wantsKinds: boolean;
  /** What a day in the yard costs; nothing where the boat lies there anyway. */
  readonly perCalendarDay: number;
  /** Of a crew that comes on every working day, those counted that weather takes. */
  readonly days: (extentFactor: number, pace: number, waitQuantile: number) => JobDays;
  /** Days on the calendar on which the crew stays away, for each day worked. */
  readonly absentPerDayWorked: (quantile: number) => number;
  /** Whether days on which nobody comes are charged by the yard: to an owner who works there, not to its own customer. */
  readonly paysForAbsence: boolean;
}

export const riskKinds = ['extent', 'new-areas', 'productivity', 'price', 'waits'] as const;
export type RiskKind = (typeof riskKinds)[number];

export const riskKindTitles: Readonly<Record<RiskKind, string>> = {
  'extent': 'More or less found than recorded',
  'new-areas': 'New areas elsewhere',
  'productivity': 'Pace of the work',
  'price': 'Prices and use of materials',
  'waits': 'Waits, where days are charged',
};

/**
 * How far the pace of a whole job and the level of all its prices stray, as deviations of the logarithm. Pace: what is left of
 * the scatter of told hours about ours when bracketed areas and untold scopes are taken off, judged; four told jobs of
 * owners stray by 0.3, eight of yards by 0.2.
 */
export const paceSigma = { yard: 0.2, owner: 0.3 } as const;
export const priceSigma = 0.05;

export interface Quantiles {
  readonly p10: number;
  readonly p50: number;
  readonly p80: number;
  readonly p90: number;
}

export interface JobRisk {
  readonly points: number;
  /** Mean cost of the recorded extent. */
  readonly base: number;
  /** Mean cost of what is found, less the base; nothing where the panel leaves less than was recorded. */
  readonly growth: number;
  readonly growthM2: number;
  readonly newAreas: number;
  /** Base, growth and new areas. */
  readonly expected: number;
  /** How likely the job costs no more than expected. */
  readonly shareWithin: number;
  /** P80 less the expected. */
  readonly contingency: number;
  readonly kinds: readonly { readonly kind: RiskKind; readonly share: number }[];
  readonly cost: Quantiles;
  readonly labourH: Quantiles & { readonly mean: number };
  readonly calendarDays: Quantiles;
  readonly workingDays: Quantiles;
  /** Difference of P90 between the even and the odd half of the points, over P90. */
  readonly p90RelativeError: number;
}

/**
 * Money, hours and days of one job as one distribution: one extent, one count of new areas, one pace, one price level and
 * one run of luck with the waits decide all three. The points are a fixed lattice, so that nothing depends on a seed.
 *
 * Source: [GAO-20-195G] step 9, simulation of correlated elements and contingency from the wanted confidence
 * Worked: libs/costing/src/risk/job-risk.spec.ts
 */
export function jobRisk(request: JobRiskRequest): JobRisk {
  const tables = tablesOf(request);
  const all = sampled({ request, tables, active: everything, wantsDays: true });
  const sums = expectedSums(request, all.cost);
  const sorted = all.cost.slice().sort();
  return {
    ...sums,
    points: LATTICE_POINTS,
    growthM2: sums.growth === 0 ? 0 : Math.max(0, mean(tables.at.openedM2) - tables.recorded.openedM2),
    shareWithin: shareAtMost(sorted, sums.expected),
    contingency: contingencyOf(sorted, sums),
    kinds: request.wantsKinds ? sharesOf(request, tables) : [],
    cost: quantilesOfSorted(sorted),
    labourH: { ...quantilesOf(all.labourH), mean: mean(all.labourH) },
    calendarDays: quantilesOf(all.calendarDays),
    workingDays: quantilesOf(all.workingDays),
    p90RelativeError: halvesDiffer(all.cost),
  };
}

/** The contingency alone, for the same job on other evidence; days are looked up only where they cost something. */
export function contingencyFor(request: JobRiskRequest): number {
  const tables = tablesOf(request);
  const { cost } = sampled({ request, tables, active: everything, wantsDays: false });
  const sums = expectedSums(request, cost);
  return contingencyOf(cost.sort(), sums);
}

type Sums = Pick<JobRisk, 'base' | 'growth' | 'newAreas' | 'expected'>;

function expectedSums(
  { base, newAreas: elsewhere, perCalendarDay }: JobRiskRequest,
  cost: Float64Array,
): Sums {
  const newAreas = elsewhere.expected * (elsewhere.cost + elsewhere.days.calendarDays * perCalendarDay);
  const growth = Math.max(0, mean(cost) - base - newAreas);
  return { base, growth, newAreas, expected: base + growth + newAreas };
}

const contingencyOf = (sortedCost: Float64Array, { expected }: Sums): number =>
  Math.max(0, steadyQuantile(sortedCost, 0.8) - expected);

function shareAtMost(sorted: Float64Array, amount: number): number {
  let count = 0;
  while (count < sorted.length && sorted[count] <= amount) count += 1;
  return count / sorted.length;
}

type Active = Readonly<Record<RiskKind, boolean>>;
const everything: Active = {
  'extent': true,
  'new-areas': true,
  'productivity': true,
  'price': true,
  'waits': true,
};
const nothing: Active = {
  'extent': false,
  'new-areas': false,
  'productivity': false,
  'price': false,
  'waits': false,
};

const levels = {
  extent: latticeLevels(0),
  pace: latticeLevels(1),
  ownLabour: latticeLevels(2),
  newAreas: latticeLevels(3),
  price: latticeLevels(4),
  waits: latticeLevels(5),
  ownGoods: latticeLevels(6),
  /** No day depends on how goods stray by themselves, and no money of a yard on who stays away: they share their levels. */
  absence: latticeLevels(6),
} as const;

/** Lognormal factors of mean one at the middle of each level. */
const lognormalOfMeanOne = (sigma: number): Float64Array => {
  const raw = latticeScores.map((score) => Math.exp(sigma * score));
  const centre = mean(raw);
  return raw.map((factor) => factor / centre);
};
const paces = {
  yard: lognormalOfMeanOne(paceSigma.yard),
  owner: lognormalOfMeanOne(paceSigma.owner),
} as const;
const priceLevels = lognormalOfMeanOne(priceSigma);

type Column = Exclude<keyof JobAtExtent, 'extentFactor'>;

/** The job at the extent of each level, worked out once for all points. */
interface Tables {
  readonly extents: Float64Array;
  readonly counts: Uint8Array;
  readonly absentPerDayWorked: Float64Array;
  readonly at: Readonly<Record<Column, Float64Array>>;
  readonly recorded: JobAtExtent;
}

const levelsByLaw = new WeakMap<GrowthLaw, Float64Array>();

/** Every rung of a ladder grows by the same law. */
function levelsOf(law: GrowthLaw): Float64Array {
  const known = levelsByLaw.get(law) ?? growthLevels(law, LATTICE_POINTS);
  levelsByLaw.set(law, known);
  return known;
}

function tablesOf({ extents, law, newAreas, absentPerDayWorked }: JobRiskRequest): Tables {
  const factors = levelsOf(law);
  const places = placesOf(
    extents.map(({ extentFactor }) => extentFactor),
    factors,
  );
  const column = (name: Column): Float64Array =>
    valuesAt(
      places,
      extents.map((extent) => extent[name]),
    );
  return {
    extents: factors,
    counts: poissonLevels(newAreas.expected),
    absentPerDayWorked: Float64Array.from({ length: LATTICE_POINTS }, (_, level) =>
      absentPerDayWorked(middleOf(level)),
    ),
    at: {
      openedM2: column('openedM2'),
      labourH: column('labourH'),
      labour: column('labour'),
      goods: column('goods'),
      charges: column('charges'),
      labourVariance: column('labourVariance'),
      goodsVariance: column('goodsVariance'),
    },
    recorded: recordedOf(extents),
  };
}

/** Straight between the planned extents, level beyond the last. */
function valuesAt(places: Float64Array, known: readonly number[]): Float64Array {
  const last = known.length - 1;
  const values = new Float64Array(places.length);
  for (let level = 0; level < places.length; level += 1) {
    const place = places[level];
    const cell = Math.floor(place);
    values[level] =
      cell < last ? known[cell] + (place - cell) * (known[cell + 1] - known[cell]) : known[last];
  }
  return values;
}

const recordedOf = (extents: readonly JobAtExtent[]): JobAtExtent =>
  extents.reduce((nearest, one) =>
    Math.abs(one.extentFactor - 1) < Math.abs(nearest.extentFactor - 1) ? one : nearest,
  );

/** Of rising factors, the cell among the planned extents and the way within it, as one number; level beyond them. */
function placesOf(planned: readonly number[], factors: Float64Array): Float64Array {
  let cell = 0;
  return factors.map((factor) => {
    while (cell + 2 < planned.length && planned[cell + 1] < factor) cell += 1;
    if (planned.length === 1) return 0;
    const way = (factor - planned[cell]) / (planned[cell + 1] - planned[cell]);
    return cell + Math.min(1, Math.max(0, way));
  });
}

/** The count of a Poisson law at each level. */
function poissonLevels(expected: number): Uint8Array {
  const counts = new Uint8Array(LATTICE_POINTS);
  let [count, term] = [0, Math.exp(-expected)];
  let share = term;
  for (let level = 0; level < LATTICE_POINTS; level += 1) {
    while (share < (level + 0.5) / LATTICE_POINTS && count < 250) {
      count += 1;
      term *= expected / count;
      share += term;
    }
    counts[level] = count;
  }
  return counts;
}

interface Sampled {
  readonly cost: Float64Array;
  readonly labourH: Float64Array;
  readonly calendarDays: Float64Array;
  readonly workingDays: Float64Array;
}

const middleOf = (level: number): number => (level + 0.5) / LATTICE_POINTS;

function sampled(drawing: Drawing): Sampled {
  const made = (): Float64Array => new Float64Array(LATTICE_POINTS);
  const found = { cost: made(), labourH: made(), calendarDays: made(), workingDays: made() };
  for (let point = 0; point < LATTICE_POINTS; point += 1) put(found, point, drawing);
  return found;
}

interface Drawing {
  readonly request: JobRiskRequest;
  readonly tables: Tables;
  readonly active: Active;
  /** Whether days are of interest even where they cost nothing. */
  readonly wantsDays: boolean;
}

function put(into: Sampled, point: number, { request, tables, active, wantsDays }: Drawing): void {
  const { at, recorded } = tables;
  const level = active.extent ? levels.extent[point] : -1;
  const pace = active.productivity ? paces[request.hands][levels.pace[point]] : 1;
  const price = active.price ? priceLevels[levels.price[point]] : 1;
  const ownLabour = active.productivity ? latticeScores[levels.ownLabour[point]] : 0;
  const ownGoods = active.price ? latticeScores[levels.ownGoods[point]] : 0;
  const count = active['new-areas'] ? tables.counts[levels.newAreas[point]] : 0;
  const wait = active.waits ? middleOf(levels.waits[point]) : 0.5;
  const absence = active.waits ? levels.absence[point] : MIDDLE_LEVEL;
  const { newAreas, perCalendarDay, days, paysForAbsence } = request;
  const taken =
    wantsDays || perCalendarDay !== 0 ? days(level < 0 ? 1 : tables.extents[level], pace, wait) : noDays;
  const labour = level < 0 ? recorded.labour : at.labour[level];
  const labourH = level < 0 ? recorded.labourH : at.labourH[level];
  const own = Math.sqrt(level < 0 ? recorded.labourVariance : at.labourVariance[level]) * ownLabour;
  const attended = taken.calendarDays + count * newAreas.days.calendarDays;
  const workingDays = taken.workingDays + count * newAreas.days.workingDays;
  const calendarDays = attended + workingDays * tables.absentPerDayWorked[absence];
  into.calendarDays[point] = calendarDays;
  into.workingDays[point] = workingDays;
  into.labourH[point] = (labourH * (1 + (labour === 0 ? 0 : own / labour)) + count * newAreas.labourH) * pace;
  into.cost[point] =
    labour * pace +
    own +
    (level < 0 ? recorded.goods : at.goods[level]) * price +
    Math.sqrt(level < 0 ? recorded.goodsVariance : at.goodsVariance[level]) * ownGoods +
    (level < 0 ? recorded.charges : at.charges[level]) * price +
    count * newAreas.cost * pace +
    (paysForAbsence ? calendarDays : attended) * perCalendarDay;
}

const MIDDLE_LEVEL = (LATTICE_POINTS - 1) / 2;
const noDays: JobDays = { calendarDays: 0, workingDays: 0 };

/** A kind that moves the cost less than the points can tell is left out; the others make up the whole. */
const LEAST_SHARE = 0.005;

/** Each kind's variance with all others at their means, as a share of all of these. */
function sharesOf(request: JobRiskRequest, tables: Tables): JobRisk['kinds'] {
  const alone = riskKinds.map((kind) => ({
    kind,
    variance:
      deviation(sampled({ request, tables, active: { ...nothing, [kind]: true }, wantsDays: false }).cost) **
      2,
  }));
  const all = alone.reduce((sum, { variance }) => sum + variance, 0);
  const told = alone.filter(({ variance }) => variance > LEAST_SHARE * all);
  const whole = told.reduce((sum, { variance }) => sum + variance, 0);
  return told
    .map(({ kind, variance }) => ({ kind, share: variance / whole }))
    .sort((a, b) => b.share - a.share);
}

const quantilesOf = (values: Float64Array): Quantiles => quantilesOfSorted(values.slice().sort());

function quantilesOfSorted(sorted: Float64Array): Quantiles {
  const at = (share: number): number => steadyQuantile(sorted, share);
  return { p10: at(0.1), p50: at(0.5), p80: at(0.8), p90: at(0.9) };
}

function halvesDiffer(values: Float64Array): number {
  const half = (rest: number): number => {
    const own = new Float64Array((values.length + 1 - rest) >> 1);
    for (let place = 0; place < own.length; place += 1) own[place] = values[2 * place + rest];
    return quantileOfSorted(own.sort(), 0.9);
  };
  const [even, odd] = [half(0), half(1)];
  return even + odd === 0 ? 0 : Math.abs(even - odd) / (even + odd);
}

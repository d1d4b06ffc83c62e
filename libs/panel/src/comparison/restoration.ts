import { refusal, success, type Outcome } from '#lib/kernel';
import type { Figure } from '#lib/provenance';
import { inWords, type ReasonedCheck } from './check.js';
import { criteriaOf, type ResolvedCriteria } from './criteria.js';
import { loadInWords, loadsOf, type ResolvedLoad } from './loads.js';
import { faultsOfRequest } from './panel-faults.js';
import { panelSizeQuestions, type PanelCheckRequest } from './panel-request.js';
import type { PlateSource } from '../plate/kept-plates.js';
import type { EdgeFixing, PlateEdges } from '../plate/plate-answer.js';
import { analyseSandwich, figuresOf, type AnalysedState } from './state-analysis.js';
import { checksOf, dentChecks, ratioFigure } from './state-checks.js';
import type { SandwichValues } from '../plate/states.js';
import { yardstickChecks } from './yardstick-checks.js';

export interface Ratio {
  /** Names check and load together. */
  readonly key: string;
  /** Check that repaired and built deck share. */
  readonly code: string;
  /** Name of what is compared. */
  readonly title: string;
  /** Load that both are under. */
  readonly load?: string;
  /** Repaired over built; 1 is as good as it was. */
  readonly ratio: number;
  /** Share of what is allowed that the deck as built used, and that the repair uses. */
  readonly asBuiltUtilisation: number;
  /** Demand over capacity of the repaired deck. */
  readonly repairedUtilisation: number;
}

/** A panel and what it is judged by; of the states only the deck as built. */
export type RestorationRequest = Pick<
  PanelCheckRequest,
  'panel' | 'asBuilt' | 'loads' | 'craft' | 'criteria'
>;

/** How one repair stands to the deck as built. */
export interface Restoration {
  readonly leastRatio: number;
  /** Every ratio below 1, worst first. */
  readonly shortfalls: readonly string[];
  /** Those that hands could tell from the deck as built. */
  readonly tellable: readonly string[];
}

/** For a search that wants a repair which gives back all there was. */
export interface RepairJudge {
  readonly judge: (repaired: SandwichValues) => Restoration;
  /** How many measures fall short at least: those that need no series. */
  readonly fewestShort: (repaired: SandwichValues) => number;
}

/** Judges one repair after another by the ratios of the panel check; the deck as built is analysed once. */
export function restorationOf(request: RestorationRequest, plates: PlateSource): Outcome<RepairJudge> {
  const faults = faultsOfRequest({ ...request, repaired: request.asBuilt });
  if (faults.length > 0) return refusal(...faults);
  const judgedBy = { loads: loadsOf(request), criteria: criteriaOf(request.criteria ?? {}) };
  const setting = { size: request.panel, edges: edgesOf(request.panel), loads: judgedBy.loads, plates };
  const checksIn = (name: 'as-built' | 'repaired', values: SandwichValues): readonly ReasonedCheck[] =>
    reasonedChecks(
      analyseSandwich(
        name,
        values,
        setting,
        figuresOf(values, name === 'repaired' ? '/repaired' : '/asBuilt'),
      ),
      request,
      judgedBy,
    );
  const built = checksIn('as-built', request.asBuilt);
  return success({
    judge: (repaired) => restorationFrom(plain(ratiosOf(built, checksIn('repaired', repaired)))),
    fewestShort: (repaired) =>
      plain(ratiosOf(built, checksWithoutPlate(repaired, request, judgedBy))).filter(isShort).length,
  });
}

const plain = (reasoned: readonly ReasonedRatio[]): readonly Ratio[] => reasoned.map(({ ratio }) => ratio);

const restorationFrom = (ratios: readonly Ratio[]): Restoration => ({
  leastRatio: Math.min(...ratios.map(({ ratio }) => ratio)),
  shortfalls: shortfallsOf(ratios),
  tellable: shortByMoreThanHands(ratios),
});

export interface JudgedBy {
  readonly loads: readonly ResolvedLoad[];
  readonly criteria: ResolvedCriteria;
}

/** Every check of a state, each with what it came from. */
export function reasonedChecks(
  state: AnalysedState,
  request: RestorationRequest,
  judgedBy: JudgedBy,
): readonly ReasonedCheck[] {
  return [
    ...state.loaded.flatMap((loaded) => checksOf(state, loaded, judgedBy.criteria)),
    ...sectionChecks(state, request, judgedBy),
  ];
}

/** The checks of a repair that follow from its section alone. */
function checksWithoutPlate(
  values: SandwichValues,
  request: RestorationRequest,
  judgedBy: JudgedBy,
): readonly ReasonedCheck[] {
  const state = { name: 'repaired', values, figures: figuresOf(values, '/repaired') } as const;
  return [
    ...judgedBy.loads.flatMap((load) => dentChecks(state, load, judgedBy.criteria)),
    ...sectionChecks(state, request, judgedBy),
  ];
}

function sectionChecks(
  state: Pick<AnalysedState, 'name' | 'values'>,
  request: RestorationRequest,
  { loads, criteria }: JudgedBy,
): readonly ReasonedCheck[] {
  const pressure = loads.find(({ code }) => code.startsWith('yardstick'))?.pressure;
  const isWhole = state.name === 'as-built' || state.name === 'repaired';
  if (pressure === undefined || !isWhole) return [];
  return yardstickChecks({
    state: state.name,
    values: state.values,
    field: state.name === 'repaired' ? '/repaired' : '/asBuilt',
    panel: request.panel,
    pressure,
    craft: request.craft,
    criteria,
  });
}

/** Free edges were refused before. */
export function edgesOf({
  edges = panelSizeQuestions.edges.otherwise.value,
  eachEdge,
}: PanelCheckRequest['panel']): PlateEdges {
  const known = (edge: string): EdgeFixing => (edge === 'clamped' ? 'clamped' : 'simply-supported');
  const { xStart, xEnd, yStart, yEnd } = eachEdge ?? {
    xStart: edges,
    xEnd: edges,
    yStart: edges,
    yEnd: edges,
  };
  return { xStart: known(xStart), xEnd: known(xEnd), yStart: known(yStart), yEnd: known(yEnd) };
}

export interface ReasonedRatio {
  readonly ratio: Ratio;
  readonly why: Figure;
}

/** Stiffness and every check that both states answer for. */
export function ratiosOf(
  built: readonly ReasonedCheck[],
  repaired: readonly ReasonedCheck[],
): readonly ReasonedRatio[] {
  return repaired.flatMap((after) => {
    const before = built.find(({ item }) => item.code === after.item.code && item.load === after.item.load);
    return before === undefined ? [] : ratioOf(before, after);
  });
}

function ratioOf(before: ReasonedCheck, after: ReasonedCheck): readonly ReasonedRatio[] {
  if (
    before.item.utilisation === undefined ||
    after.item.utilisation === undefined ||
    before.why === undefined ||
    after.why === undefined
  )
    return [];
  const value = before.item.utilisation / after.item.utilisation;
  const isStiffness = after.item.code === 'deflection';
  const code = isStiffness ? 'stiffness' : after.item.code;
  const title = isStiffness ? 'Stiffness' : after.item.title;
  const { load } = after.item;
  return [
    {
      ratio: {
        key: ['ratio', load, code].filter((part) => part !== undefined).join(':'),
        code,
        title,
        ratio: value,
        asBuiltUtilisation: before.item.utilisation,
        repairedUtilisation: after.item.utilisation,
        ...(load === undefined ? {} : { load }),
      },
      why: ratioFigure(value, `${title}: as built over repaired`, {
        asBuilt: before.why,
        repaired: after.why,
      }),
    },
  ];
}

/** Each check of the repair with what the deck as built came to; using no more of what is allowed is no worse. */
export const besideBuilt = (
  built: readonly ReasonedCheck[],
  repaired: readonly ReasonedCheck[],
): readonly ReasonedCheck[] =>
  repaired.map((after) => {
    const before = built.find(
      ({ item }) => item.code === after.item.code && item.load === after.item.load,
    )?.item;
    if (before?.utilisation === undefined || after.item.utilisation === undefined) return after;
    const isNoWorse = after.item.utilisation * (1 - REPEATED_BY_HAND) <= before.utilisation;
    return {
      ...after,
      item: {
        ...after.item,
        asBuilt: { utilisation: before.utilisation, verdict: before.verdict, isNoWorse },
      },
    };
  });

/** Series and polynomials agree to about this; a smaller shortfall is no shortfall. */
const AGREEMENT = 1e-6;

/**
 * Hands do not repeat a laminate to a hundredth: a class rule lets each ply be 15 % thicker or thinner than designed, so that
 * two skins laid alike in four plies differ by more than this in seven cases of eight. A repair that is nearer to the deck as
 * built than that is as good as it. A search for a schedule is held to what was there all the same.
 *
 * Source: [ABS-ORY-1994] 4.5.4d, second-hand: design thickness of plies within 15 %
 * Worked: libs/panel/src/comparison/by-hand.spec.ts
 */
export const REPEATED_BY_HAND = 0.01;

const isShort = ({ ratio }: Ratio): boolean => ratio < 1 - AGREEMENT;

/** In words, worst first: what the repair does not give back, by more than hands repeat. */
export const shortByMoreThanHands = (ratios: readonly Ratio[]): readonly string[] =>
  shortfallsOf(ratios.filter(({ ratio }) => ratio < 1 - REPEATED_BY_HAND));

/** What is short by less than hands repeat, in one sentence; none where nothing is. */
export function withinHandsOf(ratios: readonly Ratio[]): readonly string[] {
  const near = ratios.filter((one) => isShort(one) && one.ratio >= 1 - REPEATED_BY_HAND);
  if (near.length === 0) return [];
  const least = Math.min(...near.map(({ ratio }) => ratio));
  return [
    `By calculation ${[...new Set(near.map(({ title }) => title.toLowerCase()))].join(' and ')} ${near.length === 1 ? 'is' : 'are'} ${percentBelow(least)} % of what the deck had as built. That is within the 1 % to which no laminate is repeated by hand: plies come out up to 15 % thicker or thinner.`,
  ];
}

/** In words, worst first: what the repair does not give back. */
export const shortfallsOf = (ratios: readonly Ratio[]): readonly string[] =>
  ratios
    .filter(isShort)
    .sort((a, b) => a.ratio - b.ratio)
    .map(shortfallInWords);

const shortfallInWords = ({ title, load, ratio, asBuiltUtilisation, repairedUtilisation }: Ratio): string =>
  [
    `${title}${load === undefined ? '' : ` under ${loadInWords(load)}`}: ${percentBelow(ratio)} % of what the deck had as built`,
    ` (it used ${inWords(asBuiltUtilisation * PERCENT)} % of what is allowed, the repair uses ${inWords(repairedUtilisation * PERCENT)} %)`,
  ].join('');

const PERCENT = 100;

/** Three digits, or as many as keep a shortfall from reading as 100 %. */
function percentBelow(ratio: number): string {
  const digits = [1, 2, 3, 4].find((decimals) => Number((ratio * PERCENT).toFixed(decimals)) < PERCENT) ?? 4;
  return String(Number((ratio * PERCENT).toFixed(digits)));
}

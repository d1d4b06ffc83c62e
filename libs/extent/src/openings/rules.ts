import { assumed, entered, type Cite, type Figure } from '#lib/provenance';
import { problem, type Problem } from '#lib/kernel';
import { inUnit } from '../in-unit.js';
import type { OpeningRequest, OpeningRules } from './request.js';

const commonPractice: Cite = { source: 'COMMON-PRACTICE' };
const fromMemory: Cite = { source: 'FROM-MEMORY' };

interface Rule {
  readonly unit: string;
  readonly meaning: string;
  /** The field that sets it. */
  readonly at: string;
  readonly value: number;
  readonly from: number;
  readonly upTo: number;
  readonly because: string;
  readonly cite: Cite;
}

/** Every rule with its default, the range it may be set to, and where the default comes from. */
export const openingRules = {
  cutMarginMm: {
    unit: 'mm',
    meaning: 'margin of the cut beyond the bad core',
    at: '/method/cutMarginMm',
    value: 75,
    from: 0,
    upTo: 500,
    because: 'a few inches all round, 50 to 100 mm, past the sound boundary',
    cite: commonPractice,
  },
  flangeMm: {
    unit: 'mm',
    meaning: 'sound deck kept at every edge',
    at: '/method/flangeMm',
    value: 50,
    from: 10,
    upTo: 500,
    because: 'about 2 in of deck kept round a cut, so that the new laminate can tie in and be faired',
    cite: commonPractice,
  },
  taperRatio: {
    unit: '1',
    meaning: 'taper ratio, length to one of thickness',
    at: '/method/taperRatio',
    value: 12,
    from: 3,
    upTo: 100,
    because: 'the usual figure for glass decks; in tests of 1:6, 1:12 and 1:20 the best of the three',
    cite: { source: 'ROTHBARTH-PINTO-2019' },
  },
  cornerRadiusMm: {
    unit: 'mm',
    meaning: 'radius of the corners of the cut',
    at: '/rules/cornerRadiusMm',
    value: 40,
    from: 5,
    upTo: 300,
    because: 'rounded corners of 25 to 50 mm do not start cracks',
    cite: fromMemory,
  },
  depthMarginMm: {
    unit: 'mm',
    meaning: 'depth of the saw past the skin',
    at: '/rules/depthMarginMm',
    value: 2,
    from: 0,
    upTo: 10,
    because: 'the saw is set to the measured skin and 1 to 3 mm',
    cite: commonPractice,
  },
  innerSkinClearanceMm: {
    unit: 'mm',
    meaning: 'core left above the inner skin by the saw',
    at: '/rules/innerSkinClearanceMm',
    value: 5,
    from: 1,
    upTo: 50,
    because: 'the saw stops well short of the inner skin',
    cite: commonPractice,
  },
  supportClearanceMm: {
    unit: 'mm',
    meaning: 'distance of a cut from a support it runs along',
    at: '/rules/supportClearanceMm',
    value: 100,
    from: 0,
    upTo: 500,
    because:
      'joints do not lie over a bulkhead edge, and joints of skin and core are staggered by 100 mm or more',
    cite: fromMemory,
  },
  undercutReachMm: {
    unit: 'mm',
    meaning: 'reach of reaming under skin that stays',
    at: '/rules/undercutReachMm',
    value: 75,
    from: 0,
    upTo: 200,
    because: 'core is reamed out 25 to 75 mm under the sound lip with hooked tools',
    cite: commonPractice,
  },
  fittingReachMm: {
    unit: 'mm',
    meaning: 'distance within which fittings belong to the job',
    at: '/rules/fittingReachMm',
    value: 300,
    from: 0,
    upTo: 2000,
    because: 'a fitting within about a foot of soft core is a likely cause and is re-bedded with it',
    cite: fromMemory,
  },
  cutHPerM: {
    unit: 'h/m',
    meaning: 'labour for a metre of cut: mark, saw, ream, taper, close',
    at: '/rules/cutHPerM',
    value: 1.45,
    from: 0,
    upTo: 50,
    because: 'cut 0.3, ream 0.3, taper 0.35, close the seam 0.5',
    cite: fromMemory,
  },
  openedHPerM2: {
    unit: 'h/m2',
    meaning: 'labour for a square metre of sound deck opened with the rest',
    at: '/rules/openedHPerM2',
    value: 16,
    from: 0,
    upTo: 200,
    because: 'lift 4, core out 6, grind 1, fit core 1.3, bed 1.5, new skin 1.8; finishing is by the panel',
    cite: fromMemory,
  },
  openingH: {
    unit: 'h',
    meaning: 'labour for each opening whatever its size',
    at: '/rules/openingH',
    value: 1,
    from: 0,
    upTo: 50,
    because: 'marking out, test holes, moving props and covers',
    cite: fromMemory,
  },
  cornerH: {
    unit: 'h',
    meaning: 'labour for each corner of the cut',
    at: '/rules/cornerH',
    value: 0.05,
    from: 0,
    upTo: 5,
    because: 'drill or grind the round, set the saw in again',
    cite: fromMemory,
  },
} as const satisfies Readonly<Record<string, Rule>>;

type RuleName = keyof typeof openingRules;

const ruleNames: readonly RuleName[] = [
  'cutMarginMm',
  'flangeMm',
  'taperRatio',
  'cornerRadiusMm',
  'depthMarginMm',
  'innerSkinClearanceMm',
  'supportClearanceMm',
  'undercutReachMm',
  'fittingReachMm',
  'cutHPerM',
  'openedHPerM2',
  'openingH',
  'cornerH',
];

/** The rules in force as plain numbers. */
export type Rules = Readonly<Record<RuleName, number>> & {
  readonly bondableAreaM2?: number;
  readonly bondableLengthMm?: number;
  readonly skin: 're-bed' | 'relay';
  readonly access: 'from-above' | 'from-below';
};

/** The rules in force, each as a figure that says whether the caller or a default set it. */
export type RuleFigures = Readonly<Record<RuleName, Figure>>;

/** Practice of the trade: a re-used skin longer than this is cut, because it cannot be bedded before the resin gels. */
export const usualBondable = { lengthMm: 900, areaM2: 0.6 } as const;

const ruleEntries = (): readonly (readonly [RuleName, Rule])[] =>
  ruleNames.map((name) => [name, openingRules[name]] as const);

export function rulesOf(request: OpeningRequest): Rules {
  const numbers = { ...defaults, ...given(request) };
  const skin = request.method?.skin ?? 'relay';
  return {
    ...numbers,
    skin,
    access: request.method?.access ?? 'from-above',
    ...(skin === 're-bed'
      ? { bondableAreaM2: usualBondable.areaM2, bondableLengthMm: usualBondable.lengthMm }
      : {}),
    ...(request.rules?.bondableAreaM2 === undefined ? {} : { bondableAreaM2: request.rules.bondableAreaM2 }),
    ...(request.rules?.bondableLengthMm === undefined
      ? {}
      : { bondableLengthMm: request.rules.bondableLengthMm }),
  };
}

export function ruleFigures(request: OpeningRequest): RuleFigures {
  const said: Partial<Record<RuleName, number>> = given(request);
  return {
    cutMarginMm: ruleFigure('cutMarginMm', said),
    flangeMm: ruleFigure('flangeMm', said),
    taperRatio: ruleFigure('taperRatio', said),
    cornerRadiusMm: ruleFigure('cornerRadiusMm', said),
    depthMarginMm: ruleFigure('depthMarginMm', said),
    innerSkinClearanceMm: ruleFigure('innerSkinClearanceMm', said),
    supportClearanceMm: ruleFigure('supportClearanceMm', said),
    undercutReachMm: ruleFigure('undercutReachMm', said),
    fittingReachMm: ruleFigure('fittingReachMm', said),
    cutHPerM: ruleFigure('cutHPerM', said),
    openedHPerM2: ruleFigure('openedHPerM2', said),
    openingH: ruleFigure('openingH', said),
    cornerH: ruleFigure('cornerH', said),
  };
}

function ruleFigure(name: RuleName, said: Partial<Record<RuleName, number>>): Figure {
  const { unit, meaning, at, value, because, cite, from, upTo } = openingRules[name];
  const stated = said[name];
  return stated === undefined
    ? assumed<string>(unit, inUnit(value), meaning, { at, because, cite, low: from, high: upTo })
    : entered<string>(unit, inUnit(stated), meaning, at);
}

/** Every rule the caller set outside what a deck allows. */
export function ruleProblems(request: OpeningRequest): readonly Problem[] {
  const said: Partial<Record<RuleName, number>> = given(request);
  const { bondableAreaM2, bondableLengthMm } = request.rules ?? {};
  return [
    ...ruleEntries().flatMap(([name, { at, from, upTo, unit }]) =>
      rangeProblem(said[name], at, { from, upTo, unit }),
    ),
    ...rangeProblem(bondableAreaM2, '/rules/bondableAreaM2', { from: 0.02, upTo: 50, unit: 'm2' }),
    ...rangeProblem(bondableLengthMm, '/rules/bondableLengthMm', { from: 150, upTo: 20_000, unit: 'mm' }),
  ];
}

export interface NumberRange {
  readonly from: number;
  readonly upTo: number;
  readonly unit: string;
}

export function rangeProblem(
  value: number | undefined,
  at: string,
  { from, upTo, unit }: NumberRange,
): readonly Problem[] {
  if (value === undefined) return [];
  if (!Number.isFinite(value))
    return [problem('not-a-number', at, { hint: ` in ${unit}`, value: String(value) })];
  return value >= from && value <= upTo
    ? []
    : [problem('out-of-range', at, { value, range: `between ${from} and ${upTo} ${unit}` })];
}

function given({ method, rules }: OpeningRequest): Partial<Record<RuleName, number>> {
  const { cutMarginMm, flangeMm, taperRatio } = method ?? {};
  const said: readonly (readonly [RuleName, number | undefined])[] = [
    ['cutMarginMm', cutMarginMm],
    ['flangeMm', flangeMm],
    ['taperRatio', taperRatio],
    ...ruleNames.slice(3).map((name) => [name, ruleOf(rules, name)] as const),
  ];
  return Object.fromEntries(said.filter(([, value]) => value !== undefined));
}

const ruleOf = (rules: OpeningRules | undefined, name: RuleName): number | undefined =>
  name === 'cutMarginMm' || name === 'flangeMm' || name === 'taperRatio' ? undefined : rules?.[name];

const defaults: Readonly<Record<RuleName, number>> = {
  cutMarginMm: openingRules.cutMarginMm.value,
  flangeMm: openingRules.flangeMm.value,
  taperRatio: openingRules.taperRatio.value,
  cornerRadiusMm: openingRules.cornerRadiusMm.value,
  depthMarginMm: openingRules.depthMarginMm.value,
  innerSkinClearanceMm: openingRules.innerSkinClearanceMm.value,
  supportClearanceMm: openingRules.supportClearanceMm.value,
  undercutReachMm: openingRules.undercutReachMm.value,
  fittingReachMm: openingRules.fittingReachMm.value,
  cutHPerM: openingRules.cutHPerM.value,
  openedHPerM2: openingRules.openedHPerM2.value,
  openingH: openingRules.openingH.value,
  cornerH: openingRules.cornerH.value,
};

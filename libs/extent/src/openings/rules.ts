import {
  ask,
  askPart,
  askWhich,
  commonPractice,
  fromMemory,
  practice,
  settle,
  type AnswersTo,
  type Questions,
  type Settlement,
} from '#lib/asking';
import { Defect, isKnown, type Problem } from '#lib/kernel';
import { assumed, type Figure } from '#lib/provenance';
import { mm } from '#lib/units';

/** What a taper is asked as; a room that knows the skin has a better default than this room. */
export const taperRatioAsked = {
  unit: '1',
  meaning: 'taper ratio, length to one of thickness',
  range: { from: 3, upTo: 100 },
} as const;

/** What the skin method is asked as; the same holds of its default. */
export const skinMethodAsked = {
  meaning: 'what becomes of the skin',
  description: 'Bond the lifted skin back, or laminate a new one.',
  choices: ['re-bed', 'relay'],
} as const;

/** How the deck is opened, as the caller may choose. */
export const openingMethodQuestions = {
  skin: askWhich({
    ...skinMethodAsked,
    otherwise: practice('relay', 'a new laminate gives the soundest skin'),
  }),
  access: askWhich({
    meaning: 'side from which the deck is opened',
    choices: ['from-above', 'from-below'],
    otherwise: practice(
      'from-above',
      'most decks are opened from above: the work is face down and the resin stays where it is put',
    ),
  }),
  cutMarginMm: ask({
    unit: 'mm',
    meaning: 'margin of the cut beyond the bad core',
    range: { from: 0, upTo: 500 },
    otherwise: {
      value: 75,
      because: 'a few inches past the sound boundary, 50 to 100 mm',
      cite: commonPractice,
    },
  }),
  flangeMm: ask({
    unit: 'mm',
    meaning: 'sound deck kept at every edge',
    range: { from: 0, upTo: 500 },
    otherwise: {
      value: 50,
      because: 'about 2 in of deck kept round a cut, so that the new laminate can tie in',
      cite: commonPractice,
    },
  }),
  taperRatio: ask({
    ...taperRatioAsked,
    otherwise: {
      value: 12,
      because: 'the usual figure for glass decks; in tests of 1:6, 1:12 and 1:20 the best of the three',
      cite: { source: 'ROTHBARTH-PINTO-2019' },
    },
  }),
};

/** Rules of the trade that the caller may set. */
export const openingRuleQuestions = {
  cornerRadiusMm: ask({
    unit: 'mm',
    meaning: 'radius of the corners of the cut',
    range: { from: 5, upTo: 300 },
    otherwise: { value: 40, because: 'rounded corners of 25 to 50 mm do not start cracks', cite: fromMemory },
  }),
  depthMarginMm: ask({
    unit: 'mm',
    meaning: 'depth of the saw past the skin',
    range: { from: 0, upTo: 10 },
    otherwise: {
      value: 2,
      because: 'the saw is set to the measured skin and 1 to 3 mm',
      cite: commonPractice,
    },
  }),
  innerSkinClearanceMm: ask({
    unit: 'mm',
    meaning: 'core left above the inner skin by the saw',
    range: { from: 1, upTo: 50 },
    otherwise: {
      value: 5,
      because: 'the saw stops well short of the skin behind the core',
      cite: commonPractice,
    },
  }),
  supportClearanceMm: ask({
    unit: 'mm',
    meaning: 'distance of a cut from a support it runs along',
    range: { from: 0, upTo: 500 },
    otherwise: {
      value: 100,
      because:
        'joints do not lie over a bulkhead edge, and joints of skin and core are staggered by 100 mm or more',
      cite: fromMemory,
    },
  }),
  undercutReachMm: ask({
    unit: 'mm',
    meaning: 'reach of reaming under skin that stays',
    range: { from: 0, upTo: 200 },
    otherwise: {
      value: 75,
      because: 'core is reamed out 25 to 75 mm under the sound lip with hooked tools',
      cite: commonPractice,
    },
  }),
  fittingReachMm: ask({
    unit: 'mm',
    meaning: 'distance within which fittings belong to the job',
    range: { from: 0, upTo: 2000 },
    otherwise: {
      value: 300,
      because: 'a fitting within about a foot of soft core is a likely cause and is re-bedded with it',
      cite: fromMemory,
    },
  }),
  cutHPerM: ask({
    unit: 'h/m',
    meaning: 'labour for a metre of cut: mark, saw, ream, taper, close',
    range: { from: 0, upTo: 50 },
    otherwise: {
      value: 1.45,
      because: 'cut 0.3, ream 0.3, taper 0.35, close the seam 0.5',
      cite: fromMemory,
    },
  }),
  openedHPerM2: ask({
    unit: 'h/m2',
    meaning: 'labour for a square metre of sound deck opened with the rest',
    range: { from: 0, upTo: 200 },
    otherwise: {
      value: 16,
      because: 'lift 4, core out 6, grind 1, fit core 1.3, bed 1.5, new skin 1.8; finishing is by the panel',
      cite: fromMemory,
    },
  }),
  openingH: ask({
    unit: 'h',
    meaning: 'labour for each opening whatever its size',
    range: { from: 0, upTo: 50 },
    otherwise: { value: 1, because: 'marking out, test holes, moving props and covers', cite: fromMemory },
  }),
  cornerH: ask({
    unit: 'h',
    meaning: 'labour for each corner of the cut',
    range: { from: 0, upTo: 5 },
    otherwise: { value: 0.05, because: 'drill or grind the round, set the saw in again', cite: fromMemory },
  }),
};

/** How large a skin may be that is bedded back; nobody has to say. */
export const bondableQuestions = {
  bondableAreaM2: ask({
    unit: 'm2',
    meaning: 'largest skin piece that can be bedded before the resin gels',
    range: { from: 0.02, upTo: 50 },
    otherwise: 'unknown',
  }),
  bondableLengthMm: ask({
    unit: 'mm',
    meaning: 'longest skin piece that can be bedded before the resin gels',
    range: { from: 150, upTo: 20_000 },
    otherwise: 'unknown',
  }),
};

const method = askPart({
  meaning: 'how the deck is opened',
  of: openingMethodQuestions,
  otherwise: 'defaults',
});

const questions = {
  method,
  rules: askPart({
    meaning: 'rules of the trade',
    of: { ...openingRuleQuestions, ...bondableQuestions },
    otherwise: 'defaults',
  }),
};

/** Those of them that are figures in any case. */
const figureQuestions = {
  method,
  rules: askPart({ meaning: 'rules of the trade', of: openingRuleQuestions, otherwise: 'defaults' }),
};

export type OpeningMethod = AnswersTo<typeof openingMethodQuestions>;
export type OpeningRules = AnswersTo<typeof openingRuleQuestions & typeof bondableQuestions>;

interface SaidOfOpening {
  readonly zones?: readonly { readonly boundary?: 'drawn' | 'mapped' }[];
  readonly method?: OpeningMethod;
  readonly rules?: OpeningRules;
}

type RuleName = 'cutMarginMm' | 'flangeMm' | 'taperRatio' | keyof typeof openingRuleQuestions;

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

export function rulesOf(request: SaidOfOpening): Rules {
  const { method: how, rules } = settled(request, questions);
  const usual = how.skin.value === 're-bed' ? usualBondable : undefined;
  const areaM2 = isKnown(rules.bondableAreaM2) ? rules.bondableAreaM2.value : usual?.areaM2;
  const lengthMm = isKnown(rules.bondableLengthMm) ? rules.bondableLengthMm.value : usual?.lengthMm;
  return {
    ...valuesOf(ruleFigures(request)),
    skin: how.skin.value,
    access: how.access.value,
    ...(areaM2 === undefined ? {} : { bondableAreaM2: areaM2 }),
    ...(lengthMm === undefined ? {} : { bondableLengthMm: lengthMm }),
  };
}

export function ruleFigures(request: SaidOfOpening): RuleFigures {
  const { method: how, rules } = settled(request, figureQuestions);
  const { flangeMm, taperRatio } = how;
  const cutMarginMm = isWithoutMargin(request) ? noMargin() : how.cutMarginMm;
  return { cutMarginMm, flangeMm, taperRatio, ...rules };
}

/** Every zone is a contour of the map, chosen with its doubt, and nobody asks for more. */
const isWithoutMargin = ({ method: how, zones = [] }: SaidOfOpening): boolean =>
  how?.cutMarginMm === undefined && zones.length > 0 && zones.every(({ boundary }) => boundary === 'mapped');

const noMargin = (): Figure<'mm'> =>
  assumed('mm', mm(0), openingMethodQuestions.cutMarginMm.meaning, {
    at: '/method/cutMarginMm',
    because: 'the cut was chosen from the map with its doubt; a margin beyond it costs more than it saves',
    cite: commonPractice,
  });

/** The bare numbers of named figures. */
function valuesOf<K extends string>(figures: Readonly<Record<K, Figure>>): Readonly<Record<K, number>> {
  const pairs = Object.entries<Figure>(figures).map(([name, { value }]): readonly unknown[] => [name, value]);
  return Object.fromEntries(pairs);
}

/** Every rule the caller set outside what a deck allows. */
export const ruleProblems = (request: SaidOfOpening): readonly Problem[] => {
  const found = settle(request, questions);
  return found.ok ? [] : found.problems;
};

function settled<Q extends Questions>(request: AnswersTo<Q>, asked: Q): Settlement<Q> {
  const found = settle(request, asked);
  if (found.ok) return found.value.value;
  throw new Defect('Rules of an opening were settled before their faults were looked for');
}

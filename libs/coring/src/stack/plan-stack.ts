import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { cavityAsked, faultsIn, numberFaults, within } from '#lib/asking';
import type { CoreSheet } from '#lib/catalogue';
import {
  assumptionsOf,
  assumed,
  computeChecked,
  derived,
  entered,
  fromCatalogue,
  type Figure,
} from '#lib/provenance';
import { fraction, kg, kgPerM3, l, m2, mm } from '#lib/units';
import { cambered, type CamberPlan } from './camber.js';
import { bondResin, coreMass, flushness, kerfVolume, stackHeight, waterLeaving } from './formulas.js';
import { densityOf, scoredForm } from './core-sheet.js';
import { bondLineCount, rankedChoices, thinLayers, type StackChoice } from './choices.js';
import type { StackRequest } from './request.js';
import { camberQuestions, oldCoreQuestions, ruleFigures, stackQuestions } from './rules.js';

export interface StackLayer {
  /** Thickness of the layer. */
  readonly thicknessMm: number;
  /** Plain sheet, or scored to follow a curve. */
  readonly form: 'plain' | 'scored';
}

/** Which sheets fill the cavity, how the new skin then sits, and what the deck gains or loses in mass. */
export interface StackPlan {
  /** New layers from the inner skin up. */
  readonly layers: readonly StackLayer[];
  /** Joints of one layer lie away from those of the other. */
  readonly joints: 'single-layer' | 'staggered';
  /** Thickness of the bond line under each layer. */
  readonly bondLine: Figure<'mm'>;
  /** Resin under plies laid wet on the core; 0 where the skin has a bed of its own. */
  readonly wetLine: Figure<'mm'>;
  /** Height of the new stack with its bond lines. */
  readonly height: Figure<'mm'>;
  /** Height of the new stack less the cavity: positive stands proud of the old deck, negative lies below it. */
  readonly flush: Figure<'mm'>;
  /** Whether the new stack comes out flush with the old core. */
  readonly check: StackCheck;
  /** All choices from the material's list, best first. */
  readonly choices: readonly StackChoice[];
  /** How the layers follow the camber of the deck; absent on a flat one. */
  readonly camber?: CamberPlan;
  /** Resin that fills the cuts of a scored sheet. */
  readonly kerfResin?: Figure<'l'>;
  /** Resin that beds the layers. */
  readonly bondResin: Figure<'l'>;
  /** Mass of the new core with its bond lines. */
  readonly newCoreMass: Figure<'kg'>;
  /** Mass of the core that comes out, dry. */
  readonly oldCoreMass: Figure<'kg'>;
  /** New core less old sound core, without resin. */
  readonly massChange: Figure<'kg'>;
  /** Only where somebody said how wet the old core is. */
  readonly waterLeaving?: Figure<'kg'>;
  /** What was taken about core and bond line. */
  readonly assumptions: readonly Figure[];
}

export interface StackCheck {
  /** Whether the height of the stack holds. */
  readonly verdict: 'holds' | 'fails';
  /** Whether the stack lies flush, stands proud or lies low. */
  readonly governs: 'flush' | 'proud' | 'low';
  /** How far beyond what is allowed; 0 when it holds. */
  readonly beyondMm: number;
  /** The verdict in a sentence. */
  readonly words: string;
  /** The next choice of sheets, were this one not to be had. */
  readonly nextBest?: StackChoice;
}

/** A panel of deck may be 200 m by 200 m, and nobody cores so much in one job. */
const MOST_AREA_M2 = 1000;

/**
 * Chooses stock thicknesses that fill the cavity: the new core and its bond lines at most its height, at least a millimetre less.
 * On a camber that the first choice does not follow, thinner sheets bedded one over the other before short pieces.
 */
export function planStack(request: StackRequest): Outcome<StackPlan> {
  const problems = stackProblems(request);
  if (problems.length > 0) return refusal(...problems);
  const closing = {
    rules: ruleFigures(request),
    ...(request.skin === undefined ? {} : { skin: request.skin }),
  };
  const { thicknessesMm } = request.core;
  const listed = rankedChoices(thicknessesMm, request.cavityMm, closing);
  const thin = thinLayers(thicknessesMm, request.cavityMm, closing);
  const wanted = listed.find(({ layersMm }) => layersMm.length === 1 && layersMm[0] === request.wantedMm);
  const first = wanted ?? (listed[0].fit === 'flush' ? listed[0] : (thin.at(0) ?? listed[0]));
  const choice = followingCamber(request, first, [...listed, ...thin]);
  return success(planned(request, choice, listed.includes(choice) ? listed : [choice, ...listed]));
}

/** The first flush stack whose thickest sheet lies or bends on the camber, where the one that was taken does neither. */
function followingCamber(
  request: StackRequest,
  taken: StackChoice,
  choices: readonly StackChoice[],
): StackChoice {
  const { camber } = request;
  if (camber === undefined) return taken;
  const follows = ({ layersMm }: StackChoice): boolean =>
    cambered(request, layersMm, camber).way !== 'shorter-pieces';
  if (follows(taken)) return taken;
  return choices.find((choice) => choice.fit === 'flush' && follows(choice)) ?? taken;
}

const stackProblems = ({
  cavityMm,
  areaM2,
  core,
  wantedMm,
  camber,
  rules = {},
  oldCore,
}: StackRequest): readonly Problem[] => [
  ...numberFaults('/cavityMm', cavityMm, within(cavityAsked)),
  ...numberFaults('/areaM2', areaM2, { from: 0, upTo: MOST_AREA_M2, unit: 'm2' }),
  ...(core.thicknessesMm.length === 0
    ? [problem('too-few', '/core/thicknessesMm', { count: 0, least: 1 })]
    : []),
  ...(wantedMm === undefined || core.thicknessesMm.includes(wantedMm)
    ? []
    : [problem('not-one-of', '/wantedMm', { value: wantedMm, choices: core.thicknessesMm.join(', ') })]),
  ...(camber === undefined ? [] : faultsIn(camber, camberQuestions, '/camber')),
  ...faultsIn(rules, stackQuestions, '/stackRules'),
  ...(oldCore === undefined ? [] : faultsIn(oldCore, oldCoreQuestions, '/oldCore')),
];

function planned(request: StackRequest, choice: StackChoice, choices: readonly StackChoice[]): StackPlan {
  const { core } = request;
  const heights = heightsOf(request, choice);
  const camber = request.camber && cambered(request, choice.layersMm, request.camber);
  const form = request.form ?? camber?.form ?? 'plain';
  const area = entered('m2', m2(request.areaM2), 'core to be laid', '/areaM2');
  const masses = massesOf(request, area, choice);
  const kerfResin = form === 'scored' ? kerfResinOf(core, area, choice.layersMm) : undefined;
  const bond = computeChecked(bondResin, {
    areaM2: area,
    bondLineMm: heights.bondLine,
    bondLineCount: heights.count,
  });
  const figures = [
    heights.flush,
    ...Object.values(ruleFigures(request)),
    bond,
    ...Object.values(masses),
    ...(camber?.figures ?? []),
  ];
  return {
    layers: choice.layersMm.map((thicknessMm) => ({ thicknessMm, form })),
    joints: choice.layersMm.length > 1 ? 'staggered' : 'single-layer',
    bondLine: heights.bondLine,
    wetLine: heights.wetLine,
    height: heights.height,
    flush: heights.flush,
    check: checkOf(choice, choices),
    choices,
    ...(camber === undefined ? {} : { camber: withThinLayers(request, choice, camber) }),
    ...(kerfResin === undefined ? {} : { kerfResin }),
    bondResin: bond,
    ...masses,
    assumptions: onceEach(figures.flatMap((figure) => (figure === undefined ? [] : assumptionsOf(figure)))),
  };
}

/** Says why there are several layers where one sheet would have filled the cavity. */
function withThinLayers(request: StackRequest, { layersMm }: StackChoice, camber: CamberPlan): CamberPlan {
  if (request.camber === undefined || layersMm.length === 1 || camber.way === 'shorter-pieces') return camber;
  const inOne = [sum(layersMm)];
  const asOne = cambered(request, inOne, request.camber);
  return asOne.way === 'shorter-pieces'
    ? {
        ...camber,
        words: `${camber.words}; in ${layersMm.length} layers with joints staggered, because ${asOne.words.split(':')[0]}`,
      }
    : camber;
}

const onceEach = (figures: readonly Figure[]): readonly Figure[] => [
  ...new Map(
    figures.map((figure) => [figure.origin.kind === 'assumed' ? figure.origin.at : '', figure]),
  ).values(),
];

function heightsOf(request: StackRequest, { layersMm, bondLineMm }: StackChoice) {
  const rules = ruleFigures(request);
  const coreMm = derived('mm', mm(sum(layersMm)), 'new core, all layers', {
    formula: 'coring.choice',
    title: "Layers from the material's list",
    symbol: 't',
    cite: { source: 'ARITHMETIC' },
    inputs: Object.fromEntries(
      layersMm.map((thickness, k) => [`layer${k + 1}`, stockThickness(request.core, thickness)]),
    ),
  });
  const bondLine = derived('mm', mm(bondLineMm), 'bond line, each', {
    formula: 'coring.bond-line',
    title: 'Nearest to the usual that brings the skin flush',
    symbol: 'b',
    cite: { source: 'ARITHMETIC' },
    inputs: { ...rules },
  });
  const isWet = request.skin === 'relay';
  const count = derived('1', fraction(bondLineCount(layersMm, request.skin)), 'bond lines of paste', {
    formula: 'coring.bond-count',
    title: isWet ? 'One under each layer' : 'Layers and one',
    symbol: 'n',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });
  const wetLineMm = isWet ? rules.wetLineMm : noWetLine;
  const height = computeChecked(stackHeight, {
    coreMm,
    bondLineMm: bondLine,
    bondLineCount: count,
    wetLineMm,
  });
  const cavityMm = entered('mm', mm(request.cavityMm), 'height of the cavity', '/cavityMm');
  return {
    bondLine,
    count,
    height,
    wetLine: wetLineMm,
    flush: computeChecked(flushness, { stackMm: height, cavityMm }),
  };
}

const noWetLine: Figure<'mm'> = derived('mm', mm(0), 'no plies laid wet on the core', {
  formula: 'coring.no-wet-line',
  title: 'The skin has a bed of its own',
  symbol: 'w',
  cite: { source: 'ARITHMETIC' },
  inputs: {},
});

const stockThickness = (core: CoreSheet, thicknessMm: number): Figure<'mm'> =>
  fromCatalogue('mm', mm(thicknessMm), 'stock thickness', {
    item: core.code,
    field: 'thicknessesMm',
    cite: { source: 'COMMON-PRACTICE' },
  });

function massesOf(request: StackRequest, area: Figure<'m2'>, { layersMm }: StackChoice) {
  const newCoreMass = computeChecked(coreMass, {
    areaM2: area,
    thicknessMm: lengthFigure(sum(layersMm), 'new core'),
    densityKgPerM3: densityOf(request.core),
  });
  const density = oldDensity(request);
  const thicknessMm = entered('mm', mm(request.cavityMm), 'old core', '/cavityMm');
  const oldCoreMass = computeChecked(coreMass, { areaM2: area, thicknessMm, densityKgPerM3: density });
  const massChange = derived(
    'kg',
    kg(newCoreMass.value - oldCoreMass.value),
    'mass that the deck gains in core',
    {
      formula: 'coring.mass-change',
      title: 'New core less old core',
      symbol: 'Δm',
      cite: { source: 'ARITHMETIC' },
      inputs: { newCoreMass, oldCoreMass },
    },
  );
  const moisture = request.oldCore?.moistureFraction;
  if (moisture === undefined) return { newCoreMass, oldCoreMass, massChange };
  const water = computeChecked(waterLeaving, {
    areaM2: area,
    thicknessMm,
    dryDensityKgPerM3: density,
    moistureFraction: entered(
      '1',
      fraction(moisture),
      'moisture of the old core',
      '/oldCore/moistureFraction',
    ),
    soundMoistureFraction: assumed('1', fraction(0.12), 'moisture of sound core', {
      at: '/oldCore/soundMoistureFraction',
      because: 'new balsa and plywood come at 10 to 12 %',
      cite: { source: 'COMMON-PRACTICE' },
      low: 0.1,
      high: 0.12,
    }),
  });
  return { newCoreMass, oldCoreMass, massChange, waterLeaving: water };
}

function oldDensity({ oldCore, core }: StackRequest): Figure<'kg/m3'> {
  if (oldCore?.densityKgPerM3 !== undefined)
    return entered(
      'kg/m3',
      kgPerM3(oldCore.densityKgPerM3),
      'density of the old core',
      '/oldCore/densityKgPerM3',
    );
  return assumed('kg/m3', kgPerM3(core.densityKgPerM3.value), 'density of the old core', {
    at: '/oldCore/densityKgPerM3',
    because: 'taken like the new core for want of anything better',
    cite: core.densityKgPerM3.cite,
    low: 60,
    high: 650,
  });
}

const lengthFigure = (value: number, meaning: string): Figure<'mm'> =>
  derived('mm', mm(value), meaning, {
    formula: 'coring.choice',
    title: "Layers from the material's list",
    symbol: 't',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

/** Kerfs of all layers; nothing when the material says nothing about its kerfs. */
function kerfResinOf(
  core: CoreSheet,
  area: Figure<'m2'>,
  layersMm: readonly number[],
): Figure<'l'> | undefined {
  const { scoreSpacingMm, scoreWidthMm, scoreDepthFraction } = scoredForm(core) ?? {};
  if (scoreSpacingMm === undefined || scoreWidthMm === undefined || scoreDepthFraction === undefined)
    return undefined;
  const catalogue = (value: number, meaning: string): Figure<'mm'> =>
    fromCatalogue('mm', mm(value), meaning, {
      item: core.code,
      field: 'forms',
      cite: { source: 'COMMON-PRACTICE' },
    });
  const parts = layersMm.map((thickness) =>
    computeChecked(kerfVolume, {
      areaM2: area,
      spacingMm: catalogue(scoreSpacingMm, 'side of the squares'),
      kerfMm: catalogue(scoreWidthMm, 'width of a kerf'),
      depthMm: catalogue(thickness * scoreDepthFraction, 'depth of a kerf'),
    }),
  );
  return derived('l', l(sum(parts.map(({ value }) => value))), 'resin in the kerfs', {
    formula: 'arithmetic.sum',
    title: 'Sum of parts',
    symbol: 'Σ',
    cite: { source: 'ARITHMETIC' },
    inputs: Object.fromEntries(parts.map((part, k) => [`layer${k + 1}`, part])),
  });
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function checkOf(choice: StackChoice, choices: readonly StackChoice[]): StackCheck {
  const nextBest =
    choices.find(
      (other) => other !== choice && (other.fit === 'flush' || other.beyondMm < choice.beyondMm),
    ) ?? choices.find((other) => other !== choice);
  return {
    verdict: choice.fit === 'flush' ? 'holds' : 'fails',
    governs: choice.fit,
    beyondMm: choice.beyondMm,
    words:
      choice.fit === 'flush'
        ? choice.words
        : `${choice.words}${nextBest === undefined ? '' : `; next best: ${nextBest.words}`}`,
    ...(nextBest === undefined ? {} : { nextBest }),
  };
}

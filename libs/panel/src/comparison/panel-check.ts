import {
  andThen,
  pointer,
  problem,
  refusal,
  success,
  unlessProblems,
  type Outcome,
  laidOver,
} from '#lib/kernel';
import { answeredIn, assumptionFrom, practice, type Assumption, type Default } from '#lib/asking';
import { assumptionsOf, type Assumed, type Figure } from '#lib/provenance';
import { inWords, type PanelCheckItem, type ReasonedCheck } from './check.js';
import {
  besideBuilt,
  edgesOf,
  ratiosOf,
  reasonedChecks,
  shortByMoreThanHands,
  withinHandsOf,
  type Ratio,
  type ReasonedRatio,
} from './restoration.js';
import { criteriaOf, type ResolvedCriteria } from './criteria.js';
import { fittingChecks, isHighlyLoaded } from './fitting-checks.js';
import { largeDeflection } from '../plate/large-deflection.js';
import { loadsOf, type ResolvedLoad } from './loads.js';
import { openSkinAnswer, type OpenSkinAnswer } from '../plate/open-skin.js';
import { faultsOfRequest } from './panel-faults.js';
import {
  openedPanelQuestions,
  panelSizeQuestions,
  personLoadQuestions,
  type PanelCheckRequest,
} from './panel-request.js';
import type { Rectangle, RectangularLoad } from '../plate/plate.js';
import { keptPlates, type PlateSource } from '../plate/kept-plates.js';
import type { PlateModel } from '../plate/plate-answer.js';
import { membraneStiffness } from '../plate/sandwich-section.js';
import {
  analyseInnerSkin,
  analyseSandwich,
  figuresOf,
  stateAsFound,
  type AnalysedState,
  type Setting,
  type Working,
} from './state-analysis.js';
import type { StateName } from '../plate/states.js';

/** The four states of one panel under the same loads. A comparison, never a design approval. */
export interface PanelAnswer {
  /** Whether the repair restores what the deck had. */
  readonly verdict: 'restored' | 'not-restored';
  /** Every ratio that is below 1 by more than hands repeat, worst first. */
  readonly shortfalls: readonly string[];
  /** What is short by less, in a sentence. */
  readonly withinHands: readonly string[];
  /** The deck in each state: as built, found, opened, repaired. */
  readonly states: readonly StateAnswer[];
  /** As built over repaired: at least 1 means that the repair gives back what there was. */
  readonly ratios: readonly Ratio[];
  /** What the open deck may carry meanwhile. */
  readonly opened: OpenSkinAnswer;
  /** Checks of the fittings. */
  readonly fittings: readonly PanelCheckItem[];
  /** Loads that the states were compared under. */
  readonly loads: readonly LoadResult[];
  /** Cautions about standing and working on the deck. */
  readonly cautions: readonly PanelCaution[];
  /** Figures of the comparison that nobody stated. */
  readonly assumptions: readonly Assumption[];
  /** What the comparison does not say. */
  readonly limits: readonly string[];
  /** Greatest estimated relative error of the series and polynomials. */
  readonly truncation: number;
  /** Derivations of the keys asked for in `explain`. */
  readonly explained?: Readonly<Record<string, Figure>>;
}

/** A check that carries its utilisation with everything that came from. */
export type ExplainedCheck = PanelCheckItem & { readonly why?: Figure };

export interface StateResult extends StateAnswer {
  readonly checks: readonly ExplainedCheck[];
}

/** The comparison with every derivation, for a document that keeps them. */
export interface PanelCheck extends PanelAnswer {
  readonly states: readonly StateResult[];
  readonly fittings: readonly ExplainedCheck[];
  /** By the key of each check, ratio and load. */
  readonly derivations: Readonly<Record<string, Figure>>;
}

export interface LoadResult {
  /** Name that responses and checks know the load by. */
  readonly key: string;
  /** Kind of load. */
  readonly code: string;
  /** Name of the load. */
  readonly title: string;
  /** Pressure of the load where it acts. */
  readonly pressureKPa: number;
}

export interface StateAnswer {
  /** Which state of the deck. */
  readonly state: StateName;
  /** Stiffness of a cut through the deck in this state. */
  readonly section: SectionResult;
  /** How the deck answers each load in this state. */
  readonly responses: readonly Response[];
  /** Requirements in this state. */
  readonly checks: readonly PanelCheckItem[];
  /** Greatest utilisation and where it is. */
  readonly governing?: {
    /** Check that is nearest to its limit. */
    readonly code: string;
    /** Load under which it is. */
    readonly load?: string;
    /** Demand over capacity of that check. */
    readonly utilisation: number;
  };
}

export interface SectionResult {
  /** Bending stiffness fore and aft, per mm of width. */
  readonly bendingXNmm: number;
  /** Bending stiffness athwart, per mm of width. */
  readonly bendingYNmm: number;
  /** Shear stiffness, per mm of width. */
  readonly shearNPerMm: number;
  /** Stretching stiffness of both skins fore and aft. */
  readonly membraneXNPerMm: number;
  /** Stretching stiffness of both skins athwart. */
  readonly membraneYNPerMm: number;
  /** Distance between the mid-planes of the skins. */
  readonly leverMm: number;
  /** How far the thin-skin engineering form is from the exact section. */
  readonly thinSkinError: number;
  /** Whether the skins are thin enough for the theory of thin skins. */
  readonly isThinSkinFair: boolean;
}

export interface Response {
  /** Load that acts. */
  readonly load: string;
  /** How deflection and moments were worked out. */
  readonly working: Working;
  /** With the pull of a sagging skin between held edges, where the inner skin is alone and slack. */
  readonly deflectionMm: number;
  /** By plate bending alone. */
  readonly linearDeflectionMm: number;
  /** Where the deck sags most, [xMm, yMm]. */
  readonly deflectionAt: readonly [number, number];
  /** Greatest moment fore and aft, per mm of width. */
  readonly greatestMomentXN: number;
  /** Greatest moment athwart, per mm of width. */
  readonly greatestMomentYN: number;
  /** Greatest shear force, per mm of width. */
  readonly greatestShearNPerMm: number;
}

export interface PanelCaution {
  /** Code of the caution. */
  readonly code: string;
  /** How bad it can become. */
  readonly severity: 'danger' | 'warning' | 'caution';
  /** What to beware of. */
  readonly text: string;
  /** Which fact calls for the caution. */
  readonly because: string;
  /** Where the caution comes from. */
  readonly source: string;
}

/** Compares the panel as built, as found, opened and repaired, or says everything that stands in the way. */
export function panelCheck(request: PanelCheckRequest, plates = keptPlates()): Outcome<PanelCheck> {
  const faults = faultsOfRequest(request);
  return faults.length > 0 ? refusal(...faults) : success(checked(request, plates));
}

/** The same without the derivations, which are long, but for those asked for in `explain`. */
export const panelAnswer = (request: PanelCheckRequest): Outcome<PanelAnswer> =>
  andThen(panelCheck(request), ({ derivations, ...check }) => {
    const plain = {
      ...check,
      states: check.states.map((state) => ({ ...state, checks: state.checks.map(withoutWhy) })),
      fittings: check.fittings.map(withoutWhy),
    };
    return explainedAnswer(plain, derivations, request.explain ?? []);
  });

function withoutWhy(check: ExplainedCheck): PanelCheckItem {
  const { why, ...item } = check;
  return why === undefined ? check : item;
}

function explainedAnswer(
  answer: PanelAnswer,
  derivations: PanelCheck['derivations'],
  keys: readonly string[],
): Outcome<PanelAnswer> {
  if (keys.length === 0) return success(answer);
  const unknown = keys.flatMap((key, at) =>
    Object.hasOwn(derivations, key)
      ? []
      : [
          problem('not-supported', pointer('/explain', at), {
            why: `this answer has nothing of the key ${key}; explained are its own checks, ratios and loads, such as repaired:person:core-shear`,
          }),
        ],
  );
  return unlessProblems(unknown, () => ({
    ...answer,
    explained: Object.fromEntries(keys.map((key) => [key, derivations[key]])),
  }));
}

function checked(request: PanelCheckRequest, plates: PlateSource): PanelCheck {
  const criteria = criteriaOf(request.criteria ?? {});
  const loads = loadsOf(request);
  const states = analysed(request, loads, plates);
  const [built, ...others] = states.map((state) => reasonedChecks(state, request, { loads, criteria }));
  const reasoned = [
    built,
    ...others.map((checks, at) => (states[at + 1].name === 'repaired' ? besideBuilt(built, checks) : checks)),
  ];
  const ratios = ratiosOf(reasoned[0], reasoned[reasoned.length - 1]);
  const compared = ratios.map(({ ratio }) => ratio);
  const shortfalls = shortByMoreThanHands(compared);
  const fittings = (request.fittings ?? []).flatMap((fitting, at) =>
    fittingChecks(fitting, `/fittings/${at}`, request.repaired, criteria),
  );
  const opened = openedOf(request, criteria, readySkin(request, states));
  const truncation = Math.max(
    ...states.flatMap(({ loaded }) => loaded.map(({ answer }) => answer.truncation)),
  );
  const all = [...reasoned.flat(), ...fittings];
  return {
    verdict: shortfalls.length === 0 ? 'restored' : 'not-restored',
    shortfalls,
    withinHands: withinHandsOf(compared),
    states: states.map((state, at) => resultOf(state, reasoned[at].map(explained))),
    ratios: ratios.map(({ ratio }) => ratio),
    opened,
    fittings: fittings.map(explained),
    loads: loads.map(({ code, title, pressure }) => ({
      key: `load:${code}`,
      code,
      title,
      pressureKPa: pressure.value,
    })),
    cautions: [...cautionsOf(request, opened), ...unsettledCaution(truncation)],
    assumptions: assumptionsFrom(request, all),
    limits,
    truncation,
    derivations: derivationsOf(all, ratios, loads),
  };
}

const explained = ({ item, why }: ReasonedCheck): ExplainedCheck =>
  why === undefined ? item : laidOver(item, { why });

function derivationsOf(
  checks: readonly ReasonedCheck[],
  ratios: readonly ReasonedRatio[],
  loads: readonly ResolvedLoad[],
): PanelCheck['derivations'] {
  return Object.fromEntries([
    ...checks.flatMap(({ item, why }) => (why === undefined ? [] : [[item.key, why] as const])),
    ...ratios.map(({ ratio, why }) => [ratio.key, why] as const),
    ...loads.map(({ code, pressure }) => [`load:${code}`, pressure] as const),
  ]);
}

function analysed(
  request: PanelCheckRequest,
  loads: readonly ResolvedLoad[],
  plates: PlateSource,
): readonly AnalysedState[] {
  const setting = { size: request.panel, edges: edgesOf(request.panel), loads, plates };
  const found = stateAsFound(request);
  const builtFigures = figuresOf(request.asBuilt, '/asBuilt');
  return [
    analyseSandwich('as-built', request.asBuilt, setting, builtFigures),
    analyseSandwich('as-found', found.values, setting, found.figures),
    analyseInnerSkin(request.asBuilt, openedSetting(request, setting), builtFigures),
    analyseSandwich('repaired', request.repaired, setting, figuresOf(request.repaired, '/repaired')),
  ];
}

/** The opening where its size was given, with pressures all over it and a person at its middle; otherwise the whole panel. */
function openedSetting({ opened = {}, panel }: PanelCheckRequest, setting: Setting): Setting {
  if (opened.lengthXMm === undefined && opened.widthYMm === undefined && opened.edges === undefined)
    return setting;
  const size = {
    lengthXMm: opened.lengthXMm ?? panel.lengthXMm,
    widthYMm: opened.widthYMm ?? panel.widthYMm,
  };
  const edge = opened.edges ?? openedPanelQuestions.edges.otherwise.value;
  const loads = setting.loads.map((load) => ({ ...load, rectangle: movedInto(load.rectangle, panel, size) }));
  return { ...setting, size, edges: { xStart: edge, xEnd: edge, yStart: edge, yEnd: edge }, loads };
}

function movedInto(load: RectangularLoad, panel: Rectangle, opening: Rectangle): RectangularLoad {
  const along = Math.min(
    load.x2Mm - load.x1Mm >= panel.lengthXMm ? opening.lengthXMm : load.x2Mm - load.x1Mm,
    opening.lengthXMm,
  );
  const across = Math.min(
    load.y2Mm - load.y1Mm >= panel.widthYMm ? opening.widthYMm : load.y2Mm - load.y1Mm,
    opening.widthYMm,
  );
  return {
    pressureMPa: load.pressureMPa,
    x1Mm: (opening.lengthXMm - along) / 2,
    x2Mm: (opening.lengthXMm + along) / 2,
    y1Mm: (opening.widthYMm - across) / 2,
    y2Mm: (opening.widthYMm + across) / 2,
  };
}

function resultOf(state: AnalysedState, checks: readonly ExplainedCheck[]): StateResult {
  const governing = governingOf(checks);
  return {
    state: state.name,
    section: sectionOf(state),
    responses: state.loaded.map((loaded) => responseOf(state, loaded)),
    checks,
    ...(governing === undefined ? {} : { governing }),
  };
}

function sectionOf({ name, values, section, loaded }: AnalysedState): SectionResult {
  const { stiffness } = name === 'opened' ? loaded[0] : section;
  const alone = values.inner.thicknessMm;
  const membrane =
    name === 'opened'
      ? { xNPerMm: values.inner.modulusXMPa * alone, yNPerMm: values.inner.modulusYMPa * alone }
      : membraneStiffness(values);
  return {
    bendingXNmm: stiffness.d11,
    bendingYNmm: stiffness.d22,
    shearNPerMm: stiffness.sx,
    membraneXNPerMm: membrane.xNPerMm,
    membraneYNPerMm: membrane.yNPerMm,
    leverMm: name === 'opened' ? 0 : section.leverMm,
    thinSkinError: section.thinSkinError,
    isThinSkinFair: section.isThinSkinFair,
  };
}

function responseOf(
  { values, size }: AnalysedState,
  { load, working, answer }: AnalysedState['loaded'][number],
): Response {
  const greatest = (pick: (fields: (typeof answer.spots)[number]['fields']) => number): number =>
    Math.max(...answer.spots.map(({ fields }) => Math.abs(pick(fields))));
  return {
    load: load.code,
    working,
    linearDeflectionMm: answer.deflectionMm,
    deflectionMm:
      working === 'inner-skin-alone'
        ? largeDeflection(values.inner, size, answer.deflectionMm).deflectionMm
        : answer.deflectionMm,
    deflectionAt: [answer.deflectionAt.xMm, answer.deflectionAt.yMm],
    greatestMomentXN: greatest(({ mx }) => mx),
    greatestMomentYN: greatest(({ my }) => my),
    greatestShearNPerMm: greatest(({ qx, qy }) => Math.hypot(qx, qy)),
  };
}

function governingOf(checks: readonly PanelCheckItem[]): StateResult['governing'] {
  return checks.reduce<StateResult['governing']>(
    (worst, { code, load, utilisation }) =>
      utilisation === undefined || utilisation <= (worst?.utilisation ?? 0)
        ? worst
        : { code, utilisation, ...(load === undefined ? {} : { load }) },
    undefined,
  );
}

const PERCENT = 100;

/** The opened state's plate serves for the clamp load too where both take the same edges. */
function readySkin(
  { opened = {}, panel }: PanelCheckRequest,
  states: readonly AnalysedState[],
): PlateModel | undefined {
  const takesPanelEdges =
    opened.lengthXMm === undefined && opened.widthYMm === undefined && opened.edges === undefined;
  const isSupported = Object.values(edgesOf(panel)).every((edge) => edge === 'simply-supported');
  return takesPanelEdges && !isSupported
    ? undefined
    : states.find(({ name }) => name === 'opened')?.skinModel;
}

function openedOf(
  { opened = {}, panel, asBuilt }: PanelCheckRequest,
  criteria: ResolvedCriteria,
  ready: PlateModel | undefined,
): OpenSkinAnswer {
  return openSkinAnswer(
    {
      skin: asBuilt.inner,
      lengthXMm: opened.lengthXMm ?? panel.lengthXMm,
      widthYMm: opened.widthYMm ?? panel.widthYMm,
      edges: opened.edges ?? openedPanelQuestions.edges.otherwise.value,
      clampPressureKPa: opened.clampPressureKPa ?? openedPanelQuestions.clampPressureKPa.otherwise.value,
      allowedSagMm: opened.allowedSagMm ?? openedPanelQuestions.allowedSagMm.otherwise.value,
      personN: personLoadQuestions.forceN.otherwise.value,
      heelRadiusMm: personLoadQuestions.heelRadiusMm.otherwise.value,
      skinShare: criteria.skinShare.value,
    },
    ready,
  );
}

/** Defaults that no figure carries, then every assumed leaf below the checks, each once. */
function assumptionsFrom(
  request: PanelCheckRequest,
  checks: readonly ReasonedCheck[],
): readonly Assumption[] {
  const found = new Map<string, Assumption>(takenWithoutFigure(request).map((taken) => [taken.at, taken]));
  for (const figure of checks.flatMap(({ why }) => (why === undefined ? [] : assumptionsOf(why))))
    noteAssumed(found, figure);
  return [...found.values()];
}

function takenWithoutFigure({ opened = {}, panel }: PanelCheckRequest): readonly Assumption[] {
  const { edges, clampPressureKPa, allowedSagMm } = openedPanelQuestions;
  const ofPanel = panelSizeQuestions.edges;
  const isSized = opened.lengthXMm !== undefined && opened.widthYMm !== undefined;
  return [
    ...(panel.edges !== undefined || panel.eachEdge !== undefined
      ? []
      : [{ at: '/panel/edges', meaning: ofPanel.meaning, ...inAWord(ofPanel.otherwise) }]),
    ...(isSized
      ? []
      : [
          {
            at: '/opened',
            meaning: 'size of the opening',
            ...inAWord(practice('the whole panel', 'the largest it can be')),
          },
        ]),
    ...(opened.edges !== undefined
      ? []
      : [{ at: '/opened/edges', meaning: edges.meaning, ...inAWord(edges.otherwise) }]),
    ...assumptionFrom(answeredIn(clampPressureKPa, opened.clampPressureKPa, '/opened/clampPressureKPa')),
    ...assumptionFrom(answeredIn(allowedSagMm, opened.allowedSagMm, '/opened/allowedSagMm')),
  ];
}

const inAWord = ({ value, because, cite }: Default<string>) => ({ value, because, source: cite.source });

function noteAssumed(found: Map<string, Assumption>, { origin, meaning, value, unit }: Figure): void {
  if (origin.kind !== 'assumed') return;
  const key = `${origin.at} ${meaning}`;
  if (!found.has(key))
    found.set(key, {
      at: origin.at,
      meaning,
      value: withUnit(value, unit, origin),
      because: origin.because,
      source: origin.cite.source,
    });
}

const withUnit = (value: number, unit: string, { low, high }: Assumed): string => {
  const spread = low === undefined || high === undefined ? '' : ` (${inWords(low)} to ${inWords(high)})`;
  return `${inWords(value)}${unit === '1' ? '' : ` ${unit}`}${spread}`;
};

function cautionsOf({ fittings = [] }: PanelCheckRequest, opened: OpenSkinAnswer): readonly PanelCaution[] {
  const heavy = fittings.filter(isHighlyLoaded);
  return [
    {
      code: 'comparison-only',
      severity: 'caution',
      text: 'This compares a repair with the deck it replaces. It is no design approval and no statement that a standard is met; local rules and licensed or qualified people decide.',
      because: 'yardsticks were read second-hand and material values are defaults',
      source: 'COMMON-PRACTICE',
    },
    ...heavy.map(({ id }): PanelCaution => ({
      code: 'highly-loaded-fitting',
      severity: 'danger',
      text: `${id} is a highly loaded fitting: its structure, backing and laminate are for a naval architect or a qualified surveyor.`,
      because: 'its loads are not those of a walked-on deck',
      source: 'COMMON-PRACTICE',
    })),
    ...openSkinCaution(opened),
  ];
}

/** One caution, however much there is to say: a reader skips what stands there three times. */
const openSkinCaution = ({ advice }: OpenSkinAnswer): readonly PanelCaution[] =>
  advice.length === 0
    ? []
    : [
        {
          code: 'open-inner-skin',
          severity: 'warning',
          text: advice.join(' '),
          because: 'the inner skin alone is thin',
          source: 'COMMON-PRACTICE',
        },
      ];

const UNSETTLED = 0.01;

/** Polynomials of a clamped panel more than four times as long as wide no longer settle. */
const unsettledCaution = (truncation: number): readonly PanelCaution[] =>
  truncation <= UNSETTLED
    ? []
    : [
        {
          code: 'unsettled',
          severity: 'caution',
          text: `The figures have settled to ${inWords(truncation * PERCENT)} % only: the panel is very long for its width. Its middle hardly feels its short ends: check it again four times as long as wide.`,
          because: 'clamped edges are answered by polynomials',
          source: 'PANEL-DERIVED',
        },
      ];

const limits: readonly string[] = [
  'The panel is a flat rectangle on four edges that do not sink; camber, hatches and uneven supports are left out.',
  'Small deflections and elastic layers; fatigue, impact, moisture, heat and buckling of the whole panel under in-plane load are left out.',
  'Stresses are direct stresses in x and y; twisting at the corners is left out.',
];

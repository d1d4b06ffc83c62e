import {
  ask,
  askCode,
  askEach,
  askFor,
  askList,
  askPart,
  askWhether,
  askWhich,
  type AnswersTo,
  practice,
} from '#lib/asking';
import { readOutline, type Point } from '#lib/geometry';
import type { Problem } from '#lib/kernel';
import { plyMethodNames } from '../ply/ply-method.js';
import { standards } from '../standards.js';
import { layingOrders } from '../taper/laying.js';

export const MOST_FABRICS = 40;
/** More are not searched: beyond it a skin is laid in several repairs. */
export const MOST_PLIES = 12;

const turn = { unit: 'degrees', meaning: 'direction of the roll', range: { from: -360, upTo: 360 } } as const;

/** Below a tenth it is resin, and above four fifths no resin wets it; each method holds in a range of its own within. */
const fibreMassFraction = {
  unit: '1',
  meaning: 'fibre mass fraction',
  range: { from: 0.1, upTo: 0.8 },
  otherwise: 'unknown',
} as const;

const cornersFaults = (outline: readonly Point[], at: string): readonly Problem[] => {
  const read = readOutline(outline, at);
  return read.ok ? [] : read.problems;
};

export const namedPlyQuestions = {
  material: askCode({
    meaning: 'reinforcement',
    description: 'Code of a reinforcement in the catalogue.',
    example: 'reinforcement-cloth-335',
  }),
  turnDeg: ask({
    ...turn,
    description: 'Roll direction from forward.',
    otherwise: practice(0, 'fabric is rolled out along the boat'),
  }),
  fibreMassFraction: ask({
    ...fibreMassFraction,
    description: 'Fibre mass fraction; absent: hand lay-up by the catalogue.',
  }),
};

export const namedFabricQuestions = {
  material: askCode({
    meaning: 'reinforcement',
    description: 'Code of a reinforcement in the catalogue.',
    example: 'reinforcement-woven-roving-600',
  }),
  pricePerM2: ask({
    meaning: 'price of a square metre laid',
    note: 'Fabric with its resin per m2 of ply, in one currency for all: it ranks and is never billed. Give it for every fabric or for none.',
    unit: '1',
    range: { from: 0, upTo: 10_000_000 },
    otherwise: 'unknown',
  }),
  turnsDeg: askEach({
    meaning: 'directions it may be laid in',
    description:
      'Roll directions it may be laid in, degrees from forward; absent: 0, and 0 and 90 for unidirectional.',
    least: 1,
    most: 6,
    of: ask(turn),
    otherwise: 'unknown',
  }),
  fibreMassFraction: ask(fibreMassFraction),
};

export const oldSkinQuestions = {
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Measured thickness of the old skin.',
    unit: 'mm',
    range: { above: 0, upTo: 60 },
    example: 3,
  }),
  plies: askList({
    meaning: 'plies',
    description:
      'Its plies from the core outwards; absent: guessed from the thickness, with the spread stated.',
    of: namedPlyQuestions,
    least: 1,
    most: 60,
    otherwise: 'unknown',
  }),
  resin: askCode({
    meaning: 'resin',
    description: 'Code of its resin.',
    otherwise: practice('polyester', 'nearly all moulded decks are'),
  }),
};

export const coreLayerQuestions = {
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Thickness of the core between the skins.',
    unit: 'mm',
    range: { above: 0, upTo: 200 },
  }),
  youngMPa: ask({
    meaning: 'modulus in the plane',
    description: 'Modulus in the plane of the panel.',
    unit: 'MPa',
    range: { from: 0, upTo: 50_000 },
  }),
};

export const otherSkinQuestions = {
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Thickness of the skin on the other side of the core.',
    unit: 'mm',
    range: { above: 0, upTo: 60 },
  }),
  alongNPerMm: ask({
    meaning: 'stiffness along',
    description: 'Extensional stiffness along (modulus times thickness).',
    unit: 'N/mm',
    range: { above: 0, upTo: 10_000_000 },
  }),
  acrossNPerMm: ask({
    meaning: 'stiffness across',
    description: 'Membrane stiffness of the skin that stays, athwart.',
    unit: 'N/mm',
    range: { above: 0, upTo: 10_000_000 },
  }),
};

export const panelBelowQuestions = {
  core: askPart({
    meaning: 'core',
    description: 'The core as it was.',
    of: coreLayerQuestions,
  }),
  newCore: askPart({
    meaning: 'new core',
    description: 'The core that goes in; absent: as the old.',
    of: coreLayerQuestions,
    otherwise: 'unknown',
  }),
  otherSkin: askPart({
    meaning: 'other skin',
    note: 'The skin that stays.',
    of: otherSkinQuestions,
  }),
};

export const flushQuestions = {
  proudUpToMm: ask({
    meaning: 'how far it may stand proud',
    unit: 'mm',
    range: { from: 0, upTo: 20 },
  }),
  lowUpToMm: ask({
    meaning: 'how far it may lie low',
    unit: 'mm',
    range: { from: 0, upTo: 20 },
  }),
};

export const scheduleLimitsQuestions = {
  mostPlies: ask({
    meaning: 'most plies',
    description: 'Most plies that a schedule may have.',
    unit: '1',
    range: { from: 1, upTo: MOST_PLIES },
    isWhole: true,
    otherwise: 'unknown',
  }),
  mostKinds: ask({
    meaning: standards.mostKinds.meaning,
    unit: '1',
    range: { from: 1, upTo: 12 },
    isWhole: true,
    otherwise: standards.mostKinds,
  }),
  taperRatio: ask({
    meaning: 'taper ratio',
    description:
      'Taper width over skin thickness; absent: 12, and on thin skins as much as makes it 20 mm wide.',
    unit: '1',
    range: { from: 1, upTo: 100 },
    otherwise: 'unknown',
  }),
  smallestStepMm: ask({
    meaning: standards.smallestStepMm.meaning,
    unit: 'mm',
    range: { above: 0, upTo: 100 },
    otherwise: standards.smallestStepMm,
  }),
  worstPrintThrough: ask({
    meaning: standards.worstPrintThrough.meaning,
    description: 'How much the outer ply may print through, 0 to 3.',
    unit: '1',
    range: { from: 0, upTo: 3 },
    otherwise: standards.worstPrintThrough,
  }),
};

export const layOutQuestions = {
  opening: askFor<readonly Point[]>({
    meaning: 'opening',
    description: 'Where the old skin is cut away.',
    faults: cornersFaults,
  }),
  soundSkin: askFor<readonly Point[], 'unknown'>({
    meaning: 'sound skin',
    description: 'Sound skin that the taper may use.',
    faults: cornersFaults,
    otherwise: 'unknown',
  }),
  order: askWhich({
    meaning: standards.order.meaning,
    choices: layingOrders,
    otherwise: standards.order,
  }),
  overlapMm: ask({
    meaning: standards.overlapMm.meaning,
    unit: 'mm',
    range: { from: 0, upTo: 500 },
    otherwise: standards.overlapMm,
  }),
  endAllowanceMm: ask({
    meaning: standards.endAllowanceMm.meaning,
    unit: 'mm',
    range: { from: 0, upTo: 1000 },
    otherwise: standards.endAllowanceMm,
  }),
  wetLimitMm: ask({
    meaning: standards.wetLimitMm.meaning,
    unit: 'mm',
    range: { above: 0, upTo: 40 },
    otherwise: standards.wetLimitMm,
  }),
};

export const relaidSkinQuestions = {
  oldSkin: askPart({ meaning: 'old skin', note: 'By its thickness, or by its plies.', of: oldSkinQuestions }),
  fabrics: askList({
    meaning: 'fabrics',
    description: 'Fabrics at hand; absent: every reinforcement of the catalogue.',
    of: namedFabricQuestions,
    least: 1,
    most: MOST_FABRICS,
    otherwise: 'unknown',
  }),
  panel: askPart({
    meaning: 'panel',
    note: 'With it, the bending of the panel is restored too.',
    of: panelBelowQuestions,
    otherwise: 'unknown',
  }),
  flush: askPart({
    meaning: 'how flush the skin must be',
    note: `Absent: ${standards.flush.shown} (${standards.flush.because}).`,
    of: flushQuestions,
    otherwise: 'unknown',
  }),
  limits: askPart({
    meaning: 'limits of the schedule',
    of: scheduleLimitsQuestions,
    otherwise: 'unknown',
  }),
  restore: askWhich({
    meaning: 'which build is restored',
    description: 'Which build of a guessed old skin is restored.',
    choices: ['likely', 'strongest'],
    otherwise: practice('likely', 'the spread of the guess is told beside it'),
  }),
  restoreShear: askWhether({
    meaning: 'whether shear stiffness is restored',
    description: 'Restore shear stiffness in the plane too.',
    otherwise: practice(false, 'a deck is loaded across its plane'),
  }),
  layOut: askPart({
    meaning: 'where the skin is laid out',
    note: 'With it, the best skin is laid out over the opening.',
    of: layOutQuestions,
    otherwise: 'unknown',
  }),
};

export const jointQuestions = {
  stressMPa: ask({
    meaning: 'stress in the skin across the cut',
    description: 'Stress in the skin across the cut.',
    unit: 'MPa',
    range: { from: 0, upTo: 5000 },
  }),
  allowableShearMPa: ask({
    meaning: 'allowable shear of the bond',
    unit: 'MPa',
    range: { above: 0, upTo: 100 },
  }),
  allowablePeelMPa: ask({
    meaning: 'allowable peel of the bond',
    unit: 'MPa',
    range: { above: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
};

export const rebeddedSkinQuestions = {
  skinThicknessMm: ask({
    meaning: 'skin thickness',
    description: 'Thickness of the skin that is bonded back.',
    unit: 'mm',
    range: { above: 0, upTo: 60 },
    example: 2,
  }),
  opening: askFor<readonly Point[], 'unknown'>({
    meaning: 'opening',
    description: 'The opening whose edge is the cut.',
    faults: cornersFaults,
    otherwise: 'unknown',
  }),
  cutLengthMm: ask({
    meaning: 'cut length',
    description: 'Length of the cut, where no outline is given.',
    unit: 'mm',
    range: { above: 0, upTo: 200_000 },
    otherwise: 'unknown',
  }),
  kerfMm: ask({
    meaning: standards.kerfMm.meaning,
    unit: 'mm',
    range: { from: 0, upTo: 50 },
    otherwise: standards.kerfMm,
  }),
  taperRatio: ask({
    meaning: 'taper ratio',
    note: 'Absent: 12, and on thin skins as much as makes it 20 mm wide.',
    unit: '1',
    range: { from: 1, upTo: 100 },
    otherwise: 'unknown',
  }),
  plies: askList({
    meaning: 'plies',
    description: 'Plies over the cut from the core outwards.',
    of: namedPlyQuestions,
    least: 1,
    most: 60,
    otherwise: 'unknown',
  }),
  fillWith: askCode({
    meaning: 'fabric that fills the groove',
    description: 'Instead of plies: one fabric, laid as often as fills the groove.',
    otherwise: 'unknown',
  }),
  order: askWhich({
    meaning: standards.order.meaning,
    choices: layingOrders,
    otherwise: standards.order,
  }),
  overlapMm: ask({
    meaning: standards.overlapMm.meaning,
    unit: 'mm',
    range: { from: 0, upTo: 500 },
    otherwise: standards.overlapMm,
  }),
  longestStripMm: ask({
    meaning: standards.longestStripMm.meaning,
    unit: 'mm',
    range: { from: 100, upTo: 100_000 },
    otherwise: standards.longestStripMm,
  }),
  wetLimitMm: ask({
    meaning: standards.wetLimitMm.meaning,
    unit: 'mm',
    range: { above: 0, upTo: 40 },
    otherwise: standards.wetLimitMm,
  }),
  roomMm: ask({
    meaning: 'clear width beside the cut',
    description: 'Clear width from the cut to the nearest edge or fitting.',
    unit: 'mm',
    range: { from: 0, upTo: 200_000 },
    otherwise: 'unknown',
  }),
  joint: askPart({
    meaning: 'joint',
    note: 'What the bond over the cut carries, and what it may.',
    of: jointQuestions,
    otherwise: 'unknown',
  }),
};

export const laminateScheduleQuestions = {
  resin: askCode({
    meaning: 'resin',
    description: 'Code of the resin system that is laid.',
    example: 'resin-epoxy-2to1',
  }),
  method: askWhich({
    meaning: standards.method.meaning,
    description: 'Where ply properties are taken from. One method serves old and new skin alike.',
    choices: plyMethodNames,
    otherwise: standards.method,
  }),
  relaid: askPart({
    meaning: 'skin laid anew',
    of: relaidSkinQuestions,
    otherwise: 'unknown',
  }),
  rebedded: askPart({
    meaning: 'skin bonded back',
    of: rebeddedSkinQuestions,
    otherwise: 'unknown',
  }),
};

export type NamedPly = AnswersTo<typeof namedPlyQuestions>;
export type CoreLayer = AnswersTo<typeof coreLayerQuestions>;
export type PanelBelow = AnswersTo<typeof panelBelowQuestions>;
export type ScheduleLimits = AnswersTo<typeof scheduleLimitsQuestions>;
export type RelaidSkinRequest = AnswersTo<typeof relaidSkinQuestions>;
export type RebeddedSkinRequest = AnswersTo<typeof rebeddedSkinQuestions>;
/** Materials by their codes; the search, the layout, or both. */
export type LaminateScheduleRequest = AnswersTo<typeof laminateScheduleQuestions>;

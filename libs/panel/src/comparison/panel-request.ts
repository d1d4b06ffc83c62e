import type { CoreType } from '#lib/catalogue';
import {
  ask,
  askByKind,
  askEach,
  askLabel,
  askList,
  askPart,
  askText,
  askWhich,
  closesABed,
  commonPractice,
  fromMemory,
  practice,
  type AnswersTo,
} from '#lib/asking';
import { CLASS_DECK_SPAN_OVER_DEFLECTION } from '../yardstick/class-rules.js';

const edgeFixings = ['simply-supported', 'clamped'] as const;
/** `free` is read so that it can be refused with a reason. */
const edgeKinds = [...edgeFixings, 'free'] as const;
const coreTypes = [
  'end-grain-balsa',
  'cross-linked-foam',
  'san-foam',
  'linear-foam',
  'marine-plywood',
] as const satisfies readonly CoreType[];

const modulus = { unit: 'MPa', range: { from: 1, upTo: 1_000_000 } } as const;
const strength = { unit: 'MPa', range: { above: 0, upTo: 10_000 } } as const;
const force = { unit: 'N', range: { above: 0, upTo: 1_000_000 } } as const;
const span = { unit: 'mm', range: { above: 1, upTo: 20_000 } } as const;
const share = { unit: '1', range: { from: 0, upTo: 1 } } as const;
const usableShare = { unit: '1', range: { above: 0, upTo: 1 } } as const;

export const eachEdgeQuestions = {
  xStart: askWhich({
    meaning: 'edge at x = 0',
    description: 'The edge at x = 0.',
    choices: edgeKinds,
  }),
  xEnd: askWhich({ meaning: 'edge at the far end of x', choices: edgeKinds }),
  yStart: askWhich({
    meaning: 'edge at y = 0',
    description: 'The edge at y = 0.',
    choices: edgeKinds,
  }),
  yEnd: askWhich({ meaning: 'edge at the far end of y', choices: edgeKinds }),
};

export const panelSizeQuestions = {
  lengthXMm: ask({
    meaning: 'length fore and aft',
    description: 'Length fore and aft, between supports.',
    ...span,
    example: 900,
  }),
  widthYMm: ask({
    meaning: 'width athwartships',
    description: 'Width athwartships, between supports.',
    ...span,
    example: 600,
  }),
  edges: askWhich({
    meaning: 'edges of the panel',
    note: 'All four edges alike.',
    choices: edgeKinds,
    otherwise: practice(
      'simply-supported',
      'the cautious case for deflection and for the middle of the panel',
    ),
  }),
  eachEdge: askPart({
    meaning: 'how each edge is held',
    description: 'Each edge by itself, instead of edges.',
    of: eachEdgeQuestions,
    otherwise: 'unknown',
  }),
};

export const skinValuesQuestions = {
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Thickness of the skin with these values.',
    unit: 'mm',
    range: { from: 0.1, upTo: 100 },
    example: 3,
  }),
  modulusXMPa: ask({
    meaning: 'modulus along x',
    description: 'Membrane modulus along x.',
    ...modulus,
  }),
  modulusYMPa: ask({
    meaning: 'modulus along y',
    description: 'Membrane modulus along y.',
    ...modulus,
  }),
  shearModulusMPa: ask({
    meaning: 'shear modulus',
    ...modulus,
  }),
  poissonXY: ask({
    meaning: "Poisson's ratio",
    note: 'Strain across y over strain along x under a pull along x.',
    unit: '1',
    range: { above: -1, upTo: 5 },
  }),
  tensileStrengthMPa: ask({
    meaning: 'tensile strength',
    note: 'Ultimate; along x, or in both directions.',
    ...strength,
  }),
  compressiveStrengthMPa: ask({
    meaning: 'compressive strength',
    note: 'Ultimate; along x, or in both directions.',
    ...strength,
  }),
  tensileStrengthYMPa: ask({
    meaning: 'tensile strength along y',
    ...strength,
    otherwise: 'unknown',
  }),
  compressiveStrengthYMPa: ask({
    meaning: 'compressive strength along y',
    ...strength,
    otherwise: 'unknown',
  }),
  dryFibreKgPerM2: ask({
    meaning: 'dry fibre of the skin',
    note: 'For the least fibre mass of the yardstick.',
    unit: 'kg/m2',
    range: { above: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
};

export const coreValuesQuestions = {
  coreType: askWhich({
    meaning: 'core type',
    description: 'What the core is made of; what is known of its strength goes by that.',
    choices: coreTypes,
  }),
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Thickness of the core with these values.',
    unit: 'mm',
    range: { from: 1, upTo: 200 },
    example: '1/2 in',
  }),
  shearModulusMPa: ask({
    meaning: 'shear modulus',
    unit: 'MPa',
    range: { from: 0.1, upTo: 100_000 },
  }),
  shearStrengthMPa: ask({
    meaning: 'shear strength',
    ...strength,
  }),
  compressiveModulusMPa: ask({
    meaning: 'compressive modulus',
    note: 'Through the thickness.',
    unit: 'MPa',
    range: { from: 0.1, upTo: 1_000_000 },
  }),
  compressiveStrengthMPa: ask({
    meaning: 'compressive strength',
    note: 'Through the thickness.',
    ...strength,
  }),
  inPlaneModulusMPa: ask({
    meaning: 'modulus in the plane',
    note: 'Absent: the core adds nothing in its plane.',
    unit: 'MPa',
    range: { from: 0, upTo: 1_000_000 },
    otherwise: 'unknown',
  }),
  densityKgPerM3: ask({
    meaning: 'density',
    unit: 'kg/m3',
    range: { above: 0, upTo: 2000 },
    otherwise: 'unknown',
  }),
};

export const sandwichValuesQuestions = {
  outer: askPart({
    meaning: 'outer skin',
    description: 'Outer skin, as it carries load.',
    of: skinValuesQuestions,
  }),
  inner: askPart({
    meaning: 'inner skin',
    description: 'Inner skin, as it carries load.',
    of: skinValuesQuestions,
  }),
  core: askPart({
    meaning: 'core',
    note: 'By its thickness, stiffness and strength.',
    of: coreValuesQuestions,
  }),
};

const guess = {
  source: 'FROM-MEMORY',
  note: 'no published value was found for rotten core; open the deck or test a plug',
};

const aTenth = {
  value: 0.1,
  low: 0,
  high: 0.5,
  because: 'wet and rotten core keeps a tenth at a guess',
  cite: guess,
};

export const asFoundQuestions = {
  degradedFraction: ask({
    meaning: 'share of the panel with bad core',
    ...share,
    otherwise: { value: 1, low: 0, high: 1, because: 'the whole panel, the cautious case', cite: guess },
  }),
  stiffnessFraction: ask({
    meaning: 'what is left of the core modulus',
    ...share,
    otherwise: aTenth,
  }),
  strengthFraction: ask({
    meaning: 'what is left of the core strength',
    ...share,
    otherwise: aTenth,
  }),
};

export const openedPanelQuestions = {
  lengthXMm: ask({
    meaning: 'length fore and aft',
    note: 'The opening; absent: the whole panel.',
    ...span,
    otherwise: 'unknown',
  }),
  widthYMm: ask({
    meaning: 'width athwartships',
    ...span,
    otherwise: 'unknown',
  }),
  edges: askWhich({
    meaning: 'edges of the opened inner skin',
    choices: edgeFixings,
    otherwise: practice('simply-supported', 'the cautious case for its sag'),
  }),
  clampPressureKPa: ask({
    meaning: 'pressure on the new core',
    unit: 'kPa',
    range: { above: 0, upTo: 110 },
    otherwise: closesABed,
  }),
  allowedSagMm: ask({
    meaning: 'sag the new core may keep',
    unit: 'mm',
    range: { above: 0, upTo: 50 },
    otherwise: { value: 1, because: 'a sag the fairing hides', cite: fromMemory },
  }),
};

const loadName = (of: string) =>
  askText({
    meaning: 'name of the load',
    description: `Your own name for ${of}, as the answer shows it.`,
    atMost: 80,
    otherwise: 'unknown',
  });

export const pressureLoadQuestions = {
  kind: askWhich({ meaning: 'kind', description: 'A pressure over the whole panel.', choices: ['pressure'] }),
  name: loadName('the pressure'),
  pressureKPa: ask({
    meaning: 'pressure',
    description: 'Pressure over the whole panel, downwards.',
    unit: 'kPa',
    range: { above: 0, upTo: 1000 },
  }),
};

export const patchLoadQuestions = {
  kind: askWhich({ meaning: 'kind', description: 'A pressure on a patch of the panel.', choices: ['patch'] }),
  name: loadName('the patch'),
  forceN: ask({
    meaning: 'force',
    description: 'Force on the whole patch, downwards.',
    ...force,
  }),
  xMm: ask({
    meaning: 'place fore and aft',
    note: 'Middle of the patch.',
    unit: 'mm',
    range: {},
  }),
  yMm: ask({
    meaning: 'place athwartships',
    description: 'Place of its middle athwartships, positive to starboard; absent: the middle of the panel.',
    unit: 'mm',
    range: {},
  }),
  lengthXMm: ask({
    meaning: 'length fore and aft',
    unit: 'mm',
    range: { from: 1, upTo: 20_000 },
  }),
  widthYMm: ask({
    meaning: 'width athwartships',
    unit: 'mm',
    range: { from: 1, upTo: 20_000 },
  }),
};

const aPerson = {
  value: 1000,
  low: 736,
  high: 1500,
  because: 'one person landing on one foot; codes give 75 to 82.5 kg a person, 736 to 809 N standing',
  cite: commonPractice,
};

const aHeel = {
  value: 30,
  low: 20,
  high: 50,
  because: 'heel of 30 mm radius',
  cite: {
    source: 'FROM-MEMORY',
    note: 'heel taken as a disc; contact was not found in any published source',
  },
};

export const personLoadQuestions = {
  kind: askWhich({ meaning: 'kind', description: 'People who stand on the panel.', choices: ['person'] }),
  name: loadName('the people'),
  forceN: ask({
    meaning: 'one person on one foot',
    ...force,
    otherwise: aPerson,
  }),
  heelRadiusMm: ask({
    meaning: 'radius of a heel',
    unit: 'mm',
    range: { from: 5, upTo: 200 },
    otherwise: aHeel,
  }),
  xMm: ask({
    meaning: 'place fore and aft',
    note: 'Absent: the middle of the panel.',
    unit: 'mm',
    range: {},
    otherwise: 'unknown',
  }),
  yMm: ask({
    meaning: 'place athwartships',
    description: 'Place of its middle athwartships, positive to starboard; absent: the middle of the panel.',
    unit: 'mm',
    range: {},
    otherwise: 'unknown',
  }),
};

export const classDeckLoadQuestions = {
  kind: askWhich({
    meaning: 'kind',
    description: 'The pressure that a class rule puts on decks.',
    choices: ['class-deck'],
  }),
  name: loadName('the class load'),
};

export const yardstickLoadQuestions = {
  kind: askWhich({
    meaning: 'kind',
    description: 'A plain load that every deck is compared under.',
    choices: ['yardstick'],
  }),
  name: loadName('the plain load'),
};

const loadQuestions = {
  'pressure': pressureLoadQuestions,
  'patch': patchLoadQuestions,
  'person': personLoadQuestions,
  'class-deck': classDeckLoadQuestions,
  'yardstick': yardstickLoadQuestions,
};

export const craftForPanelQuestions = {
  craftType: askWhich({
    meaning: 'craft type',
    description: 'Whether she sails or is driven by motor; the pressure of the yardstick differs.',
    choices: ['sail', 'motor'],
  }),
  lengthWaterlineM: ask({
    meaning: 'length of the waterline',
    unit: 'm',
    range: { from: 2, upTo: 24 },
  }),
  lengthHullM: ask({
    meaning: 'length of the hull',
    unit: 'm',
    range: { from: 2.5, upTo: 24 },
    otherwise: 'unknown',
  }),
  massLoadedKg: ask({
    meaning: 'mass, loaded',
    description: 'Mass of the craft with crew, stores and full tanks.',
    unit: 'kg',
    range: { from: 50, upTo: 500_000 },
  }),
  designCategory: askWhich({
    meaning: 'design category',
    description: 'Design category of the craft, from A (ocean) to D (sheltered waters).',
    choices: ['A', 'B', 'C', 'D'],
  }),
  shareOfWaterline: ask({
    meaning: 'place along the waterline',
    description: 'Place of the panel from aft over the waterline; 1 is the most severe.',
    ...share,
    otherwise: {
      value: 1,
      because: 'the most severe place',
      cite: { source: 'ISO-12215-5-2008', clause: 'eq. 4' },
    },
  }),
  dynamicLoadFactor: ask({
    meaning: 'dynamic load factor',
    unit: '1',
    range: { from: 0, upTo: 20 },
    otherwise: {
      value: 3,
      because: 'the least factor the yardstick allows',
      cite: { source: 'ISO-12215-5-2008', clause: 'eq. 4' },
    },
  }),
};

export const criteriaQuestions = {
  skinShare: ask({
    meaning: 'usable share of a skin strength',
    ...usableShare,
    otherwise: {
      value: 0.5,
      low: 0.278,
      high: 0.5,
      because: 'the small-craft yardstick; class rules take 0.28 to 0.5',
      cite: { source: 'ISO-12215-5-2008', clause: 'table 11' },
    },
  }),
  coreShearShare: ask({
    meaning: 'usable share of a core shear strength',
    description: 'Usable share of a core shear strength; absent: by kind of core.',
    ...usableShare,
    otherwise: 'unknown',
  }),
  coreCrushShare: ask({
    meaning: 'usable share of the compressive strength of a core',
    ...usableShare,
    otherwise: {
      value: 0.5,
      low: 0.33,
      high: 1,
      because: 'half, as for the other strengths; no published share was found',
      cite: commonPractice,
    },
  }),
  spanOverDeflection: ask({
    meaning: 'short span over deflection',
    unit: '1',
    range: { from: 1, upTo: 10_000 },
    otherwise: {
      value: CLASS_DECK_SPAN_OVER_DEFLECTION,
      low: 50,
      high: 100,
      because: 'a class rule for sandwich decks; the small-craft yardstick stands for about 59',
      cite: { source: 'LR-SSC-2020', clause: 'deck laminate limits' },
    },
  }),
};

/** A plate under the longest track that a record takes reaches past its ends. */
const plateSide = { unit: 'mm', range: { above: 0, upTo: 6000 } } as const;

export const backingPlateQuestions = {
  lengthMm: ask({
    meaning: 'length',
    description: 'Length of the plate under the fitting.',
    ...plateSide,
  }),
  widthMm: ask({
    meaning: 'width',
    description: 'Width of the plate under the fitting.',
    ...plateSide,
  }),
};

const fittingKinds = [
  'stanchion',
  'cleat',
  'winch',
  'windlass',
  'chainplate',
  'mast-step',
  'track',
  'hatch',
  'fill',
  'vent',
  'pad-eye',
  'other',
] as const;

export const panelFittingQuestions = {
  id: askLabel({ meaning: 'name of the fitting' }),
  kind: askWhich({
    meaning: 'kind',
    description: 'Kind of fitting, which says what it has to hold.',
    choices: fittingKinds,
  }),
  bolts: ask({
    meaning: 'number of bolts',
    unit: '1',
    range: { from: 1, upTo: 100 },
    isWhole: true,
  }),
  boltMm: ask({
    meaning: 'diameter of a bolt',
    unit: 'mm',
    range: { from: 2, upTo: 50 },
    example: '5/16 in',
  }),
  clampForceN: ask({
    meaning: 'clamp force',
    description: 'Clamp force of one bolt.',
    ...force,
    otherwise: 'unknown',
  }),
  torqueNm: ask({
    meaning: 'torque',
    description: 'Tightening torque, when the clamp force is not known.',
    unit: 'N.m',
    range: { above: 0, upTo: 1000 },
    otherwise: 'unknown',
  }),
  pullN: ask({
    meaning: 'pull away from the deck',
    description: 'Pull away from the deck.',
    ...force,
    otherwise: 'unknown',
  }),
  shearN: ask({
    meaning: 'load along the deck',
    description: 'Load along the deck.',
    ...force,
    otherwise: 'unknown',
  }),
  washerMm: ask({
    meaning: 'diameter of a washer',
    unit: 'mm',
    range: { above: 0, upTo: 300 },
    otherwise: 'unknown',
  }),
  backingPlate: askPart({
    meaning: 'backing plate',
    of: backingPlateQuestions,
    otherwise: 'unknown',
  }),
  pottedMm: ask({
    meaning: 'diameter of the potted hole',
    description: 'Diameter of the hole potted with thickened resin.',
    unit: 'mm',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  pottedStrengthMPa: ask({
    meaning: 'compressive strength of the thickened resin',
    ...strength,
    otherwise: {
      value: 60,
      low: 50,
      high: 90,
      because: 'thickened epoxy, fully cured',
      cite: {
        source: 'FROM-MEMORY',
        note: "compressive strength of thickened epoxy, 50 to 90 MPa on makers' sheets; 60 taken",
      },
    },
  }),
};

export const panelCheckQuestions = {
  panel: askPart({ meaning: 'panel', note: 'Its size, and how its edges are held.', of: panelSizeQuestions }),
  asBuilt: askPart({ meaning: 'panel as it was built', of: sandwichValuesQuestions }),
  repaired: askPart({ meaning: 'panel as it is repaired', of: sandwichValuesQuestions }),
  asFound: askPart({
    meaning: 'what is left of the core',
    description: 'What rot and water left of the core.',
    of: asFoundQuestions,
    otherwise: 'unknown',
  }),
  opened: askPart({
    meaning: 'panel while it is open',
    description: 'The inner skin alone while the core is out.',
    of: openedPanelQuestions,
    otherwise: 'unknown',
  }),
  loads: askByKind<LoadRequest, 'unknown'>({
    meaning: 'loads',
    note: 'Absent: the yardstick pressure when the craft is known, else that of a class rule; and a person on one foot.',
    by: 'kind',
    kinds: loadQuestions,
    least: 1,
    most: 12,
    otherwise: 'unknown',
  }),
  craft: askPart({
    meaning: 'craft',
    of: craftForPanelQuestions,
    otherwise: 'unknown',
  }),
  fittings: askList({
    meaning: 'fittings',
    description: 'Fittings bolted through the panel, each with what pulls on it.',
    of: panelFittingQuestions,
    least: 0,
    most: 50,
    otherwise: 'unknown',
  }),
  criteria: askPart({
    meaning: 'criteria',
    note: 'How much of a strength may be used, and how far the deck may sag.',
    of: criteriaQuestions,
    otherwise: 'unknown',
  }),
  explain: askEach({
    meaning: 'what is to be explained',
    description:
      'Keys of checks, ratios and loads to explain down to their inputs, such as repaired:person:core-shear.',
    least: 0,
    most: 20,
    of: askText({ meaning: 'key of a check, ratio or load', atMost: 120 }),
    otherwise: 'unknown',
  }),
  deckThicknessMm: ask({
    meaning: 'deck thickness',
    description: 'Measured total of the deck, to catch a skin that cannot be.',
    unit: 'mm',
    range: { from: 0.1, upTo: 200 },
    otherwise: 'unknown',
  }),
};

export type EachEdge = AnswersTo<typeof eachEdgeQuestions>;
export type EdgeKindAsked = EachEdge['xStart'];
export type PanelSize = AnswersTo<typeof panelSizeQuestions>;
export type AsFound = AnswersTo<typeof asFoundQuestions>;
export type OpenedPanel = AnswersTo<typeof openedPanelQuestions>;
export type LoadRequest = {
  readonly [K in keyof typeof loadQuestions]: AnswersTo<(typeof loadQuestions)[K]> & { readonly kind: K };
}[keyof typeof loadQuestions];
export type CraftForPanel = AnswersTo<typeof craftForPanelQuestions>;
export type Criteria = AnswersTo<typeof criteriaQuestions>;
export type FittingRequest = AnswersTo<typeof panelFittingQuestions>;
/**
 * Four states of one rectangular panel under the same loads; x fore and aft, y athwartships, from the forward port corner.
 */
export type PanelCheckRequest = AnswersTo<typeof panelCheckQuestions>;

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
  type AnswersTo,
} from '#lib/asking';

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
    description: 'Fore and aft, between supports.',
    ...span,
    example: 900,
  }),
  widthYMm: ask({
    meaning: 'width athwartships',
    description: 'Athwartships, between supports.',
    ...span,
    example: 600,
  }),
  edges: askWhich({
    meaning: 'how the edges are held',
    description: 'All four edges alike; absent: simply-supported, stated as an assumption.',
    choices: edgeKinds,
    otherwise: 'unknown',
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
    description: 'Strain across y over strain along x under a pull along x.',
    unit: '1',
    range: { above: -1, upTo: 5 },
  }),
  tensileStrengthMPa: ask({
    meaning: 'tensile strength',
    description: 'Ultimate; along x, or in both directions.',
    ...strength,
  }),
  compressiveStrengthMPa: ask({
    meaning: 'compressive strength',
    description: 'Ultimate; along x, or in both directions.',
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
    description: 'For the least fibre mass of the yardstick.',
    unit: 'kg/m2',
    range: { above: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
};

export const coreValuesQuestions = {
  coreType: askWhich({ meaning: 'core type', choices: coreTypes }),
  thicknessMm: ask({
    meaning: 'thickness',
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
    description: 'Through the thickness.',
    unit: 'MPa',
    range: { from: 0.1, upTo: 1_000_000 },
  }),
  compressiveStrengthMPa: ask({
    meaning: 'compressive strength',
    description: 'Through the thickness.',
    ...strength,
  }),
  inPlaneModulusMPa: ask({
    meaning: 'modulus in the plane',
    description: 'Absent: the core adds nothing in its plane.',
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
  outer: askPart({ meaning: 'outer skin', of: skinValuesQuestions }),
  inner: askPart({ meaning: 'inner skin', of: skinValuesQuestions }),
  core: askPart({ meaning: 'core', of: coreValuesQuestions }),
};

export const asFoundQuestions = {
  degradedFraction: ask({
    meaning: 'share of the panel with bad core',
    description: 'Share of the panel with bad core; absent: 1.',
    ...share,
    otherwise: 'unknown',
  }),
  stiffnessFraction: ask({
    meaning: 'stiffness that is left',
    description: 'What is left of the moduli there; absent: 0.1.',
    ...share,
    otherwise: 'unknown',
  }),
  strengthFraction: ask({
    meaning: 'strength that is left',
    description: 'What is left of the strengths there; absent: 0.1.',
    ...share,
    otherwise: 'unknown',
  }),
};

export const openedPanelQuestions = {
  lengthXMm: ask({
    meaning: 'length fore and aft',
    description: 'The opening; absent: the whole panel.',
    ...span,
    otherwise: 'unknown',
  }),
  widthYMm: ask({
    meaning: 'width athwartships',
    ...span,
    otherwise: 'unknown',
  }),
  edges: askWhich({
    meaning: 'how the edges are held',
    choices: edgeFixings,
    otherwise: 'unknown',
  }),
  clampPressureKPa: ask({
    meaning: 'clamp pressure',
    description: 'What presses the new core down; absent: 2 kPa.',
    unit: 'kPa',
    range: { above: 0, upTo: 110 },
    otherwise: 'unknown',
  }),
  allowedSagMm: ask({
    meaning: 'allowed sag',
    description: 'Sag that the new core may keep; absent: 1 mm.',
    unit: 'mm',
    range: { above: 0, upTo: 50 },
    otherwise: 'unknown',
  }),
};

const loadName = askText({ meaning: 'name of the load', atMost: 80, otherwise: 'unknown' });

export const pressureLoadQuestions = {
  kind: askWhich({ meaning: 'kind', choices: ['pressure'] }),
  name: loadName,
  pressureKPa: ask({
    meaning: 'pressure',
    unit: 'kPa',
    range: { above: 0, upTo: 1000 },
  }),
};

export const patchLoadQuestions = {
  kind: askWhich({ meaning: 'kind', choices: ['patch'] }),
  name: loadName,
  forceN: ask({
    meaning: 'force',
    ...force,
  }),
  xMm: ask({
    meaning: 'place fore and aft',
    description: 'Middle of the patch.',
    unit: 'mm',
    range: {},
  }),
  yMm: ask({ meaning: 'place athwartships', unit: 'mm', range: {} }),
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

export const personLoadQuestions = {
  kind: askWhich({ meaning: 'kind', choices: ['person'] }),
  name: loadName,
  forceN: ask({
    meaning: 'force',
    description: 'Absent: 1000 N.',
    ...force,
    otherwise: 'unknown',
  }),
  heelRadiusMm: ask({
    meaning: 'heel radius',
    description: 'Absent: 30 mm.',
    unit: 'mm',
    range: { from: 5, upTo: 200 },
    otherwise: 'unknown',
  }),
  xMm: ask({
    meaning: 'place fore and aft',
    description: 'Absent: the middle of the panel.',
    unit: 'mm',
    range: {},
    otherwise: 'unknown',
  }),
  yMm: ask({ meaning: 'place athwartships', unit: 'mm', range: {}, otherwise: 'unknown' }),
};

export const classDeckLoadQuestions = {
  kind: askWhich({ meaning: 'kind', choices: ['class-deck'] }),
  name: loadName,
};

export const yardstickLoadQuestions = {
  kind: askWhich({ meaning: 'kind', choices: ['yardstick'] }),
  name: loadName,
};

const loadQuestions = {
  'pressure': pressureLoadQuestions,
  'patch': patchLoadQuestions,
  'person': personLoadQuestions,
  'class-deck': classDeckLoadQuestions,
  'yardstick': yardstickLoadQuestions,
};

export const craftForPanelQuestions = {
  craftType: askWhich({ meaning: 'craft type', choices: ['sail', 'motor'] }),
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
    unit: 'kg',
    range: { from: 50, upTo: 500_000 },
  }),
  designCategory: askWhich({
    meaning: 'design category',
    choices: ['A', 'B', 'C', 'D'],
  }),
  shareOfWaterline: ask({
    meaning: 'place along the waterline',
    description: 'Place of the panel from aft over the waterline; absent: 1, the most severe.',
    ...share,
    otherwise: 'unknown',
  }),
  dynamicLoadFactor: ask({
    meaning: 'dynamic load factor',
    unit: '1',
    range: { from: 0, upTo: 20 },
    otherwise: 'unknown',
  }),
};

export const criteriaQuestions = {
  skinShare: ask({
    meaning: 'usable share of a skin strength',
    description: 'Usable share of a skin strength; absent: 0.5.',
    ...usableShare,
    otherwise: 'unknown',
  }),
  coreShearShare: ask({
    meaning: 'usable share of a core shear strength',
    description: 'Usable share of a core shear strength; absent: by kind of core.',
    ...usableShare,
    otherwise: 'unknown',
  }),
  coreCrushShare: ask({
    meaning: 'usable share of a core compressive strength',
    description: 'Usable share of a core compressive strength; absent: 0.5.',
    ...usableShare,
    otherwise: 'unknown',
  }),
  spanOverDeflection: ask({
    meaning: 'short span over deflection',
    description: 'Short span over deflection; absent: 100.',
    unit: '1',
    range: { from: 1, upTo: 10_000 },
    otherwise: 'unknown',
  }),
};

/** A plate under the longest track that a record takes reaches past its ends. */
const plateSide = { unit: 'mm', range: { above: 0, upTo: 6000 } } as const;

export const backingPlateQuestions = {
  lengthMm: ask({
    meaning: 'length',
    ...plateSide,
  }),
  widthMm: ask({
    meaning: 'width',
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
  kind: askWhich({ meaning: 'kind', choices: fittingKinds }),
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
    description: 'Compressive strength of the thickened resin; absent: 60 MPa.',
    ...strength,
    otherwise: 'unknown',
  }),
};

export const panelCheckQuestions = {
  panel: askPart({ meaning: 'panel', of: panelSizeQuestions }),
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
    description:
      'Absent: the yardstick pressure when the craft is known, else that of a class rule; and a person on one foot.',
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
    of: panelFittingQuestions,
    least: 0,
    most: 50,
    otherwise: 'unknown',
  }),
  criteria: askPart({
    meaning: 'criteria',
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
export type LoadedFitting = FittingRequest['kind'];
/**
 * Four states of one rectangular panel under the same loads; x fore and aft, y athwartships, from the forward port corner.
 */
export type PanelCheckRequest = AnswersTo<typeof panelCheckQuestions>;

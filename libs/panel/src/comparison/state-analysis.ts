import { laidOver } from '#lib/kernel';
import { fraction, mm, mPa, newton, nmm, nPerMm } from '#lib/units';
import { answeredIn, assumedIn } from '#lib/asking';
import { computeChecked, defineFormula, derived, entered, type Figure } from '#lib/provenance';
import type { ResolvedLoad } from './loads.js';
import { asFoundQuestions, type AsFound, type PanelCheckRequest } from './panel-request.js';
import type { PlateSource } from '../plate/kept-plates.js';
import type { NamedSpot, PlateAnswer, PlateEdges, PlateModel } from '../plate/plate-answer.js';
import type { PlateStiffness, Rectangle } from '../plate/plate.js';
import {
  faceInCommonBending,
  sandwichSection,
  separateSkins,
  skinPlate,
  type SandwichSection,
  type StressPerMoment,
} from '../plate/sandwich-section.js';
import type { SandwichValues, SkinValues, StateName } from '../plate/states.js';

/** How the panel carries its load in a state. */
export type Working = 'sandwich' | 'separate-skins' | 'inner-skin-alone';

/** One face of one skin whose stress is looked at. */
export interface Face {
  readonly skin: 'outer' | 'inner';
  readonly values: SkinValues;
  readonly per: StressPerMoment;
}

export interface LoadedState {
  readonly load: ResolvedLoad;
  readonly answer: PlateAnswer;
  readonly working: Working;
  readonly stiffness: PlateStiffness;
  readonly faces: readonly Face[];
  /** Middles of the skins, where the core holds them against wrinkling. */
  readonly middles: readonly Face[];
}

export interface AnalysedState {
  readonly name: StateName;
  readonly values: SandwichValues;
  readonly size: Rectangle;
  readonly section: SandwichSection;
  readonly loaded: readonly LoadedState[];
  readonly figures: StateFigures;
  /** The opened skin ready for further loads. */
  readonly skinModel?: PlateModel;
}

/** Where the numbers of a state came from. */
export interface StateFigures {
  readonly coreShearStrength: Figure<'MPa'>;
  readonly coreShearModulus: Figure<'MPa'>;
  readonly coreCompressiveStrength: Figure<'MPa'>;
  readonly coreCompressiveModulus: Figure<'MPa'>;
  readonly leverMm: Figure<'mm'>;
  readonly sizes: Readonly<Record<string, Figure>>;
}

/** Analyses a bonded sandwich; should its skins bend less apart than the soft core lets them, they act apart. */
export function analyseSandwich(
  name: StateName,
  values: SandwichValues,
  setting: Setting,
  figures: StateFigures,
): AnalysedState {
  const section = sandwichSection(values);
  const bonded = setting.plates(section.stiffness, setting.size, setting.edges);
  const faces: readonly Face[] = [
    { skin: 'outer', values: values.outer, per: section.outerFace },
    { skin: 'inner', values: values.inner, per: section.innerFace },
  ];
  const middles: readonly Face[] = [
    { skin: 'outer', values: values.outer, per: section.outerMiddle },
    { skin: 'inner', values: values.inner, per: section.innerMiddle },
  ];
  const apart =
    name === 'as-found' && mayActApart(section.stiffness, separateSkins(values), setting.size)
      ? apartModel(values, setting)
      : undefined;
  const loaded = setting.loads.map((load): LoadedState => {
    const together: LoadedState = {
      load,
      answer: bonded.answerTo(load.rectangle),
      working: 'sandwich',
      stiffness: section.stiffness,
      faces,
      middles,
    };
    const separate = apart?.(load);
    return separate !== undefined && separate.answer.deflectionMm < together.answer.deflectionMm
      ? separate
      : together;
  });
  return { name, values, size: setting.size, section, loaded, figures };
}

export interface Setting {
  readonly size: Rectangle;
  readonly edges: PlateEdges;
  readonly loads: readonly ResolvedLoad[];
  readonly plates: PlateSource;
}

/** Whether skins apart could be the stiffer, judged on the first wave with much to spare. */
function mayActApart(
  together: PlateStiffness,
  apart: PlateStiffness,
  { lengthXMm, widthYMm }: Rectangle,
): boolean {
  const wave = Math.PI ** 2 * (1 / lengthXMm ** 2 + 1 / widthYMm ** 2);
  const give = ({ d11, d22, sx }: PlateStiffness): number =>
    1 / (Math.sqrt(d11 * d22) * wave ** 2) + 1 / (sx * wave);
  return give(apart) < MUCH * give(together);
}

const MUCH = 10;

function apartModel(values: SandwichValues, setting: Setting): (load: ResolvedLoad) => LoadedState {
  const stiffness = separateSkins(values);
  const model = setting.plates(stiffness, setting.size, setting.edges);
  const faces = bothFaces('outer', values.outer, faceInCommonBending(values.outer, stiffness)).concat(
    bothFaces('inner', values.inner, faceInCommonBending(values.inner, stiffness)),
  );
  return (load) => ({
    load,
    answer: model.answerTo(load.rectangle),
    working: 'separate-skins',
    stiffness,
    faces,
    middles: [],
  });
}

const bothFaces = (skin: 'outer' | 'inner', values: SkinValues, per: StressPerMoment): readonly Face[] => [
  { skin, values, per },
  { skin, values, per: { xx: -per.xx, xy: -per.xy, yx: -per.yx, yy: -per.yy } },
];

/** The inner skin with the core gone. */
export function analyseInnerSkin(
  values: SandwichValues,
  setting: Setting,
  figures: StateFigures,
): AnalysedState {
  const { stiffness, face } = skinPlate(values.inner);
  const model = setting.plates(stiffness, setting.size, setting.edges);
  const faces = bothFaces('inner', values.inner, face);
  const loaded = setting.loads.map((load): LoadedState => ({
    load,
    answer: model.answerTo(load.rectangle),
    working: 'inner-skin-alone',
    stiffness,
    faces,
    middles: [],
  }));
  return {
    name: 'opened',
    values,
    size: setting.size,
    section: sandwichSection(values),
    loaded,
    figures,
    skinModel: model,
  };
}

export interface FaceStress {
  readonly face: Face;
  readonly along: 'x' | 'y';
  readonly stressMPa: number;
  readonly spot: NamedSpot;
}

/** Direct stresses in x and y on every face at every spot. */
export const stressesOf = (answer: PlateAnswer, faces: readonly Face[]): readonly FaceStress[] =>
  answer.spots.flatMap((spot) =>
    faces.flatMap((face): readonly FaceStress[] => [
      { face, spot, along: 'x', stressMPa: face.per.xx * spot.fields.mx + face.per.xy * spot.fields.my },
      { face, spot, along: 'y', stressMPa: face.per.yx * spot.fields.mx + face.per.yy * spot.fields.my },
    ]),
  );

/** Soft and sound core in series, as the shear of the panel meets them. By hand: 30/(0.5 + 0.5/0.1) = 5.4545. */
export const degradedModulus = defineFormula({
  id: 'panel.degraded-modulus',
  title: 'Modulus of a core of which a part has gone soft',
  cite: { source: 'PANEL-DERIVED', note: 'compliances in proportion to area: a lower bound' },
  inputs: {
    soundModulus: { symbol: 'G', unit: 'MPa', meaning: 'modulus of the sound core', above: 0 },
    degradedFraction: {
      symbol: 'f',
      unit: '1',
      meaning: 'share of the panel with bad core',
      from: 0,
      upTo: 1,
    },
    leftFraction: { symbol: 'g', unit: '1', meaning: 'what is left of the modulus there', above: 0, upTo: 1 },
  },
  output: { symbol: 'G_eff', unit: 'MPa', meaning: 'modulus of the core as found' },
  evaluate: ({ soundModulus, degradedFraction: f, leftFraction: g }) => mPa(soundModulus / (1 - f + f / g)),
  worked: [
    {
      at: 'by hand',
      given: { soundModulus: 30, degradedFraction: 0.5, leftFraction: 0.1 },
      printed: '5.4545',
    },
  ],
});

/** By hand: 1.12 x 0.1 = 0.112. The weakest place decides, however small. */
export const degradedStrength = defineFormula({
  id: 'panel.degraded-strength',
  title: 'Strength of a core of which a part has gone soft',
  cite: { source: 'PANEL-DERIVED', note: 'the weakest place decides' },
  inputs: {
    soundStrength: { symbol: 'tau', unit: 'MPa', meaning: 'strength of the sound core', above: 0 },
    leftFraction: { symbol: 'g', unit: '1', meaning: 'what is left of the strength', above: 0, upTo: 1 },
  },
  output: { symbol: 'tau_eff', unit: 'MPa', meaning: 'strength of the core as found' },
  evaluate: ({ soundStrength, leftFraction }) => mPa(soundStrength * leftFraction),
  worked: [{ at: 'by hand', given: { soundStrength: 1.12, leftFraction: 0.1 }, printed: '0.112' }],
});

/** Nothing left of a core is taken as this much, which is less than its skins can feel. */
const NEXT_TO_NOTHING = 1e-3;

interface FoundShares {
  readonly degraded: Figure<'1'>;
  readonly stiffness: Figure<'1'>;
  readonly strength: Figure<'1'>;
}

const foundShares = (asFound: AsFound): FoundShares => ({
  degraded: answeredIn(
    asFoundQuestions.degradedFraction,
    asFound.degradedFraction,
    '/asFound/degradedFraction',
  ),
  stiffness: leftOf('stiffnessFraction', asFound),
  strength: leftOf('strengthFraction', asFound),
});

function leftOf(field: 'stiffnessFraction' | 'strengthFraction', asFound: AsFound): Figure<'1'> {
  const question = asFoundQuestions[field];
  const given = asFound[field];
  const at = `/asFound/${field}`;
  if (given === undefined || given >= NEXT_TO_NOTHING) return answeredIn(question, given, at);
  const because = 'nothing left is reckoned as a thousandth, less than the skins can feel';
  return assumedIn('1', { ...question.otherwise, value: NEXT_TO_NOTHING, because }, question.meaning, at);
}

export interface FoundState {
  readonly values: SandwichValues;
  readonly figures: StateFigures;
}

/** The sandwich as built with its core softened. */
export function stateAsFound({ asBuilt, asFound }: PanelCheckRequest): FoundState {
  const shares = foundShares(asFound ?? {});
  const sound = figuresOf(asBuilt, '/asBuilt');
  const isSound = shares.degraded.value === 0;
  const strengthLeft = isSound
    ? entered('1', fraction(1), 'no core is bad', '/asFound/degradedFraction')
    : shares.strength;
  const modulus = (figure: Figure<'MPa'>): Figure<'MPa'> =>
    computeChecked(degradedModulus, {
      soundModulus: figure,
      degradedFraction: shares.degraded,
      leftFraction: shares.stiffness,
    });
  const strength = (figure: Figure<'MPa'>): Figure<'MPa'> =>
    computeChecked(degradedStrength, { soundStrength: figure, leftFraction: strengthLeft });
  const figures: StateFigures = {
    ...sound,
    coreShearModulus: modulus(sound.coreShearModulus),
    coreCompressiveModulus: modulus(sound.coreCompressiveModulus),
    coreShearStrength: strength(sound.coreShearStrength),
    coreCompressiveStrength: strength(sound.coreCompressiveStrength),
  };
  const softened = figures.coreShearModulus.value / sound.coreShearModulus.value;
  const core = {
    ...asBuilt.core,
    shearModulusMPa: figures.coreShearModulus.value,
    compressiveModulusMPa: figures.coreCompressiveModulus.value,
    shearStrengthMPa: figures.coreShearStrength.value,
    compressiveStrengthMPa: figures.coreCompressiveStrength.value,
    ...(asBuilt.core.inPlaneModulusMPa === undefined
      ? {}
      : { inPlaneModulusMPa: asBuilt.core.inPlaneModulusMPa * softened }),
  };
  return { values: { ...asBuilt, core }, figures };
}

export function figuresOf({ outer, inner, core }: SandwichValues, at: string): StateFigures {
  const outerMm = entered('mm', mm(outer.thicknessMm), 'outer skin', `${at}/outer/thicknessMm`);
  const innerMm = entered('mm', mm(inner.thicknessMm), 'inner skin', `${at}/inner/thicknessMm`);
  const coreMm = entered('mm', mm(core.thicknessMm), 'core', `${at}/core/thicknessMm`);
  const modulus = (value: number, meaning: string, field: string): Figure<'MPa'> =>
    entered('MPa', mPa(value), meaning, `${at}/${field}`);
  return {
    coreShearStrength: modulus(core.shearStrengthMPa, 'shear strength of the core', 'core/shearStrengthMPa'),
    coreShearModulus: modulus(core.shearModulusMPa, 'shear modulus of the core', 'core/shearModulusMPa'),
    coreCompressiveStrength: modulus(
      core.compressiveStrengthMPa,
      'compressive strength of the core',
      'core/compressiveStrengthMPa',
    ),
    coreCompressiveModulus: modulus(
      core.compressiveModulusMPa,
      'modulus of the core through its thickness',
      'core/compressiveModulusMPa',
    ),
    leverMm: computeChecked(skinDistance, { outerMm, innerMm, coreMm }),
    sizes: {
      outerMm,
      innerMm,
      coreMm,
      outerModulusX: modulus(outer.modulusXMPa, 'modulus of the outer skin along x', 'outer/modulusXMPa'),
      outerModulusY: modulus(outer.modulusYMPa, 'modulus of the outer skin along y', 'outer/modulusYMPa'),
      innerModulusX: modulus(inner.modulusXMPa, 'modulus of the inner skin along x', 'inner/modulusXMPa'),
      innerModulusY: modulus(inner.modulusYMPa, 'modulus of the inner skin along y', 'inner/modulusYMPa'),
    },
  };
}

/** By hand: 20 + (1.5 + 1.5)/2 = 21.5. */
export const skinDistance = defineFormula({
  id: 'panel.skin-distance',
  title: 'Distance between skin middles',
  cite: { source: 'ARITHMETIC' },
  inputs: {
    outerMm: { symbol: 't_o', unit: 'mm', meaning: 'outer skin', above: 0 },
    innerMm: { symbol: 't_i', unit: 'mm', meaning: 'inner skin', above: 0 },
    coreMm: { symbol: 't_c', unit: 'mm', meaning: 'core', above: 0 },
  },
  output: { symbol: 'd', unit: 'mm', meaning: 'distance between skin middles' },
  evaluate: ({ outerMm, innerMm, coreMm }) => mm(coreMm + (outerMm + innerMm) / 2),
  worked: [{ at: 'by hand', given: { outerMm: 1.5, innerMm: 1.5, coreMm: 20 }, printed: '21.5' }],
});

export type PlateFigures = Readonly<
  Record<'pressure' | 'bendingX' | 'bendingY' | 'shear' | 'lengthX' | 'widthY', Figure>
>;

/** What the plate answered from, for the "why" of its moments, shears and deflection. */
export function plateFigures(state: AnalysedState, { load, stiffness, working }: LoadedState): PlateFigures {
  const from = (symbol: string): Parameters<typeof derived>[3] => ({
    formula: working === 'sandwich' ? 'panel.section' : 'panel.skin-bending',
    title: 'Section per unit width by layers',
    symbol,
    cite: { source: 'ZENKERT-1995', clause: '§3.1' },
    inputs: laidOver(state.figures.sizes, { coreShearModulus: state.figures.coreShearModulus }),
  });
  const field = state.name === 'opened' ? '/opened' : '/panel';
  return {
    pressure: load.pressure,
    bendingX: derived('N.mm', nmm(stiffness.d11), 'bending stiffness along x per unit width', from('D_11')),
    bendingY: derived('N.mm', nmm(stiffness.d22), 'bending stiffness along y per unit width', from('D_22')),
    shear: derived('N/mm', nPerMm(stiffness.sx), 'shear stiffness per unit width', from('S')),
    lengthX: entered('mm', mm(state.size.lengthXMm), 'length along x', `${field}/lengthXMm`),
    widthY: entered('mm', mm(state.size.widthYMm), 'width along y', `${field}/widthYMm`),
  };
}

/** A moment per unit width (N.mm per mm is N). */
export const momentFigure = (value: number, along: 'x' | 'y', inputs: PlateFigures): Figure<'N'> =>
  derived('N', newton(value), `moment per unit width along ${along}`, {
    formula: 'panel.plate',
    title: 'Orthotropic plate with shear deformation',
    symbol: `M_${along}`,
    cite: {
      source: 'TIMOSHENKO-PLATES-1959',
      note: 'Navier and Levy series, edges clamped by superposition',
    },
    inputs,
  });

export const stateFormulas = [degradedModulus, degradedStrength, skinDistance] as const;

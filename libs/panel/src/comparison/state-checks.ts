import { fraction, mm, mPa, newton, nPerMm } from '#lib/units';
import { computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { defineCheck, inWords, notEstablished, type ReasonedCheck } from './check.js';
import type { ResolvedCriteria } from './criteria.js';
import type { ResolvedLoad } from './loads.js';
import { roundPatch } from '../plate/indentation.js';
import { isLarge, largeDeflection, largeDeflectionCite } from '../plate/large-deflection.js';
import type { NamedSpot } from '../plate/plate-answer.js';
import { skinPlate } from '../plate/sandwich-section.js';
import { coreShearStress, wrinklingClass, wrinklingYardstick } from '../plate/sandwich-formulas.js';
import {
  momentFigure,
  plateFigures,
  stressesOf,
  type AnalysedState,
  type Face,
  type FaceStress,
  type LoadedState,
} from './state-analysis.js';
import type { SkinValues } from '../plate/states.js';
import { designCoreShear, designSkinStress } from '../yardstick/yardstick.js';

/** Every check of one state under one load. */
export function checksOf(
  state: AnalysedState,
  loaded: LoadedState,
  criteria: ResolvedCriteria,
): readonly ReasonedCheck[] {
  const setting: Setting = { state, loaded, criteria, where: { state: state.name, load: loaded.load.code } };
  if (loaded.working === 'inner-skin-alone' && isLarge(state.values.inner, loaded.answer.deflectionMm))
    return slackSkinChecks(setting);
  const stresses = stressesOf(loaded.answer, loaded.faces);
  return [
    ...skinChecks(setting, stresses, 'outer'),
    ...skinChecks(setting, stresses, 'inner'),
    ...wrinklingChecks(setting),
    ...coreShearChecks(setting),
    deflectionCheck(setting),
    ...(loaded.working === 'inner-skin-alone' ? [] : dentChecks(state, loaded.load, criteria)),
  ];
}

interface Setting {
  readonly state: AnalysedState;
  readonly loaded: LoadedState;
  readonly criteria: ResolvedCriteria;
  readonly where: { readonly state: AnalysedState['name']; readonly load: string };
}

const yardstickStress = {
  source: 'ISO-12215-5-2008',
  clause: 'table 11',
  note: 'a yardstick for comparison',
};

/** A skin that sags by more than half its thickness hangs like a sheet: the sag can be estimated, local stress cannot. */
function slackSkinChecks(setting: Setting): readonly ReasonedCheck[] {
  const { loaded, state, where, criteria } = setting;
  const { inner } = state.values;
  const sag = largeDeflection(inner, state.size, loaded.answer.deflectionMm);
  const isWhole = loaded.load.rectangle.x1Mm <= 0 && loaded.load.rectangle.y1Mm <= 0;
  const deflection = deflectionCheck(setting, sag.deflectionMm);
  if (!isWhole) {
    return [
      notEstablished({
        code: 'inner-skin',
        title: 'Stress in the inner skin',
        unit: 'MPa',
        source: largeDeflectionCite.source,
        where,
        reason:
          'the opened skin sags by more than half its thickness under a concentrated load; its local stress is not established, so nobody stands on it',
      }),
      deflection,
    ];
  }
  const worst = worstOf(stressesOf(loaded.answer, loaded.faces));
  const demand = derived(
    'MPa',
    mPa(Math.abs(worst.stressMPa) * sag.bendingShare + sag.membraneStressMPa),
    'stress in the inner skin, bending and pull',
    {
      formula: 'panel.large-deflection',
      title: 'Bending and membrane stress of a sagging skin',
      symbol: 'sigma',
      cite: largeDeflectionCite,
      inputs: plateFigures(state, loaded),
    },
  );
  const strength = Math.min(inner.tensileStrengthMPa, inner.tensileStrengthYMPa ?? Infinity);
  const capacity = computeChecked(designSkinStress, {
    share: criteria.skinShare,
    ultimate: entered(
      'MPa',
      mPa(strength),
      'tensile strength of the inner skin',
      '/asBuilt/inner/tensileStrengthMPa',
    ),
  });
  return [
    defineCheck({
      code: 'inner-skin',
      title: 'Stress in the inner skin',
      where,
      demand,
      capacity,
      cite: largeDeflectionCite,
      governs: `bending and pull ${worst.spot.name}`,
      remedy: () => 'props under the inner skin before the deck is opened',
    }),
    deflection,
  ];
}

/** Strength that a stress meets: tension or compression, in its own direction where that was given. */
function strengthAgainst(
  values: SkinValues,
  { stressMPa, along }: Pick<FaceStress, 'stressMPa' | 'along'>,
): number {
  if (stressMPa >= 0)
    return along === 'y'
      ? (values.tensileStrengthYMPa ?? values.tensileStrengthMPa)
      : values.tensileStrengthMPa;
  return along === 'y'
    ? (values.compressiveStrengthYMPa ?? values.compressiveStrengthMPa)
    : values.compressiveStrengthMPa;
}

const worstOf = (stresses: readonly FaceStress[]): FaceStress =>
  stresses.reduce((worst, one) => (shareUsed(one) > shareUsed(worst) ? one : worst));

const shareUsed = (one: FaceStress): number =>
  Math.abs(one.stressMPa) / strengthAgainst(one.face.values, one);

function skinChecks(
  setting: Setting,
  all: readonly FaceStress[],
  skin: Face['skin'],
): readonly ReasonedCheck[] {
  const stresses = all.filter(({ face }) => face.skin === skin);
  if (stresses.length === 0) return [];
  const worst = worstOf(stresses);
  const kind = worst.stressMPa >= 0 ? 'tension' : 'compression';
  const field = `/${stateField(setting.state.name)}/${skin}/${kind === 'tension' ? 'tensile' : 'compressive'}StrengthMPa`;
  const capacity = computeChecked(designSkinStress, {
    share: setting.criteria.skinShare,
    ultimate: entered(
      'MPa',
      mPa(strengthAgainst(worst.face.values, worst)),
      `${kind} strength of the ${skin} skin`,
      field,
    ),
  });
  return [
    defineCheck({
      code: `${skin}-skin`,
      title: `Stress in the ${skin} skin`,
      where: setting.where,
      capacity,
      cite: yardstickStress,
      demand: stressFigure(setting, worst, `${kind} in the ${skin} skin at its face`),
      governs: `${kind} along ${worst.along} ${worst.spot.name}`,
      remedy: (excess) =>
        `${inWords(excess)} times the strength, or a skin of about ${inWords(worst.face.values.thicknessMm * remedyThickness(setting, excess))} mm of the same laminate`,
    }),
  ];
}

/** A sandwich skin gains with its thickness, a skin alone with the square of it. */
const remedyThickness = ({ loaded }: Setting, excess: number): number =>
  loaded.working === 'sandwich' ? excess : Math.sqrt(excess);

const stateField = (name: AnalysedState['name']): string => (name === 'repaired' ? 'repaired' : 'asBuilt');

function stressFigure(
  { state, loaded }: Setting,
  { stressMPa, spot, along }: FaceStress,
  meaning: string,
): Figure<'MPa'> {
  const from = plateFigures(state, loaded);
  return derived('MPa', mPa(Math.abs(stressMPa)), meaning, {
    formula: 'panel.skin-stress',
    title: 'Stress at a height from moments and layers',
    symbol: `sigma_${along}`,
    cite: { source: 'ZENKERT-1995', clause: '§3.1' },
    inputs: {
      momentX: momentFigure(spot.fields.mx, 'x', from),
      momentY: momentFigure(spot.fields.my, 'y', from),
    },
  });
}

/** Two named limits, side by side; neither knocks the other down. */
function wrinklingChecks(setting: Setting): readonly ReasonedCheck[] {
  const { loaded, state, where } = setting;
  const pushed = stressesOf(loaded.answer, loaded.middles).filter(({ stressMPa }) => stressMPa < 0);
  if (loaded.working === 'separate-skins') {
    return [
      notEstablished({
        code: 'wrinkling-class',
        title: 'Wrinkling of a skin',
        unit: 'MPa',
        source: 'ZENKERT-1995',
        where,
        reason:
          'the core is too soft to hold the skins: they bend apart, and wrinkling limits do not speak of that',
      }),
    ];
  }
  if (pushed.length === 0) return [];
  const worst = pushed.reduce((most, one) => (wrinklingShare(one) > wrinklingShare(most) ? one : most));
  const along = worst.along === 'x' ? worst.face.values.modulusXMPa : worst.face.values.modulusYMPa;
  const inputs = {
    skinModulus: entered(
      'MPa',
      mPa(along),
      `modulus of the ${worst.face.skin} skin along ${worst.along}`,
      `/${stateField(state.name)}/${worst.face.skin}/modulus${worst.along.toUpperCase()}MPa`,
    ),
    coreModulus: state.figures.coreCompressiveModulus,
    coreShearModulus: state.figures.coreShearModulus,
  };
  const demand = stressFigure(setting, worst, `compression in the middle of the ${worst.face.skin} skin`);
  const base = {
    where,
    demand,
    governs: `${worst.face.skin} skin along ${worst.along} ${worst.spot.name}`,
    remedy: wrinklingRemedy,
  };
  return [
    defineCheck({
      ...base,
      code: 'wrinkling-class',
      title: 'Wrinkling of a skin, class coefficient 0.5',
      capacity: computeChecked(wrinklingClass, inputs),
      cite: wrinklingClass.cite,
    }),
    defineCheck({
      ...base,
      code: 'wrinkling-yardstick',
      title: 'Wrinkling of a skin, small-craft coefficient 0.3',
      capacity: computeChecked(wrinklingYardstick, inputs),
      cite: wrinklingYardstick.cite,
    }),
  ];
}

const wrinklingShare = ({ stressMPa, along, face }: FaceStress): number =>
  Math.abs(stressMPa) / Math.cbrt(along === 'x' ? face.values.modulusXMPa : face.values.modulusYMPa);

const wrinklingRemedy = (excess: number): string =>
  `a denser core: the product of its two moduli must grow ${inWords(excess ** 3)} times, or the skin ${inWords(excess)} times thicker`;

const shearAt = ({ fields }: NamedSpot): number => Math.hypot(fields.qx, fields.qy);

function coreShearChecks(setting: Setting): readonly ReasonedCheck[] {
  const { loaded, state, where, criteria } = setting;
  if (loaded.working === 'inner-skin-alone') return [];
  if (loaded.working === 'separate-skins') {
    return [
      notEstablished({
        code: 'core-shear',
        title: 'Shear in the core',
        unit: 'MPa',
        source: 'ZENKERT-1995',
        where,
        reason: 'the skins carry the load apart; the core as found passes on next to no shear',
      }),
    ];
  }
  const worst = loaded.answer.spots.reduce((most, one) => (shearAt(one) > shearAt(most) ? one : most));
  const shearForce = derived('N/mm', nPerMm(shearAt(worst)), 'shear force per unit width', {
    formula: 'panel.plate',
    title: 'Orthotropic plate with shear deformation',
    symbol: 'T',
    cite: {
      source: 'TIMOSHENKO-PLATES-1959',
      note: 'Navier and Levy series, edges clamped by superposition',
    },
    inputs: plateFigures(state, loaded),
  });
  const demand = computeChecked(coreShearStress, { shearForce, leverMm: state.figures.leverMm });
  const capacity = computeChecked(designCoreShear, {
    share: criteria.coreShearShare(state.values.core.coreType),
    ultimate: state.figures.coreShearStrength,
  });
  return [
    defineCheck({
      code: 'core-shear',
      title: 'Shear in the core',
      where,
      demand,
      capacity,
      cite: yardstickStress,
      governs: worst.name,
      remedy: (excess) =>
        `a core of ${inWords(state.values.core.shearStrengthMPa * excess)} MPa shear strength, or skins ${inWords(state.section.leverMm * excess)} mm apart`,
    }),
  ];
}

function deflectionCheck(
  { loaded, state, where, criteria }: Setting,
  deflectionMm = Math.abs(loaded.answer.deflectionMm),
): ReasonedCheck {
  const span = Math.min(state.size.lengthXMm, state.size.widthYMm);
  const demand = derived('mm', mm(deflectionMm), 'greatest deflection', {
    formula: 'panel.plate',
    title: 'Orthotropic plate with shear deformation',
    symbol: 'w',
    cite: {
      source: 'TIMOSHENKO-PLATES-1959',
      note: 'Navier and Levy series, edges clamped by superposition',
    },
    inputs: plateFigures(state, loaded),
  });
  const capacity = derived('mm', mm(span / criteria.spanOverDeflection.value), 'deflection that may be', {
    formula: 'panel.deflection-limit',
    title: 'Short span over a number',
    symbol: 'w_lim',
    cite: { source: 'LR-SSC-2020', clause: 'deck laminate limits' },
    inputs: {
      span: entered('mm', mm(span), 'short span', state.name === 'opened' ? '/opened' : '/panel'),
      spanOverDeflection: criteria.spanOverDeflection,
    },
  });
  return defineCheck({
    code: 'deflection',
    title: 'Deflection',
    where,
    demand,
    capacity,
    cite: { source: 'LR-SSC-2020', clause: 'deck laminate limits' },
    governs: `deflection at ${inWords(loaded.answer.deflectionAt.xMm)}, ${inWords(loaded.answer.deflectionAt.yMm)} mm`,
    remedy: (excess) =>
      `${inWords(excess)} times the stiffness, by a thicker core, thicker skins or another support`,
  });
}

/** The dent that a heel makes in the outer skin over the core; it needs nothing of the plate. */
export function dentChecks(
  state: Pick<AnalysedState, 'name' | 'values' | 'figures'>,
  load: ResolvedLoad,
  criteria: ResolvedCriteria,
): readonly ReasonedCheck[] {
  const { foot } = load;
  if (foot === undefined) return [];
  const where = { state: state.name, load: load.code };
  const { outer, core } = state.values;
  const { stiffness } = skinPlate(outer);
  const skinBending = Math.sqrt(stiffness.d11 * stiffness.d22);
  const dent = roundPatch(
    { skinBending, foundation: core.compressiveModulusMPa / core.thicknessMm },
    foot.forceN,
    foot.radiusMm,
  );
  const demand = derived('MPa', mPa(dent.coreStressMPa), 'pressure of the skin on the core under a heel', {
    formula: 'panel.dent',
    title: 'Plate on springs under a round patch',
    symbol: 'sigma_c',
    cite: { source: 'PANEL-DERIVED', note: 'Winkler bed E_c/t_c; no published formula could be read' },
    inputs: {
      force: entered('N', newton(foot.forceN), 'force of the foot', '/loads'),
      radius: entered('mm', mm(foot.radiusMm), 'radius of the heel', '/loads'),
      coreModulus: state.figures.coreCompressiveModulus,
      ...state.figures.sizes,
    },
  });
  const capacity = derived(
    'MPa',
    mPa(criteria.coreCrushShare.value * core.compressiveStrengthMPa),
    'usable compressive strength of the core',
    {
      formula: 'panel.core-crush',
      title: 'Share of the compressive strength',
      symbol: 'sigma_c,d',
      cite: { source: 'COMMON-PRACTICE' },
      inputs: { share: criteria.coreCrushShare, strength: state.figures.coreCompressiveStrength },
    },
  );
  return [
    defineCheck({
      code: 'core-dent',
      title: 'Dent of the outer skin under a heel',
      where,
      demand,
      capacity,
      cite: { source: 'PANEL-DERIVED' },
      governs: `core under a heel of ${inWords(foot.radiusMm)} mm radius`,
      remedy: (excess) =>
        `a core of ${inWords(core.compressiveStrengthMPa * excess)} MPa compressive strength, or a thicker outer skin`,
    }),
  ];
}

/** One state over another; at least 1 means that the repair gives back what there was. */
export const ratioFigure = (
  value: number,
  meaning: string,
  inputs: Readonly<Record<string, Figure>>,
): Figure<'1'> =>
  derived('1', fraction(value), meaning, {
    formula: 'panel.ratio',
    title: 'As built over repaired',
    symbol: 'r',
    cite: { source: 'ARITHMETIC' },
    inputs,
  });

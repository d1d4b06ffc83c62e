import { fraction, kgPerM2, mm, mPa } from '#lib/units';
import { assumed, computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { defineCheck, inWords, notEstablished, type ReasonedCheck } from './check.js';
import type { ResolvedCriteria } from './criteria.js';
import { categoryOf, longSideOf, shortSideOf, waterlineOf } from './loads.js';
import type { CraftForPanel, PanelSize } from './panel-request.js';
import { figuresOf } from './state-analysis.js';
import type { SandwichValues, StateName } from '../plate/states.js';
import {
  designCoreShear,
  designSkinStress,
  minimumInnerFibre,
  minimumOuterFibre,
  requiredInertia,
  requiredSectionModulus,
  requiredSkinDistance,
  shearAspectFactor,
  stiffnessAspectFactor,
  strengthAspectFactor,
  stripInertia,
  stripSectionModulus,
} from '../yardstick/yardstick.js';

export interface YardstickSetting {
  readonly state: StateName;
  readonly values: SandwichValues;
  readonly field: string;
  readonly panel: PanelSize;
  readonly pressure: Figure<'kPa'>;
  readonly craft: CraftForPanel | undefined;
  readonly criteria: ResolvedCriteria;
}

const flat: Figure<'1'> = assumed('1', fraction(1), 'curvature factor', {
  at: '/panel',
  because: 'taken flat; camber would help',
  cite: { source: 'ISO-12215-5-2008', clause: 'table 3' },
  low: 0.5,
  high: 1,
});

/** Section properties against what the small-craft yardstick asks under the design pressure: required over present. */
export function yardstickChecks(setting: YardstickSetting): readonly ReasonedCheck[] {
  const aspect = aspectOf(setting.panel);
  const base = { curvatureFactor: flat, pressure: setting.pressure, shortSideMm: shortSideOf(setting.panel) };
  return [
    distanceCheck(setting, { ...base, aspectFactor: computeChecked(shearAspectFactor, { aspect }) }),
    modulusCheck(setting, { ...base, aspectFactor: computeChecked(strengthAspectFactor, { aspect }) }),
    inertiaCheck(setting, { ...base, aspectFactor: computeChecked(stiffnessAspectFactor, { aspect }) }),
    ...fibreChecks(setting),
  ];
}

interface Base {
  readonly curvatureFactor: Figure<'1'>;
  readonly pressure: Figure<'kPa'>;
  readonly shortSideMm: Figure<'mm'>;
  readonly aspectFactor: Figure<'1'>;
}

const whereOf = ({ state }: YardstickSetting): { readonly state: StateName; readonly load: string } => ({
  state,
  load: 'yardstick',
});

const aspectOf = (panel: PanelSize): Figure<'1'> => {
  const long = longSideOf(panel);
  const short = shortSideOf(panel);
  return derived('1', fraction(long.value / short.value), 'long side over short side', {
    formula: 'panel.aspect',
    title: 'Long over short side',
    symbol: 'l/b',
    cite: { source: 'ARITHMETIC' },
    inputs: { long, short },
  });
};

function distanceCheck(setting: YardstickSetting, base: Base): ReasonedCheck {
  const figures = figuresOf(setting.values, setting.field);
  const designShear = computeChecked(designCoreShear, {
    share: setting.criteria.coreShearShare(setting.values.core.coreType),
    ultimate: figures.coreShearStrength,
  });
  return defineCheck({
    code: 'yardstick-core-shear',
    title: 'Distance between skins against the yardstick',
    where: whereOf(setting),
    cite: requiredSkinDistance.cite,
    demand: computeChecked(requiredSkinDistance, { ...base, designShear }),
    capacity: figures.leverMm,
    governs: 'core shear under the yardstick pressure',
    remedy: (excess) =>
      `a core ${inWords(excess)} times as strong in shear, or skins that much further apart`,
  });
}

function stripSizes({ values, field }: YardstickSetting): {
  readonly outerMm: Figure<'mm'>;
  readonly innerMm: Figure<'mm'>;
  readonly coreMm: Figure<'mm'>;
} {
  return {
    outerMm: entered('mm', mm(values.outer.thicknessMm), 'outer skin', `${field}/outer/thicknessMm`),
    innerMm: entered('mm', mm(values.inner.thicknessMm), 'inner skin', `${field}/inner/thicknessMm`),
    coreMm: entered('mm', mm(values.core.thicknessMm), 'core', `${field}/core/thicknessMm`),
  };
}

function modulusCheck(setting: YardstickSetting, base: Base): ReasonedCheck {
  const { outer } = setting.values;
  const weaker = Math.min(outer.tensileStrengthMPa, outer.tensileStrengthYMPa ?? Infinity);
  const designStress = computeChecked(designSkinStress, {
    share: setting.criteria.skinShare,
    ultimate: entered(
      'MPa',
      mPa(weaker),
      'tensile strength of the outer skin',
      `${setting.field}/outer/tensileStrengthMPa`,
    ),
  });
  return defineCheck({
    code: 'yardstick-section-modulus',
    title: 'Section modulus at the outer face against the yardstick',
    where: whereOf(setting),
    cite: requiredSectionModulus.cite,
    demand: computeChecked(requiredSectionModulus, { ...base, designStress }),
    capacity: computeChecked(stripSectionModulus, stripSizes(setting)),
    governs: 'bending of the outer skin under the yardstick pressure',
    remedy: (excess) =>
      `an outer skin about ${inWords(outer.thicknessMm * excess)} mm thick, or a thicker core`,
  });
}

function inertiaCheck(setting: YardstickSetting, base: Base): ReasonedCheck {
  const { outer, inner } = setting.values;
  const mean = (outer.modulusXMPa + outer.modulusYMPa + inner.modulusXMPa + inner.modulusYMPa) / 4;
  const skinModulus = derived('MPa', mPa(mean), 'mean modulus of the skins', {
    formula: 'panel.mean-modulus',
    title: 'Mean of both skins and directions',
    symbol: 'E',
    cite: { source: 'ARITHMETIC' },
    inputs: figuresOf(setting.values, setting.field).sizes,
  });
  return defineCheck({
    code: 'yardstick-inertia',
    title: 'Stiffness of the section against the yardstick',
    where: whereOf(setting),
    cite: requiredInertia.cite,
    demand: computeChecked(requiredInertia, { ...base, skinModulus }),
    capacity: computeChecked(stripInertia, stripSizes(setting)),
    governs: 'deflection under the yardstick pressure',
    remedy: (excess) => `${inWords(excess)} times the second moment of area, best by a thicker core`,
  });
}

/** Least dry fibre in each skin; knocks and feet, rather than pressure, ask for it. */
function fibreChecks(setting: YardstickSetting): readonly ReasonedCheck[] {
  const { craft, values, field } = setting;
  if (craft === undefined) return [];
  const one = (meaning: string, because: string, value: number): Figure<'1'> =>
    assumed('1', fraction(value), meaning, {
      at: '/craft',
      because,
      cite: { source: 'ISO-12215-5-2008', clause: 'eq. 44' },
    });
  const outerFibre = computeChecked(minimumOuterFibre, {
    categoryFactor: categoryOf(craft),
    placeFactor: one('place factor', 'a deck', 0.7),
    fibreFactor: one('fibre factor', 'glass', 1),
    careFactor: one('care factor', 'ordinary use', 1),
    lengthWaterlineM: waterlineOf(craft),
  });
  const innerFibre = computeChecked(minimumInnerFibre, { outerFibre });
  const check = (skin: 'outer' | 'inner', demand: Figure<'kg/m2'>): ReasonedCheck => {
    const have = values[skin].dryFibreKgPerM2;
    const code = `minimum-${skin}-fibre`;
    const title = `Dry fibre in the ${skin} skin`;
    if (have === undefined)
      return notEstablished({
        code,
        title,
        unit: 'kg/m2',
        source: 'ISO-12215-5-2008',
        where: whereOf(setting),
        reason: 'the dry fibre mass of the skin was not given',
      });
    return defineCheck({
      code,
      title,
      where: whereOf(setting),
      demand,
      cite: minimumOuterFibre.cite,
      governs: 'least fibre mass by length of craft',
      capacity: entered('kg/m2', kgPerM2(have), 'dry fibre of the skin', `${field}/${skin}/dryFibreKgPerM2`),
      remedy: () => `at least ${inWords(demand.value)} kg/m2 of dry fibre`,
    });
  };
  return [check('outer', outerFibre), check('inner', innerFibre)];
}

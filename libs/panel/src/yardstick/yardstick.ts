import { fraction, kgPerM2, kPa, mm, mm2, mm3, mPa } from '#lib/units';
import { defineFormula } from '#lib/provenance';

/** Equations of the small-craft yardstick of 2008, as a comparison; never a claim to meet it. Read second-hand. */
const cited = (clause: string) => ({ source: 'ISO-12215-5-2008', clause });

export type DesignCategory = 'A' | 'B' | 'C' | 'D';

export const designCategoryFactor: Readonly<Record<DesignCategory, number>> = {
  A: 1,
  B: 0.8,
  C: 0.6,
  D: 0.4,
};

/** Share of the ultimate core shear that may be used. */
export const coreShearShare = {
  'end-grain-balsa': 0.5,
  'cross-linked-foam': 0.55,
  'san-foam': 0.65,
  'linear-foam': 0.65,
  'marine-plywood': 0.5,
} as const;

/** By hand: 0.35 x 10 + 14.6 = 18.1. */
export const motorDeckBasePressure = defineFormula({
  id: 'panel.yardstick.motor-deck-base-pressure',
  title: 'Base pressure on the weather deck of a motor craft',
  cite: cited('eq. 16'),
  inputs: {
    lengthWaterlineM: { symbol: 'LWL', unit: 'm', meaning: 'length of the waterline', above: 0, upTo: 24 },
  },
  output: { symbol: 'P_base', unit: 'kPa', meaning: 'base pressure' },
  evaluate: ({ lengthWaterlineM }) => kPa(0.35 * lengthWaterlineM + 14.6),
  worked: [{ at: 'by hand', given: { lengthWaterlineM: 10 }, printed: '18.1' }],
});

/** By hand: 0.5 x 5000^0.33 = 0.5 x 16.622 = 8.31; plus 12. */
export const sailDeckBasePressure = defineFormula({
  id: 'panel.yardstick.sail-deck-base-pressure',
  title: 'Base pressure on the weather deck of a sailing craft',
  cite: cited('clause 7'),
  inputs: { massLoadedKg: { symbol: 'mLDC', unit: 'kg', meaning: 'mass of the loaded craft', above: 0 } },
  output: { symbol: 'P_base', unit: 'kPa', meaning: 'base pressure' },
  evaluate: ({ massLoadedKg }) => kPa(0.5 * massLoadedKg ** 0.33 + 12),
  worked: [{ at: 'by hand', given: { massLoadedKg: 5000 }, printed: '20.31' }],
});

/** b 400 x 1000 mm, 26,900 kg: the reference panel of the second-hand tests. */
export const areaReduction = defineFormula({
  id: 'panel.yardstick.area-reduction',
  title: 'Area pressure reduction factor of a plate',
  cite: cited('eq. 3'),
  inputs: {
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side of the panel', above: 0, upTo: 5000 },
    longSideMm: { symbol: 'l', unit: 'mm', meaning: 'long side of the panel', above: 0 },
    massLoadedKg: { symbol: 'mLDC', unit: 'kg', meaning: 'mass of the loaded craft', above: 0 },
    floorFactor: {
      symbol: 'k_AR,min',
      unit: '1',
      meaning: 'least value: 0.4 sandwich, 0.25 single skin',
      from: 0,
      upTo: 1,
    },
  },
  output: { symbol: 'k_AR', unit: '1', meaning: 'area pressure reduction factor' },
  evaluate: ({ shortSideMm, longSideMm, massLoadedKg, floorFactor }) => {
    const designAreaM2 = (Math.min(longSideMm, 2.5 * shortSideMm) * shortSideMm) / MM2_IN_M2;
    const kR = 1.5 - 3e-4 * shortSideMm;
    return fraction(
      Math.min(1, Math.max(floorFactor, (kR * 0.1 * massLoadedKg ** 0.15) / designAreaM2 ** 0.3)),
    );
  },
  worked: [
    {
      at: 'reference panel',
      given: { shortSideMm: 400, longSideMm: 1000, massLoadedKg: 26900, floorFactor: 0.25 },
      printed: '0.839',
    },
  ],
});

const MM2_IN_M2 = 1000 * 1000;

export const lengthwiseFactor = defineFormula({
  id: 'panel.yardstick.lengthwise-factor',
  title: 'Lengthwise pressure distribution factor',
  cite: cited('eq. 4'),
  inputs: {
    shareOfWaterline: {
      symbol: 'x/LWL',
      unit: '1',
      meaning: 'place of the panel from aft over the waterline',
      from: 0,
      upTo: 1,
    },
    dynamicLoadFactor: {
      symbol: 'n_CG',
      unit: '1',
      meaning: 'dynamic load factor in g; taken as 3 at least and 6 at most',
      from: 0,
      upTo: 20,
    },
  },
  output: { symbol: 'k_L', unit: '1', meaning: 'lengthwise factor' },
  evaluate: ({ shareOfWaterline, dynamicLoadFactor }) => {
    const n = Math.min(6, Math.max(3, dynamicLoadFactor));
    return fraction(
      shareOfWaterline > 0.6 ? 1 : Math.min(1, ((1 - 0.167 * n) / 0.6) * shareOfWaterline + 0.167 * n),
    );
  },
  worked: [
    {
      at: 'deck example, by hand: 0.499/0.6 x 0.3 + 0.501',
      given: { shareOfWaterline: 0.3, dynamicLoadFactor: 3 },
      printed: '0.7505',
    },
  ],
});

export const deckPressure = defineFormula({
  id: 'panel.yardstick.deck-pressure',
  title: 'Design pressure of a weather deck',
  cite: cited('eq. 15 to 17'),
  inputs: {
    basePressure: { symbol: 'P_base', unit: 'kPa', meaning: 'base pressure', above: 0 },
    areaFactor: { symbol: 'k_AR', unit: '1', meaning: 'area pressure reduction factor', above: 0, upTo: 1 },
    categoryFactor: { symbol: 'k_DC', unit: '1', meaning: 'design category factor', above: 0, upTo: 1 },
    lengthwiseFactor: { symbol: 'k_L', unit: '1', meaning: 'lengthwise factor', above: 0, upTo: 1 },
  },
  output: { symbol: 'P_D', unit: 'kPa', meaning: 'design pressure, not under 5 kN/m2' },
  evaluate: ({ basePressure, areaFactor, categoryFactor, lengthwiseFactor: kL }) =>
    kPa(Math.max(5, basePressure * areaFactor * categoryFactor * kL)),
  worked: [
    {
      at: 'by hand: 18.1 x 0.6513 x 1 x 0.7505',
      given: { basePressure: 18.1, areaFactor: 0.6513, categoryFactor: 1, lengthwiseFactor: 0.7505 },
      printed: '8.847',
    },
    {
      at: 'small light craft, floor',
      given: { basePressure: 16.35, areaFactor: 0.51, categoryFactor: 0.6, lengthwiseFactor: 0.668 },
      printed: '5',
    },
  ],
});

const aspectInput = {
  aspect: { symbol: 'l/b', unit: '1', meaning: 'long side over short side', from: 1 },
} as const;

/** The polynomial serves up to 2; beyond, the table prints 0.5. */
export const strengthAspectFactor = defineFormula({
  id: 'panel.yardstick.k2',
  title: 'Aspect factor for bending strength',
  cite: cited('table 5'),
  inputs: aspectInput,
  output: { symbol: 'k2', unit: '1', meaning: 'aspect factor for bending strength' },
  evaluate: ({ aspect: r }) =>
    fraction(
      r > 2
        ? 0.5
        : Math.min(0.5, Math.max(0.308, (0.271 * r * r + 0.91 * r - 0.554) / (r * r - 0.313 * r + 1.351))),
    ),
  worked: [
    { at: 'table 5', given: { aspect: 1 }, printed: '0.308' },
    { at: 'table 5', given: { aspect: 1.5 }, printed: '0.454' },
    { at: 'table 5', given: { aspect: 2 }, printed: '0.497' },
  ],
});

/** The polynomial serves up to 2; beyond, the table prints 0.028. */
export const stiffnessAspectFactor = defineFormula({
  id: 'panel.yardstick.k3',
  title: 'Aspect factor for bending stiffness',
  cite: cited('table 5'),
  inputs: aspectInput,
  output: { symbol: 'k3', unit: '1', meaning: 'aspect factor for bending stiffness' },
  evaluate: ({ aspect: r }) =>
    fraction(
      r > 2
        ? 0.028
        : Math.min(0.028, Math.max(0.014, (0.027 * r * r - 0.029 * r + 0.011) / (r * r - 1.463 * r + 1.108))),
    ),
  worked: [
    { at: 'table 5', given: { aspect: 1 }, printed: '0.014' },
    { at: 'table 5', given: { aspect: 1.5 }, printed: '0.024' },
    { at: 'table 5', given: { aspect: 2 }, printed: '0.028' },
  ],
});

/** The polynomial serves below 2; beyond, the printed 0.463, 0.493 and 0.5 at 2, 3 and 4 are joined by straight lines. */
export const shearAspectFactor = defineFormula({
  id: 'panel.yardstick.k-shc',
  title: 'Aspect factor for core shear',
  cite: cited('table 12'),
  inputs: aspectInput,
  output: { symbol: 'k_SHC', unit: '1', meaning: 'aspect factor for core shear' },
  evaluate: ({ aspect: r }) => {
    if (r < 2) return fraction(0.035 + 0.394 * r - 0.09 * r * r);
    if (r < 3) return fraction(0.463 + 0.03 * (r - 2));
    return fraction(Math.min(0.5, 0.493 + 0.007 * (r - 3)));
  },
  worked: [
    { at: 'table 12', given: { aspect: 1 }, printed: '0.339' },
    { at: 'table 12', given: { aspect: 2 }, printed: '0.463' },
    { at: 'table 12', given: { aspect: 3 }, printed: '0.493' },
  ],
});

/** Reference panel of the second-hand tests: 400 sqrt(48.6 x 0.5/(1000 x 60.9)) = 7.990. */
export const requiredSingleSkin = defineFormula({
  id: 'panel.yardstick.required-single-skin',
  title: 'Least thickness of a single skin',
  cite: cited('eq. 35'),
  inputs: {
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side of the panel', above: 0 },
    curvatureFactor: { symbol: 'k_C', unit: '1', meaning: 'curvature factor', from: 0.5, upTo: 1 },
    pressure: { symbol: 'P', unit: 'kPa', meaning: 'design pressure', above: 0 },
    aspectFactor: {
      symbol: 'k2',
      unit: '1',
      meaning: 'aspect factor for bending strength',
      above: 0,
      upTo: 0.5,
    },
    designStress: { symbol: 'sigma_d', unit: 'MPa', meaning: 'design flexural stress', above: 0 },
  },
  output: { symbol: 't', unit: 'mm', meaning: 'least thickness' },
  evaluate: ({ shortSideMm, curvatureFactor, pressure, aspectFactor, designStress }) =>
    mm(shortSideMm * curvatureFactor * Math.sqrt((pressure * aspectFactor) / (1000 * designStress))),
  worked: [
    {
      at: 'reference panel',
      given: { shortSideMm: 400, curvatureFactor: 1, pressure: 48.6, aspectFactor: 0.5, designStress: 60.9 },
      printed: '7.99',
    },
  ],
});

/** By hand: 0.463 x 8 x 500 / (1000 x 0.495) = 3.741. */
export const requiredSkinDistance = defineFormula({
  id: 'panel.yardstick.required-skin-distance',
  title: 'Least distance between skin middles for core shear',
  cite: cited('clause 10'),
  inputs: {
    curvatureFactor: { symbol: 'k_C', unit: '1', meaning: 'curvature factor', from: 0.5, upTo: 1 },
    aspectFactor: {
      symbol: 'k_SHC',
      unit: '1',
      meaning: 'aspect factor for core shear',
      above: 0,
      upTo: 0.5,
    },
    pressure: { symbol: 'P', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side of the panel', above: 0 },
    designShear: { symbol: 'tau_d', unit: 'MPa', meaning: 'design core shear stress', above: 0 },
  },
  output: { symbol: 't_s', unit: 'mm', meaning: 'required distance between skin middles' },
  evaluate: ({ curvatureFactor, aspectFactor, pressure, shortSideMm, designShear }) =>
    mm((curvatureFactor * aspectFactor * pressure * shortSideMm) / (1000 * designShear)),
  worked: [
    {
      at: 'by hand',
      given: { curvatureFactor: 1, aspectFactor: 0.463, pressure: 8, shortSideMm: 500, designShear: 0.495 },
      printed: '3.741',
    },
  ],
});

/** cm3 per cm of width is 100 mm2. By hand: 500^2 x 5 x 0.5 / (6e5 x 50) = 0.020833 cm3/cm = 2.0833 mm2. */
export const requiredSectionModulus = defineFormula({
  id: 'panel.yardstick.required-section-modulus',
  title: 'Least section modulus of a sandwich panel per unit width',
  cite: cited('clause 10'),
  inputs: {
    curvatureFactor: { symbol: 'k_C', unit: '1', meaning: 'curvature factor', from: 0.5, upTo: 1 },
    aspectFactor: {
      symbol: 'k2',
      unit: '1',
      meaning: 'aspect factor for bending strength',
      above: 0,
      upTo: 0.5,
    },
    pressure: { symbol: 'P', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side of the panel', above: 0 },
    designStress: { symbol: 'sigma_d', unit: 'MPa', meaning: 'design stress of the skin', above: 0 },
  },
  output: { symbol: 'SM', unit: 'mm2', meaning: 'required section modulus per unit width' },
  evaluate: ({ curvatureFactor, aspectFactor, pressure, shortSideMm, designStress }) =>
    mm2((100 * shortSideMm ** 2 * curvatureFactor ** 2 * pressure * aspectFactor) / (6e5 * designStress)),
  worked: [
    {
      at: 'by hand',
      given: { curvatureFactor: 1, aspectFactor: 0.5, pressure: 5, shortSideMm: 500, designStress: 50 },
      printed: '2.0833',
    },
  ],
});

/** cm4 per cm of width is 1000 mm3. By hand: 500^3 x 5 x 0.028 / (12e6 x 0.017 x 14000) = 0.0061275 cm4/cm = 6.1275 mm3. */
export const requiredInertia = defineFormula({
  id: 'panel.yardstick.required-inertia',
  title: 'Least second moment of area of a sandwich panel per unit width',
  cite: cited('clause 10'),
  inputs: {
    curvatureFactor: { symbol: 'k_C', unit: '1', meaning: 'curvature factor', from: 0.5, upTo: 1 },
    aspectFactor: {
      symbol: 'k3',
      unit: '1',
      meaning: 'aspect factor for bending stiffness',
      above: 0,
      upTo: 0.028,
    },
    pressure: { symbol: 'P', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side of the panel', above: 0 },
    skinModulus: { symbol: 'E', unit: 'MPa', meaning: 'mean modulus of the skins', above: 0 },
  },
  output: { symbol: 'I', unit: 'mm3', meaning: 'required second moment of area per unit width' },
  evaluate: ({ curvatureFactor, aspectFactor, pressure, shortSideMm, skinModulus }) =>
    mm3(
      (1000 * shortSideMm ** 3 * curvatureFactor ** 3 * pressure * aspectFactor) /
        (12e6 * DEFLECTION_SHARE * skinModulus),
    ),
  worked: [
    {
      at: 'by hand',
      given: { curvatureFactor: 1, aspectFactor: 0.028, pressure: 5, shortSideMm: 500, skinModulus: 14000 },
      printed: '6.1275',
    },
  ],
});

/** Deflection over span that the stiffness requirement of the yardstick stands for. */
export const DEFLECTION_SHARE = 0.017;

/** By hand: 0.7 x 1 x 1 x (0.1 x 10 + 0.15) = 0.805. One second-hand reading multiplies by k_DC as well. */
export const minimumOuterFibre = defineFormula({
  id: 'panel.yardstick.minimum-outer-fibre',
  title: 'Least dry fibre in the outer skin of a sandwich deck',
  cite: cited('eq. 44'),
  inputs: {
    categoryFactor: {
      symbol: 'k_DC',
      unit: '1',
      meaning: 'design category factor; 1 where it is not applied',
      above: 0,
      upTo: 1,
    },
    placeFactor: { symbol: 'k4', unit: '1', meaning: 'bottom 1, side 0.9, deck 0.7', above: 0, upTo: 1 },
    fibreFactor: { symbol: 'k5', unit: '1', meaning: 'glass 1', above: 0, upTo: 1 },
    careFactor: { symbol: 'k6', unit: '1', meaning: '1; 0.9 where knocks are unlikely', above: 0, upTo: 1 },
    lengthWaterlineM: { symbol: 'LWL', unit: 'm', meaning: 'length of the waterline', above: 0, upTo: 24 },
  },
  output: { symbol: 'w_os', unit: 'kg/m2', meaning: 'least dry fibre mass of the outer skin' },
  evaluate: ({ categoryFactor, placeFactor, fibreFactor, careFactor, lengthWaterlineM }) =>
    kgPerM2(categoryFactor * placeFactor * fibreFactor * careFactor * (0.1 * lengthWaterlineM + 0.15)),
  worked: [
    {
      at: 'by hand',
      given: { categoryFactor: 1, placeFactor: 0.7, fibreFactor: 1, careFactor: 1, lengthWaterlineM: 10 },
      printed: '0.805',
    },
  ],
});

/** By hand: 0.7 x 0.805 = 0.5635. */
export const minimumInnerFibre = defineFormula({
  id: 'panel.yardstick.minimum-inner-fibre',
  title: 'Least dry fibre in the inner skin of a sandwich deck',
  cite: cited('eq. 45'),
  inputs: {
    outerFibre: {
      symbol: 'w_os',
      unit: 'kg/m2',
      meaning: 'least dry fibre mass of the outer skin',
      above: 0,
    },
  },
  output: { symbol: 'w_is', unit: 'kg/m2', meaning: 'least dry fibre mass of the inner skin' },
  evaluate: ({ outerFibre }) => kgPerM2(0.7 * outerFibre),
  worked: [{ at: 'by hand', given: { outerFibre: 0.805 }, printed: '0.5635' }],
});

/** By hand at 12 m: 0.25 + 0.03 x 2 = 0.31. Written for the bottom; on a deck it is a mark, not a rule. */
export const minimumCoreStrength = defineFormula({
  id: 'panel.yardstick.minimum-core-strength',
  title: 'Least core shear strength by length of hull',
  cite: cited('clause 10'),
  inputs: { lengthHullM: { symbol: 'L_H', unit: 'm', meaning: 'length of the hull', above: 0, upTo: 24 } },
  output: { symbol: 'tau_min', unit: 'MPa', meaning: 'least core shear strength' },
  evaluate: ({ lengthHullM }) => mPa(Math.min(0.4, 0.25 + 0.03 * Math.max(0, lengthHullM - 10))),
  worked: [{ at: 'by hand', given: { lengthHullM: 12 }, printed: '0.31' }],
});

/** Strip of equal moduli. By hand: 1.5 and 1.5 mm on 20 mm: 1.5 x 21.5^2/2 + 2 x 3.375/12 = 347.25 mm3 (0.34725 cm4/cm). */
export const stripInertia = defineFormula({
  id: 'panel.yardstick.strip-inertia',
  title: 'Second moment of area of a sandwich strip per unit width',
  cite: cited('annex D'),
  inputs: {
    outerMm: { symbol: 't_o', unit: 'mm', meaning: 'outer skin', above: 0 },
    innerMm: { symbol: 't_i', unit: 'mm', meaning: 'inner skin', above: 0 },
    coreMm: { symbol: 't_c', unit: 'mm', meaning: 'core', above: 0 },
  },
  output: { symbol: 'I', unit: 'mm3', meaning: 'second moment of area per unit width' },
  evaluate: ({ outerMm, innerMm, coreMm }) => mm3(stripInertiaOf(outerMm, innerMm, coreMm)),
  worked: [{ at: 'by hand', given: { outerMm: 1.5, innerMm: 1.5, coreMm: 20 }, printed: '347.25' }],
});

/** By hand: y = 21.5 x 1.5/3 + 0.75 = 11.5; 347.25/11.5 = 30.1957 mm2 (0.301957 cm3/cm). */
export const stripSectionModulus = defineFormula({
  id: 'panel.yardstick.strip-section-modulus',
  title: 'Section modulus of a sandwich strip at its outer face per unit width',
  cite: cited('annex D'),
  inputs: {
    outerMm: { symbol: 't_o', unit: 'mm', meaning: 'skin whose face is asked for', above: 0 },
    innerMm: { symbol: 't_i', unit: 'mm', meaning: 'the other skin', above: 0 },
    coreMm: { symbol: 't_c', unit: 'mm', meaning: 'core', above: 0 },
  },
  output: { symbol: 'SM', unit: 'mm2', meaning: 'section modulus per unit width' },
  evaluate: ({ outerMm, innerMm, coreMm }) =>
    mm2(stripInertiaOf(outerMm, innerMm, coreMm) / outerFaceDistance(outerMm, innerMm, coreMm)),
  worked: [{ at: 'by hand', given: { outerMm: 1.5, innerMm: 1.5, coreMm: 20 }, printed: '30.1957' }],
});

const stripInertiaOf = (outer: number, inner: number, core: number): number => {
  const distance = core + (outer + inner) / 2;
  return (outer * inner * distance ** 2) / (outer + inner) + (outer ** 3 + inner ** 3) / 12;
};

/** From the outer face to the neutral axis. */
export const outerFaceDistance = (outer: number, inner: number, core: number): number => {
  const distance = core + (outer + inner) / 2;
  return (distance * inner) / (outer + inner) + outer / 2;
};

/** By hand: 0.5 x 200 = 100. */
export const designSkinStress = defineFormula({
  id: 'panel.yardstick.design-skin-stress',
  title: 'Design stress of a skin',
  cite: cited('table 11'),
  inputs: {
    share: { symbol: 'k', unit: '1', meaning: 'share of the ultimate', above: 0, upTo: 1 },
    ultimate: { symbol: 'sigma_u', unit: 'MPa', meaning: 'ultimate strength', above: 0 },
  },
  output: { symbol: 'sigma_d', unit: 'MPa', meaning: 'design stress' },
  evaluate: ({ share, ultimate }) => mPa(share * ultimate),
  worked: [{ at: 'by hand', given: { share: 0.5, ultimate: 200 }, printed: '100' }],
});

/** By hand: 0.55 x 1.12 = 0.616. */
export const designCoreShear = defineFormula({
  id: 'panel.yardstick.design-core-shear',
  title: 'Design shear stress of a core',
  cite: cited('table 11'),
  inputs: {
    share: {
      symbol: 'k',
      unit: '1',
      meaning: 'balsa 0.5, cross-linked foam 0.55, linear and SAN foam 0.65',
      above: 0,
      upTo: 1,
    },
    ultimate: { symbol: 'tau_u', unit: 'MPa', meaning: 'ultimate shear strength', above: 0 },
  },
  output: { symbol: 'tau_d', unit: 'MPa', meaning: 'design core shear stress' },
  evaluate: ({ share, ultimate }) => mPa(share * ultimate),
  worked: [{ at: 'by hand', given: { share: 0.55, ultimate: 1.12 }, printed: '0.616' }],
});

export const yardstickFormulas = [
  motorDeckBasePressure,
  sailDeckBasePressure,
  areaReduction,
  lengthwiseFactor,
  deckPressure,
  strengthAspectFactor,
  stiffnessAspectFactor,
  shearAspectFactor,
  requiredSingleSkin,
  requiredSkinDistance,
  requiredSectionModulus,
  requiredInertia,
  minimumOuterFibre,
  minimumInnerFibre,
  minimumCoreStrength,
  stripInertia,
  stripSectionModulus,
  designSkinStress,
  designCoreShear,
] as const;

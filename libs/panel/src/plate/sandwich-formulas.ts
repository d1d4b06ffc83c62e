import { mm, mPa, nmm, nPerMm } from '#lib/units';
import { defineFormula } from '#lib/provenance';

const skinMm = { symbol: 't_f', unit: 'mm', meaning: 'skin thickness', above: 0 } as const;
const skinModulus = { symbol: 'E_f', unit: 'MPa', meaning: 'modulus of the skin', above: 0 } as const;
const coreMm = { symbol: 't_c', unit: 'mm', meaning: 'core thickness', above: 0 } as const;
const coreShearModulus = {
  symbol: 'G_c',
  unit: 'MPa',
  meaning: 'shear modulus of the core',
  above: 0,
} as const;
const leverMm = { symbol: 'd', unit: 'mm', meaning: 'distance between skin middles', above: 0 } as const;
const coreModulus = {
  symbol: 'E_c',
  unit: 'MPa',
  meaning: 'modulus of the core through its thickness',
  above: 0,
} as const;

/** By hand: 14000 x 1.5 x 21.5^2/2 = 4 853 625; 14000 x 1.5^3/6 = 7 875; 60 x 20^3/12 = 40 000. */
export const equalSkinBending = defineFormula({
  id: 'panel.sandwich.equal-skin-bending',
  title: 'Bending stiffness of a sandwich beam with equal skins',
  cite: { source: 'ZENKERT-1995', clause: 'eq. 3.4' },
  inputs: {
    skinModulus,
    skinMm,
    coreMm,
    coreInPlaneModulus: { symbol: 'E_c', unit: 'MPa', meaning: 'modulus of the core in its plane', from: 0 },
  },
  output: { symbol: 'D', unit: 'N.mm', meaning: 'bending stiffness per unit width' },
  evaluate: ({ skinModulus: E, skinMm: t, coreMm: c, coreInPlaneModulus: Ec }) =>
    nmm((E * t * (c + t) ** 2) / 2 + (E * t ** 3) / 6 + (Ec * c ** 3) / 12),
  worked: [
    {
      at: 'by hand',
      given: { skinModulus: 14000, skinMm: 1.5, coreMm: 20, coreInPlaneModulus: 60 },
      printed: '4901500',
    },
  ],
});

/** Fair within 1 % when d/t_f is above 5.77 and 6 E_f t_f d^2/(E_c t_c^3) above 100. */
export const thinSkinBending = defineFormula({
  id: 'panel.sandwich.thin-skin-bending',
  title: 'Bending stiffness of a sandwich with thin unequal skins',
  cite: { source: 'ZENKERT-1995', clause: '§3.1' },
  inputs: {
    outerModulus: { symbol: 'E_o', unit: 'MPa', meaning: 'modulus of the outer skin', above: 0 },
    outerMm: { symbol: 't_o', unit: 'mm', meaning: 'outer skin', above: 0 },
    innerModulus: { symbol: 'E_i', unit: 'MPa', meaning: 'modulus of the inner skin', above: 0 },
    innerMm: { symbol: 't_i', unit: 'mm', meaning: 'inner skin', above: 0 },
    leverMm,
  },
  output: { symbol: 'D', unit: 'N.mm', meaning: 'bending stiffness per unit width' },
  evaluate: ({ outerModulus, outerMm, innerModulus, innerMm, leverMm: d }) => {
    const outer = outerModulus * outerMm;
    const inner = innerModulus * innerMm;
    return nmm(((outer * inner) / (outer + inner)) * d ** 2);
  },
  worked: [
    {
      at: 'by hand: 21000/2 x 21.5^2',
      given: { outerModulus: 14000, outerMm: 1.5, innerModulus: 14000, innerMm: 1.5, leverMm: 21.5 },
      printed: '4853625',
    },
  ],
});

/** By hand: 23 x 21.5^2/20 = 531.5875. */
export const shearStiffness = defineFormula({
  id: 'panel.sandwich.shear-stiffness',
  title: 'Shear stiffness of a sandwich',
  cite: { source: 'ZENKERT-1995', clause: '§3.1' },
  inputs: { coreShearModulus, leverMm, coreMm },
  output: { symbol: 'S', unit: 'N/mm', meaning: 'shear stiffness per unit width' },
  evaluate: ({ coreShearModulus: G, leverMm: d, coreMm: c }) => nPerMm((G * d ** 2) / c),
  worked: [
    { at: 'by hand', given: { coreShearModulus: 23, leverMm: 21.5, coreMm: 20 }, printed: '531.5875' },
  ],
});

/** By hand: 10.5/21.5 = 0.48837. */
export const coreShearStress = defineFormula({
  id: 'panel.sandwich.core-shear-stress',
  title: 'Shear stress in the core',
  cite: { source: 'ZENKERT-1995', clause: '§3.1' },
  inputs: {
    shearForce: { symbol: 'T', unit: 'N/mm', meaning: 'shear force per unit width', from: 0 },
    leverMm,
  },
  output: { symbol: 'tau', unit: 'MPa', meaning: 'shear stress in the core' },
  evaluate: ({ shearForce, leverMm: d }) => mPa(shearForce / d),
  worked: [{ at: 'by hand', given: { shearForce: 10.5, leverMm: 21.5 }, printed: '0.48837' }],
});

/** By hand: 14000 x 65 x 23.7 = 21 567 000; cube root 278.36; half 139.18. No second knock-down belongs on it. */
export const wrinklingClass = defineFormula({
  id: 'panel.wrinkling.class',
  title: 'Wrinkling stress of a skin on its core, design coefficient 0.5',
  cite: { source: 'ZENKERT-1995', clause: 'chapter 6, design value; class rule LR part 8' },
  inputs: { skinModulus, coreModulus, coreShearModulus },
  output: {
    symbol: 'sigma_cr',
    unit: 'MPa',
    meaning: 'compressive stress at which a skin wrinkles, for design',
  },
  evaluate: ({ skinModulus: E, coreModulus: Ec, coreShearModulus: G }) => mPa(0.5 * Math.cbrt(E * Ec * G)),
  worked: [
    {
      at: 'by hand',
      given: { skinModulus: 14000, coreModulus: 65, coreShearModulus: 23.7 },
      printed: '139.2',
    },
  ],
});

/** By hand: 0.3 x 278.36 = 83.5. */
export const wrinklingYardstick = defineFormula({
  id: 'panel.wrinkling.yardstick',
  title: 'Wrinkling design stress of the small-craft yardstick, coefficient 0.3',
  cite: { source: 'ISO-12215-5-2008', clause: 'eq. 41' },
  inputs: { skinModulus, coreModulus, coreShearModulus },
  output: {
    symbol: 'sigma_d',
    unit: 'MPa',
    meaning: 'design compressive stress of a skin against wrinkling',
  },
  evaluate: ({ skinModulus: E, coreModulus: Ec, coreShearModulus: G }) => mPa(0.3 * Math.cbrt(E * Ec * G)),
  worked: [
    {
      at: 'by hand',
      given: { skinModulus: 14000, coreModulus: 65, coreShearModulus: 23.7 },
      printed: '83.5',
    },
  ],
});

/**
 * Half-wave depth of a wrinkle into the core; a core deeper than two of them lets the thick-core formula hold.
 * Worked: 0.91 t_f (70000 x 100/40^2)^(1/3) = 0.91 x 16.355 = 14.88 per mm of skin; the source prints a core of about 30 t_f.
 */
export const wrinkleDepth = defineFormula({
  id: 'panel.wrinkling.depth',
  title: 'Depth to which a wrinkle of the skin disturbs the core',
  cite: { source: 'FROM-MEMORY', note: 'Hoff and Mautner' },
  inputs: { skinMm, skinModulus, coreModulus, coreShearModulus },
  output: { symbol: 'h', unit: 'mm', meaning: 'depth of the disturbed core' },
  evaluate: ({ skinMm: t, skinModulus: E, coreModulus: Ec, coreShearModulus: G }) =>
    mm(0.91 * t * Math.cbrt((E * Ec) / G ** 2)),
  worked: [
    {
      at: 'by hand',
      given: { skinMm: 1, skinModulus: 70000, coreModulus: 100, coreShearModulus: 40 },
      printed: '14.88',
    },
  ],
});

/** By hand: 2 x 1e4/(1 - 0.09) x (1/6)^2 = 610.5. */
export const dimplingStress = defineFormula({
  id: 'panel.dimpling',
  title: 'Dimpling stress of a skin over an open cell or kerf',
  cite: { source: 'ZENKERT-1995', clause: 'chapter 6' },
  inputs: {
    skinModulus,
    skinMm,
    poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio of the skin", from: 0, below: 1 },
    gapMm: { symbol: 's', unit: 'mm', meaning: 'width of the cell or kerf', above: 0 },
  },
  output: { symbol: 'sigma_cr', unit: 'MPa', meaning: 'compressive stress at which a skin dimples' },
  evaluate: ({ skinModulus: E, skinMm: t, poisson, gapMm }) =>
    mPa(((2 * E) / (1 - poisson ** 2)) * (t / gapMm) ** 2),
  worked: [
    { at: 'by hand', given: { skinModulus: 10000, skinMm: 1, poisson: 0.3, gapMm: 6 }, printed: '610.5' },
  ],
});

export const sandwichFormulas = [
  equalSkinBending,
  thinSkinBending,
  shearStiffness,
  coreShearStress,
  wrinklingClass,
  wrinklingYardstick,
  wrinkleDepth,
  dimplingStress,
] as const;

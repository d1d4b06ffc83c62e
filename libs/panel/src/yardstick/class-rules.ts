import { fraction, gPerM2, kPa, mm, mPa } from '#lib/units';
import { defineFormula } from '#lib/provenance';

/** Coefficients of class rules, each under its own name; they are never mixed with the small-craft yardstick. */
const lr = (clause: string) => ({ source: 'LR-SSC-2020', clause: `part 8 chapter 3 ${clause}` });
const aspect = { symbol: 'AR', unit: '1', meaning: 'long side over short side', from: 1 } as const;

export const lrShearFactor = defineFormula({
  id: 'panel.lr.shear-factor',
  title: 'Core shear factor by aspect',
  cite: lr('1.14.9'),
  inputs: { aspect },
  output: { symbol: 'k_s', unit: '1', meaning: 'core shear factor' },
  evaluate: ({ aspect: r }) => fraction(r <= 2 ? 0.32 * r + 0.36 : 1),
  worked: [
    { at: '1.14.9', given: { aspect: 1 }, printed: '0.68' },
    { at: 'guidance note panel', given: { aspect: 2000 / 700 }, printed: '1.0' },
  ],
});

/** By hand: 0.05 x 700 x 1/(2 x 20 + 8) = 0.72917 (p in kN/m2 divided by 1000). */
export const lrCoreShearStress = defineFormula({
  id: 'panel.lr.core-shear-stress',
  title: 'Core shear stress of a class rule',
  cite: lr('1.14.9'),
  inputs: {
    pressure: { symbol: 'p', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side', above: 0 },
    shearFactor: { symbol: 'k_s', unit: '1', meaning: 'core shear factor', above: 0, upTo: 1 },
    coreMm: { symbol: 't_c', unit: 'mm', meaning: 'core', above: 0 },
    bothSkinsMm: { symbol: 't_s', unit: 'mm', meaning: 'both skins together', above: 0 },
  },
  output: { symbol: 'tau', unit: 'MPa', meaning: 'core shear stress' },
  evaluate: ({ pressure, shortSideMm, shearFactor, coreMm, bothSkinsMm }) =>
    mPa((pressure * shortSideMm * shearFactor) / (1000 * (2 * coreMm + bothSkinsMm))),
  worked: [
    {
      at: 'by hand',
      given: { pressure: 50, shortSideMm: 700, shearFactor: 1, coreMm: 20, bothSkinsMm: 8 },
      printed: '0.72917',
    },
  ],
});

export const lrAspectFactor = defineFormula({
  id: 'panel.lr.aspect-factor',
  title: 'Panel aspect correction',
  cite: lr('1.10.1'),
  inputs: { aspect: { ...aspect, upTo: 2 } },
  output: { symbol: 'K_AR', unit: '1', meaning: 'aspect correction' },
  evaluate: ({ aspect: r }) => fraction(0.56 + 0.63 * Math.log(r)),
  worked: [
    { at: '1.10.1', given: { aspect: 1 }, printed: '0.56' },
    { at: '1.10.1', given: { aspect: 2 }, printed: '0.997' },
  ],
});

/**
 * The transcription groups D_s ambiguously; with the distance between skin middles it returns the clamped strip at an aspect
 * of 3, which is how it is written here. By hand at AR 3: k_db 1, k_ds 1, the strip itself.
 */
export const lrPanelDeflection = defineFormula({
  id: 'panel.lr.deflection',
  title: 'Deflection of a sandwich panel by a class rule',
  cite: lr('1.14'),
  inputs: {
    pressure: { symbol: 'p', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side', above: 0 },
    aspect,
    bending: {
      symbol: 'D_s',
      unit: 'N.mm',
      meaning: 'bending stiffness per unit width, of a beam',
      above: 0,
    },
    poisson: { symbol: 'nu', unit: '1', meaning: "Poisson's ratio of the skins", from: 0, below: 1 },
    shear: {
      symbol: 'G t_c',
      unit: 'N/mm',
      meaning: 'shear modulus times core thickness, as the rule has it',
      above: 0,
    },
  },
  output: { symbol: 'delta', unit: 'mm', meaning: 'deflection' },
  evaluate: ({ pressure, shortSideMm: b, aspect: r, bending, poisson, shear }) => {
    const bendingShare = r <= 2 ? 1.5 - 1 / r : 1;
    const shearShare = r <= 3 ? 1.2 - 0.6 / r : 1;
    return mm(
      ((pressure * b * b) / 8000) *
        ((b * b * (1 - poisson ** 2) * bendingShare) / (48 * bending) + shearShare / shear),
    );
  },
  worked: [
    {
      at: 'by hand: 156.25 (250000 x 0.91/(48 x 4853625) + 1/460)',
      given: { pressure: 5, shortSideMm: 500, aspect: 3, bending: 4853625, poisson: 0.3, shear: 460 },
      printed: '0.49225',
    },
  ],
});

/** By hand at a knife edge: k = 1; 50 x 700^2/12e5 = 20.4167 N.m per cm, which is 2041.67 N.mm per mm. */
export const lrEdgeMomentShare = defineFormula({
  id: 'panel.lr.edge-moment-share',
  title: 'Share k of the fixed-end moment at a stiffener of some width',
  cite: lr('1.9'),
  inputs: {
    baseShare: {
      symbol: 'gamma',
      unit: '1',
      meaning: 'width of the stiffener base over the span',
      from: 0,
      upTo: 1,
    },
  },
  output: { symbol: 'k', unit: '1', meaning: 'share of p b^2/12 at the edge; 1.5 - k of it at the middle' },
  evaluate: ({ baseShare: g }) => fraction((g ** 3 + 1) / (g + 1)),
  worked: [
    { at: 'knife edge', given: { baseShare: 0 }, printed: '1' },
    { at: 'by hand: 1.008/1.2', given: { baseShare: 0.2 }, printed: '0.84' },
  ],
});

/** Weather deck pressure asked by a class rule as a minimum, kN/m2. */
export const CLASS_DECK_PRESSURE_KPA = 7;
/** Span over deflection a class rule allows a sandwich deck (its reciprocal). */
export const CLASS_DECK_SPAN_OVER_DEFLECTION = 100;

/** By hand: 0.35 x 1.2 x (5.7 + 1.3) = 2.94. Written for larger craft; below them it is an extrapolation. */
export const absMinimumOuterSkin = defineFormula({
  id: 'panel.abs.minimum-outer-skin',
  title: 'Least outer skin of a class guide',
  cite: { source: 'ABS-YACHTS-2021', clause: '3-2-4/5.1.4(e)' },
  inputs: {
    lengthM: { symbol: 'L', unit: 'm', meaning: 'scantling length', above: 0 },
    placeFactor: { symbol: 'k_3', unit: '1', meaning: 'place factor', above: 0 },
  },
  output: { symbol: 't_o', unit: 'mm', meaning: 'least outer skin' },
  evaluate: ({ lengthM, placeFactor }) => mm(0.35 * placeFactor * (5.7 + 0.26 * lengthM)),
  worked: [
    { at: 'survey row at 5 m', given: { lengthM: 5, placeFactor: 1.2 }, printed: '2.94' },
    { at: 'survey row at 8 m', given: { lengthM: 8, placeFactor: 1.2 }, printed: '3.27' },
  ],
});

export const absMinimumInnerSkin = defineFormula({
  id: 'panel.abs.minimum-inner-skin',
  title: 'Least inner skin of a class guide',
  cite: { source: 'ABS-YACHTS-2021', clause: '3-2-4/5.1.4(e)' },
  inputs: {
    lengthM: { symbol: 'L', unit: 'm', meaning: 'scantling length', above: 0 },
    placeFactor: { symbol: 'k_3', unit: '1', meaning: 'place factor', above: 0 },
  },
  output: { symbol: 't_i', unit: 'mm', meaning: 'least inner skin' },
  evaluate: ({ lengthM, placeFactor }) => mm(0.25 * placeFactor * (5.7 + 0.26 * lengthM)),
  worked: [{ at: 'survey row at 5 m', given: { lengthM: 5, placeFactor: 1.2 }, printed: '2.1' }],
});

/** By hand: 0.5 x 5 x 500/(1000 x 0.475) = 2.6316. */
export const absCoreShearDepth = defineFormula({
  id: 'panel.abs.core-shear-depth',
  title: 'Least mean depth of a sandwich for core shear',
  cite: { source: 'ABS-YACHTS-2021', clause: '3-2-4/5.1.4(c)' },
  inputs: {
    aspectFactor: { symbol: 'v', unit: '1', meaning: 'core shear aspect coefficient', above: 0, upTo: 0.5 },
    pressure: { symbol: 'p', unit: 'kPa', meaning: 'design pressure', above: 0 },
    shortSideMm: { symbol: 's', unit: 'mm', meaning: 'short side', above: 0 },
    designShear: { symbol: 'tau', unit: 'MPa', meaning: 'design core shear', above: 0 },
  },
  output: { symbol: '(d_o + d_c)/2', unit: 'mm', meaning: 'mean of the overall and core depth' },
  evaluate: ({ aspectFactor, pressure, shortSideMm, designShear }) =>
    mm((aspectFactor * pressure * shortSideMm) / (1000 * designShear)),
  worked: [
    {
      at: 'by hand',
      given: { aspectFactor: 0.5, pressure: 5, shortSideMm: 500, designShear: 0.475 },
      printed: '2.6316',
    },
  ],
});

/** The length is not taken below 9.15 m, so that 8 m counts as 9.15 m. */
export const absMinimumSkinFibre = defineFormula({
  id: 'panel.abs.minimum-skin-fibre',
  title: 'Least reinforcement in the outer skin of a sandwich shell',
  cite: { source: 'ABS-ORY-1994', clause: 'table 7.8' },
  inputs: {
    lengthM: { symbol: 'L_1', unit: 'm', meaning: 'length, taken as 9.15 at least', above: 0, upTo: 30.5 },
  },
  output: { symbol: 'W_s', unit: 'g/m2', meaning: 'least dry fibre mass' },
  evaluate: ({ lengthM }) => gPerM2(105 * Math.max(9.15, lengthM) + 138),
  worked: [
    { at: 'by hand: 105 x 12 + 138', given: { lengthM: 12 }, printed: '1398' },
    { at: 'by hand: 105 x 9.15 + 138', given: { lengthM: 8 }, printed: '1098.75' },
  ],
});

/** 6 kN/m2 up to 2 m above the waterline, falling to 3 at 3 m. */
export const glDeckPressure = defineFormula({
  id: 'panel.gl.deck-pressure',
  title: 'Deck pressure by height above the waterline',
  cite: { source: 'GL-HSC-2012', clause: 'C3.5' },
  inputs: { heightM: { symbol: 'z', unit: 'm', meaning: 'height above the waterline', from: 0 } },
  output: { symbol: 'p', unit: 'kPa', meaning: 'deck pressure' },
  evaluate: ({ heightM: z }) => kPa(Math.max(3, Math.min(6, 6 - 3 * (z - 2)))),
  worked: [
    { at: 'panel_deck_01', given: { heightM: 0.5 }, printed: '6' },
    { at: 'panel_deck_02', given: { heightM: 2.5 }, printed: '4.5' },
    { at: 'panel_deck_03', given: { heightM: 4 }, printed: '3' },
  ],
});

/** By hand at 10 m: (0.02 x 10 + 0.76) x 1025 x 9.81/1000 = 984 x 0.00981 = 9.65304. */
export const uslOpenDeckPressure = defineFormula({
  id: 'panel.usl.open-deck-pressure',
  title: 'Load on an exposed freeboard deck, open sea',
  cite: { source: 'USL-5G-2008', clause: 'G.4' },
  inputs: { lengthM: { symbol: 'L', unit: 'm', meaning: 'length', above: 0 } },
  output: { symbol: 'p', unit: 'kPa', meaning: 'deck pressure' },
  evaluate: ({ lengthM }) => kPa(((0.02 * lengthM + 0.76) * 1025 * 9.81) / 1000),
  worked: [{ at: 'by hand', given: { lengthM: 10 }, printed: '9.65304' }],
});

/** Drafts of 1999 and 2004. By hand at 500 mm: 1.1 - 0.2 = 0.9. */
export const draftDeckFactor = defineFormula({
  id: 'panel.draft.deck-factor',
  title: 'Deck pressure factor of the drafts by panel width',
  cite: { source: 'ISO-12215-5-1999-DRAFT', clause: '024' },
  inputs: { shortSideMm: { symbol: 'b', unit: 'mm', meaning: 'short side', above: 0 } },
  output: { symbol: 'f_1', unit: '1', meaning: 'deck pressure factor' },
  evaluate: ({ shortSideMm }) => fraction(Math.max(0.6, 1.1 - (0.4 * shortSideMm) / 1000)),
  worked: [
    { at: 'by hand', given: { shortSideMm: 500 }, printed: '0.9' },
    { at: 'by hand, floor', given: { shortSideMm: 1500 }, printed: '0.6' },
  ],
});

/** By hand at 10 m: 0.35 x 1 x (3.2 + 2.6) = 2.03. */
export const draftMinimumOuterSkin = defineFormula({
  id: 'panel.draft.minimum-outer-skin',
  title: 'Least outer skin of the 1999 draft',
  cite: { source: 'ISO-12215-5-1999-DRAFT', clause: '032' },
  inputs: {
    lengthWaterlineM: { symbol: 'LWL', unit: 'm', meaning: 'length of the waterline', above: 0 },
    placeFactor: { symbol: 'k_4', unit: '1', meaning: 'bottom 1.1, side and deck 1.0', above: 0 },
  },
  output: { symbol: 't_os', unit: 'mm', meaning: 'least outer skin' },
  evaluate: ({ lengthWaterlineM, placeFactor }) => mm(0.35 * placeFactor * (3.2 + 0.26 * lengthWaterlineM)),
  worked: [{ at: 'by hand', given: { lengthWaterlineM: 10, placeFactor: 1 }, printed: '2.03' }],
});

export const classFormulas = [
  lrShearFactor,
  lrCoreShearStress,
  lrAspectFactor,
  lrPanelDeflection,
  lrEdgeMomentShare,
  absMinimumOuterSkin,
  absMinimumInnerSkin,
  absCoreShearDepth,
  absMinimumSkinFibre,
  glDeckPressure,
  uslOpenDeckPressure,
  draftDeckFactor,
  draftMinimumOuterSkin,
] as const;

import {
  beamCases,
  bendTestStress,
  classRules,
  pointLoad,
  roundPatch,
  sandwich,
  sandwichBar,
  sandwichSection,
  skinPlate,
  stiffnessFromTwoSpans,
  supportedPlate,
  yardstick,
  type SandwichValues,
} from '#lib/panel';
import type { PublishedCase } from '../published-case.js';

const skin = (thicknessMm: number, modulus = 14000, poisson = 0.3) => ({
  thicknessMm,
  modulusXMPa: modulus,
  modulusYMPa: modulus,
  shearModulusMPa: modulus / (2 * (1 + poisson)),
  poissonXY: poisson,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 120,
});
const panelOf = (outerMm: number, innerMm: number, coreMm: number, poisson = 0.3): SandwichValues => ({
  outer: skin(outerMm, 14000, poisson),
  inner: skin(innerMm, 14000, poisson),
  core: {
    coreType: 'cross-linked-foam',
    thicknessMm: coreMm,
    shearModulusMPa: 23,
    shearStrengthMPa: 0.95,
    compressiveModulusMPa: 80,
    compressiveStrengthMPa: 1.15,
  },
});
const value = (input: number): never => input as never;

/** D of the exact section over the modulus: with no Poisson's ratio it is the second moment of area. */
const inertia = (outerMm: number, innerMm: number): number =>
  sandwichSection(panelOf(outerMm, innerMm, 20, 0)).stiffness.d11 / 14000;

export const sections: readonly PublishedCase[] = [
  {
    id: 'panel-strip-inertia-equal',
    room: 'panel',
    title: 'Sandwich strip 1.5 + 20 + 1.5 mm, exact section',
    source: 'ISO-12215-5-2008',
    locus: 'annex D, formula read second-hand',
    unit: 'mm4/mm',
    printed: '347.25',
    ours: () => inertia(1.5, 1.5),
    tolerance: { relative: 1e-9, because: 'the same mechanics two ways' },
  },
  {
    id: 'panel-strip-inertia-unequal',
    room: 'panel',
    title: 'Sandwich strip 2 + 20 + 1.5 mm, exact section',
    source: 'ISO-12215-5-2008',
    locus: 'annex D, formula read second-hand',
    unit: 'mm4/mm',
    printed: '406.43006',
    ours: () => inertia(2, 1.5),
  },
  {
    id: 'panel-strip-neutral-axis',
    room: 'panel',
    title: 'Outer face to neutral axis, 2 + 20 + 1.5 mm',
    source: 'ISO-12215-5-2008',
    locus: 'annex D',
    unit: 'mm',
    printed: '10.321429',
    ours: () => yardstick.outerFaceDistance(2, 1.5, 20),
  },
  {
    id: 'panel-strip-stress-per-moment',
    room: 'panel',
    kind: 'independent-method',
    title: 'Stress at the outer face per unit moment is 1/SM',
    source: 'ISO-12215-5-2008',
    locus: 'annex D',
    unit: '1/mm2',
    printed: '-0.03311735',
    ours: () => sandwichSection(panelOf(1.5, 1.5, 20, 0)).outerFace.xx,
    tolerance: { relative: 1e-6, because: '1/30.1956522 to its digits' },
  },
  {
    id: 'panel-thin-skin-limit',
    room: 'panel',
    title: 'Lever over skin at which the thin-skin form errs by 1 %',
    source: 'ZENKERT-1995',
    locus: '§3.1; also LR-SSC-2020 1.14.1',
    unit: '1',
    printed: '5.77',
    ours: () => 10 / Math.sqrt(3),
  },
  {
    id: 'panel-thin-skin-error',
    room: 'panel',
    kind: 'limit',
    title: 'At d/t = 5.7735 the thin-skin form errs by 1 %',
    source: 'ZENKERT-1995',
    locus: '§3.1',
    unit: '1',
    printed: '-0.0099',
    ours: () => sandwichSection(panelOf(1, 1, 10 / Math.sqrt(3) - 1)).thinSkinError,
    tolerance: { absolute: 5e-5, because: '1/101 is 0.0099' },
  },
  {
    id: 'panel-equal-skins-isotropic',
    room: 'panel',
    kind: 'limit',
    title: 'Equal isotropic skins give an isotropic plate: D12/D11',
    source: 'PANEL-DERIVED',
    locus: 'elastic symmetry',
    unit: '1',
    printed: '0.3',
    ours: () => {
      const { d12, d11 } = sandwichSection(panelOf(1.5, 1.5, 20)).stiffness;
      return d12 / d11;
    },
    tolerance: { absolute: 1e-12, because: 'exact' },
  },
  {
    id: 'panel-no-core-is-a-plate',
    room: 'panel',
    kind: 'limit',
    title: 'Skins on a core of next to no thickness bend as one plate of 3 mm',
    source: 'PANEL-DERIVED',
    locus: 'E t3/(12 (1 - nu2))',
    unit: 'N.mm',
    printed: '34615.385',
    ours: () => sandwichSection(panelOf(1.5, 1.5, 1e-6)).stiffness.d11,
    tolerance: { relative: 2e-6, because: 'a core of a millionth of a mm is left' },
  },
];

const zenkertFoam = { skinModulus: value(70000), coreModulus: value(100), coreShearModulus: value(40) };

export const wrinkling: readonly PublishedCase[] = [
  {
    id: 'panel-wrinkle-depth',
    room: 'panel',
    title: 'Core over skin above which the thick-core wrinkling formula holds, aluminium on foam',
    source: 'ZENKERT-1995',
    locus: 'chapter 6 example',
    unit: '1',
    printed: '30',
    ours: () => 2 * sandwich.wrinkleDepth.evaluate({ ...zenkertFoam, skinMm: value(1) }),
  },
];

const point = () => pointLoad({ skinBending: 4326.923, foundation: 4 }, 809.05);
const foot = () => roundPatch({ skinBending: 4326.923, foundation: 4 }, 809.05, 30);

export const dents: readonly PublishedCase[] = [
  {
    id: 'panel-dent-skin',
    room: 'panel',
    title: 'Bending stiffness of a 1.5 mm skin of 14 GPa',
    kind: 'by-hand',
    source: 'PANEL-DERIVED',
    locus: '14000 x 3.375/(12 x 0.91)',
    unit: 'N.mm',
    printed: '4326.923',
    ours: () => skinPlate(skin(1.5)).stiffness.d11,
  },
  {
    id: 'panel-dent-point',
    room: 'panel',
    kind: 'independent-method',
    title: 'Point load on a skin over foam, core stress',
    source: 'PANEL-DERIVED',
    locus: 'Hankel integral',
    unit: 'MPa',
    printed: '3.07',
    ours: () => point().coreStressMPa,
    tolerance: { absolute: 0.006, because: '3.07 as rounded in the record' },
  },
  {
    id: 'panel-dent-foot-depth',
    room: 'panel',
    kind: 'independent-method',
    title: 'Foot of 30 mm radius, depth',
    source: 'PANEL-DERIVED',
    locus: 'Hankel integral by quadrature against the Kelvin function',
    unit: 'mm',
    printed: '0.07676',
    ours: () => foot().depthMm,
  },
  {
    id: 'panel-dent-foot-stress',
    room: 'panel',
    kind: 'independent-method',
    title: 'Foot of 30 mm radius, core stress',
    source: 'PANEL-DERIVED',
    locus: 'Hankel integral by quadrature against the Kelvin function',
    unit: 'MPa',
    printed: '0.307',
    ours: () => foot().coreStressMPa,
  },
];

const bar = { totalMm: 23, coreMm: 20, widthMm: 50, skinModulusMPa: 14000, coreShearModulusMPa: 23 };
const twoSpans = () => stiffnessFromTwoSpans(500, [300, 600], [2.567918683, 12.078139124]);
const kb = (loading: string, ends: string, at = 'midspan'): number =>
  beamCases.find((one) => one.loading === loading && one.ends === ends && one.at === at)?.kb ?? Number.NaN;

export const beams: readonly PublishedCase[] = [
  {
    id: 'panel-beam-kb-quarter',
    room: 'panel',
    title: 'Two loads at the quarter points, midspan',
    source: 'WOOD-HANDBOOK-2010',
    locus: 'table 9-1, 11/768; integration (a/48)(3 L2 - 4 a2) with a = L/4',
    unit: '1',
    printed: '0.0143229167',
    ours: () => (0.5 * 0.25 * (3 - 4 / 16)) / 24 / 1,
    tolerance: { relative: 1e-8, because: 'ten printed digits' },
  },
  {
    id: 'panel-beam-kb-quarter-table',
    room: 'panel',
    title: 'The coefficient kept for quarter-point loads',
    source: 'WOOD-HANDBOOK-2010',
    locus: 'table 9-1',
    unit: '1',
    printed: '0.0143229167',
    ours: () => kb('quarter-points', 'simply-supported'),
  },
  {
    id: 'panel-beam-kb-quarter-load',
    room: 'panel',
    title: 'Two loads at the quarter points, under a load',
    source: 'WOOD-HANDBOOK-2010',
    locus: 'table 9-1',
    unit: '1',
    printed: '0.0104166667',
    ours: () => kb('quarter-points', 'simply-supported', 'load'),
  },
  {
    id: 'panel-two-spans-d',
    room: 'panel',
    kind: 'independent-method',
    title: 'Bending stiffness from two spans',
    source: 'PANEL-DERIVED',
    locus: 'two simultaneous equations',
    unit: 'N.mm2',
    printed: '243075000',
    ours: () => twoSpans().bendingNMm2,
    tolerance: { relative: 1e-8, because: 'the deflections carry ten digits' },
  },
  {
    id: 'panel-two-spans-u',
    room: 'panel',
    kind: 'independent-method',
    title: 'Shear stiffness from two spans',
    source: 'PANEL-DERIVED',
    locus: 'two simultaneous equations',
    unit: 'N',
    printed: '26579.375',
    ours: () => twoSpans().shearN,
    tolerance: { relative: 1e-7, because: 'a difference of deflections that carry ten digits' },
  },
  {
    id: 'panel-bar-d',
    room: 'panel',
    kind: 'by-hand',
    title: 'Bar 23/20 x 50 mm, 14 GPa: E (d3 - c3) b/12',
    source: 'ASTM-C393',
    locus: 'from memory; parallel axis theorem',
    unit: 'N.mm2',
    printed: '243075000',
    ours: () => sandwichBar({ ...bar }).bendingNMm2,
  },
  {
    id: 'panel-bar-u',
    room: 'panel',
    kind: 'by-hand',
    title: 'The same bar: G (d + c)2 b/(4 c)',
    source: 'ASTM-C393',
    locus: 'from memory; equals G d2/c per width',
    unit: 'N',
    printed: '26579.375',
    ours: () => sandwichBar({ ...bar }).shearN,
  },
  {
    id: 'panel-three-point-core',
    room: 'panel',
    kind: 'independent-method',
    title: 'Three-point bend: core shear against equilibrium (P/2)/(d b)',
    source: 'ASTM-C393',
    locus: 'from memory',
    unit: 'MPa',
    printed: '0.2325581',
    ours: () => bendTestStress(bar, 500, 300, 'three').coreShearMPa,
  },
  {
    id: 'panel-three-point-skin',
    room: 'panel',
    kind: 'independent-method',
    title: 'Three-point bend: skin stress against equilibrium (P L/4)/(d t b)',
    source: 'ASTM-C393',
    locus: 'from memory',
    unit: 'MPa',
    printed: '23.25581',
    ours: () => bendTestStress(bar, 500, 300, 'three').skinStressMPa,
  },
  {
    id: 'panel-quarter-point-skin',
    room: 'panel',
    kind: 'independent-method',
    title: 'Quarter points: skin stress against equilibrium (P L/8)/(d t b)',
    source: 'ASTM-C393',
    locus: 'from memory',
    unit: 'MPa',
    printed: '11.62791',
    ours: () => bendTestStress(bar, 500, 300, 'quarter').skinStressMPa,
  },
];

const aspectOf = (aspect: number) => ({ aspect: value(aspect) });

export const classSandwich: readonly PublishedCase[] = [
  {
    id: 'panel-lr-aspect-note',
    room: 'panel',
    title: 'Aspect of the guidance panel 2000 x 700',
    source: 'LR-GUIDANCE-2013',
    locus: 'chapter 4 section 1',
    unit: '1',
    printed: '2.86',
    ours: () => 2000 / 700,
  },
  {
    id: 'panel-lr-ks-note',
    room: 'panel',
    title: 'Shear factor of the guidance panel',
    source: 'LR-GUIDANCE-2013',
    locus: 'chapter 4 section 1',
    unit: '1',
    printed: '1.0',
    ours: () => classRules.lrShearFactor.evaluate(aspectOf(2000 / 700)),
  },
  {
    id: 'panel-lr-ks-1',
    room: 'panel',
    title: 'Shear factor of a square panel',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.14.9',
    unit: '1',
    printed: '0.68',
    ours: () => classRules.lrShearFactor.evaluate(aspectOf(1)),
  },
  {
    id: 'panel-lr-kar-1',
    room: 'panel',
    title: 'Aspect correction at 1',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.10.1',
    unit: '1',
    printed: '0.56',
    ours: () => classRules.lrAspectFactor.evaluate(aspectOf(1)),
  },
  {
    id: 'panel-lr-kar-2',
    room: 'panel',
    title: 'Aspect correction at 2',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.10.1',
    unit: '1',
    printed: '0.997',
    ours: () => classRules.lrAspectFactor.evaluate(aspectOf(2)),
  },
  {
    id: 'panel-lr-tau-50',
    room: 'panel',
    kind: 'by-hand',
    title: 'Core shear of the guidance panel on a 50 mm core',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.14.9',
    unit: 'MPa',
    printed: '0.324074',
    ours: () =>
      classRules.lrCoreShearStress.evaluate({
        pressure: value(50),
        shortSideMm: value(700),
        shearFactor: value(1),
        coreMm: value(50),
        bothSkinsMm: value(8),
      }),
  },
  {
    id: 'panel-lr-strip',
    room: 'panel',
    kind: 'limit',
    title: 'The class deflection at aspect 3 is the clamped strip',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.14',
    unit: 'mm',
    printed: '0.4922526',
    ours: () =>
      classRules.lrPanelDeflection.evaluate({
        pressure: value(5),
        shortSideMm: value(500),
        aspect: value(3),
        bending: value((14000 * 1.5 * 21.5 ** 2) / 2),
        poisson: value(0.3),
        shear: value(460),
      }),
  },
  {
    id: 'panel-lr-square-shear',
    room: 'panel',
    title: 'Class shear factor of a square panel against the plate: greatest core shear over p b/2',
    source: 'LR-SSC-2020',
    locus: 'part 8 chapter 3 1.14.9',
    unit: '1',
    printed: '0.68',
    ours: () => {
      const size = { lengthXMm: 1, widthYMm: 1 };
      const stiffness = { d11: 1, d12: 0.3, d22: 1, d66: 0.35, sx: 50, sy: 50 };
      return (
        2 *
        supportedPlate(stiffness, size).at(
          { pressureMPa: 1, x1Mm: 0, x2Mm: 1, y1Mm: 0, y2Mm: 1 },
          { xMm: 0.5, yMm: 0 },
        ).fields.qy
      );
    },
  },
];

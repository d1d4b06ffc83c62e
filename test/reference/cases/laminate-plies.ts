import {
  bvUnidirectional,
  constituentSets,
  crossPly,
  glUnidirectional,
  matFrom,
  mixedFraction,
  mixtureOf,
  plyProperties,
  scarfPeel,
  scarfRatio,
  scarfShear,
  stackFibreFraction,
  taperWidth,
  thicknessOf,
  volumeFractionOf,
  type PlyMethodName,
} from '#lib/laminate';
import { fraction, mm, mPa } from '#lib/units';
import type { PublishedCase } from '../published-case.js';

const of = (id: string, rest: Omit<PublishedCase, 'id' | 'room'>): PublishedCase => ({
  id: `laminate-${id}`,
  room: 'laminate',
  ...rest,
});

const thickness = (
  arealMassGPerM2: number,
  fibreMassFraction: number,
  densities: readonly [number, number] = [2560, 1200],
): number =>
  thicknessOf({
    arealMassGPerM2,
    fibreMassFraction,
    fibreDensityKgPerM3: densities[0],
    resinDensityKgPerM3: densities[1],
  });

const OZ_PER_YD2 = 33.9057;

const gl = (psi: number): number => thickness(304, psi, [2540, 1200]);
const glDigits = {
  relative: 1e-12,
  because: 'the source prints twelve digits or its own double-precision result',
} as const;
const tableC3 = { source: 'ISO-12215-5-2008', locus: 'Annex C table C.3', unit: 'mm' } as const;
const mixedStack = [
  { arealMassGPerM2: 450, fibreMassFraction: 0.3 },
  { arealMassGPerM2: 2400, fibreMassFraction: 0.39 },
  { arealMassGPerM2: 500, fibreMassFraction: 0.48 },
];
const plusMinus15 = {
  relative: 0.15,
  because: 'the source itself gives its design thicknesses to ±15 %',
} as const;

export const plyThicknesses: readonly PublishedCase[] = [
  of('t-c3-30', {
    ...tableC3,
    title: 'Thickness of 1 kg/m2 of glass at ψ 0.30',
    printed: '2.34',
    ours: () => thickness(1000, 0.3),
  }),
  of('t-c3-50', {
    ...tableC3,
    title: 'Thickness of 1 kg/m2 of glass at ψ 0.50',
    printed: '1.22',
    ours: () => thickness(1000, 0.5),
  }),
  of('t-c3-66', {
    ...tableC3,
    title: 'Thickness of 1 kg/m2 of glass at ψ 0.66',
    printed: '0.82',
    ours: () => thickness(1000, 0.66),
  }),
  of('t-bv', {
    title: 'Thickness of 1 kg/m2 of glass 2.57 in polyester 1.2 at ψ 0.5',
    source: 'BV-NR546-2022',
    locus: 'section 5, layer geometry',
    unit: 'mm',
    printed: '1.222',
    ours: () => thickness(1000, 0.5, [2570, 1200]),
  }),
  of('t-gl-70', {
    title: 'Thickness of 304 g/m2 at ψ 0.7',
    source: 'GL-HSC-2012-LAMINATES',
    locus: 'lamina 70_304',
    unit: 'mm',
    printed: '0.228256467942',
    ours: () => gl(0.7),
  }),
  of('t-gl-50', {
    title: 'Thickness of 304 g/m2 at ψ 0.5',
    source: 'GL-HSC-2012-LAMINATES',
    locus: 'lamina 50_304',
    unit: 'mm',
    printed: '0.373018372703412',
    ours: () => gl(0.5),
    tolerance: glDigits,
  }),
  of('t-gl-30', {
    title: 'Thickness of 304 g/m2 at ψ 0.3',
    source: 'GL-HSC-2012-LAMINATES',
    locus: 'lamina 30_304',
    unit: 'mm',
    printed: '0.710796150481',
    ours: () => gl(0.3),
    tolerance: glDigits,
  }),
  of('stack-psi', {
    title: 'Fibre fraction of a stack of 450, 2400 and 500 g/m2',
    source: 'ISO-12215-5-2008',
    locus: 'Annex C example C.3.2',
    unit: '1',
    printed: '0.385',
    ours: () => stackFibreFraction(mixedStack),
  }),
  of('stack-t-rounded', {
    title: 'Thickness of that stack at the fraction rounded to 0.39',
    source: 'ISO-12215-5-2008',
    locus: 'Annex C example C.3.2',
    unit: 'mm',
    printed: '5.68',
    ours: () => thickness(3350, 0.39),
  }),
  of('stack-t', {
    title: 'Thickness of that stack as the sum of its plies',
    source: 'ISO-12215-5-2008',
    locus: 'Annex C example C.3.2',
    unit: 'mm',
    printed: '5.68',
    ours: () =>
      mixedStack.reduce((sum, ply) => sum + thickness(ply.arealMassGPerM2, ply.fibreMassFraction), 0),
    disagreement: {
      oursShouldBe: 5.7632,
      relative: 1e-4,
      reason:
        'the example rounds the mean fraction 0.385 up to 0.39 before it works out the thickness; the plies themselves sum to 5.76 mm',
    },
  }),
  of('t-abs-mat', {
    title: 'Mat of 100 g/m2 by the yardstick at ψ 0.30, against a class guide',
    kind: 'independent-method',
    source: 'ABS-ORY-1994',
    locus: '4.5.4d',
    unit: 'mm',
    printed: '0.25',
    ours: () => thickness(100, 0.3),
    tolerance: plusMinus15,
  }),
  of('t-abs-wr', {
    title: 'Woven roving of 100 g/m2 by the yardstick at ψ 0.48, against a class guide',
    kind: 'independent-method',
    source: 'ABS-ORY-1994',
    locus: '4.5.4d',
    unit: 'mm',
    printed: '0.12',
    ours: () => thickness(100, 0.48),
    tolerance: plusMinus15,
  }),
  of('t-cloth-6oz', {
    title: 'Hand-laid 6 oz/yd2 cloth at ψ 0.50',
    source: 'MAKER-PLY-THICKNESS',
    locus: 'table of ply thickness',
    unit: 'mm',
    printed: '0.25',
    ours: () => thickness(6 * OZ_PER_YD2, 0.5),
  }),
  of('t-cloth-10oz', {
    title: 'Hand-laid 10 oz/yd2 cloth at ψ 0.50',
    source: 'MAKER-PLY-THICKNESS',
    locus: 'table of ply thickness',
    unit: 'mm',
    printed: '0.41',
    ours: () => thickness(10 * OZ_PER_YD2, 0.5),
  }),
  of('t-biaxial-17oz', {
    title: 'Hand-laid 17 oz/yd2 biaxial at ψ 0.50',
    source: 'MAKER-PLY-THICKNESS',
    locus: 'table of ply thickness',
    unit: 'mm',
    printed: '0.89',
    ours: () => thickness(17 * OZ_PER_YD2, 0.5),
    disagreement: {
      oursShouldBe: 0.7055,
      relative: 1e-3,
      reason:
        'the note does not state its fibre fraction; 0.89 mm is that of ψ 0.42, between the yardstick values for simple (0.50) and complex shapes (0.38), and may include what the stitching and three fill coats hold',
    },
  }),
  of('t-biaxial-mat-24oz', {
    title: 'Hand-laid biaxial-with-mat of 24 oz/yd2 at the yardstick fraction of its mix',
    source: 'MAKER-PLY-THICKNESS',
    locus: 'table of ply thickness',
    unit: 'mm',
    printed: '1.07',
    ours: () => thickness(24 * OZ_PER_YD2, mixedFraction(225 / 814, 'hand-simple').value),
    disagreement: {
      oursShouldBe: 1.2927,
      relative: 1e-3,
      reason:
        'the note does not state its fibre fraction; 1.07 mm is that of ψ 0.47, a tighter lay-up than the yardstick takes for a fabric with mat (0.41)',
    },
  }),
  of('resin-cloth-10oz', {
    title: 'Resin in 10 oz/yd2 cloth at ψ 0.50, density 1.13',
    source: 'MAKER-EPOXY-ESTIMATE',
    locus: 'coverage by fabric',
    unit: 'L/m2',
    printed: '0.30',
    ours: () => (10 * OZ_PER_YD2) / 1130,
  }),
  of('resin-cloth-6oz', {
    title: 'Resin in 6 oz/yd2 cloth at ψ 0.50, density 1.13',
    source: 'MAKER-EPOXY-ESTIMATE',
    locus: 'coverage by fabric',
    unit: 'L/m2',
    printed: '0.18',
    ours: () => (6 * OZ_PER_YD2) / 1130,
  }),
  of('resin-mat-ratio', {
    title: 'Resin to glass of mat at ψ 0.30',
    source: 'PRACTICAL-ACTION-FIBREGLASS',
    locus: 'lay-up section',
    unit: '1',
    printed: '2.5',
    ours: () => 0.7 / 0.3,
    tolerance: { relative: 0.07, because: 'the source says 2.5 to 1 is about 30 %; exactly it is 28.6 %' },
  }),
  of('resin-wr-ratio', {
    title: 'Resin to glass of woven roving at ψ 0.45',
    source: 'PRACTICAL-ACTION-FIBREGLASS',
    locus: 'lay-up section',
    unit: '1',
    printed: '1.25',
    ours: () => 0.55 / 0.45,
    tolerance: { relative: 0.03, because: 'the source says 1.25 to 1 is about 45 %; exactly it is 44.4 %' },
  }),
  of('density-fabric-epoxy', {
    title: 'Density of E-glass fabric and epoxy with 34.9 % resin and 2.0 % voids',
    source: 'MIL-HDBK-17-2F',
    locus: 'table A1.1',
    unit: 'g/cm3',
    printed: '1.78',
    ours: () => 0.98 / (0.651 / 2.54 + 0.349 / 1.2),
    tolerance: {
      relative: 0.01,
      because:
        'the handbook prints no fibre or resin density; 2.54 and 1.20 are taken, each known to about 2 %',
    },
  }),
  of('vf-30', {
    kind: 'by-hand',
    title: 'Fibre volume fraction at W 0.3 by the class form W z_r/(W z_r - W z_f + z_f)',
    source: 'LR-SSC-2020',
    locus: 'Pt 8 Ch 3, 1.8.3',
    unit: '1',
    printed: '0.16728624535315983',
    ours: () => volumeFractionOf(0.3, 2560, 1200),
    tolerance: { relative: 1e-14, because: 'the same identity in doubles' },
  }),
];

const glResin = constituentSets.gl.resins.polyester;
const glLamina = () => glUnidirectional(mixtureOf(0.3, constituentSets.gl.glass, glResin));
const glLaminaFrom = { source: 'GL-HSC-2012-LAMINATES', locus: 'lamina 30_304, expected' } as const;
const printed9 = { relative: 2e-9, because: 'printed to nine or ten digits' } as const;

const polyester = constituentSets.bv.resins.polyester;
const property = (
  method: PlyMethodName,
  layup: 'mat' | 'woven',
  psi: number,
  key: 'youngAlongMPa' | 'flexuralStrengthMPa' | 'interlaminarShearMPa',
): number => {
  const outcome = plyProperties({
    method,
    layup,
    fibreMassFraction: psi,
    resin: method === 'class-gl' ? glResin : polyester,
  });
  return outcome.ok ? (outcome.value[key] ?? Number.NaN) : Number.NaN;
};
const bvWeave = () => crossPly(bvUnidirectional(mixtureOf(0.5, constituentSets.bv.glass, polyester)), 0.5);
const bvFrom = {
  kind: 'by-hand',
  source: 'BV-NR546-2022',
  locus: 'section 5, 3.2: formulas read, evaluated apart from this code',
} as const;

export const plyPropertyCases: readonly PublishedCase[] = [
  of('gl-lamina-e1', {
    ...glLaminaFrom,
    title: 'Unidirectional ply at ψ 0.3: E1',
    unit: 'GPa',
    printed: '14.78671656',
    ours: () => glLamina().youngAlongMPa / 1000,
    tolerance: printed9,
  }),
  of('gl-lamina-e2', {
    ...glLaminaFrom,
    title: 'Unidirectional ply at ψ 0.3: E2',
    unit: 'GPa',
    printed: '4.25659763',
    ours: () => glLamina().youngAcrossMPa / 1000,
    tolerance: printed9,
  }),
  of('gl-lamina-g12', {
    ...glLaminaFrom,
    title: 'Unidirectional ply at ψ 0.3: G12',
    unit: 'GPa',
    printed: '1.697946',
    ours: () => glLamina().shearModulusMPa / 1000,
  }),
  of('gl-lamina-nu', {
    ...glLaminaFrom,
    title: 'Unidirectional ply at ψ 0.3: ν12',
    unit: '1',
    printed: '0.293100094',
    ours: () => glLamina().poissonRatio,
    tolerance: printed9,
  }),
  of('iso-flexure', {
    title: 'Flexural strength of mat at ψ 0.30 at the lowest evaluation level (0.8)',
    source: 'ISO-12215-5-2008',
    locus: 'Annex C table C.4',
    unit: 'MPa',
    printed: '121.7',
    ours: () => 0.8 * property('small-craft-yardstick', 'mat', 0.3, 'flexuralStrengthMPa'),
  }),
  of('iso-flexure-design', {
    title: 'Its design stress, half of that',
    source: 'ISO-12215-5-2008',
    locus: 'table 7',
    unit: 'MPa',
    printed: '60.9',
    ours: () => 0.4 * property('small-craft-yardstick', 'mat', 0.3, 'flexuralStrengthMPa'),
  }),
  of('ilss-floor', {
    kind: 'independent-method',
    title: 'Interlaminar shear of mat by the yardstick, lowest level, against a class floor',
    source: 'LR-SSC-2020',
    locus: 'Pt 8 Ch 7, 3.4.1',
    unit: 'MPa',
    printed: '13.8',
    ours: () => 0.8 * property('small-craft-yardstick', 'mat', 0.3, 'interlaminarShearMPa'),
  }),
  of('iso-mat-e', {
    kind: 'by-hand',
    title: 'Mat modulus at ψ 0.30, small-craft yardstick: 38000 x 0.3 - 5000',
    source: 'ISO-12215-5-2008',
    locus: 'Annex C table C.4',
    unit: 'MPa',
    printed: '6400',
    ours: () => property('small-craft-yardstick', 'mat', 0.3, 'youngAlongMPa'),
  }),
  of('bv-mat-e', {
    ...bvFrom,
    title: 'Mat modulus at ψ 0.30, set BV',
    unit: 'MPa',
    printed: '8314',
    ours: () => property('class-bv', 'mat', 0.3, 'youngAlongMPa'),
    disagreement: {
      oursShouldBe: 8316.264,
      relative: 1e-6,
      reason:
        'the other evaluation gives what V = 0.16667 gives; ψ 0.30 with 2.57 and 1.20 is V = 0.16674, and E moves by 31 MPa per 0.001 of V',
    },
  }),
  of('gl-mat-e', {
    ...bvFrom,
    source: 'GL-HSC-2012-LAMINATES',
    locus: 'C3.8.2: formulas read, evaluated apart from this code',
    title: 'Mat modulus at ψ 0.30, set GL',
    unit: 'MPa',
    printed: '8205',
    ours: () => property('class-gl', 'mat', 0.3, 'youngAlongMPa'),
  }),
  of('bv-weave-e', {
    ...bvFrom,
    title: 'Balanced woven ply at ψ 0.5: E',
    unit: 'MPa',
    printed: '15802.148375740737',
    ours: () => bvWeave().youngAlongMPa,
    tolerance: { relative: 1e-12, because: 'two evaluations in doubles' },
  }),
  of('bv-weave-g', {
    ...bvFrom,
    title: 'Balanced woven ply at ψ 0.5: G12',
    unit: 'MPa',
    printed: '2211.824942279813',
    ours: () => bvWeave().shearModulusMPa,
    tolerance: { relative: 1e-12, because: 'two evaluations in doubles' },
  }),
  of('bv-weave-nu', {
    ...bvFrom,
    title: 'Balanced woven ply at ψ 0.5: ν12',
    unit: '1',
    printed: '0.10873418777855733',
    ours: () => bvWeave().poissonRatio,
    tolerance: { relative: 1e-12, because: 'two evaluations in doubles' },
  }),
  of('abs-basic-e', {
    title: "Modulus of mat with roving at ψ 0.35 by the yardstick, against a class guide's basic laminate",
    kind: 'independent-method',
    source: 'ABS-ORY-1994',
    locus: 'table 4.3',
    unit: 'MPa',
    printed: '6890',
    ours: () => property('small-craft-yardstick', 'woven', 0.35, 'youngAlongMPa'),
    disagreement: {
      oursShouldBe: 8300,
      relative: 1e-9,
      reason:
        'two bodies, two allowances: the class guide prints a minimum for design, the yardstick a mean before its own reduction factor; 0.8 x 8300 is 6640, within 4 % of 6890',
    },
  }),
  of('mat-limit', {
    kind: 'limit',
    title: 'Mat of an isotropic ply is that ply: E over E',
    source: 'JONES-1999',
    locus: 'chapter 3',
    unit: '1',
    printed: '1',
    ours: () =>
      matFrom({ youngAlongMPa: 5000, youngAcrossMPa: 5000, poissonRatio: 0.3, shearModulusMPa: 5000 / 2.6 })
        .youngAlongMPa / 5000,
    tolerance: { absolute: 1e-15, because: 'one sum' },
  }),
];

const shear = (stress: number, ratio: number): number =>
  scarfShear.evaluate({ stressMPa: mPa(stress), taperRatio: fraction(ratio) });
const width = (t: number, ratio: number): number =>
  taperWidth.evaluate({ thicknessMm: mm(t), taperRatio: fraction(ratio) });

export const joints: readonly PublishedCase[] = [
  of('scarf-18', {
    kind: 'by-hand',
    title: 'Bond shear of a 1:18 scarf under 124 MPa: 124 x 18 / 325',
    source: 'LAMINATE-BY-HAND',
    locus: 'statics of an inclined joint',
    unit: 'MPa',
    printed: '6.9',
    ours: () => shear(124, 18),
  }),
  of('scarf-ratio', {
    kind: 'by-hand',
    title: 'Ratio that 6.9 MPa of bond shear asks under 124 MPa',
    source: 'LAMINATE-BY-HAND',
    locus: 'larger root of R/(1 + R²) = τ/σ',
    unit: '1',
    printed: '17.9',
    ours: () => scarfRatio.evaluate({ stressMPa: mPa(124), allowableShearMPa: mPa(6.9) }),
  }),
  of('scarf-invariant', {
    kind: 'limit',
    title: 'τ² + σn² over σ σn in a scarf of 12:1',
    source: 'LAMINATE-BY-HAND',
    locus: 'Mohr circle through the origin',
    unit: '1',
    printed: '1',
    ours: () => {
      const peel = scarfPeel.evaluate({ stressMPa: mPa(50), taperRatio: fraction(12) });
      return (shear(50, 12) ** 2 + peel ** 2) / (50 * peel);
    },
    tolerance: { absolute: 1e-14, because: 'a few products' },
  }),
  of('taper-marine', {
    kind: 'by-hand',
    title: 'Taper of a 6 mm laminate at 12:1',
    source: 'REPAIR-MAGAZINE-12TO1',
    locus: 'article text: the ratio was read, the width is arithmetic',
    unit: 'mm',
    printed: '72',
    ours: () => width(6, 12),
  }),
  of('taper-aircraft', {
    kind: 'by-hand',
    title: 'Scarf of a 0.25 mm face ply at 50:1',
    source: 'FAA-AC-43-13-1B-LAMINATE',
    locus: 'p. 3-3: the ratio was read, the width is arithmetic',
    unit: 'mm',
    printed: '12.5',
    ours: () => width(0.25, 50),
  }),
  of('taper-glider', {
    kind: 'by-hand',
    title: 'Scarf of a 1 mm layer at 1:50, which the manuals ask to be 20 mm at least',
    source: 'GLIDER-REPAIR-MANUALS',
    locus: 'laminate scarf: the ratio was read, the width is arithmetic',
    unit: 'mm',
    printed: '50',
    ours: () => width(1, 50),
  }),
];

import { mPa } from '#lib/units';
import { defineFormula } from '#lib/provenance';
import type { CoreType } from '#lib/catalogue';

/**
 * Core properties from density by one named method: the small-craft yardstick of 2008, annex D. Its values are defaults
 * for cores without a test; whether they are means or minima is not said in the transcription that was read. Class tables
 * and makers' sheets differ by tens of per cent: see `coreTables`.
 */
interface ByDensity {
  readonly id: string;
  readonly title: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly from: number;
  readonly upTo: number;
  readonly law: (rho: number) => number;
  readonly worked: { readonly at: string; readonly rho: number; readonly printed: string };
}

const byDensity = ({ id, title, symbol, meaning, from, upTo, law, worked }: ByDensity) =>
  defineFormula({
    id: `panel.core.${id}`,
    title,
    cite: { source: 'ISO-12215-5-2008', clause: 'table D.1' },
    inputs: { densityKgPerM3: { symbol: 'rho', unit: 'kg/m3', meaning: 'density of the core', from, upTo } },
    output: { symbol, unit: 'MPa', meaning },
    evaluate: ({ densityKgPerM3 }) => mPa(law(densityKgPerM3)),
    worked: [{ at: worked.at, given: { densityKgPerM3: worked.rho }, printed: worked.printed }],
  });

export type CoreFormula = ReturnType<typeof byDensity>;

export interface CoreFormulas {
  readonly coreType: CoreType;
  readonly method: string;
  readonly shearStrength: CoreFormula;
  readonly shearModulus: CoreFormula;
  readonly compressiveStrength: CoreFormula;
  readonly compressiveModulus: CoreFormula;
}

/** Worked by hand at 150 kg/m3: tau_u = 0.0178 * 150 - 0.34; G = 0.868 * 150 - 1.43; sigma_c = 0.102 * 150 - 5; E_c = 30.7 * 150 - 1350. */
const balsa: CoreFormulas = {
  coreType: 'end-grain-balsa',
  method: 'End-grain balsa, small-craft yardstick 2008 table D.1',
  shearStrength: byDensity({
    id: 'balsa.shear-strength',
    title: 'End-grain balsa: shear strength by density',
    symbol: 'tau_u',
    meaning: 'shear strength of the core',
    from: 90,
    upTo: 220,
    law: (rho) => 0.0178 * rho - 0.34,
    worked: { at: 'table D.2, balsa 150 kg/m3', rho: 150, printed: '2.33' },
  }),
  shearModulus: byDensity({
    id: 'balsa.shear-modulus',
    title: 'End-grain balsa: shear modulus by density',
    symbol: 'G',
    meaning: 'shear modulus of the core',
    from: 90,
    upTo: 220,
    law: (rho) => 0.868 * rho - 1.43,
    worked: { at: 'by hand at 150 kg/m3', rho: 150, printed: '129' },
  }),
  compressiveStrength: byDensity({
    id: 'balsa.compressive-strength',
    title: 'End-grain balsa: compressive strength by density',
    symbol: 'sigma_c',
    meaning: 'compressive strength of the core',
    from: 90,
    upTo: 220,
    law: (rho) => 0.102 * rho - 5,
    worked: { at: 'by hand at 150 kg/m3', rho: 150, printed: '10.3' },
  }),
  compressiveModulus: byDensity({
    id: 'balsa.compressive-modulus',
    title: 'End-grain balsa: modulus through the thickness by density',
    symbol: 'E_c',
    meaning: 'modulus through the thickness of the core',
    from: 90,
    upTo: 220,
    law: (rho) => 30.7 * rho - 1350,
    worked: { at: 'by hand at 150 kg/m3', rho: 150, printed: '3255' },
  }),
};

/** Worked by hand at 100 kg/m3: tau_u = 0.0024 * 100 ** 1.334; G = 0.1633 * 100 ** 1.136; sigma_c = 0.0014 * 100 ** 1.487; E_c = 0.1138 * 100 ** 1.449. */
const crossLinkedFoamone: CoreFormulas = {
  coreType: 'cross-linked-foam',
  method: 'Cross-linked foam, type I, small-craft yardstick 2008 table D.1',
  shearStrength: byDensity({
    id: 'cross-linked-foam-1.shear-strength',
    title: 'Cross-linked foam, type I: shear strength by density',
    symbol: 'tau_u',
    meaning: 'shear strength of the core',
    from: 36,
    upTo: 250,
    law: (rho) => 0.0024 * rho ** 1.334,
    worked: { at: 'table D.2, cross-linked 100 kg/m3', rho: 100, printed: '1.12' },
  }),
  shearModulus: byDensity({
    id: 'cross-linked-foam-1.shear-modulus',
    title: 'Cross-linked foam, type I: shear modulus by density',
    symbol: 'G',
    meaning: 'shear modulus of the core',
    from: 36,
    upTo: 250,
    law: (rho) => 0.1633 * rho ** 1.136,
    worked: { at: 'by hand at 100 kg/m3', rho: 100, printed: '30.5' },
  }),
  compressiveStrength: byDensity({
    id: 'cross-linked-foam-1.compressive-strength',
    title: 'Cross-linked foam, type I: compressive strength by density',
    symbol: 'sigma_c',
    meaning: 'compressive strength of the core',
    from: 36,
    upTo: 250,
    law: (rho) => 0.0014 * rho ** 1.487,
    worked: { at: 'by hand at 100 kg/m3', rho: 100, printed: '1.32' },
  }),
  compressiveModulus: byDensity({
    id: 'cross-linked-foam-1.compressive-modulus',
    title: 'Cross-linked foam, type I: modulus through the thickness by density',
    symbol: 'E_c',
    meaning: 'modulus through the thickness of the core',
    from: 36,
    upTo: 250,
    law: (rho) => 0.1138 * rho ** 1.449,
    worked: { at: 'by hand at 100 kg/m3', rho: 100, printed: '90.0' },
  }),
};

/** Worked by hand at 80 kg/m3: tau_u = 0.017 * 80 - 0.29; G = 0.33 * 80 - 1; sigma_c = 0.025 * 80 - 0.69; E_c = 1.2 * 80 - 18. */
const crossLinkedFoamtwo: CoreFormulas = {
  coreType: 'cross-linked-foam',
  method: 'Cross-linked foam, type II, small-craft yardstick 2008 table D.1',
  shearStrength: byDensity({
    id: 'cross-linked-foam-2.shear-strength',
    title: 'Cross-linked foam, type II: shear strength by density',
    symbol: 'tau_u',
    meaning: 'shear strength of the core',
    from: 33,
    upTo: 250,
    law: (rho) => 0.017 * rho - 0.29,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '1.07' },
  }),
  shearModulus: byDensity({
    id: 'cross-linked-foam-2.shear-modulus',
    title: 'Cross-linked foam, type II: shear modulus by density',
    symbol: 'G',
    meaning: 'shear modulus of the core',
    from: 33,
    upTo: 250,
    law: (rho) => 0.33 * rho - 1,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '25.4' },
  }),
  compressiveStrength: byDensity({
    id: 'cross-linked-foam-2.compressive-strength',
    title: 'Cross-linked foam, type II: compressive strength by density',
    symbol: 'sigma_c',
    meaning: 'compressive strength of the core',
    from: 33,
    upTo: 250,
    law: (rho) => 0.025 * rho - 0.69,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '1.31' },
  }),
  compressiveModulus: byDensity({
    id: 'cross-linked-foam-2.compressive-modulus',
    title: 'Cross-linked foam, type II: modulus through the thickness by density',
    symbol: 'E_c',
    meaning: 'modulus through the thickness of the core',
    from: 33,
    upTo: 250,
    law: (rho) => 1.2 * rho - 18,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '78.0' },
  }),
};

/** Worked by hand at 80 kg/m3: tau_u = 0.014 * 80 - 0.33; G = 0.29 * 80 - 5.3; sigma_c = 0.012 * 80 - 0.24; E_c = 0.84 * 80 - 19. */
const linearFoam: CoreFormulas = {
  coreType: 'linear-foam',
  method: 'Linear foam, small-craft yardstick 2008 table D.1',
  shearStrength: byDensity({
    id: 'linear-foam.shear-strength',
    title: 'Linear foam: shear strength by density',
    symbol: 'tau_u',
    meaning: 'shear strength of the core',
    from: 50,
    upTo: 140,
    law: (rho) => 0.014 * rho - 0.33,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '0.790' },
  }),
  shearModulus: byDensity({
    id: 'linear-foam.shear-modulus',
    title: 'Linear foam: shear modulus by density',
    symbol: 'G',
    meaning: 'shear modulus of the core',
    from: 50,
    upTo: 140,
    law: (rho) => 0.29 * rho - 5.3,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '17.9' },
  }),
  compressiveStrength: byDensity({
    id: 'linear-foam.compressive-strength',
    title: 'Linear foam: compressive strength by density',
    symbol: 'sigma_c',
    meaning: 'compressive strength of the core',
    from: 50,
    upTo: 140,
    law: (rho) => 0.012 * rho - 0.24,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '0.720' },
  }),
  compressiveModulus: byDensity({
    id: 'linear-foam.compressive-modulus',
    title: 'Linear foam: modulus through the thickness by density',
    symbol: 'E_c',
    meaning: 'modulus through the thickness of the core',
    from: 50,
    upTo: 140,
    law: (rho) => 0.84 * rho - 19,
    worked: { at: 'by hand at 80 kg/m3', rho: 80, printed: '48.2' },
  }),
};

/** Worked by hand at 85 kg/m3: tau_u = 0.017 * 85 - 2e-5 * 85 * 85 - 0.613; G = 0.46 * 85 - 20; sigma_c = 0.00067 * 85 ** 1.59; E_c = 0.024 * 85 ** 1.75. */
const sanFoam: CoreFormulas = {
  coreType: 'san-foam',
  method: 'SAN foam, small-craft yardstick 2008 table D.1',
  shearStrength: byDensity({
    id: 'san-foam.shear-strength',
    title: 'SAN foam: shear strength by density',
    symbol: 'tau_u',
    meaning: 'shear strength of the core',
    from: 60,
    upTo: 210,
    law: (rho) => 0.017 * rho - 2e-5 * rho * rho - 0.613,
    worked: { at: 'by hand at 85 kg/m3', rho: 85, printed: '0.688' },
  }),
  shearModulus: byDensity({
    id: 'san-foam.shear-modulus',
    title: 'SAN foam: shear modulus by density',
    symbol: 'G',
    meaning: 'shear modulus of the core',
    from: 60,
    upTo: 210,
    law: (rho) => 0.46 * rho - 20,
    worked: { at: 'by hand at 85 kg/m3', rho: 85, printed: '19.1' },
  }),
  compressiveStrength: byDensity({
    id: 'san-foam.compressive-strength',
    title: 'SAN foam: compressive strength by density',
    symbol: 'sigma_c',
    meaning: 'compressive strength of the core',
    from: 60,
    upTo: 210,
    law: (rho) => 0.00067 * rho ** 1.59,
    worked: { at: 'by hand at 85 kg/m3', rho: 85, printed: '0.783' },
  }),
  compressiveModulus: byDensity({
    id: 'san-foam.compressive-modulus',
    title: 'SAN foam: modulus through the thickness by density',
    symbol: 'E_c',
    meaning: 'modulus through the thickness of the core',
    from: 60,
    upTo: 210,
    law: (rho) => 0.024 * rho ** 1.75,
    worked: { at: 'by hand at 85 kg/m3', rho: 85, printed: '57.1' },
  }),
};

export const coreFormulas: readonly CoreFormulas[] = [
  balsa,
  crossLinkedFoamone,
  crossLinkedFoamtwo,
  linearFoam,
  sanFoam,
];

/** Values printed in tables of class rules and data sheets, kept as named data and never blended with the formulas. */
export interface CoreTable {
  readonly name: string;
  readonly source: string;
  readonly clause: string;
  readonly coreType: CoreType;
  /** What the table says its values are. */
  readonly basis: 'nominal' | 'minimum' | 'not-stated';
  readonly densitiesKgPerM3: readonly number[];
  readonly shearStrengthMPa?: readonly number[];
  readonly shearModulusMPa?: readonly number[];
  readonly compressiveModulusMPa?: readonly number[];
  readonly compressiveStrengthMPa?: readonly number[];
}

export const coreTables: readonly CoreTable[] = [
  {
    name: 'class rule, end-grain balsa',
    source: 'BV-NR546-2022',
    clause: 'section 4 table 4',
    coreType: 'end-grain-balsa',
    basis: 'not-stated',
    densitiesKgPerM3: [80, 96, 112, 128, 144, 160, 176, 192, 240],
    compressiveModulusMPa: [1522, 2145, 2768, 3460, 4083, 4706, 5328, 5882, 7750],
    shearModulusMPa: [57, 80, 103, 127, 150, 174, 197, 218, 286],
    shearStrengthMPa: [0.94, 1.1, 1.33, 1.62, 1.73, 1.93, 2.05, 2.33, 2.93],
  },
  {
    name: 'class rule, linear foam',
    source: 'BV-NR546-2022',
    clause: 'section 4 table 3',
    coreType: 'linear-foam',
    basis: 'not-stated',
    densitiesKgPerM3: [60, 80, 100, 130],
    compressiveModulusMPa: [28, 49, 69, 99],
    shearModulusMPa: [11, 18, 24, 34],
    shearStrengthMPa: [0.5, 0.8, 1.2, 1.7],
  },
  {
    name: 'class guide, end-grain balsa',
    source: 'ABS-ORY-1994',
    clause: '4.11',
    coreType: 'end-grain-balsa',
    basis: 'minimum',
    densitiesKgPerM3: [128, 144],
    shearStrengthMPa: [1.9, 2.1],
  },
  {
    name: 'class guide, cross-linked foam without test data',
    source: 'ABS-ORY-1994',
    clause: '4.11',
    coreType: 'cross-linked-foam',
    basis: 'minimum',
    densitiesKgPerM3: [80, 100],
    shearStrengthMPa: [1.0, 1.4],
  },
  {
    name: 'class guide, linear foam',
    source: 'ABS-ORY-1994',
    clause: '4.11',
    coreType: 'linear-foam',
    basis: 'minimum',
    densitiesKgPerM3: [85],
    shearStrengthMPa: [1.2],
  },
  {
    name: 'data sheet, end-grain balsa',
    source: 'CORE-DATA-SHEETS',
    clause: 'section 4.4',
    coreType: 'end-grain-balsa',
    basis: 'nominal',
    densitiesKgPerM3: [94, 153, 247],
    shearStrengthMPa: [1.8, 3.0, 4.9],
    shearModulusMPa: [106, 160, 309],
    compressiveModulusMPa: [1993, 4005, 7982],
    compressiveStrengthMPa: [6.3, 12.9, 26.3],
  },
  {
    name: 'data sheet, cross-linked foam',
    source: 'CORE-DATA-SHEETS',
    clause: 'section 4',
    coreType: 'cross-linked-foam',
    basis: 'minimum',
    densitiesKgPerM3: [80],
    shearStrengthMPa: [0.95],
    shearModulusMPa: [23],
    compressiveStrengthMPa: [1.15],
  },
  {
    name: 'data sheet, SAN foam',
    source: 'CORE-DATA-SHEETS',
    clause: 'section 4',
    coreType: 'san-foam',
    basis: 'nominal',
    densitiesKgPerM3: [85],
    shearStrengthMPa: [1.15],
    shearModulusMPa: [34],
  },
];

export type CoreTableColumn =
  'shearStrengthMPa' | 'shearModulusMPa' | 'compressiveModulusMPa' | 'compressiveStrengthMPa';

/** Between two printed rows on a straight line; outside them, or without the column, there is no value. */
export function fromCoreTable(
  table: CoreTable,
  column: CoreTableColumn,
  densityKgPerM3: number,
): number | undefined {
  const values = table[column];
  const { densitiesKgPerM3: rows } = table;
  const next = rows.findIndex((row) => row >= densityKgPerM3);
  if (values === undefined || next < 0 || densityKgPerM3 < rows[0]) return undefined;
  if (rows[next] === densityKgPerM3) return values[next];
  const share = (densityKgPerM3 - rows[next - 1]) / (rows[next] - rows[next - 1]);
  return values[next - 1] + share * (values[next] - values[next - 1]);
}

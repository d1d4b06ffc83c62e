import { Defect } from '#lib/kernel';

/** A unit of the catalogue in the two code systems that trade and science exchange. */
export interface UnitCode {
  /** UN/ECE Recommendation 20 (or 21 for packages, with its X). */
  readonly rec20: string;
  /** Unified Code for Units of Measure. */
  readonly ucum: string;
  readonly name: string;
}

/**
 * Units of the catalogue as UN/ECE Recommendation 20 codes, beside their UCUM code.
 *
 * Things that are counted are `1` in UCUM and differ only in what is counted.
 *
 * Source: [UNECE-REC-20]; [UCUM]
 * Worked: libs/costing/src/exports/unit-codes.spec.ts
 */
export const unitCodes: Readonly<Record<string, UnitCode>> = {
  kg: { rec20: 'KGM', ucum: 'kg', name: 'kilogram' },
  g: { rec20: 'GRM', ucum: 'g', name: 'gram' },
  l: { rec20: 'LTR', ucum: 'L', name: 'litre' },
  m: { rec20: 'MTR', ucum: 'm', name: 'metre' },
  m2: { rec20: 'MTK', ucum: 'm2', name: 'square metre' },
  mm: { rec20: 'MMT', ucum: 'mm', name: 'millimetre' },
  h: { rec20: 'HUR', ucum: 'h', name: 'hour' },
  day: { rec20: 'DAY', ucum: 'd', name: 'day' },
  each: { rec20: 'C62', ucum: '1', name: 'one' },
  pair: { rec20: 'PR', ucum: '1', name: 'pair' },
  roll: { rec20: 'XRO', ucum: '1', name: 'roll' },
  pack: { rec20: 'XPK', ucum: '1', name: 'package' },
  sheet: { rec20: 'XST', ucum: '1', name: 'sheet' },
  job: { rec20: 'E51', ucum: '1', name: 'job' },
};

export function unitCodeOf(unit: string): UnitCode {
  if (Object.hasOwn(unitCodes, unit)) return unitCodes[unit];
  throw new Defect(`No trade code for the unit ${unit}`);
}

import { mm, type DegC, type Kg, type L, type M2, type Mm } from './brands.js';
import { siOf } from './quantity.js';

const FEET_FROM = 3;
const INCHES_PER_FOOT = 12;
const MM_PER_INCH = siOf('in', 'length');
const TAPE_PARTS = 16;
const FINE_PARTS = 32;

/** A length as a tape measure shows it: whole inches and the nearest sixteenth, feet from 3 ft on. */
export const usLength = (length: Mm): string => inParts(length, TAPE_PARTS).text;

/** A US text, and whether it says the very value or the nearest that can be read off. */
export interface UsReading {
  readonly text: string;
  readonly isExact: boolean;
}

/** A reading further from the length than a twentieth of it would mislead whoever works from it. */
const COARSEST_SHARE = 0.05;

/**
 * A length as it is measured: sixteenths of an inch, thirty-seconds where those are exact or the sixteenth is more than a
 * twentieth out, and thousandths where both are too coarse, as for a skin. `decimal` writes those in the reader's habits.
 */
export function usMeasure(length: Mm, decimal: (inches: number) => string): UsReading {
  const readings = [inParts(length, TAPE_PARTS), inParts(length, FINE_PARTS)];
  const fitting =
    readings.find(({ isExact }) => isExact) ?? readings.find(({ share }) => share <= COARSEST_SHARE);
  return fitting ?? { text: `${decimal(length / MM_PER_INCH)} in`, isExact: false };
}

interface PartsReading extends UsReading {
  /** How far the reading is out, as a share of the length. */
  readonly share: number;
}

function inParts(length: Mm, partsPerInch: number): PartsReading {
  const exactParts = (Math.abs(length) / MM_PER_INCH) * partsPerInch;
  const parts = Math.round(exactParts);
  const share = exactParts === 0 ? 0 : Math.abs(parts - exactParts) / exactParts;
  const sign = length < 0 && parts > 0 ? '-' : '';
  return {
    text: `${sign}${feetAndInches(parts, partsPerInch, isLong(length))}`,
    share,
    isExact: share < SAME,
  };
}

/** Doubles of the same length differ by less. */
const SAME = 1e-12;

const isLong = (length: Mm): boolean => Math.abs(length) >= FEET_FROM * INCHES_PER_FOOT * MM_PER_INCH;

function feetAndInches(parts: number, partsPerInch: number, inFeet: boolean): string {
  const inches = Math.floor(parts / partsPerInch);
  const feet = inFeet ? Math.floor(inches / INCHES_PER_FOOT) : 0;
  const rest = mixedInches(inches - feet * INCHES_PER_FOOT, parts % partsPerInch, partsPerInch);
  return inFeet ? `${feet} ft ${rest} in` : `${rest} in`;
}

function mixedInches(whole: number, parts: number, partsPerInch: number): string {
  if (parts === 0) return String(whole);
  const divisor = greatestCommonDivisor(parts, partsPerInch);
  const part = `${parts / divisor}/${partsPerInch / divisor}`;
  return whole === 0 ? part : `${whole} ${part}`;
}

const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);

const TEN_KG = 10;

export const usArea = (area: M2): string => `${(area / siOf('ft2', 'area')).toFixed(2)} ft2`;
export const usMass = (mass: Kg): string =>
  `${(mass / siOf('lb', 'mass')).toFixed(mass < TEN_KG ? 2 : 1)} lb`;
export const usVolume = (volume: L): string => `${(volume / siOf('gal', 'volume')).toFixed(2)} gal`;
export const usTemperature = (temperature: DegC): string => `${fahrenheit(temperature).toFixed(0)} degF`;

const fahrenheit = (celsius: number): number => (celsius * 9) / 5 + 32;

/** A US unit by how many of the SI unit make one; `from` is the least value, in the SI unit, that is told in it. */
interface UsUnit {
  readonly name: string;
  readonly size: number;
  readonly from?: number;
}

const G_PER_KG = 1000;
const POUND_KG = siOf('lb', 'mass');
/** The pound-force is the pound under standard gravity, 9.80665 m/s2 by definition (3rd General Conference on Weights and Measures, 1901). */
const POUND_FORCE_N = POUND_KG * 9.80665;
const PSI_MPA = POUND_FORCE_N / MM_PER_INCH ** 2;
const FOOT_M = (INCHES_PER_FOOT * MM_PER_INCH) / 1000;
const GALLON_L = siOf('gal', 'volume');
const FLUID_OUNCE_L = siOf('floz', 'volume');
const OUNCE_KG = siOf('oz', 'mass');

/** Per SI unit, largest US unit first. Temperatures and lengths have rules of their own. */
const usUnits: Readonly<Record<string, readonly UsUnit[]>> = {
  'mm2': [{ name: 'in2', size: MM_PER_INCH ** 2 }],
  'mm3': [{ name: 'in3', size: MM_PER_INCH ** 3 }],
  'm2': [{ name: 'ft2', size: siOf('ft2', 'area') }],
  'l': [
    { name: 'gal', size: GALLON_L, from: GALLON_L / 4 },
    { name: 'floz', size: FLUID_OUNCE_L },
  ],
  'ml': [{ name: 'floz', size: FLUID_OUNCE_L * 1000 }],
  'kg': [
    { name: 'lb', size: POUND_KG, from: POUND_KG },
    { name: 'oz', size: OUNCE_KG },
  ],
  'g': [
    { name: 'lb', size: POUND_KG * G_PER_KG, from: 2 * POUND_KG * G_PER_KG },
    { name: 'oz', size: OUNCE_KG * G_PER_KG },
  ],
  'g/m2': [{ name: 'oz/yd2', size: siOf('oz/yd2', 'areal mass') }],
  'kg/m2': [{ name: 'lb/ft2', size: siOf('lb/ft2', 'areal mass') / G_PER_KG }],
  'kg/m3': [{ name: 'lb/ft3', size: POUND_KG / FOOT_M ** 3 }],
  'g/cm3': [{ name: 'lb/gal', size: POUND_KG / GALLON_L }],
  'N': [{ name: 'lbf', size: POUND_FORCE_N }],
  'N/mm': [{ name: 'lbf/in', size: POUND_FORCE_N / MM_PER_INCH }],
  'N.mm': [{ name: 'in.lbf', size: POUND_FORCE_N * MM_PER_INCH }],
  'MPa': [{ name: 'psi', size: PSI_MPA }],
  'kPa': [{ name: 'psi', size: PSI_MPA * 1000 }],
  'm/s': [{ name: 'mph', size: siOf('mph', 'speed') }],
};

/** Figures of a text that is only for display; the SI value beside it is the one to calculate with. */
const SHOWN_FIGURES = 4;
const APPROXIMATELY = '≈ ';

/**
 * A value of an SI unit as text in US customary units, `"1/2 in"` or, where the text is not the very value, `"≈ 15/32 in"`.
 * Undefined for units that US practice shares (hours, degrees, shares) and for kelvin, where a difference and a state convert differently.
 */
export function usText(value: number, siUnit: string): string | undefined {
  if (!Number.isFinite(value)) return undefined;
  const reading = scaledReading(value, siUnit);
  return reading === undefined ? undefined : `${reading.isExact ? '' : APPROXIMATELY}${reading.text}`;
}

function scaledReading(value: number, siUnit: string): UsReading | undefined {
  if (siUnit === 'mm') return usMeasure(mm(value), thousandths);
  if (siUnit === 'm') return usMeasure(mm(value * 1000), thousandths);
  if (siUnit === 'degC') return rounded(fahrenheit(value), 'degF');
  if (!Object.hasOwn(usUnits, siUnit)) return undefined;
  const choices = usUnits[siUnit];
  const { name, size } =
    choices.find(({ from = 0 }) => Math.abs(value) >= from) ?? choices[choices.length - 1];
  return rounded(value / size, name);
}

const thousandths = (inches: number): string => inches.toFixed(3);

function rounded(value: number, unit: string): UsReading {
  const shown = Number(value.toPrecision(SHOWN_FIGURES));
  return { text: `${shown} ${unit}`, isExact: Math.abs(shown - value) <= SAME * Math.abs(value) };
}

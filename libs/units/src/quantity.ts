import { numberFrom, plus, rational, rationalFrom, times, type Rational } from './rational.js';

/** What a typed quantity measures; each has one SI unit that the API and the rooms use. */
export type Dimension = 'length' | 'area' | 'mass' | 'temperature' | 'areal mass' | 'volume' | 'speed';

interface UnitOfDimension {
  readonly factor: Rational;
  /** Added before the factor is applied; only temperatures have one. */
  readonly offset?: Rational;
}

/** Exact by definition: 1 in = 25.4 mm and 1 lb = 0.45359237 kg (international yard and pound agreement, 1959). */
const exactly = (decimal: string): Rational => {
  const [whole, part = ''] = decimal.split('.');
  return rational(BigInt(whole + part), 10n ** BigInt(part.length));
};

const INCH_MM = exactly('25.4');
const POUND_KG = exactly('0.45359237');
const foot = times(INCH_MM, rational(12n));
const yard = times(INCH_MM, rational(36n));
const ounceG = times(POUND_KG, rational(1000n, 16n));
const squareMmInM2 = (side: Rational): Rational => times(times(side, side), rational(1n, 1_000_000n));
const cubicMmInL = (volume: Rational): Rational => times(volume, rational(1n, 1_000_000n));
const cubicInchL = cubicMmInL(times(INCH_MM, times(INCH_MM, INCH_MM)));
const gallonL = times(cubicInchL, rational(231n));
const gramsPer = (mass: Rational, side: Rational): Rational => {
  const area = squareMmInM2(side);
  return rational(mass.over * area.under, mass.under * area.over);
};

interface DimensionSpec {
  readonly si: string;
  readonly example: string;
  readonly units: Readonly<Record<string, UnitOfDimension>>;
}

const one = { factor: rational(1n) };

const dimensions: Readonly<Record<Dimension, DimensionSpec>> = {
  'length': {
    si: 'mm',
    example: '5/8 in',
    units: {
      'mm': one,
      'cm': { factor: rational(10n) },
      'm': { factor: rational(1000n) },
      'um': { factor: rational(1n, 1000n) },
      'mil': { factor: times(INCH_MM, rational(1n, 1000n)) },
      'in': { factor: INCH_MM },
      'inch': { factor: INCH_MM },
      '"': { factor: INCH_MM },
      'ft': { factor: foot },
      "'": { factor: foot },
      'yd': { factor: yard },
    },
  },
  'area': {
    si: 'm2',
    example: '22 ft2',
    units: {
      m2: one,
      mm2: { factor: rational(1n, 1_000_000n) },
      cm2: { factor: rational(1n, 10_000n) },
      in2: { factor: squareMmInM2(INCH_MM) },
      ft2: { factor: squareMmInM2(foot) },
      yd2: { factor: squareMmInM2(yard) },
    },
  },
  'mass': {
    si: 'kg',
    example: '40 lb',
    units: {
      kg: one,
      g: { factor: rational(1n, 1000n) },
      t: { factor: rational(1000n) },
      lb: { factor: POUND_KG },
      oz: { factor: times(POUND_KG, rational(1n, 16n)) },
    },
  },
  'temperature': {
    si: 'degC',
    example: '65 degF',
    units: {
      'degC': one,
      '°C': one,
      'K': { factor: rational(1n), offset: exactly('-273.15') },
      'degF': { factor: rational(5n, 9n), offset: rational(-32n) },
      '°F': { factor: rational(5n, 9n), offset: rational(-32n) },
    },
  },
  'areal mass': {
    si: 'g/m2',
    example: '18 oz/yd2',
    units: {
      'g/m2': one,
      'gsm': one,
      'kg/m2': { factor: rational(1000n) },
      'oz/yd2': { factor: gramsPer(ounceG, yard) },
      'oz/ft2': { factor: gramsPer(ounceG, foot) },
      'lb/ft2': { factor: gramsPer(times(POUND_KG, rational(1000n)), foot) },
    },
  },
  'volume': {
    si: 'l',
    example: '1 gal',
    units: {
      l: one,
      L: one,
      ml: { factor: rational(1n, 1000n) },
      mL: { factor: rational(1n, 1000n) },
      gal: { factor: gallonL },
      qt: { factor: times(gallonL, rational(1n, 4n)) },
      pt: { factor: times(gallonL, rational(1n, 8n)) },
      floz: { factor: times(gallonL, rational(1n, 128n)) },
    },
  },
  'speed': {
    si: 'm/s',
    example: '12 kn',
    units: {
      'm/s': one,
      'km/h': { factor: rational(10n, 36n) },
      'kn': { factor: rational(1852n, 3600n) },
      'mph': { factor: times(times(foot, rational(5280n)), rational(1n, 3_600_000n)) },
    },
  },
};

export const siUnitOf = (dimension: Dimension): string => dimensions[dimension].si;
export const exampleOf = (dimension: Dimension): string => dimensions[dimension].example;
export const unitsOf = (dimension: Dimension): readonly string[] => Object.keys(dimensions[dimension].units);

/** How much of the dimension's SI unit one unit of this name is. */
export const siOf = (unit: string, dimension: Dimension): number =>
  numberFrom(dimensions[dimension].units[unit].factor);

/** Why a typed quantity could not be read; `why` is a clause for a person. */
export type QuantityFault =
  | { readonly fault: 'unreadable'; readonly why: string }
  | { readonly fault: 'wrong-unit'; readonly given: string };

const LONGEST_TEXT = 40;

/** A number (decimal, fraction or mixed), then a unit: a word or an inch or foot mark, perhaps squared, perhaps per another. */
const PART = /(-?[\d./]+(?:\s+\d+\/\d+)?)\s*([a-zA-Z_°'"]+[23]?(?:\/[a-zA-Z]+[23]?)?)\s*/gy;

/**
 * Reads `"5/8 in"`, `"2 ft 3 in"`, `"18 oz/yd2"` or `"65 degF"` exactly, rounding once to the nearest double.
 *
 * Returns the value in the dimension's SI unit. A number without a unit, a decimal comma or a unit of another
 * dimension is a fault: nothing is guessed.
 */
export function readQuantity(text: string, dimension: Dimension): number | QuantityFault {
  if (text.length > LONGEST_TEXT) return unreadable(`it is longer than ${LONGEST_TEXT} characters`);
  const trimmed = text.trim();
  const mistake = mistakes.find(([form]) => form.test(trimmed));
  if (mistake !== undefined) return unreadable(mistake[1]);
  const parts = [...trimmed.matchAll(PART)];
  const isReadThrough = parts.map((part) => part[0]).join('') === trimmed && parts.length > 0;
  if (!isReadThrough) return unreadable('it is not a number with a unit, or several');
  if (parts.length > 1 && dimension === 'temperature')
    return unreadable('a temperature is one number with its unit');
  return sumOf(
    parts.map((part) => [part[1], part[2]] as const),
    dimension,
  );
}

const unreadable = (why: string): QuantityFault => ({ fault: 'unreadable', why });

/** The mistakes that people make; none of these forms is in a text that can be read. */
const mistakes: readonly (readonly [RegExp, string])[] = [
  [/\d,\d/, 'decimals are written with a point, and thousands without a mark'],
  [/^-?[\d./\s]+$/, 'it has no unit'],
  [/\d[eExX][+-]?\d/, 'numbers are plain decimals or fractions, without exponents or other bases'],
];

function sumOf(parts: readonly (readonly [string, string])[], dimension: Dimension): number | QuantityFault {
  const known = dimensions[dimension].units;
  let total = rational(0n);
  for (const [digits, name] of parts) {
    const value = rationalFrom(digits);
    if (value === undefined) return unreadable(`${digits} is not a number`);
    if (!Object.hasOwn(known, name)) return { fault: 'wrong-unit', given: name };
    total = plus(total, times(plus(value, known[name].offset ?? rational(0n)), known[name].factor));
  }
  return numberFrom(total);
}

import { unitOfField } from '#lib/units';
import { isRecord } from './record.js';
import { statedUnit } from './stated-unit.js';

/**
 * Decimals of a number that was worked out, by its unit: finer than anybody can cut, weigh, pour or clock, and at least
 * as fine as what lines are priced with. Common practice of a workshop, no published source.
 */
export const decimalsByUnit: Readonly<Record<string, number>> = {
  mm: 2,
  m: 4,
  m2: 4,
  kg: 4,
  g: 2,
  l: 4,
  ml: 2,
  h: 2,
  d: 2,
  degC: 2,
};

/** What has a unit without decimals of its own, or none at all, keeps so many significant digits, and two decimals anyway. */
export const OTHER_DIGITS = 6;
const OTHER_DECIMALS = 2;
/** However small it is, a number keeps so many significant digits. */
export const LEAST_DIGITS = 3;

/**
 * A copy of something that was worked out, in which every number has the precision of its unit: the unit that ends its
 * name, or that stands in `unit` beside it, or that of the range or list it is part of. Doing it twice changes nothing.
 */
export const precise = (value: unknown): unknown => inUnit(value, undefined);

function inUnit(value: unknown, unit: string | undefined): unknown {
  if (typeof value === 'number') return rounded(value, unit);
  if (Array.isArray(value)) return value.map((item) => inUnit(item, unit));
  if (!isRecord(value) || !isPlain(value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, part]) => [name, inUnit(part, unitOf(value, name) ?? unit)]),
  );
}

const isPlain = (value: object): boolean => {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
};

const unitOf = (owner: Readonly<Record<string, unknown>>, name: string): string | undefined =>
  unitOfField(name) ?? timeUnitOf(name) ?? hoursOf(owner, name) ?? statedUnit(owner, name);

/** Hours are a number or a range of them; a list of that name holds what the hours of a day are like. */
const hoursOf = (owner: Readonly<Record<string, unknown>>, name: string): string | undefined =>
  name === 'hours' && !Array.isArray(owner[name]) ? 'h' : undefined;

const timeUnitOf = (name: string): string | undefined =>
  /[a-z0-9]H$/.test(name) ? 'h' : /(?:Days|^days)$/.test(name) ? 'd' : undefined;

/** A number in the precision of its unit. */
export function rounded(value: number, unit: string | undefined): number {
  if (!Number.isFinite(value) || Number.isInteger(value)) return value;
  const decimals = unit === undefined ? undefined : decimalsByUnit[unit];
  const digits = decimals === undefined ? OTHER_DIGITS : LEAST_DIGITS;
  const fine = Number(value.toPrecision(digits));
  const coarse = Number(value.toFixed(decimals ?? OTHER_DECIMALS));
  // Whichever lies nearer kept more of the number.
  return Math.abs(fine - value) < Math.abs(coarse - value) ? fine : coarse;
}

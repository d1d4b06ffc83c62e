/** Digits that a printed number shows, leading zeros apart. */
export function significantDigits(printed: string): number {
  const [mantissa] = printed.toLowerCase().split('e');
  const digits = mantissa.replace(/[^0-9]/g, '').replace(/^0+/, '');
  return Math.max(1, digits.length);
}

/** Our value with two digits more than were printed, so that the reader sees what rounding hides. */
export const oursText = (value: number, printed: string): string =>
  trimmed(value, Math.min(15, Math.max(4, significantDigits(printed) + 2)));

const trimmed = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** Noise of the last bits differs between machines and means nothing, so it is written as 0. */
const NOISE = 1e-12;

export const isNoise = (difference: number, size: number): boolean => Math.abs(difference) <= NOISE * Math.max(Math.abs(size), Number.MIN_VALUE);

export function differenceText(value: number, printed: string): string {
  const expected = Number(printed);
  const difference = value - expected;
  if (isNoise(difference, expected) || (expected === 0 && Math.abs(difference) < NOISE)) return '0';
  if (expected === 0) return difference.toExponential(1);
  const relative = difference / expected;
  return `${relative >= 0 ? '+' : ''}${Math.abs(relative) < 1e-3 ? relative.toExponential(1) : (100 * relative).toPrecision(2)}${Math.abs(relative) < 1e-3 ? '' : ' %'}`;
}

export const allowedText = (allowed: number): string => (allowed === 0 ? 'exact' : `±${trimmed(allowed, 2)}`);

/** An exact fraction; the sign is in the numerator, the denominator is positive. */
export interface Rational {
  readonly over: bigint;
  readonly under: bigint;
}

export const rational = (over: bigint, under = 1n): Rational => ({ over, under });

export const times = (a: Rational, b: Rational): Rational => rational(a.over * b.over, a.under * b.under);

export const plus = (a: Rational, b: Rational): Rational =>
  rational(a.over * b.under + b.over * a.under, a.under * b.under);

/** '12', '12.5', '5/8' or '2 5/8' as an exact fraction; undefined when it is none of these. */
export function rationalFrom(text: string): Rational | undefined {
  const mixed = /^(-?\d+)\s+(\d+)\/(\d+)$/.exec(text);
  if (mixed !== null) return mixedNumber(mixed[1], mixed[2], mixed[3]);
  const plain = /^(-?\d+)\/(\d+)$/.exec(text);
  if (plain !== null) return properFraction(plain[1], plain[2]);
  const decimal = /^(-?)(\d*)\.?(\d*)$/.exec(text);
  if (decimal === null || decimal[2] + decimal[3] === '') return undefined;
  const digits = BigInt(`${decimal[2]}${decimal[3]}`);
  return rational(decimal[1] === '-' ? -digits : digits, 10n ** BigInt(decimal[3].length));
}

function properFraction(over: string, under: string): Rational | undefined {
  return BigInt(under) === 0n ? undefined : rational(BigInt(over), BigInt(under));
}

function mixedNumber(whole: string, over: string, under: string): Rational | undefined {
  const part = properFraction(over, under);
  if (part === undefined) return undefined;
  const magnitude = rational(BigInt(whole.replace('-', '')));
  const sum = plus(magnitude, part);
  return whole.startsWith('-') ? rational(-sum.over, sum.under) : sum;
}

const GUARD_DIGITS = 25n;

/** The nearest double, rounded once from the exact fraction. */
export function numberFrom(exact: Rational): number {
  const scale = 10n ** GUARD_DIGITS;
  const scaled = (exact.over * scale) / exact.under;
  return Number(`${scaled}e-${GUARD_DIGITS}`);
}

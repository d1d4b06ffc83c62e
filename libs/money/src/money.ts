import { Defect } from '#lib/kernel';
import { roundedDivision, type Rounding } from './rounding.js';

/** An ISO 4217 currency with the number of digits of its minor unit. */
export interface Currency {
  readonly code: string;
  readonly minorDigits: number;
}

/** Exact money: a whole number of minor units. */
export interface Money {
  readonly minor: bigint;
  readonly currency: Currency;
}

/** The form money takes in JSON. */
export interface MoneyJson {
  /** Exact decimal text, such as `1234.50`. */
  readonly amount: string;
  /** ISO 4217 code that the amount is in. */
  readonly currency: string;
}

export const money = (minor: bigint, currency: Currency): Money => ({ minor, currency });

export const noMoney = (currency: Currency): Money => money(0n, currency);

export function sameCurrency(a: Money, b: Money): Currency {
  if (a.currency.code !== b.currency.code) {
    throw new Defect(
      `Money of ${a.currency.code} met ${b.currency.code}; amounts are never converted silently`,
    );
  }
  return a.currency;
}

export const addMoney = (a: Money, b: Money): Money => money(a.minor + b.minor, sameCurrency(a, b));
export const subtractMoney = (a: Money, b: Money): Money => money(a.minor - b.minor, sameCurrency(a, b));
export const sumMoney = (amounts: readonly Money[], currency: Currency): Money =>
  amounts.reduce(addMoney, noMoney(currency));

/** '1234.50'; a minus sign in front, no grouping. */
export function decimalText({ minor, currency }: Money): string {
  const digits = (minor < 0n ? -minor : minor).toString().padStart(currency.minorDigits + 1, '0');
  const sign = minor < 0n ? '-' : '';
  if (currency.minorDigits === 0) return `${sign}${digits}`;
  const split = digits.length - currency.minorDigits;
  return `${sign}${digits.slice(0, split)}.${digits.slice(split)}`;
}

export const moneyJson = (amount: Money): MoneyJson => ({
  amount: decimalText(amount),
  currency: amount.currency.code,
});

/** Reads '1234.5'; undefined when the text is no decimal or has more digits than the currency. */
export function moneyFrom(text: string, currency: Currency): Money | undefined {
  const match = /^(-?)(\d{1,15})(?:\.(\d+))?$/.exec(text);
  if (match === null) return undefined;
  const part = match[3] ?? '';
  if (part.length > currency.minorDigits) return undefined;
  const minor = BigInt(match[2] + part.padEnd(currency.minorDigits, '0'));
  return money(match[1] === '-' ? -minor : minor, currency);
}

/** `amount x share / whole`, rounded once in the named way. */
export const proportionOf = (amount: Money, share: bigint, whole: bigint, rounding: Rounding): Money =>
  money(roundedDivision(amount.minor * share, whole, rounding), amount.currency);

/**
 * Splits an amount over weights so that the parts sum to it exactly.
 *
 * Largest-remainder method: every part gets its floor, the left-over minor units go to the largest remainders,
 * ties to the earlier part. Weights are whole numbers of zero or more, at least one positive.
 */
export function spread(amount: Money, weights: readonly bigint[]): readonly Money[] {
  const whole = weights.reduce((sum, weight) => sum + weight, 0n);
  if (whole <= 0n || weights.some((weight) => weight < 0n)) {
    throw new Defect('Weights to spread money over must not be negative and must not all be zero');
  }
  const floors = weights.map((weight) => roundedDivision(amount.minor * weight, whole, 'floor'));
  const remainders = weights.map((weight, index) => amount.minor * weight - floors[index] * whole);
  const left = Number(amount.minor - floors.reduce((sum, part) => sum + part, 0n));
  const order = remainders
    .map((remainder, index) => ({ remainder, index }))
    .sort((a, b) => (a.remainder === b.remainder ? a.index - b.index : a.remainder > b.remainder ? -1 : 1));
  const favoured = new Set(order.slice(0, left).map(({ index }) => index));
  return floors.map((part, index) => money(favoured.has(index) ? part + 1n : part, amount.currency));
}

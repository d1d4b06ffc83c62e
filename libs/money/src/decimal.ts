import { Defect } from '#lib/kernel';
import { roundedDivision, type Rounding } from './rounding.js';

/** An exact decimal: `scaled / 10^places`. */
export interface Decimal {
  readonly scaled: bigint;
  readonly places: number;
}

export const decimal = (scaled: bigint, places: number): Decimal => ({ scaled, places });

/** Reads '12.345'; undefined when the text is not a plain decimal. */
export function decimalFrom(text: string): Decimal | undefined {
  const match = /^(-?)(\d{1,15})(?:\.(\d{1,12}))?$/.exec(text);
  if (match === null) return undefined;
  const part = match[3] ?? '';
  const scaled = BigInt(match[2] + part);
  return decimal(match[1] === '-' ? -scaled : scaled, part.length);
}

const powers = Array.from({ length: 40 }, (_, places) => 10n ** BigInt(places));

export const powerOfTen = (places: number): bigint => powers[places] ?? 10n ** BigInt(places);

/** A decimal of which it was made sure before that it can be read. */
export function exactDecimal(text: string): Decimal {
  const read = decimalFrom(text);
  if (read === undefined) throw new Defect(`${text} is no decimal`);
  return read;
}

/** A measured number fixed to a number of decimal places: the one place where a float enters money. */
export function decimalFromNumber(value: number, places: number, rounding: Rounding): Decimal {
  const [mantissa, exponent = '0'] = value.toString().toLowerCase().split('e');
  const [whole, part = ''] = mantissa.replace('-', '').split('.');
  const digits = BigInt(whole + part) * (value < 0 ? -1n : 1n);
  const shift = places - part.length + Number(exponent);
  const scaled =
    shift >= 0 ? digits * powerOfTen(shift) : roundedDivision(digits, powerOfTen(-shift), rounding);
  return decimal(scaled, places);
}

export function decimalString({ scaled, places }: Decimal): string {
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  const sign = scaled < 0n ? '-' : '';
  if (places === 0) return `${sign}${digits}`;
  return `${sign}${digits.slice(0, digits.length - places)}.${digits.slice(digits.length - places)}`;
}

import {
  decimalFromNumber,
  decimalText,
  money,
  powerOfTen,
  roundedDivision,
  type Currency,
  type Decimal,
  type Money,
  type Rounding,
} from '#lib/money';

/** How every amount of a roll-up is rounded unless the caller names another way. */
export const commercialRounding: Rounding = 'half-away-from-zero';

export const roundings: readonly Rounding[] = ['half-away-from-zero', 'half-to-even', 'floor', 'ceiling'];

const HUNDRED = 100n;

/** A percentage of an amount, multiplied exactly and rounded once. */
export const percentOf = (amount: Money, percent: Decimal, rounding: Rounding): Money =>
  money(
    roundedDivision(amount.minor * percent.scaled, HUNDRED * powerOfTen(percent.places), rounding),
    amount.currency,
  );

/** quantity x price without the tax that the price holds, rounded once at the end. */
export function netOfInclusivePrice(
  quantity: Decimal,
  price: Decimal,
  taxPercent: Decimal,
  to: { readonly currency: Currency; readonly rounding: Rounding },
): Money {
  const taxScale = HUNDRED * powerOfTen(taxPercent.places);
  const over = quantity.scaled * price.scaled * taxScale * powerOfTen(to.currency.minorDigits);
  const under = powerOfTen(quantity.places + price.places) * (taxScale + taxPercent.scaled);
  return money(roundedDivision(over, under, to.rounding), to.currency);
}

/** An amount times a measured factor; for ranges, never for sums that must agree. */
export function timesFactor(amount: Money, factor: number, rounding: Rounding): Money {
  const exact = decimalFromNumber(factor, 6, rounding);
  return money(roundedDivision(amount.minor * exact.scaled, powerOfTen(6), rounding), amount.currency);
}

/** The nearest amount to a simulated or averaged number of major units. */
export const moneyNear = (major: number, currency: Currency, rounding: Rounding): Money =>
  money(decimalFromNumber(major, currency.minorDigits, rounding).scaled, currency);

/** For display and statistics only: sums are made of minor units. */
export const majorUnits = (amount: Money): number => Number(decimalText(amount));

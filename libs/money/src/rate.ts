import { powerOfTen, type Decimal } from './decimal.js';
import { money, type Currency, type Money } from './money.js';
import { roundedDivision, type Rounding } from './rounding.js';

/** An exact price per unit of something (kg, h, m2, each). A rate is never rounded. */
export interface Rate {
  readonly price: Decimal;
  readonly currency: Currency;
  readonly per: string;
}

export const rate = (price: Decimal, currency: Currency, per: string): Rate => ({ price, currency, per });

/** quantity x rate, multiplied exactly and rounded once to the minor unit in the named way. */
export function priceOf(quantity: Decimal, unitRate: Rate, rounding: Rounding): Money {
  const product = quantity.scaled * unitRate.price.scaled;
  const places = quantity.places + unitRate.price.places;
  const minorOver = product * powerOfTen(unitRate.currency.minorDigits);
  return money(roundedDivision(minorOver, powerOfTen(places), rounding), unitRate.currency);
}

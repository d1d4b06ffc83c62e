import {
  decimal,
  decimalFromNumber,
  decimalString,
  exactMoney,
  moneyJson,
  noMoney,
  priceOf,
  rate,
  subtractMoney,
  sumMoney,
  type Currency,
  type MoneyJson,
} from '#lib/money';
import { commercialRounding } from './exact.js';

/** A rate that was agreed, and how much of it the price was made for. */
export interface AgreedRate {
  readonly code: string;
  readonly what: string;
  readonly unit: string;
  readonly quantity: number;
  /** Without tax, overhead and profit inside. */
  readonly rate: MoneyJson;
}

export interface ReMeasureRequest {
  readonly agreed: readonly AgreedRate[];
  /** Quantities of the same rates as found; of one that is not named nothing was found. */
  readonly found: readonly { readonly code: string; readonly quantity: number }[];
  /** What the agreed price holds for what would probably be found besides. */
  readonly provisional: MoneyJson;
  /** Hours that may be worked without a new word of the owner, and those that are expected now. */
  readonly authorisedH: number;
  readonly expectedH: number;
}

export interface ReMeasuredItem {
  /** Unit rate that was agreed. */
  readonly code: string;
  /** What is measured. */
  readonly what: string;
  /** Unit that it is measured in. */
  readonly unit: string;
  /** Quantity of the offer, as decimal text. */
  readonly quantityAgreed: string;
  /** Quantity found after opening, as decimal text. */
  readonly quantityFound: string;
  /** Agreed price of one unit. */
  readonly rate: MoneyJson;
  /** What is more or less of it, at the agreed rate. */
  readonly amount: MoneyJson;
}

/** What was found, charged or credited by the rates that were agreed with the price; without tax. */
export interface ReMeasured {
  /** What was measured anew, each at the agreed rate. */
  readonly items: readonly ReMeasuredItem[];
  /** Sum of the items. */
  readonly measured: MoneyJson;
  /** The provisional sums of the agreed price: taken off, because what they stood for has been measured. */
  readonly provisionalCredited: MoneyJson;
  /** The items less the credit. */
  readonly difference: MoneyJson;
  /** Hours that the customer authorised beforehand. */
  readonly authorisedH: number;
  /** Hours that the found extent now takes. */
  readonly expectedH: number;
  /** Whether the expected hours stay within the authorised ones. */
  readonly isWithinAuthorisation: boolean;
}

/** Hundredths of a square metre, a metre, a fitting. */
const MEASURED_PLACES = 2;

/**
 * Re-measurement by agreed rates: each quantity found less the one agreed, both to the hundredth, times its rate, rounded
 * once; the provisional sums are credited. Money in the currency of the credit.
 *
 * Source: common practice of repair that is measured again, unit prices and stipulated rates for what is found on opening
 * Worked: libs/costing/src/re-measured.spec.ts
 */
export function reMeasured({
  agreed,
  found,
  provisional,
  authorisedH,
  expectedH,
}: ReMeasureRequest): ReMeasured {
  const credit = exactMoney(provisional);
  const quantities = new Map(found.map(({ code, quantity }) => [code, quantity]));
  const items = agreed.map((one) => itemFor(one, quantities.get(one.code) ?? 0, credit.currency));
  const measured = sumMoney(
    items.map(({ amount }) => exactMoney(amount)),
    credit.currency,
  );
  return {
    items: items.filter(({ quantityAgreed, quantityFound }) => quantityAgreed !== quantityFound),
    measured: moneyJson(measured),
    provisionalCredited: moneyJson(subtractMoney(noMoney(credit.currency), credit)),
    difference: moneyJson(subtractMoney(measured, credit)),
    authorisedH,
    expectedH,
    isWithinAuthorisation: expectedH <= authorisedH,
  };
}

function itemFor(
  { code, what, unit, quantity, rate: agreedRate }: AgreedRate,
  found: number,
  currency: Currency,
): ReMeasuredItem {
  const [before, after] = [quantity, found].map((value) =>
    decimalFromNumber(value, MEASURED_PLACES, commercialRounding),
  );
  const { minor } = exactMoney(agreedRate);
  const perUnit = rate(decimal(minor, currency.minorDigits), currency, unit);
  const more = decimal(after.scaled - before.scaled, MEASURED_PLACES);
  return {
    code,
    what,
    unit,
    quantityAgreed: decimalString(before),
    quantityFound: decimalString(after),
    rate: agreedRate,
    amount: moneyJson(priceOf(more, perUnit, commercialRounding)),
  };
}

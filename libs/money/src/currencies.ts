import { Defect } from '#lib/kernel';
import { moneyFrom, type Currency, type Money, type MoneyJson } from './money.js';

/** Digits of the minor unit as ISO 4217 lists them; extended when a price list needs another currency. */
const minorDigitsByCode: Readonly<Record<string, number>> = {
  AUD: 2,
  BHD: 3,
  BRL: 2,
  CAD: 2,
  CHF: 2,
  CLF: 4,
  CLP: 0,
  CNY: 2,
  CZK: 2,
  DKK: 2,
  EUR: 2,
  GBP: 2,
  HKD: 2,
  HRK: 2,
  HUF: 2,
  IDR: 2,
  ILS: 2,
  INR: 2,
  ISK: 0,
  JOD: 3,
  JPY: 0,
  KRW: 0,
  KWD: 3,
  MXN: 2,
  MYR: 2,
  NOK: 2,
  NZD: 2,
  OMR: 3,
  PHP: 2,
  PLN: 2,
  RON: 2,
  RUB: 2,
  SAR: 2,
  SEK: 2,
  SGD: 2,
  THB: 2,
  TND: 3,
  TRY: 2,
  TWD: 2,
  UAH: 2,
  USD: 2,
  UYW: 4,
  VND: 0,
  ZAR: 2,
};

export const currencyCodes: readonly string[] = Object.keys(minorDigitsByCode);

export function findCurrency(code: string): Currency | undefined {
  return Object.hasOwn(minorDigitsByCode, code) ? { code, minorDigits: minorDigitsByCode[code] } : undefined;
}

/** Money that the program wrote itself, read back to the cent. */
export function exactMoney({ amount, currency }: MoneyJson): Money {
  const known = findCurrency(currency);
  if (known === undefined) throw new Defect(`${amount} ${currency} is no money`);
  return moneyIn(amount, known);
}

/** An amount of which it was made sure before that it can be read. */
export function moneyIn(amount: string, currency: Currency): Money {
  const read = moneyFrom(amount, currency);
  if (read === undefined) throw new Defect(`${amount} ${currency.code} is no money`);
  return read;
}

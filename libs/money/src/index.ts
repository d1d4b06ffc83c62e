export { currencyCodes, exactMoney, findCurrency, moneyIn } from './currencies.js';
export {
  decimal,
  decimalFrom,
  decimalFromNumber,
  decimalString,
  exactDecimal,
  powerOfTen,
  type Decimal,
} from './decimal.js';
export {
  addMoney,
  decimalText,
  money,
  moneyFrom,
  moneyJson,
  noMoney,
  proportionOf,
  sameCurrency,
  spread,
  subtractMoney,
  sumMoney,
  type Currency,
  type Money,
  type MoneyJson,
} from './money.js';
export { priceOf, rate, type Rate } from './rate.js';
export { roundedDivision, type Rounding } from './rounding.js';

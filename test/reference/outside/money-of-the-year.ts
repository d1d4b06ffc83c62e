import type { InYear } from './outside-jobs.js';

/**
 * Consumer prices, US city average, all items, 1982-84 = 100, annual. Source: [CPI-US]; 1998 to 2008 were checked against a
 * table of the months. The level of 2026 is from memory: 2.8 % above the 313.7 that the annual changes of 2018 to 2024 come to.
 */
const consumerPrices: Readonly<Record<number, number>> = {
  2000: 172.2,
  2003: 184,
  2004: 188.9,
  2006: 201.6,
  2009: 214.54,
  2010: 218.06,
  2014: 236.74,
};
const LEVEL_OF_THE_LISTS = 322.5;

/** Canadian for one US dollar, mean of the year. Source: [FX-CAD]. */
const canadianDollars: Readonly<Record<number, number>> = { 2004: 1.3013, 2009: 1.14198 };

/** What a dollar of the shipped lists was in the money of the source: prices of consumers, then the exchange of that year. */
export function moneyOfTheYear({ currency, year }: InYear): number {
  const exchange = currency === 'USD' ? 1 : canadianDollars[year];
  const factor = (consumerPrices[year] / LEVEL_OF_THE_LISTS) * exchange;
  if (!(factor > 0)) throw new Error(`no level of prices for ${currency} of ${year}`);
  return factor;
}

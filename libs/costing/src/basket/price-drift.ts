import type { PriceList } from '#lib/catalogue';
import {
  findCurrency,
  money,
  moneyIn,
  moneyJson,
  noMoney,
  subtractMoney,
  sumMoney,
  type Currency,
  type Money,
  type MoneyJson,
} from '#lib/money';

/** What was reckoned for a line: so many packs at a price. */
export interface ReckonedLine {
  readonly line: string;
  readonly title: string;
  readonly packs: readonly { readonly sku: string; readonly count: number; readonly price: MoneyJson }[];
}

/** The packs of one line at the price of then and of now. */
export interface LineDrift {
  /** Line of the estimate. */
  readonly line: string;
  /** What the line buys. */
  readonly title: string;
  /** Pack whose price moved. */
  readonly sku: string;
  /** How many of the pack the line takes. */
  readonly packCount: number;
  /** Price of those packs when the estimate was made. */
  readonly then: MoneyJson;
  /** Absent where the pack is not on the list any more. */
  readonly now?: MoneyJson;
  /** What they cost more today; absent when the pack is no longer sold. */
  readonly difference?: MoneyJson;
}

export interface PriceDrift {
  /** Lines whose packs cost something else today. */
  readonly lines: readonly LineDrift[];
  /** Of the lines that can still be bought as they were reckoned. */
  readonly then: MoneyJson;
  /** What its packs cost today. */
  readonly now: MoneyJson;
  /** Today's price less the price then. */
  readonly difference: MoneyJson;
  /** Packs that are not on the list any more, each once. */
  readonly gone: readonly string[];
}

/**
 * The packs that lines were reckoned with, at the prices of another list: each line's number of packs reaches the price
 * break it reaches there. None when the lists are in different currencies, which are never converted.
 */
export function priceDrift(lines: readonly ReckonedLine[], list: PriceList): PriceDrift | undefined {
  const currency = findCurrency(list.currency);
  const prices = new Map(list.packs.map((pack) => [pack.sku, pack.prices]));
  const isSame = lines.every(({ packs }) => packs.every(({ price }) => price.currency === list.currency));
  if (currency === undefined || !isSame) return undefined;
  const drifts = lines.flatMap(({ line, title, packs }) =>
    packs.map(({ sku, count, price }): Drifted => {
      const reached = (prices.get(sku) ?? []).filter(({ fromPacks }) => fromPacks <= count).at(-1);
      return {
        about: { line, title, sku, packCount: count },
        then: timesCount(price.amount, count, currency),
        now: reached === undefined ? undefined : timesCount(reached.price, count, currency),
      };
    }),
  );
  return summed(drifts, currency);
}

interface Drifted {
  readonly about: Pick<LineDrift, 'line' | 'title' | 'sku' | 'packCount'>;
  readonly then: Money;
  readonly now: Money | undefined;
}

const timesCount = (price: string, count: number, currency: Currency): Money =>
  money(moneyIn(price, currency).minor * BigInt(count), currency);

function summed(drifts: readonly Drifted[], currency: Currency): PriceDrift {
  const kept = drifts.flatMap(({ then, now }) => (now === undefined ? [] : [{ then, now }]));
  const sumOf = (time: 'then' | 'now'): Money =>
    kept.length === 0
      ? noMoney(currency)
      : sumMoney(
          kept.map((one) => one[time]),
          currency,
        );
  return {
    lines: drifts.map(({ about, then, now }) => ({
      ...about,
      then: moneyJson(then),
      ...(now === undefined ? {} : { now: moneyJson(now), difference: moneyJson(subtractMoney(now, then)) }),
    })),
    then: moneyJson(sumOf('then')),
    now: moneyJson(sumOf('now')),
    difference: moneyJson(subtractMoney(sumOf('now'), sumOf('then'))),
    gone: [...new Set(drifts.flatMap(({ about, now }) => (now === undefined ? [about.sku] : [])))],
  };
}

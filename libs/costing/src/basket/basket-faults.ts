import type { Pack, PriceList, Supplier } from '#lib/catalogue';
import { faultsIn } from '#lib/asking';
import { below, pointer, problem, type Problem } from '#lib/kernel';
import { currencyCodes, decimalFrom, findCurrency, moneyFrom, type Currency } from '#lib/money';
import type { BasketRequest, ResinMatch } from './basket-request.js';
import { basketOptionQuestions, type BasketNeed, type BasketOptions } from './questions.js';

const MOST_NEEDS = 2000;
const MOST_PACKS = 20_000;

export function faultsOfBasket(request: BasketRequest): readonly Problem[] {
  const currency = findCurrency(request.currency);
  if (currency === undefined)
    return [
      problem('not-one-of', '/currency', { value: request.currency, choices: currencyCodes.join(', ') }),
    ];
  if (request.needs.length > MOST_NEEDS)
    return [problem('too-many', '/needs', { count: request.needs.length, most: MOST_NEEDS })];
  const list = request.priceList;
  return [
    ...(request.needs.length === 0 ? [problem('too-few', '/needs', { count: 0, least: 1 })] : []),
    ...(list.currency === request.currency
      ? []
      : [
          problem('other-currency', '/priceList/currency', {
            value: list.currency,
            currency: request.currency,
          }),
        ]),
    ...(list.packs.length > MOST_PACKS
      ? [problem('too-many', '/priceList/packs', { count: list.packs.length, most: MOST_PACKS })]
      : []),
    ...below('/priceList', faultsOfPriceList(list)),
    ...request.needs.flatMap((need, index) => faultsOfNeed(need, request.matches, pointer('/needs', index))),
    ...repeatedNeeds(request.needs),
    ...(request.matches ?? []).flatMap(({ massRatio }, index) =>
      positive(massRatio, pointer('/matches', index, 'massRatio')),
    ),
    ...(request.onHand ?? []).flatMap(({ quantity }, index) =>
      notNegative(quantity, pointer('/onHand', index, 'quantity')),
    ),
    ...(request.substitutes ?? []).flatMap(({ ratio, penaltyPerUnit }, index) => [
      ...positive(ratio, pointer('/substitutes', index, 'ratio')),
      ...amount(penaltyPerUnit, pointer('/substitutes', index, 'penaltyPerUnit'), currency),
    ]),
    ...optionFaults(request.options ?? {}, list),
  ];
}

/** Faults of a price list by itself: what the catalogue's keeper would have to put right. */
export function faultsOfPriceList(list: PriceList): readonly Problem[] {
  const currency = findCurrency(list.currency);
  if (currency === undefined)
    return [problem('not-one-of', '/currency', { value: list.currency, choices: currencyCodes.join(', ') })];
  const suppliers = new Set(list.suppliers.map(({ code }) => code));
  return [
    ...list.suppliers.flatMap((supplier, index) =>
      below(pointer('/suppliers', index), supplierFaults(supplier, currency)),
    ),
    ...repeatedText(
      list.suppliers.map(({ code }) => code),
      '/suppliers',
      'code',
    ),
    ...list.packs.flatMap((pack, index) =>
      below(pointer('/packs', index), packFaults(pack, { currency, suppliers })),
    ),
    ...repeatedText(
      list.packs.map(({ sku }) => sku),
      '/packs',
      'sku',
    ),
  ];
}

const supplierFaults = (
  { delivery, hazardSurcharge, oversizeFreight, minimumOrder, freeDeliveryFrom }: Supplier,
  currency: Currency,
): readonly Problem[] => [
  ...amount(delivery, '/delivery', currency),
  ...amount(hazardSurcharge, '/hazardSurcharge', currency),
  ...amount(oversizeFreight, '/oversizeFreight', currency),
  ...amount(minimumOrder, '/minimumOrder', currency),
  ...(freeDeliveryFrom === undefined ? [] : amount(freeDeliveryFrom, '/freeDeliveryFrom', currency)),
];

interface Known {
  readonly currency: Currency;
  readonly suppliers: ReadonlySet<string>;
}

const packFaults = (pack: Pack, { currency, suppliers }: Known): readonly Problem[] => [
  ...(suppliers.has(pack.supplier)
    ? []
    : [
        problem('unknown-code', '/supplier', {
          value: pack.supplier,
          kind: 'supplier of the list',
          known: [...suppliers].join(', '),
        }),
      ]),
  ...positive(pack.content.quantity, '/content/quantity'),
  ...notNegative(pack.massKg, '/massKg'),
  ...(pack.prices.length === 0 ? [problem('too-few', '/prices', { count: 0, least: 1 })] : []),
  ...pack.prices.flatMap(({ price }, index) => amount(price, pointer('/prices', index, 'price'), currency)),
  ...breakFaults(pack),
  ...(pack.cutFee === undefined ? [] : amount(pack.cutFee, '/cutFee', currency)),
  ...(pack.stock === undefined || (Number.isInteger(pack.stock) && pack.stock >= 0)
    ? []
    : [problem('out-of-range', '/stock', { value: pack.stock, range: 'a whole number of 0 or more' })]),
];

function breakFaults({ prices }: Pack): readonly Problem[] {
  const breaks = prices.map(({ fromPacks }) => fromPacks);
  const isRising = breaks.every((from, index) => Number.isInteger(from) && from > (breaks[index - 1] ?? 0));
  if (breaks.length === 0 || (breaks[0] === 1 && isRising)) return [];
  return [problem('breaks-out-of-order', '/prices', { value: breaks.join(', ') })];
}

function amount(text: string, at: string, currency: Currency): readonly Problem[] {
  const read = moneyFrom(text, currency);
  if (read !== undefined)
    return read.minor >= 0n ? [] : [problem('out-of-range', at, { value: text, range: '0 or more' })];
  const isDecimal = decimalFrom(text) !== undefined;
  return [problem('not-a-decimal', at, { value: text, most: isDecimal ? currency.minorDigits : 12 })];
}

const positive = (value: number, at: string): readonly Problem[] =>
  Number.isFinite(value) && value > 0 ? [] : [problem('out-of-range', at, { value, range: 'above 0' })];

const notNegative = (value: number, at: string): readonly Problem[] =>
  Number.isFinite(value) && value >= 0 ? [] : [problem('out-of-range', at, { value, range: '0 or more' })];

function faultsOfNeed(
  need: BasketNeed,
  matches: readonly ResinMatch[] | undefined,
  at: string,
): readonly Problem[] {
  return [
    ...notNegative(need.requiredQuantity, pointer(at, 'requiredQuantity')),
    ...hardenerFault(need, matches ?? [], at),
  ];
}

function hardenerFault(
  { material, part }: BasketNeed,
  matches: readonly ResinMatch[],
  at: string,
): readonly Problem[] {
  if (part === undefined) return [];
  const fitting = matches.filter(({ resin }) => resin === material).map(({ hardener }) => hardener);
  if (fitting.includes(part)) return [];
  return [
    problem('hardener-without-resin', pointer(at, 'part'), {
      value: part,
      resin: material,
      known: fitting.join(', ') || 'none',
    }),
  ];
}

const repeatedNeeds = (needs: readonly BasketNeed[]): readonly Problem[] => {
  const seen = new Set<string>();
  return needs.flatMap(({ id, estimate }, index) => {
    const key = `${estimate ?? ''}/${id}`;
    if (seen.has(key)) return [problem('duplicate', pointer('/needs', index, 'id'), { value: id })];
    seen.add(key);
    return [];
  });
};

function repeatedText(codes: readonly string[], at: string, field: string): readonly Problem[] {
  const seen = new Set<string>();
  return codes.flatMap((code, index) => {
    if (seen.has(code)) return [problem('duplicate', pointer(at, index, field), { value: code })];
    seen.add(code);
    return [];
  });
}

function optionFaults(options: BasketOptions, list: PriceList): readonly Problem[] {
  const known = list.suppliers.map(({ code }) => code);
  return [
    ...faultsIn(options, basketOptionQuestions, '/options'),
    ...(options.suppliers ?? []).flatMap((code, index) =>
      known.includes(code)
        ? []
        : [
            problem('unknown-code', pointer('/options/suppliers', index), {
              value: code,
              kind: 'supplier of the list',
              known: known.join(', '),
            }),
          ],
    ),
  ];
}

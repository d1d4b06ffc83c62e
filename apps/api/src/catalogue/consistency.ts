import { pointer, problem, type Problem } from '#lib/kernel';
import type { Catalogue, PriceList } from '#lib/catalogue';
import { isRecord } from '../http/dto/field.js';

/** What only shows when an edition is looked at as a whole; it is published only when nothing is found. */
export const inconsistencies = (catalogue: Catalogue): readonly Problem[] => [
  ...unknownCites(catalogue),
  ...catalogue.priceLists.flatMap((list, index) => priceListFaults(list, catalogue, pointer('', 'priceLists', index))),
  ...catalogue.labourRates.flatMap(({ validFrom, validTo }, index) => validityFaults(validFrom, validTo, pointer('', 'labourRates', index))),
];

function unknownCites(catalogue: Catalogue): readonly Problem[] {
  const known = new Set(catalogue.sources.map(({ key }) => key));
  return (['materials', 'labourRates'] as const).flatMap((part) => catalogue[part].flatMap((item) =>
    citesIn(item, pointer('', part, item.code)).filter(({ source }) => !known.has(source)).map(({ source, at }) => unknown(at, source, 'source', known))));
}

interface FoundCite {
  readonly source: string;
  readonly at: string;
}

function citesIn(value: unknown, at: string): readonly FoundCite[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => citesIn(item, pointer(at, index)));
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    (key === 'cite' && isRecord(part) && typeof part.source === 'string' ? [{ source: part.source, at: pointer(at, 'cite', 'source') }] : citesIn(part, pointer(at, key))));
}

function priceListFaults(list: PriceList, { materials }: Catalogue, at: string): readonly Problem[] {
  const codes = new Set(materials.map(({ code }) => code));
  const suppliers = new Set(list.suppliers.map(({ code }) => code));
  const seen = new Set<string>();
  const packFaults = list.packs.flatMap(({ sku, content, supplier, prices }, index) => {
    const here = pointer(at, 'packs', index);
    const isRepeated = seen.has(sku);
    seen.add(sku);
    return [
      ...(isRepeated ? [problem('duplicate', pointer(here, 'sku'), { value: sku })] : []),
      ...(codes.has(content.material) ? [] : [unknown(pointer(here, 'content', 'material'), content.material, 'material', codes)]),
      ...(suppliers.has(supplier) ? [] : [unknown(pointer(here, 'supplier'), supplier, 'supplier', suppliers)]),
      ...(isAscending(prices.map(({ fromPacks }) => fromPacks)) ? [] : [problem('contradiction', pointer(here, 'prices'), { other: 'itself', why: 'the first price is for 1 pack, and fromPacks ascends' })]),
    ];
  });
  return [...validityFaults(list.validFrom, list.validTo, at), ...packFaults];
}

const isAscending = (counts: readonly number[]): boolean =>
  counts[0] === 1 && counts.every((count, index) => index === 0 || count > counts[index - 1]);

const validityFaults = (from: string, to: string, at: string): readonly Problem[] =>
  (from <= to ? [] : [problem('contradiction', pointer(at, 'validTo'), { other: 'validFrom', why: 'it ends before it begins' })]);

const MOST_NAMED = 20;

const unknown = (at: string, value: string, kind: string, known: ReadonlySet<string>): Problem =>
  problem('unknown-code', at, { value: JSON.stringify(value), kind, known: [...known].slice(0, MOST_NAMED).join(', ') });

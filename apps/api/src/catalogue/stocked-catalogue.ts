import type { Catalogue, Pack } from '#lib/catalogue';
import type { StockRow } from './stock.entity.js';

/** A catalogue with the packs of one list as they were counted last. */
export interface StockedCatalogue {
  readonly catalogue: Catalogue;
  /** RFC 3339 instant of the oldest count in it; absent when nothing was counted. */
  readonly stockCountedAt?: string;
}

/** What was counted takes the place of what the edition states; packs that nobody counted stay as they are. */
export function withStock(
  catalogue: Catalogue,
  priceList: string,
  counts: readonly StockRow[],
): StockedCatalogue {
  if (counts.length === 0) return { catalogue };
  const counted = new Map(counts.map(({ sku, packs }) => [sku, packs]));
  const oldest = counts.map(({ countedAt }) => countedAt).reduce((a, b) => (a < b ? a : b));
  const priceLists = catalogue.priceLists.map((list) =>
    list.code === priceList ? { ...list, packs: list.packs.map(packAsCounted(counted)) } : list,
  );
  return { catalogue: { ...catalogue, priceLists }, stockCountedAt: oldest.toISOString() };
}

const packAsCounted =
  (counted: ReadonlyMap<string, number>) =>
  (pack: Pack): Pack => {
    const stock = counted.get(pack.sku);
    return stock === undefined ? pack : { ...pack, stock };
  };

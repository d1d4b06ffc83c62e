import { createHash } from 'node:crypto';
import { Defect } from '#lib/kernel';
import type { Catalogue, LabourRates, Material, PriceList, Source } from '#lib/catalogue';
import type { CatalogueTable } from './catalogue-rows.js';
import type { EditionRow } from './catalogue.entities.js';

/** A price list as it was checked when it was written. */
export function priceListOf(body: unknown): PriceList {
  if (isPriceList(body)) return body;
  throw new Defect('A row of price_list holds no price list');
}

type Content = Readonly<Record<CatalogueTable, readonly unknown[]>>;

/** An edition as the rooms take it. Rows were checked when they were written, so they are not checked again. */
export const catalogueFrom = ({ code, contentHash }: EditionRow, content: Content): Catalogue => ({
  edition: code,
  hash: contentHash ?? hashOfContent(content),
  materials: content.material.filter(isMaterial),
  priceLists: content.price_list.filter(isPriceList),
  labourRates: content.labour_rates.filter(isLabourRates),
  sources: content.source.filter(isSource),
});

/** SHA-256 of everything in an edition, in catalogue order, with the members of each row in order. */
export const hashOfContent = (content: Content): string =>
  createHash('sha256')
    .update(JSON.stringify([content.material, content.price_list, content.labour_rates, content.source]))
    .digest('hex');

const has = (value: unknown, ...keys: readonly string[]): boolean =>
  typeof value === 'object' && value !== null && keys.every((key) => Object.hasOwn(value, key));

const isMaterial = (value: unknown): value is Material => has(value, 'code', 'kind', 'name');
const isPriceList = (value: unknown): value is PriceList =>
  has(value, 'code', 'currency', 'packs', 'suppliers');
const isLabourRates = (value: unknown): value is LabourRates =>
  has(value, 'code', 'currency', 'perHour', 'charges');
const isSource = (value: unknown): value is Source => has(value, 'key', 'title', 'readAs');

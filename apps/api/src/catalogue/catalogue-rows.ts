import { unreachable } from '#lib/kernel';
import type { Catalogue, LabourRates, Material, PriceList, Source } from '#lib/catalogue';

/** Tables whose rows make up an edition. */
export const catalogueTables = ['material', 'price_list', 'labour_rates', 'source'] as const;
export type CatalogueTable = (typeof catalogueTables)[number];

export interface NewRow {
  readonly code: string;
  readonly kind: string;
  readonly name: string;
  readonly body: unknown;
  readonly position: number;
}

/** The rows that a catalogue has in one table. */
export function rowsOf(catalogue: Catalogue, table: CatalogueTable): readonly NewRow[] {
  switch (table) {
    case 'material':
      return catalogue.materials.map(materialRow);
    case 'price_list':
      return catalogue.priceLists.map(priceListRow);
    case 'labour_rates':
      return catalogue.labourRates.map(labourRatesRow);
    case 'source':
      return catalogue.sources.map(sourceRow);
    default:
      return unreachable(table);
  }
}

const materialRow = (body: Material, position: number): NewRow => ({
  code: body.code,
  kind: body.kind,
  name: body.name,
  body,
  position,
});
const priceListRow = (body: PriceList, position: number): NewRow => ({
  code: body.code,
  kind: body.currency,
  name: body.name,
  body,
  position,
});
const labourRatesRow = (body: LabourRates, position: number): NewRow => ({
  code: body.code,
  kind: body.currency,
  name: body.name,
  body,
  position,
});
const sourceRow = (body: Source, position: number): NewRow => ({
  code: body.key,
  kind: body.readAs,
  name: body.title,
  body,
  position,
});

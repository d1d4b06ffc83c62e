import type { PriceList } from '#lib/catalogue';
import type { BasketByCode, BasketNeed, ReckonedLine } from '#lib/costing';
import type { Estimate, EstimateLine } from '#lib/estimate';

/** What a caller may decide about the order of an estimate; the needs are the estimate's own. */
export interface BasketChoices extends Omit<BasketByCode, 'needs' | 'priceList'> {
  readonly priceList?: string;
  /** Code of the edition whose prices count, or `current`. */
  readonly pricedAt?: string;
  /** Ids of other estimates that are bought for in the same order. */
  readonly together?: readonly string[];
}

/** An estimate in an order, with the price lists of the edition it was made with. */
export interface OrderedEstimate {
  readonly id: string;
  readonly estimate: Estimate;
  readonly priceLists: readonly PriceList[];
}

/**
 * The order that one or several estimates call for: each bought line's net and waste, in the variant (thickness, sheet,
 * roll width, hardener) of the pack that priced it, because cuts and mixing were planned for that one.
 */
export function basketAskedFor(
  estimates: readonly [OrderedEstimate, ...OrderedEstimate[]],
  choices: BasketChoices & { readonly priceList: string },
): BasketByCode {
  const isShared = estimates.length > 1;
  return {
    ...choices,
    needs: estimates.flatMap(({ id, estimate: { lines, provenance }, priceLists }) => {
      const pricedWith = priceLists.find(({ code }) => code === provenance.priceList);
      return lines
        .flatMap((line) => needOf(line, pricedWith))
        .map((need) => (isShared ? { ...need, estimate: id } : need));
    }),
  };
}

/** The bought lines of an estimate with the packs it was reckoned with. */
export const reckonedLines = ({ lines }: Estimate): readonly ReckonedLine[] =>
  lines.flatMap(({ code, title, packs }) => (packs.length === 0 ? [] : [{ line: code, title, packs }]));

function needOf(line: EstimateLine, pricedWith: PriceList | undefined): readonly BasketNeed[] {
  const sku = line.packs?.[0]?.sku;
  if (line.material === undefined || sku === undefined) return [];
  const content = pricedWith?.packs.find((pack) => pack.sku === sku)?.content;
  const { part, thicknessMm, form, sheet, rollWidthMm } = content ?? {
    part: undefined,
    thicknessMm: undefined,
    form: undefined,
    sheet: undefined,
    rollWidthMm: undefined,
  };
  return [
    {
      id: line.code,
      title: line.title,
      material: line.material,
      unit: line.unit,
      // Whole sheets were planned for the core; of everything else the pack may be another.
      requiredQuantity: sheet === undefined ? line.netQuantity + line.wasteQuantity : line.purchaseQuantity,
      ...(part === undefined ? {} : { part }),
      ...(thicknessMm === undefined ? {} : { thicknessMm }),
      ...(form === undefined ? {} : { form }),
      ...(sheet === undefined ? {} : { sheet }),
      ...(rollWidthMm === undefined ? {} : { rollWidthMm }),
    },
  ];
}

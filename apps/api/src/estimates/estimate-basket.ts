import type { PriceList } from '#lib/catalogue';
import type { BasketByCode, BasketNeed } from '#lib/costing';
import type { Estimate, EstimateLine } from '#lib/estimate';

/** What a caller may decide about the order of an estimate; the needs are the estimate's own. */
export type BasketChoices = Omit<BasketByCode, 'needs' | 'priceList'> & { readonly priceList?: string };

/**
 * The order that an estimate calls for: each bought line's net and waste, in the variant (thickness, sheet, roll width,
 * hardener) of the pack that priced it, because cuts and mixing were planned for that one.
 */
export function basketAskedFor({ lines, provenance }: Estimate, priceLists: readonly PriceList[], choices: BasketChoices): BasketByCode {
  const pricedWith = priceLists.find(({ code }) => code === provenance.priceList);
  return { ...choices, priceList: choices.priceList ?? provenance.priceList, needs: lines.flatMap((line) => needOf(line, pricedWith)) };
}

function needOf(line: EstimateLine, pricedWith: PriceList | undefined): readonly BasketNeed[] {
  const sku = line.packs?.[0]?.sku;
  if (line.material === undefined || sku === undefined) return [];
  const content = pricedWith?.packs.find((pack) => pack.sku === sku)?.content;
  const { part, thicknessMm, form, sheet, rollWidthMm } = content ?? { part: undefined, thicknessMm: undefined, form: undefined, sheet: undefined, rollWidthMm: undefined };
  return [{
    id: line.code, title: line.title, material: line.material, unit: line.unit,
    // Whole sheets were planned for the core; of everything else the pack may be another.
    requiredQuantity: sheet === undefined ? line.netQuantity + line.wasteQuantity : line.purchaseQuantity,
    ...(part === undefined ? {} : { part }), ...(thicknessMm === undefined ? {} : { thicknessMm }), ...(form === undefined ? {} : { form }),
    ...(sheet === undefined ? {} : { sheet }), ...(rollWidthMm === undefined ? {} : { rollWidthMm }),
  }];
}

import type { Pack, PriceList } from '#lib/catalogue';
import { derived, fromCatalogue, type Figure } from '#lib/provenance';
import type { LineRequest, Section } from '#lib/costing';
import { breakFor, cheapestPacks, type PackChoice } from './cheapest-packs.js';
import { wholePackCount, type Need } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { CauseClass } from './defect-record.js';

/** A need with the packs that cover it; no packs when the price list sells none. */
export interface Purchase {
  readonly need: Need;
  readonly section: Section;
  readonly choices: readonly PackChoice[];
}

/** The cheapest packs for each need on its own; the basket weighs them together. */
export const purchasesOf = (needs: readonly Need[], priceList: PriceList): readonly Purchase[] =>
  needs.map((need) => ({ need, section: sectionOf(need), choices: cheapestPacks(need.required.value, packsFor(need, priceList)) }));

/** Packs that hold the same material in the form asked for; a field the need leaves open may be anything. */
const packsFor = (need: Need, { packs }: PriceList): readonly Pack[] =>
  undominated(packs.filter(({ content }) =>
    content.material === need.material
    && content.part === need.part
    && content.unit === need.unit
    && (need.thicknessMm === undefined || content.thicknessMm === need.thicknessMm)
    && (need.form === undefined || content.form === need.form)
    && (need.rollWidthMm === undefined || content.rollWidthMm === need.rollWidthMm)
    && (need.sheet === undefined || (content.sheet?.lengthMm === need.sheet.lengthMm && content.sheet.widthMm === need.sheet.widthMm))));

/** Of packs alike in content and breaks only the cheapest can be in a cheapest set. */
const undominated = (packs: readonly Pack[]): readonly Pack[] =>
  packs.filter((pack, index) => !packs.some((other, place) =>
    place !== index && other.stock === undefined && other.content.quantity === pack.content.quantity && isCheaper(other, pack, place < index)));

const isCheaper = (a: Pack, b: Pack, winsTies: boolean): boolean => {
  const counts = [...new Set([...a.prices, ...b.prices].map(({ fromPacks }) => fromPacks))];
  const differences = counts.map((count) => Number(breakFor(a, count)) - Number(breakFor(b, count)));
  return differences.every((difference) => difference <= 0) && (winsTies || differences.some((difference) => difference < 0));
};

const sections: Readonly<Record<string, Section>> = { consumable: 'consumables', safety: 'safety', fastener: 'materials' };
const sectionOf = ({ purpose }: Need): Section => sections[purpose] ?? 'materials';

export interface PurchaseTerms {
  readonly priceList: PriceList;
  readonly causeClass: CauseClass;
  readonly taxGroup: string;
}

/** One priced line per kind of pack bought. */
export const purchaseLines = (purchases: readonly Purchase[], terms: PurchaseTerms): readonly LineRequest[] =>
  purchases.flatMap((purchase) => purchase.choices.map((choice, index) => purchaseLine(purchase, choice, { terms, index })));

function purchaseLine({ need, section, choices }: Purchase, choice: PackChoice, { terms, index }: { readonly terms: PurchaseTerms; readonly index: number }): LineRequest {
  const { pack, count, price } = choice;
  const likely = need.range.likely === 0 ? 1 : need.range.likely;
  return {
    code: lineCodeOf(need, choices.length, index), section, title: pack.name, stage: need.purpose, partOrLabour: 'part',
    causeClass: terms.causeClass, netQuantity: packFigure(need, choice), unit: 'pack', unitRate: price,
    rateCite: { source: 'PRICE-DATA', note: `${terms.priceList.code}, ${pack.sku}${terms.priceList.invented ? ', invented' : ''}` },
    rateIncludesTax: terms.priceList.pricesIncludeTax, taxGroup: terms.taxGroup,
    spread: { low: Math.min(1, need.range.low / likely), high: Math.max(1, need.range.high / likely) },
    extentExponent: need.extentExponent, note: count === 1 ? '1 pack' : `${count} packs`,
  };
}

export const lineCodeOf = ({ id }: Need, choiceCount: number, index: number): string =>
  choiceCount === 1 ? `part-${id}` : `part-${id}-${index + 1}`;

const packFigure = (need: Need, { pack, count }: PackChoice): Figure =>
  derived<string>('pack', fraction(count), `packs of ${pack.name}`, {
    formula: 'packs.cheapest-cover', title: 'Cheapest packs that cover the required quantity', symbol: 'n',
    cite: { source: 'ARITHMETIC', note: 'exhaustive search over the packs of the price list' },
    inputs: {
      required: need.required,
      content: fromCatalogue<string>(need.unit, fraction(pack.content.quantity), 'content of one pack', { item: pack.sku, field: 'content.quantity', cite: { source: 'PRICE-DATA' } }),
    },
  });

/** Quantity in the unit of the need that one choice brings home. */
export const broughtHome = ({ pack, count }: PackChoice): number => pack.content.quantity * count;

/** What is left over when the packs are whole: bought less required. */
export const leftOver = ({ need, choices }: Purchase): number =>
  choices.reduce((sum, choice) => sum + broughtHome(choice), 0) - need.required.value;

export const isUnpriced = ({ need, choices }: Purchase): boolean => choices.length === 0 && wholePackCount(need.required.value, 1) > 0;

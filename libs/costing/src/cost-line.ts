import type { MoneyJson } from '#lib/money';
import type { Cite, Figure } from '#lib/provenance';
import type { Billed, BilledBy } from './goods-billing.js';

/** Where a line stands in the roll-up. */
export type Section =
  | 'labour'
  | 'materials'
  | 'consumables'
  | 'safety'
  | 'hire'
  | 'yard'
  | 'subcontract'
  | 'disposal'
  | 'freight';

/** In the order a quotation lists them. */
export const sectionTitles: Readonly<Record<Section, string>> = {
  labour: 'Labour',
  materials: 'Materials',
  consumables: 'Consumables',
  safety: 'Protection of people',
  hire: 'Hire',
  yard: 'Yard charges',
  subcontract: 'Work by others',
  disposal: 'Waste and disposal',
  freight: 'Freight and surcharges',
};

export const sections: readonly Section[] = [
  'labour',
  'materials',
  'consumables',
  'safety',
  'hire',
  'yard',
  'subcontract',
  'disposal',
  'freight',
];

/** What the insurer asks: did it happen at once, was it there before, or is it upkeep. */
export type CauseClass = 'sudden' | 'pre-existing' | 'maintenance';

export const causeClasses: readonly CauseClass[] = ['sudden', 'pre-existing', 'maintenance'];

/** Services (hire, yard charges, disposal) count with labour: nothing depreciates in them. */
export type PartOrLabour = 'part' | 'labour';

export const partOrLabours: readonly PartOrLabour[] = ['part', 'labour'];

/** Wear of a part, for insurers who pay its worth and not its price. */
export interface DepreciationTerms {
  readonly ageYears: number;
  /** Straight-line life; the percentage is worked out from it when none is given. */
  readonly lifeYears?: number;
  /** Exact decimal text, 0 to 100. */
  readonly percent?: string;
}

export interface LineRequest {
  readonly code: string;
  readonly section: Section;
  readonly title: string;
  /** Step of the job, for grouping in a report. */
  readonly stage?: string;
  readonly partOrLabour: PartOrLabour;
  readonly causeClass: CauseClass;
  /** A plain number is taken as entered; a `Figure` keeps its own story. */
  readonly netQuantity: number | Figure;
  readonly wasteFraction?: number | Figure;
  /** Whole packs; charged instead of the required quantity when given. */
  readonly purchaseQuantity?: number | Figure;
  /** What of the packs is charged to this job; absent, all of them. */
  readonly billed?: Billed;
  readonly unit: string;
  /** Exact decimal text per unit, in the roll-up's currency; absent where packs are priced instead. */
  readonly unitRate?: string;
  /** The packs bought: the amount is then what is charged of their price, and the rate shown is an average. */
  readonly packs?: readonly LinePack[];
  readonly rateCite?: Cite;
  readonly rateIncludesTax?: boolean;
  readonly taxGroup: string;
  /** Least and most of the amount, as factors of it, at the extent recorded. */
  readonly spread?: { readonly low: number; readonly high: number };
  /** What it comes to where more or less is found than was recorded; absent, it is the same whatever is found. */
  readonly atExtents?: readonly AtExtent[];
  readonly depreciation?: DepreciationTerms;
  /** `out` lines are listed so that nobody can say they were forgotten, and are not summed. */
  readonly scope?: 'in' | 'out';
  readonly note?: string;
}

/** At so many times the recorded area, so many times the amount: planned again, not scaled. */
export interface AtExtent {
  readonly extentFactor: number;
  readonly amountFactor: number;
}

/** So many packs of one kind in a line. */
export interface LinePack {
  readonly sku: string;
  readonly name: string;
  readonly supplier: string;
  readonly count: number;
  /** Exact decimal text for one pack. */
  readonly price: string;
}

export interface LineQuantity {
  readonly net: number;
  /** Wasted on top of the net quantity. */
  readonly waste: number;
  readonly required: number;
  /** Whole packs; absent for what is not bought in packs. */
  readonly purchase?: number;
  /** What the rate was multiplied with, exactly. */
  readonly charged: string;
}

export interface MoneyRange {
  readonly low: MoneyJson;
  readonly likely: MoneyJson;
  readonly high: MoneyJson;
}

export interface LineDepreciation {
  readonly ageYears: number;
  readonly percent: string;
  readonly amount: MoneyJson;
  readonly remaining: MoneyJson;
}

export interface CostLine {
  readonly code: string;
  readonly section: Section;
  readonly title: string;
  readonly stage?: string;
  readonly partOrLabour: PartOrLabour;
  readonly causeClass: CauseClass;
  readonly scope: 'in' | 'out';
  readonly quantity: LineQuantity;
  readonly unit: string;
  readonly unitRate: MoneyJson;
  /** True where packs were priced and the rate is their price over their content. */
  readonly isAverageRate: boolean;
  readonly packs: readonly LinePack[];
  /** Of packs only: how they are charged, and without tax what buying them whole would come to. */
  readonly goods?: { readonly billedBy: BilledBy; readonly bought: MoneyJson };
  readonly rateIncludesTax: boolean;
  readonly taxGroup: string;
  readonly amount: MoneyJson;
  readonly range: MoneyRange;
  readonly spread: { readonly low: number; readonly high: number };
  readonly atExtents: readonly AtExtent[];
  readonly depreciation?: LineDepreciation;
  readonly note?: string;
  readonly why: Figure;
}

export interface TaxGroup {
  readonly code: string;
  readonly name: string;
  /** Exact decimal text. */
  readonly percent: string;
}

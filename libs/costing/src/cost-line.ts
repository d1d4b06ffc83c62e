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
  /** Age of the old deck that new parts replace. */
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
  /** Extent found over extent recorded. */
  readonly extentFactor: number;
  /** Amount then over amount now. */
  readonly amountFactor: number;
}

/** So many packs of one kind in a line. */
export interface LinePack {
  /** Number of the pack bought. */
  readonly sku: string;
  /** Name of the pack bought. */
  readonly name: string;
  /** Supplier of the pack bought. */
  readonly supplier: string;
  /** How many of the pack are bought. */
  readonly count: number;
  /** Exact decimal text for one pack. */
  readonly price: string;
}

export interface LineQuantity {
  /** Quantity that ends up in the repair. */
  readonly net: number;
  /** Wasted on top of the net quantity. */
  readonly waste: number;
  /** Quantity with waste. */
  readonly required: number;
  /** Whole packs; absent for what is not bought in packs. */
  readonly purchase?: number;
  /** What the rate was multiplied with, exactly. */
  readonly charged: string;
}

export interface MoneyRange {
  /** Amount at the low end. */
  readonly low: MoneyJson;
  /** Likely amount. */
  readonly likely: MoneyJson;
  /** Amount at the high end. */
  readonly high: MoneyJson;
}

/** Wear of a part that is replaced, shown beside its amount. */
export interface LineDepreciation {
  /** Age of the part that is replaced. */
  readonly ageYears: number;
  /** Wear in percent, as decimal text. */
  readonly percent: string;
  /** Wear in money. */
  readonly amount: MoneyJson;
  /** Amount less wear. */
  readonly remaining: MoneyJson;
}

/** A priced line: its quantity, rate and rounded amount. */
export interface CostLine {
  /** Code of the priced line. */
  readonly code: string;
  /** Section that the line is summed in. */
  readonly section: Section;
  /** What the line pays for. */
  readonly title: string;
  /** Stage of the work the line belongs to. */
  readonly stage?: string;
  /** Whether the line is goods or work. */
  readonly partOrLabour: PartOrLabour;
  /** Who bears the cause of the line. */
  readonly causeClass: CauseClass;
  /** Whether the line counts, or only shows what would be extra. */
  readonly scope: 'in' | 'out';
  /** Quantity needed and quantity bought. */
  readonly quantity: LineQuantity;
  /** Unit of the line's quantity. */
  readonly unit: string;
  /** Price of one unit. */
  readonly unitRate: MoneyJson;
  /** True where packs were priced and the rate is their price over their content. */
  readonly isAverageRate: boolean;
  /** Packs that the line buys. */
  readonly packs: readonly LinePack[];
  /** Of packs only: how they are charged, and without tax what buying them whole would come to. */
  readonly goods?: {
    /** Whether whole packs or what is used is billed. */
    readonly billedBy: BilledBy;
    /** What the packs cost that the yard must buy. */
    readonly bought: MoneyJson;
  };
  /** Whether the rate holds tax already. */
  readonly rateIncludesTax: boolean;
  /** Tax group of the line. */
  readonly taxGroup: string;
  /** Rounded amount of the line. */
  readonly amount: MoneyJson;
  /** Amount at the ends of its spread. */
  readonly range: MoneyRange;
  /** Ends of the spread as factors of the amount. */
  readonly spread: {
    /** Low factor. */
    readonly low: number;
    /** High factor. */
    readonly high: number;
  };
  /** How the amount follows the extent that is found. */
  readonly atExtents: readonly AtExtent[];
  /** Wear of the old part that the line replaces. */
  readonly depreciation?: LineDepreciation;
  /** What to know about the line. */
  readonly note?: string;
  /** Derivation of the quantity. */
  readonly why: Figure;
}

export interface TaxGroup {
  /** Code of the tax group. */
  readonly code: string;
  /** Name of the tax. */
  readonly name: string;
  /** Rate in percent, as exact decimal text. */
  readonly percent: string;
}

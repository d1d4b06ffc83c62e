import type { Cite } from '#lib/provenance';

/** What a pack holds: how much of which material, in which variant. */
export interface PackContent {
  readonly material: string;
  /** Hardener code, when the pack holds a hardener of the resin system. */
  readonly part?: string;
  readonly thicknessMm?: number;
  readonly form?: 'plain' | 'scored';
  readonly sheet?: { readonly lengthMm: number; readonly widthMm: number };
  readonly rollWidthMm?: number;
  /** In the unit the material is needed in: kg, l, m2, m, each, pair, roll, pack. */
  readonly quantity: number;
  readonly unit: string;
}

export interface PriceBreak {
  readonly fromPacks: number;
  /** Exact decimal text in the list's currency. */
  readonly price: string;
}

export interface Pack {
  readonly sku: string;
  readonly name: string;
  readonly supplier: string;
  readonly content: PackContent;
  /** First entry is for one pack; ascending `fromPacks`. */
  readonly prices: readonly PriceBreak[];
  readonly massKg: number;
  readonly hazardous: boolean;
  readonly oversize: boolean;
  readonly shelfLifeMonths?: number;
  readonly stock?: number;
  /** Extra charge when a part of the pack is cut off. */
  readonly cutFee?: string;
}

export interface Supplier {
  readonly code: string;
  readonly name: string;
  readonly delivery: string;
  readonly hazardSurcharge: string;
  readonly oversizeFreight: string;
  readonly minimumOrder: string;
  readonly freeDeliveryFrom?: string;
}

export interface PriceList {
  readonly code: string;
  readonly name: string;
  readonly currency: string;
  readonly validFrom: string;
  readonly validTo: string;
  readonly invented: boolean;
  readonly pricesIncludeTax: boolean;
  readonly suppliers: readonly Supplier[];
  readonly packs: readonly Pack[];
}

export type Skill = 'general' | 'laminator' | 'finisher' | 'rigger';

export interface YardCharge {
  readonly code: string;
  readonly name: string;
  /** `day` is a day on the calendar, `worked-day` one on which somebody works. */
  readonly per: 'job' | 'day' | 'worked-day' | 'labour-h' | 'opened-m2';
  readonly price: string;
  /** By the shelter, or only while a heater warms the deck or a shade keeps the sun off it. */
  readonly when?: 'shed' | 'tent' | 'open' | 'heated' | 'shaded';
  /** Only where the boat was hauled for this job, or only in a yard; everywhere when absent. */
  readonly where?: 'ashore-for-this' | 'yard';
}

export interface LabourRates {
  readonly code: string;
  readonly name: string;
  readonly region: string;
  readonly currency: string;
  readonly validFrom: string;
  readonly validTo: string;
  readonly invented: boolean;
  /** Exact decimal text per hour. */
  readonly perHour: Readonly<Record<Skill, string>>;
  readonly charges: readonly YardCharge[];
  /** `posted` rates are what a yard charges, overhead and profit inside; `wage` is what it pays. */
  readonly rateBasis: 'posted' | 'wage';
  readonly overheadPercent: string;
  readonly profitPercent: string;
  readonly taxGroups: readonly { readonly code: string; readonly name: string; readonly percent: string }[];
  readonly cite?: Cite;
}

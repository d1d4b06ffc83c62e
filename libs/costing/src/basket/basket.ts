import type { MoneyJson } from '#lib/money';
import type { MaterialVariant } from '#lib/takeoff';
import type { Excluded } from './plan-parts.js';

/** So many packs of one kind from one supplier. */
export interface BasketLine {
  /** Supplier's number of the pack. */
  readonly sku: string;
  /** What the supplier calls the pack. */
  readonly name: string;
  /** Code of the supplier who sells it. */
  readonly supplier: string;
  /** The material in the pack, with the form it is sold in. */
  readonly content: MaterialVariant;
  /** How many packs are bought. */
  readonly packCount: number;
  /** What one pack holds, in `unit`. */
  readonly quantityPerPack: number;
  /** What all packs of the line hold together. */
  readonly quantity: number;
  /** Unit of the contents of a pack. */
  readonly unit: string;
  /** Price of one pack. */
  readonly unitPrice: MoneyJson;
  /** Packs times price. */
  readonly amount: MoneyJson;
  /** What the supplier asks for cutting from the roll or sheet. */
  readonly cutFee: MoneyJson;
  /** Sheets that the shop cuts so that they travel as ordinary goods. */
  readonly cutCount: number;
  /** What the packs weigh for carriage. */
  readonly massKg: number;
  /** Whether the pack travels as dangerous goods. */
  readonly hazardous: boolean;
  /** Whether the pack is too large for ordinary parcels. */
  readonly oversize: boolean;
  /** How long the unopened pack keeps. */
  readonly shelfLifeMonths?: number;
}

/** What is ordered from one supplier, with all that is charged for it. */
export interface SupplierOrder {
  /** Code of the supplier the order goes to. */
  readonly supplier: string;
  /** Name of the supplier on the order. */
  readonly name: string;
  /** Packs of the order at list price. */
  readonly goods: MoneyJson;
  /** Cutting on all lines of the order. */
  readonly cutFees: MoneyJson;
  /** What carriage of the order costs. */
  readonly delivery: MoneyJson;
  /** Whether the goods reach the sum from which delivery is free. */
  readonly isDeliveryFree: boolean;
  /** What the dangerous goods in the order add to carriage. */
  readonly hazardSurcharge: MoneyJson;
  /** Boxes that the dangerous goods are packed in. */
  readonly hazardBoxes: number;
  /** What the packs too large for parcels add to carriage. */
  readonly oversizeFreight: MoneyJson;
  /** All that this supplier is paid. */
  readonly total: MoneyJson;
  /** What the whole order weighs. */
  readonly massKg: number;
  /** Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more. */
  readonly toppedUpFor?: 'minimum-order' | 'free-delivery';
}

/** How one demand is met. */
export interface Coverage extends MaterialVariant {
  /** Code of the material that is needed. */
  readonly material: string;
  /** Thickness that is needed, for core. */
  readonly thicknessMm?: number;
  /** Whether plain or scored sheet is needed. */
  readonly form?: 'plain' | 'scored';
  /** Size of sheet that is needed. */
  readonly sheet?: {
    /** Length of the needed sheet. */
    readonly lengthMm: number;
    /** Width of the needed sheet. */
    readonly widthMm: number;
  };
  /** Width of roll that is needed. */
  readonly rollWidthMm?: number;
  /** Unit of the quantities covered. */
  readonly unit: string;
  /** The needs that these packs serve together. */
  readonly needs: readonly {
    /** Id of one need. */
    readonly id: string;
    /** Estimate that the need comes from, in a common order. */
    readonly estimate?: string;
    /** What this need asks for. */
    readonly requiredQuantity: number;
  }[];
  /** What the needs ask for in all. */
  readonly required: number;
  /** Part that comes from stock the caller has already. */
  readonly fromOnHand: number;
  /** Part that bought packs and stock cover. */
  readonly covered: number;
  /** Part that stays uncovered; 0 when all is covered. */
  readonly short: number;
}

/** What remains of a bought good when every need is met. */
export interface Leftover extends MaterialVariant {
  /** Code of the hardener that remains, where the remainder is not the resin itself. */
  readonly part?: string;
  /** How much remains of the pack's contents. */
  readonly quantity: number;
  /** Unit of what remains. */
  readonly unit: string;
  /** At the least price of the goods bought. */
  readonly worth: MoneyJson;
  /** How long the remainder keeps when closed well. */
  readonly keepsMonths?: number;
}

/** Material that is bought in place of the one planned. */
export interface Substitution {
  /** Material that was planned. */
  readonly insteadOf: MaterialVariant;
  /** Material that is bought in its place. */
  readonly use: MaterialVariant;
  /** How much of the planned material it stands for. */
  readonly quantity: number;
  /** Unit of the replaced quantity. */
  readonly unit: string;
  /** What the search counted against the substitution; nobody pays it. */
  readonly penalty: MoneyJson;
  /** Why the other material may stand in. */
  readonly reason: string;
}

/** A resin and its hardeners, in amounts that belong together. */
export interface MatchedResin {
  /** Code of the resin. */
  readonly resin: string;
  /** Resin in the basket and on hand. */
  readonly resinKg: number;
  /** Hardeners that cure it, each with what it cures. */
  readonly hardeners: readonly {
    /** Code of the hardener. */
    readonly hardener: string;
    /** Hardener in the basket. */
    readonly boughtKg: number;
    /** Resin that this much hardener cures at the mixing ratio. */
    readonly curesKg: number;
  }[];
}

export interface Missing extends MaterialVariant {
  /** How much is needed that nothing covers. */
  readonly quantity: number;
  /** Unit of the uncovered quantity. */
  readonly unit: string;
  /** Ids of the needs that stay open. */
  readonly needs: readonly string[];
  /** `no-hardener`: the resin is there and what cures it is not; `below-minimum-order`: what is in stock does not reach it. */
  readonly reason:
    | 'no-pack'
    | 'all-excluded'
    | 'other-unit'
    | 'no-hardener'
    | 'below-minimum-order'
    | 'not-enough'
    | 'not-found-in-time';
}

export interface BasketOrder {
  /** Goods, cut fees, deliveries and surcharges of all orders together. */
  readonly total: MoneyJson;
  /** What is bought, a line for each kind of pack. */
  readonly lines: readonly BasketLine[];
  /** The lines gathered into one order for each supplier. */
  readonly orders: readonly SupplierOrder[];
  /** Needs that something other than what was planned covers. */
  readonly substitutions: readonly Substitution[];
  /** What remains of the bought packs when the job is done. */
  readonly leftovers: readonly Leftover[];
  /** Each need beside the packs that cover it. */
  readonly coverage: readonly Coverage[];
  /** Resins beside the hardeners bought to cure them. */
  readonly matched: readonly MatchedResin[];
}

/** How sure it is that nothing is cheaper. */
export type Proof = Proven | Gap;

/** The search went to its end. */
export interface Proven {
  /** Says that no cheaper basket exists. */
  readonly kind: 'proven';
}

/** The search was ended before. */
export interface Gap {
  /** Says that a cheaper basket may exist. */
  readonly kind: 'gap';
  /** No basket can cost less than this. */
  readonly bound?: MoneyJson;
  /** How far the basket may be above the cheapest, as a share of its price. */
  readonly gapFraction?: number;
}

/** The cheapest order of another kind, to compare with. */
export interface SecondBest extends BasketOrder {
  /** What makes it another kind of order. */
  readonly kind: 'other-suppliers' | 'other-packs';
  /** How much dearer it is than the basket given. */
  readonly difference: MoneyJson;
}

export interface Basket extends BasketOrder {
  /** Currency of every amount of the basket (ISO 4217). */
  readonly currency: string;
  /** Code of the price list whose packs were chosen from. */
  readonly priceList: string;
  /** Whether the prices of the list are made up for demonstration. */
  readonly isInvented: boolean;
  /** Whether the prices of the list hold tax already. */
  readonly pricesIncludeTax: boolean;
  /** Whether no cheaper basket exists, or how far one could be. */
  readonly proof: Proof;
  /** Whether every need is covered; `missing` lists those that are not. */
  readonly isComplete: boolean;
  /** Needs that no pack of the list covers. */
  readonly missing: readonly Missing[];
  /** Packs that were left out before the choice, each with the reason. */
  readonly excluded: readonly Excluded[];
  /** What each estimate of a common order bears of the total. */
  readonly byEstimate: readonly {
    /** Estimate that bears the amount. */
    readonly estimate: string;
    /** Its share of the order, by what it needs. */
    readonly amount: MoneyJson;
  }[];
  /** The next cheaper basket from other suppliers, where it was looked for. */
  readonly secondBest?: SecondBest;
  /** What the buyer should know before ordering. */
  readonly warnings: readonly string[];
}

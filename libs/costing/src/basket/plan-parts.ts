import type { Pack } from '#lib/catalogue';
import type { Currency, Money } from '#lib/money';
import type { MaterialVariant } from '#lib/takeoff';
import type { ResinMatch } from './basket-request.js';
import type { BasketNeed, BasketOptions, Substitute } from './questions.js';
import type { SupplierTerms } from './supplier-terms.js';

/** All needs of one variant together: what the order must cover. */
export interface Demand {
  readonly variant: MaterialVariant;
  readonly unit: string;
  readonly needs: readonly BasketNeed[];
  readonly required: number;
  readonly fromOnHand: number;
  /** What is left to buy. */
  readonly toBuy: number;
}

/** A price from so many packs on, up to the next break. */
export interface Tier {
  readonly from: number;
  readonly upTo: number;
  readonly price: Money;
  /** The price as a whole number of minor units, for searches. */
  readonly minor: number;
}

/** A pack that may be bought. */
export interface Offer {
  readonly pack: Pack;
  /** Place of its supplier in the plan. */
  readonly supplier: number;
  /** Place of its good in the plan. */
  readonly good: number;
  /** So many cover, alone, everything the good can be used for; more only fill up an order or reach a price. */
  readonly mostOfUse: number;
  /** No order that costs least holds more than this. */
  readonly mostPacks: number;
  readonly tiers: readonly Tier[];
  readonly cutFee: Money | undefined;
}

/** Packs with the same content, whatever their size and seller, and what they can be used for. */
export interface Good {
  readonly variant: MaterialVariant;
  readonly unit: string;
  readonly arcs: readonly Arc[];
}

/** A use of a good for a demand. */
export interface Arc {
  readonly demand: number;
  /** Units of the demand that one unit of the good covers. */
  readonly factor: number;
  /** Minor units of penalty for each unit of the demand. */
  readonly penaltyMinor: number;
  readonly substitute: Substitute | undefined;
}

/** A pack that was not considered, and why. */
export interface Excluded {
  /** Pack that was not considered. */
  readonly sku: string;
  /** Why not: its supplier was not chosen, it would not keep until the work, or it may not go by air. */
  readonly reason: 'supplier-not-chosen' | 'does-not-keep' | 'hazardous-by-air' | 'out-of-stock';
}

/** Everything the model is made of; demands that nothing on the list can serve have no arc. */
export interface BasketPlan {
  readonly currency: Currency;
  readonly demands: readonly Demand[];
  readonly goods: readonly Good[];
  readonly offers: readonly Offer[];
  /** Places of the offers of each good. */
  readonly offersOfGood: readonly (readonly number[])[];
  /** Places of the goods that can serve each demand. */
  readonly goodsForDemand: readonly (readonly number[])[];
  readonly suppliers: readonly SupplierTerms[];
  readonly matches: readonly ResinMatch[];
  readonly options: BasketOptions;
  readonly excluded: readonly Excluded[];
  readonly excludedVariants: readonly MaterialVariant[];
  /** Cost of a complete order that is known, in minor units: the best order costs no more. */
  readonly knownMinor?: number;
}

export const isHardenerOf = (variant: MaterialVariant, { resin, hardener }: ResinMatch): boolean =>
  variant.material === resin && variant.part === hardener;

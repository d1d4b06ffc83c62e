import type { MoneyJson } from '#lib/money';
import type { MaterialVariant } from '#lib/takeoff';
import type { Excluded } from './plan-parts.js';

/** So many packs of one kind from one supplier. */
export interface BasketLine {
  readonly sku: string;
  readonly name: string;
  readonly supplier: string;
  readonly content: MaterialVariant;
  readonly packCount: number;
  readonly quantityPerPack: number;
  readonly quantity: number;
  readonly unit: string;
  readonly unitPrice: MoneyJson;
  /** Packs times price. */
  readonly amount: MoneyJson;
  readonly cutFee: MoneyJson;
  /** Sheets that the shop cuts so that they travel as ordinary goods. */
  readonly cutCount: number;
  readonly massKg: number;
  readonly hazardous: boolean;
  readonly oversize: boolean;
  readonly shelfLifeMonths?: number;
}

export interface SupplierOrder {
  readonly supplier: string;
  readonly name: string;
  readonly goods: MoneyJson;
  readonly cutFees: MoneyJson;
  readonly delivery: MoneyJson;
  readonly isDeliveryFree: boolean;
  readonly hazardSurcharge: MoneyJson;
  readonly hazardBoxes: number;
  readonly oversizeFreight: MoneyJson;
  readonly total: MoneyJson;
  readonly massKg: number;
  /** Why more was bought of something than is of use: without it the order could not be placed, or delivery would cost more. */
  readonly toppedUpFor?: 'minimum-order' | 'free-delivery';
}

/** How one demand is met. */
export interface Coverage extends MaterialVariant {
  readonly unit: string;
  readonly needs: readonly {
    readonly id: string;
    readonly estimate?: string;
    readonly requiredQuantity: number;
  }[];
  readonly required: number;
  readonly fromOnHand: number;
  readonly covered: number;
  readonly short: number;
}

/** What remains of a bought good when every need is met. */
export interface Leftover extends MaterialVariant {
  readonly quantity: number;
  readonly unit: string;
  /** At the least price of the goods bought. */
  readonly worth: MoneyJson;
  readonly keepsMonths?: number;
}

export interface Substitution {
  readonly insteadOf: MaterialVariant;
  readonly use: MaterialVariant;
  readonly quantity: number;
  readonly unit: string;
  readonly penalty: MoneyJson;
  readonly reason: string;
}

export interface MatchedResin {
  readonly resin: string;
  readonly resinKg: number;
  readonly hardeners: readonly {
    readonly hardener: string;
    readonly boughtKg: number;
    readonly curesKg: number;
  }[];
}

export interface Missing extends MaterialVariant {
  readonly quantity: number;
  readonly unit: string;
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
  readonly total: MoneyJson;
  readonly lines: readonly BasketLine[];
  readonly orders: readonly SupplierOrder[];
  readonly substitutions: readonly Substitution[];
  readonly leftovers: readonly Leftover[];
  readonly coverage: readonly Coverage[];
  readonly matched: readonly MatchedResin[];
}

/** How sure it is that nothing is cheaper. */
export type Proof =
  | { readonly kind: 'proven' }
  | { readonly kind: 'gap'; readonly bound?: MoneyJson; readonly gapFraction?: number };

export interface SecondBest extends BasketOrder {
  /** What makes it another kind of order. */
  readonly kind: 'other-suppliers' | 'other-packs';
  readonly difference: MoneyJson;
}

export interface Basket extends BasketOrder {
  readonly currency: string;
  readonly priceList: string;
  readonly isInvented: boolean;
  readonly pricesIncludeTax: boolean;
  readonly proof: Proof;
  readonly isComplete: boolean;
  readonly missing: readonly Missing[];
  readonly excluded: readonly Excluded[];
  readonly byEstimate: readonly { readonly estimate: string; readonly amount: MoneyJson }[];
  readonly secondBest?: SecondBest;
  readonly warnings: readonly string[];
}

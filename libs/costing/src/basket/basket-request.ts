import type { PriceList } from '#lib/catalogue';
import type { MaterialVariant } from '#lib/takeoff';

/** What one estimate needs of one material, with waste. */
export interface BasketNeed extends MaterialVariant {
  readonly id: string;
  readonly title?: string;
  /** Several estimates may be bought for in one order. */
  readonly estimate?: string;
  readonly requiredQuantity: number;
  readonly unit: string;
}

/** A hardener and the resin it cures: as much of it must be bought as the bought resin asks for. */
export interface ResinMatch {
  readonly resin: string;
  readonly hardener: string;
  /** Kilograms of hardener to one of resin. */
  readonly massRatio: number;
}

/** Something else that would do, and what it costs in trouble. */
export interface Substitute {
  readonly insteadOf: MaterialVariant;
  readonly use: MaterialVariant;
  /** Units of the substitute that do the work of one unit of what was asked for. */
  readonly ratio: number;
  /** Exact decimal text per unit replaced; steers the choice and is not paid. */
  readonly penaltyPerUnit: string;
  readonly reason: string;
}

/** Left over from another job and still good. */
export interface OnHand extends MaterialVariant {
  readonly quantity: number;
  readonly unit: string;
  readonly monthsLeft?: number;
}

export type Transport = 'ground' | 'air' | 'collect';

export interface BasketOptions {
  /** By air nothing hazardous travels; who collects pays no freight and no surcharges. */
  readonly transport?: Transport;
  /** Packs that would not keep this long are left out. */
  readonly monthsUntilUse?: number;
  /** Codes of the suppliers to order from; all when absent. */
  readonly suppliers?: readonly string[];
  /** Hazardous goods travel in boxes of this mass, each with its surcharge; absent: one surcharge to an order. */
  readonly hazardBoxKg?: number;
  /** Whole sheets may be cut in the shop, for the fee, so that they travel as ordinary goods. */
  readonly mayCutSheets?: boolean;
  readonly secondBest?: boolean;
  readonly timeLimitS?: number;
  /** ISO 8601 date of the order; the list's validity is checked against it. */
  readonly orderDate?: string;
}

export interface BasketRequest {
  readonly currency: string;
  readonly needs: readonly BasketNeed[];
  readonly priceList: PriceList;
  readonly matches?: readonly ResinMatch[];
  readonly substitutes?: readonly Substitute[];
  readonly onHand?: readonly OnHand[];
  readonly options?: BasketOptions;
}

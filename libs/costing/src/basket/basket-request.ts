import type { PriceList } from '#lib/catalogue';
import type { BasketNeed, BasketOptions, OnHand, Substitute } from './questions.js';

/** A hardener and the resin it cures: as much of it must be bought as the bought resin asks for. */
export interface ResinMatch {
  readonly resin: string;
  readonly hardener: string;
  /** Kilograms of hardener to one of resin. */
  readonly massRatio: number;
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

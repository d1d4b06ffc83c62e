import type { Place, Survey } from '../reading.js';
import type { OpeningMethod, OpeningRules } from './rules.js';

/** A panel of deck: its edge, the holes in it, and the lines it rests on. */
export interface PanelShape {
  readonly outline: readonly Place[];
  readonly holes?: readonly (readonly Place[])[];
  readonly supports?: readonly SupportShape[];
}

export interface SupportShape {
  readonly kind: string;
  readonly from: Place;
  readonly to: Place;
}

/** Bad core: drawn by somebody, or a contour of `estimateExtent`. */
export interface ZoneShape {
  readonly id: string;
  readonly outline: readonly Place[];
  readonly holes?: readonly (readonly Place[])[];
  /** A mapped boundary holds its own doubt, so that no margin is added to it; absent: drawn. */
  readonly boundary?: 'drawn' | 'mapped';
}

export type FittingKind =
  | 'stanchion'
  | 'cleat'
  | 'winch'
  | 'windlass'
  | 'chainplate'
  | 'mast-step'
  | 'track'
  | 'hatch'
  | 'fill'
  | 'vent'
  | 'pad-eye'
  | 'other';

export interface FittingOnDeck {
  readonly id: string;
  readonly kind: FittingKind;
  readonly at: Place;
  readonly holes?: number;
  readonly baseMm?: number;
  readonly isLeaking?: boolean;
}

/** Everything that decides where to saw. Absent rules have defaults, each listed among the plan's assumptions. */
export interface OpeningRequest {
  readonly panel: PanelShape;
  readonly outerSkin: { readonly thicknessMm: number };
  readonly innerSkin: { readonly thicknessMm: number };
  readonly core: { readonly thicknessMm: number };
  readonly zones: readonly ZoneShape[];
  readonly fittings?: readonly FittingOnDeck[];
  /** Plugs in it tell the true skin thickness. */
  readonly survey?: Survey;
  readonly method?: OpeningMethod;
  readonly rules?: OpeningRules;
}

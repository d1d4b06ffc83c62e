import type { Place, Survey } from '../reading.js';

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

export interface OpeningMethod {
  readonly skin?: 're-bed' | 'relay';
  readonly access?: 'from-above' | 'from-below';
  readonly taperRatio?: number;
  readonly cutMarginMm?: number;
  readonly flangeMm?: number;
}

/** Rules of the trade that the caller may set. */
export interface OpeningRules {
  readonly cornerRadiusMm?: number;
  /** How far past the skin the saw is set. */
  readonly depthMarginMm?: number;
  /** Core left between the saw and the inner skin at the very least. */
  readonly innerSkinClearanceMm?: number;
  /** No cut along a support nearer than this. */
  readonly supportClearanceMm?: number;
  /** How far core can be reamed out under skin that stays. */
  readonly undercutReachMm?: number;
  /** Fittings within this distance of an opening are taken into the scope. */
  readonly fittingReachMm?: number;
  /** Largest skin piece that can be bedded before the resin gels. */
  readonly bondableAreaM2?: number;
  readonly bondableLengthMm?: number;
  /** Hours that decide between one opening and two, and between shapes. */
  readonly cutHPerM?: number;
  readonly openedHPerM2?: number;
  readonly openingH?: number;
  readonly cornerH?: number;
}

import type { EdgeFixing } from '../plate/plate-answer.js';
import type { SandwichValues } from '../plate/states.js';
import type { DesignCategory } from '../yardstick/yardstick.js';

/**
 * Four states of one rectangular panel under the same loads. Lengths in mm, forces in N, pressures in kPa, moduli and
 * strengths in MPa; x fore and aft, y athwartships, from the forward port corner.
 */
export interface PanelCheckRequest {
  readonly panel: PanelSize;
  readonly asBuilt: SandwichValues;
  readonly repaired: SandwichValues;
  /** What rot and water left of the core; a stated assumption when absent. */
  readonly asFound?: AsFound;
  readonly opened?: OpenedPanel;
  readonly loads?: readonly LoadRequest[];
  readonly craft?: CraftForPanel;
  readonly fittings?: readonly FittingRequest[];
  /** Shares and limits to judge by; the yardstick's when absent, each stated as an assumption. */
  readonly criteria?: Criteria;
  /** Keys of checks, ratios and loads whose derivation is wanted, such as `repaired:person:core-shear`. */
  readonly explain?: readonly string[];
  /** Measured total, to catch a skin that cannot be. */
  readonly deckThicknessMm?: number;
}

export interface Criteria {
  /** Share of a skin's ultimate strength that may be used. */
  readonly skinShare?: number;
  /** Share of a core's ultimate shear strength that may be used; by kind of core when absent. */
  readonly coreShearShare?: number;
  /** Share of a core's compressive strength that may be used under feet and washers. */
  readonly coreCrushShare?: number;
  readonly spanOverDeflection?: number;
}

export interface PanelSize {
  readonly lengthXMm: number;
  readonly widthYMm: number;
  /** All four alike. Absent: simply supported all round, stated as an assumption. */
  readonly edges?: EdgeKindAsked;
  /** Each edge by itself, instead of `edges`. */
  readonly eachEdge?: EachEdge;
}

/** `free` is read so that it can be refused with a reason. */
export type EdgeKindAsked = EdgeFixing | 'free';
/** `xStart` is the edge at x = 0, `yStart` the edge at y = 0. */
export type EachEdge = Readonly<Record<'xStart' | 'xEnd' | 'yStart' | 'yEnd', EdgeKindAsked>>;

export interface AsFound {
  /** Share of the panel whose core is bad. */
  readonly degradedFraction?: number;
  /** What is left of the core's moduli there, over sound. */
  readonly stiffnessFraction?: number;
  /** What is left of the core's strengths there, over sound. */
  readonly strengthFraction?: number;
}

export interface OpenedPanel {
  /** The opening; absent: the whole panel. */
  readonly lengthXMm?: number;
  readonly widthYMm?: number;
  readonly edges?: EdgeFixing;
  /** What presses the new core down. */
  readonly clampPressureKPa?: number;
  /** Sag of the inner skin that the new core would keep for ever. */
  readonly allowedSagMm?: number;
}

export type LoadRequest =
  | { readonly kind: 'pressure'; readonly name?: string; readonly pressureKPa: number }
  | {
      readonly kind: 'patch';
      readonly name?: string;
      readonly forceN: number;
      readonly xMm: number;
      readonly yMm: number;
      readonly lengthXMm: number;
      readonly widthYMm: number;
    }
  | {
      readonly kind: 'person';
      readonly name?: string;
      readonly forceN?: number;
      readonly heelRadiusMm?: number;
      readonly xMm?: number;
      readonly yMm?: number;
    }
  | { readonly kind: 'class-deck'; readonly name?: string }
  | { readonly kind: 'yardstick'; readonly name?: string };

export interface CraftForPanel {
  readonly craftType: 'sail' | 'motor';
  readonly lengthWaterlineM: number;
  readonly lengthHullM?: number;
  readonly massLoadedKg: number;
  readonly designCategory: DesignCategory;
  /** Place of the panel from aft over the waterline; absent: 1, the most severe. */
  readonly shareOfWaterline?: number;
  readonly dynamicLoadFactor?: number;
}

export type LoadedFitting =
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

export interface FittingRequest {
  readonly id: string;
  readonly kind: LoadedFitting;
  readonly bolts: number;
  readonly boltMm: number;
  /** Clamp force of one bolt; from the torque when that is given instead. */
  readonly clampForceN?: number;
  readonly torqueNm?: number;
  readonly pullN?: number;
  readonly shearN?: number;
  readonly washerMm?: number;
  readonly backingPlate?: { readonly lengthMm: number; readonly widthMm: number };
  /** Diameter of the hole potted with thickened resin. */
  readonly pottedMm?: number;
  readonly pottedStrengthMPa?: number;
}

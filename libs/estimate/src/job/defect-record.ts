import type { DepreciationTerms } from '#lib/costing';
import type { EvidenceGrade, Place, Survey } from '#lib/extent';
import type { DeckWarmth, Forecast } from '#lib/cure';

/**
 * What somebody knows about a soft deck. Only `panel.outline`, one of `zones` and `survey`, and the
 * thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
 *
 * Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
 */
export interface DefectRecord {
  readonly title?: string;
  readonly reference?: string;
  readonly craft?: Craft;
  readonly panel: PanelRecord;
  readonly outerSkin: SkinRecord;
  readonly innerSkin: SkinRecord;
  readonly core: OldCore;
  readonly zones?: readonly ZoneRecord[];
  readonly survey?: Survey;
  readonly fittings?: readonly FittingRecord[];
  readonly evidence?: EvidenceGrade;
  readonly cause?: CauseRecord;
  readonly method?: MethodChoice;
  readonly conditions?: Conditions;
  readonly crew?: Crew;
  readonly pricing?: PricingChoice;
  readonly locale?: string;
}

export interface Craft {
  readonly craftType?: 'sail' | 'motor';
  readonly lengthHullM?: number;
  readonly lengthWaterlineM?: number;
  readonly massLoadedKg?: number;
  readonly designCategory?: 'A' | 'B' | 'C' | 'D';
  readonly yearBuilt?: number;
}

export type EdgeKind = 'hull-joint' | 'coaming' | 'hatch' | 'toe-rail' | 'bulkhead' | 'beam' | 'other';

export interface PanelRecord {
  readonly name?: string;
  readonly outline: readonly Place[];
  /** Hatches and other openings in the deck. */
  readonly holes?: readonly (readonly Place[])[];
  /** Lines the deck rests on (bulkheads, beams): no joint of core or skin over them. */
  readonly supports?: readonly SupportLine[];
  readonly edges?: 'simply-supported' | 'clamped';
  /** Radius of the deck's camber; absent means flat. */
  readonly camberRadiusMm?: number;
  /** What lies below: each brings its caution and its checks. */
  readonly under?: readonly ('wiring' | 'fuel-tank' | 'water-tank' | 'hoses' | 'lining' | 'insulation')[];
  /** Height clear for a person below. */
  readonly accessBelow?: 'open' | 'lined' | 'none';
  readonly surface?: 'smooth-paint' | 'painted-nonskid' | 'moulded-nonskid' | 'planked';
}

export interface SupportLine {
  readonly kind: EdgeKind;
  readonly from: Place;
  readonly to: Place;
}

export interface SkinRecord {
  readonly thicknessMm: number;
  /** Known plies, from the face of the skin inwards; otherwise a stated guess from thickness. */
  readonly plies?: readonly { readonly material: string }[];
}

export interface OldCore {
  readonly thicknessMm: number;
  /** From the inner skin to the underside of the outer skin, where somebody measured it: the core with its old bond lines. */
  readonly cavityMm?: number;
  readonly coreType?: 'end-grain-balsa' | 'cross-linked-foam' | 'san-foam' | 'linear-foam' | 'marine-plywood';
  readonly densityKgPerM3?: number;
}

export type ZoneCondition = 'wet-rotten' | 'wet-bonded' | 'dry-debonded';

export interface ZoneRecord {
  readonly id: string;
  readonly outline: readonly Place[];
  readonly condition?: ZoneCondition;
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

export interface FittingRecord {
  readonly id: string;
  readonly kind: FittingKind;
  readonly at: Place;
  readonly holes?: number;
  readonly holeDiameterMm?: number;
  /** Largest size of its base on deck. */
  readonly baseMm?: number;
  readonly isLeaking?: boolean;
}

export interface CauseRecord {
  readonly cause: 'leaking-fitting' | 'impact' | 'construction' | 'unknown';
  /** What the insurer will ask: sudden, already there, or upkeep. */
  readonly causeClass?: CauseClass;
  readonly note?: string;
}

export type CauseClass = 'sudden' | 'pre-existing' | 'maintenance';

export interface MethodChoice {
  readonly skin?: 're-bed' | 'relay';
  readonly access?: 'from-above' | 'from-below';
  readonly press?: 'weights' | 'battens' | 'vacuum';
  /** Code of a core sheet in the catalogue. */
  readonly core?: string;
  readonly resin?: string;
  /** What one stroke of the resin pump gives, ml; the cards then count strokes. Weighed and measured without pumps when absent. */
  readonly pumpResinMlPerStroke?: number;
  readonly finish?: 'patch' | 'panel' | 'whole-deck';
  readonly wholeDeckAreaM2?: number;
  readonly taperRatio?: number;
  readonly cutMarginMm?: number;
  readonly flangeMm?: number;
}

export interface Conditions {
  readonly temperatureC?: number;
  readonly relativeHumidityPercent?: number;
  readonly shelter?: 'shed' | 'tent' | 'open';
  readonly altitudeM?: number;
  readonly isAfloat?: boolean;
  /** Windows, calendar and cures follow it as far as it reaches; elsewhere the stated conditions count. */
  readonly forecast?: Forecast;
  /** How much warmer the deck is than the forecast's air. */
  readonly warmth?: DeckWarmth;
}

export interface Crew {
  readonly people?: number;
  readonly skill?: 'professional' | 'owner';
  readonly hoursPerDay?: number;
  /** ISO 8601 date on which work may start. */
  readonly startDate?: string;
  readonly workingDays?: readonly ('mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun')[];
}

export interface PricingChoice {
  readonly priceList?: string;
  readonly labourRates?: string;
  /** Absent: P80 minus the point estimate. */
  readonly contingencyPercent?: number;
  readonly seed?: number;
  readonly samples?: number;
  /** Wear of the parts that are replaced, where an insurer pays their worth: it is shown beside the price and changes none of it. */
  readonly depreciation?: DepreciationTerms;
}

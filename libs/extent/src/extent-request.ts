import type { NextAsked } from './next/questions.js';
import type { FittingOnDeck, PanelShape, ZoneShape } from './openings/request.js';
import type { OpeningMethod, OpeningRules } from './openings/rules.js';
import type { EvidenceGrade, HammerSound, PlugCondition, Survey } from './reading.js';

/** Readings, or zones that somebody drew, or both: drawn zones are then the extent, and the readings grade them. */
export interface ExtentRequest {
  readonly panel: PanelShape;
  readonly survey?: Survey;
  readonly zones?: readonly ZoneShape[];
  /** The grade as stated; with readings it is believed downwards only. */
  readonly evidence?: EvidenceGrade;
  readonly map?: MapSettings;
  /** Likely sources of water; what the readings say outweighs them. */
  readonly fittings?: readonly FittingOnDeck[];
  /** How the next readings may be taken. */
  readonly next?: NextAsked;
  /** What decides the cut, where readings are its source: as for `planOpenings`. */
  readonly outerSkin?: { readonly thicknessMm: number };
  readonly method?: OpeningMethod;
  readonly rules?: OpeningRules;
  /** Found over recorded area of jobs that the organisation has closed; they take over from the judgement as they come. */
  readonly foundOverRecorded?: readonly number[];
}

/** Each absent setting has a default, listed among the assumptions. */
export interface MapSettings {
  /** Core this likely to be bad, or more, lies inside the zones; absent: chosen by expected hours. */
  readonly cutProbability?: number;
  /** Hours that a square metre of bad core left under a closed deck costs in the end. */
  readonly leaveCostHPerM2?: number;
  /** Further contours for the drawing. */
  readonly contourProbabilities?: readonly number[];
  /** Share of such a panel that is bad before any reading. */
  readonly usualBadShare?: number;
  readonly draws?: number;
  readonly seed?: number;
  readonly odds?: {
    readonly plug?: Readonly<Partial<Record<PlugCondition, number>>>;
    readonly sounding?: Readonly<Partial<Record<HammerSound, number>>>;
    readonly meterWet?: number;
    readonly unreliableShare?: number;
  };
}

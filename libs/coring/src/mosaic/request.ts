import type { Point, Polygon, Region } from '#lib/geometry';
import type { CoreSheet } from '#lib/catalogue';
import type { StackLayer } from '../stack/plan-stack.js';

/** Openings to fill with core, and how. */
export interface MosaicRequest {
  readonly openings: readonly OpeningToFill[];
  /** Lines the deck rests on; no joint runs along one. */
  readonly supports?: readonly { readonly from: Point; readonly to: Point }[];
  readonly core: CoreSheet;
  readonly layers: readonly StackLayer[];
  /** Only a flat deck takes large pieces. */
  readonly isFlat: boolean;
  /** Longest side across the camber for pieces that do not bend. */
  readonly longestSideMm?: number;
  /** Direction of the grain on the deck, degrees from x towards y. */
  readonly grainDeg?: number;
  readonly rules?: MosaicRules;
}

export interface OpeningToFill {
  readonly label: string;
  /** What is cut out of the skin. */
  readonly area: Polygon;
  /** Bad core under skin that stays. */
  readonly undercut: Region;
}

/** Absent rules have defaults, each listed among the assumptions. */
export interface MosaicRules {
  /** Largest piece wherever there is undercut, or plain sheet on a larger area. */
  readonly handPieceM2?: number;
  /** Gap at each joint, filled with bedding. */
  readonly jointGapMm?: number;
  /** Joints of neighbouring rows and layers lie at least this far apart where there is room. */
  readonly staggerMm?: number;
  /** A piece narrower than this is joined to its neighbour. */
  readonly narrowestMm?: number;
  readonly supportClearanceMm?: number;
  readonly bleedSpacingMm?: number;
  readonly bleedDiameterMm?: number;
}

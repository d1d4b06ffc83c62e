import { difference, type Point, type Polygon, type Region } from '#lib/geometry';
import type { CoreSheet, SheetFormat } from '#lib/catalogue';
import type { MosaicRules } from './rules.js';
import type { StackLayer } from '../stack/plan-stack.js';

/** Openings to fill with core, and how. */
export interface MosaicRequest {
  readonly openings: readonly OpeningToFill[];
  /** Lines the deck rests on; no joint runs along one. */
  readonly supports?: readonly { readonly from: Point; readonly to: Point }[];
  readonly core: CoreSheet;
  readonly layers: readonly StackLayer[];
  /** Height from skin to skin: how deep a place is that is filled solid. */
  readonly cavityMm: number;
  /** What a sheet gives after its edges are trimmed. A piece comes out of one sheet. */
  readonly sheets: readonly SheetFormat[];
  /** Longest side across the camber for pieces that do not bend. */
  readonly longestSideMm?: number;
  /** Direction of the grain on the deck, degrees from x towards y; of no account for core that has none. */
  readonly grainDeg?: number;
  readonly rules?: MosaicRules;
}

export interface OpeningToFill {
  readonly label: string;
  /** What is cut out of the skin. */
  readonly area: Polygon;
  /** Bad core under skin that stays. */
  readonly undercut: Region;
  /** Sound core in the opening that is left where it is; absent: all of it comes out. */
  readonly staying?: Region;
  /** Filled solid from skin to skin, whatever its width; absent: cored. */
  readonly isSolid?: boolean;
}

/** What is open from above once the core is out. */
export const openAreaOf = ({ area, staying = [] }: OpeningToFill): Region =>
  staying.length === 0 ? [area] : difference([area], staying);

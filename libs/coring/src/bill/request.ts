import type { Point } from '#lib/geometry';
import type { CoreSheet } from '#lib/catalogue';
import type { OpeningToFill } from '../mosaic/request.js';
import type { MosaicRules } from '../mosaic/rules.js';
import type { CamberRequest, OldCoreRequest, StackRules } from '../stack/rules.js';
import type { OwnOffcut, SheetOnSale } from './questions.js';

/** Everything from openings to sheets. */
export interface CoreBillRequest {
  readonly openings: readonly OpeningToFill[];
  readonly supports?: readonly { readonly from: Point; readonly to: Point }[];
  readonly cavityMm: number;
  readonly core: CoreSheet;
  readonly wantedMm?: number;
  readonly form?: 'plain' | 'scored';
  /** What closes the openings: the old skin bedded again (when absent), or plies laid wet on the core. */
  readonly skin?: 're-bed' | 'relay';
  readonly camber?: CamberRequest;
  readonly oldCore?: OldCoreRequest;
  /** Direction of the grain on the deck; it lies along the length of the sheet. */
  readonly grainDeg?: number;
  readonly stackRules?: StackRules;
  readonly mosaicRules?: MosaicRules;
  /** What can be bought; the material's own formats at a cost by area when absent. */
  readonly sheets?: readonly SheetOnSale[];
  /** The customer's own pieces of the same core. */
  readonly offcuts?: readonly OwnOffcut[];
  readonly kerfMm?: number;
  readonly edgeTrimMm?: number;
  /** An offcut narrower than this is thrown away. */
  readonly keepFromMm?: number;
  /** What an hour of work costs, in the currency of the sheets; absent: sheets alone decide how the core is divided. */
  readonly hourCost?: number;
  readonly seed?: number;
  /** Thousands of pairs looked at for each thickness. */
  readonly workUnits?: number;
}

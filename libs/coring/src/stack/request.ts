import type { CoreSheet } from '#lib/catalogue';
import type { CamberRequest, OldCoreRequest, StackRules } from './rules.js';

/** What the new core must fill. */
export interface StackRequest {
  /** From the inner skin to the underside of the outer skin: the old core with its glue lines. */
  readonly cavityMm: number;
  readonly core: CoreSheet;
  /** Core to be laid, opening and undercut together. */
  readonly areaM2: number;
  readonly rules?: StackRules;
  /** A thickness that somebody insists on; otherwise the best of the list. */
  readonly wantedMm?: number;
  readonly form?: 'plain' | 'scored';
  /** What closes it: the old skin in a bed of paste (when absent), or plies laid wet, with their own resin alone under them. */
  readonly skin?: 're-bed' | 'relay';
  readonly camber?: CamberRequest;
  readonly oldCore?: OldCoreRequest;
}

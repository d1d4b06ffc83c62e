import type { CoreSheet } from '#lib/catalogue';

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

/** Absent rules have defaults, each listed among the plan's assumptions. */
export interface StackRules {
  /** A bond line as a notched spreader leaves it. */
  readonly bondLineMm?: number;
  /** The thinnest that still fills, pressed hard. */
  readonly leastBondLineMm?: number;
  /** The thickest bed of filled resin. */
  readonly mostBondLineMm?: number;
  /** Resin under plies that are laid wet on the core. */
  readonly wetLineMm?: number;
  /** How low the new skin may sit: 0 or less. */
  readonly lowestFlushMm?: number;
  /** How proud it may sit. */
  readonly highestFlushMm?: number;
}

export interface CamberRequest {
  readonly radiusMm: number;
  /** Length of a piece across the camber; the side of the largest piece when absent. */
  readonly pieceLengthMm?: number;
  readonly pressureKPa?: number;
  readonly mostGapMm?: number;
}

export interface OldCoreRequest {
  readonly densityKgPerM3?: number;
  /** Water in it, parts of its dry mass: 1.5 is wetter than its own weight. */
  readonly moistureFraction?: number;
}

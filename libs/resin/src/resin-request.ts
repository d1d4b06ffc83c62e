import type { Filler, ResinSystem } from '#lib/catalogue';
import type { StepCode } from './step-definitions.js';

/** One labelled piece (of core, of skin, of fabric), listed in the order it is bedded. */
export interface BeddedPiece {
  readonly label: string;
  readonly areaM2: number;
}

/** One ply to wet out. */
export interface PlyToWet {
  readonly label?: string;
  readonly areaM2: number;
  readonly arealMassGPerM2: number;
  readonly fibreMassFraction: number;
}

/**
 * One step that takes resin. Which fields count is the basis of the step: films and beds take `areaM2`
 * (and `litresPerM2` with `coats`, or `thicknessMm`), sections `lengthM`, `widthMm` and `heightMm`, scores `areaM2`
 * with `spacingMm`, `widthMm`, `depthMm`, plies `plies`, holes `holes`, `diameterMm` and `depthMm`.
 */
export interface ResinStepRequest {
  readonly step: StepCode;
  /** Tells two steps of one kind apart on the cards. */
  readonly title?: string;
  readonly areaM2?: number;
  readonly litresPerM2?: number;
  readonly coats?: number;
  readonly thicknessMm?: number;
  readonly lengthM?: number;
  readonly widthMm?: number;
  readonly heightMm?: number;
  readonly spacingMm?: number;
  readonly depthMm?: number;
  readonly openFraction?: number;
  readonly plies?: readonly PlyToWet[];
  readonly holes?: number;
  readonly diameterMm?: number;
  /** Code of a filler in `fillers`, or `none`. */
  readonly filler?: string;
  readonly fillerPartsPerHundred?: number;
  readonly wasteFraction?: number;
  readonly minutesPerUnit?: number;
  readonly pieces?: readonly BeddedPiece[];
}

export interface ResinDemandRequest {
  readonly resin: ResinSystem;
  /** Code of one of the resin's hardeners; the ratio belongs to it. */
  readonly hardener: string;
  readonly fillers: readonly Filler[];
  readonly steps: readonly ResinStepRequest[];
  readonly wasteFraction?: number;
}

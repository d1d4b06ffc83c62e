import type { Problem } from '#lib/kernel';
import type { Layup } from '../theory/layup.js';
import type { LayupFigures } from '../theory/layup-figures.js';
import type { SkinMeasure } from '../theory/skin.js';
import type { OldSkinMeasure } from './old-skin.js';
import type { FabricOffer, ScheduleRequest, SettledRequest } from './schedule-request.js';
import type { StackProblem } from './stack-problem.js';

/** One fabric at one turn, ready for the search, with where it came from. */
export interface LaidOffer {
  readonly offer: FabricOffer;
  readonly offerIndex: number;
  readonly turnDeg: number;
  readonly layup: Layup;
  /** Made when first asked for: of many skins kept few are shown. */
  readonly figures: () => LayupFigures;
}

export interface LeftOut {
  /** Code of the material left out. */
  readonly material: string;
  /** What about its data kept it out. */
  readonly problems: readonly Problem[];
}

export interface PreparedSearch {
  readonly request: ScheduleRequest;
  readonly settled: SettledRequest;
  readonly old: OldSkinMeasure;
  readonly target: SkinMeasure;
  readonly offers: readonly LaidOffer[];
  readonly leftOut: readonly LeftOut[];
  readonly problem: StackProblem;
}

import type { RandomStream } from '#lib/kernel';
import type { Field, Probe } from './field.js';
import type { ShapeSet } from './shapes.js';

/** Pieces for one strip, in grid steps. `shapeOf[piece]` is a shape of the set. */
export interface StripJob {
  readonly set: ShapeSet;
  readonly shapeOf: readonly number[];
  /** Where outlines may lie across the strip. */
  readonly low: readonly [number, number];
  readonly top: number;
  readonly seed: number;
  /** Pairs of pieces that may be looked at. */
  readonly workLimit: number;
  readonly shouldStop: () => boolean;
  readonly onBetter?: (length: number, work: number) => void;
}

/** Everything a search for shorter strips works on. */
export interface Shortening {
  readonly job: StripJob;
  readonly field: Field;
  readonly choices: readonly (readonly number[])[];
  readonly probe: Probe;
  readonly random: RandomStream;
  /** True when the budget is used up or the caller has asked to stop. */
  readonly isOver: () => boolean;
}

import type { Membrane } from '../theory/skin.js';
import type { StripSums } from '../theory/sandwich-strip.js';

/** One way to lay one fabric: what the search adds when it adds a ply. */
export interface StackOption {
  readonly membrane: Membrane;
  /** Options of one fabric at different turns share a kind. */
  readonly kind: number;
  /** What is kept low first: price per m2, or mass where prices are not given. */
  readonly price: number;
  readonly massGPerM2: number;
  readonly suitsAgainstCore: boolean;
  readonly printThrough: number;
}

/** What the new skin must reach; 0 asks nothing. */
export interface StackTarget {
  readonly alongNPerMm: number;
  readonly acrossNPerMm: number;
  readonly shearNPerMm: number;
  readonly strengthNPerMm: readonly number[];
}

/** The panel below the new skin: other skin and core as strip sums along and across, and what must be restored. */
export interface StackPanel {
  readonly base: readonly [along: StripSums, across: StripSums];
  /** Height of the core's face above the lowest face of the panel. */
  readonly coreFaceMm: number;
  readonly bendingNmm: readonly [along: number, across: number];
  /** Moment per width at which the relaid skin's first ply breaks. */
  readonly momentN: readonly [along: number, across: number];
}

export interface StackProblem {
  readonly options: readonly StackOption[];
  readonly target: StackTarget;
  readonly panel?: StackPanel;
  readonly thinnestMm: number;
  readonly thickestMm: number;
  readonly mostPlies: number;
  readonly mostKinds: number;
  readonly worstPrintThrough: number;
  readonly keep: number;
}

/** Relative slack that lets a skin equal to the old one count as equal. */
export const EQUAL = 1e-9;

export const reaches = (value: number, needed: number): boolean => value >= needed * (1 - EQUAL);

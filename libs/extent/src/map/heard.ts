import type { Field } from './field.js';
import { designAt, type Effects, type Makeup } from './observed.js';
import type { Evidence } from './reading-odds.js';

/** exp(pull f - weight f^2 / 2) for each reading, f being the field's height there. */
export interface Sites {
  readonly weight: Float64Array;
  readonly pull: Float64Array;
}

export const noSites = (count: number): Sites => ({
  weight: new Float64Array(count),
  pull: new Float64Array(count),
});

/** Everything that a posterior is worked out from. */
export interface Given {
  readonly field: Field;
  readonly effects: Effects;
  readonly makeup: Makeup;
  readonly evidence: readonly Evidence[];
}

/** The Gaussian over field and effects for given sites, seen where somebody read. */
export interface Heard {
  /** Mean and variance at each reading. */
  readonly means: Float64Array;
  readonly variances: Float64Array;
  /** What the Gaussian adds to the logarithm of the evidence. */
  readonly logEvidence: number;
  /** Mean and standard deviation of level + field at each node. */
  readonly atNodes: () => { readonly mean: Float64Array; readonly sd: Float64Array };
}

export const priorAt = (
  { makeup: { effects, design }, effects: { means } }: Given,
  index: number,
): number => {
  let sum = 0;
  for (let effect = 0; effect < effects; effect += 1) sum += design[effects * index + effect] * means[effect];
  return sum;
};

/** Shares of the effects at each node. */
export const designOfNodes = ({ field: { lattice }, effects }: Given): Float64Array =>
  designAt(
    lattice.nodes.map(({ place }) => place),
    effects,
  );

export const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += a[index] * b[index];
  return sum;
};

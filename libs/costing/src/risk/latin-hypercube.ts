import { normalQuantile, randomStream, type RandomStream } from '#lib/kernel';

/**
 * Several Latin hypercubes one after the other that together are one finer hypercube: in each replicate every variable
 * takes each of its equally probable strata once, and over all replicates each fine level once.
 */
export interface Design {
  readonly replicates: number;
  readonly strata: number;
  /** One array per variable, length replicates x strata: the fine level of each sample. */
  readonly levels: readonly Int32Array[];
  /** Normal score at the middle of each fine level, rising. */
  readonly scores: Float64Array;
}

export interface DesignShape {
  readonly variables: number;
  readonly strata: number;
  readonly replicates: number;
}

/**
 * Replicated Latin hypercube: the order of the strata is drawn at random for each variable and replicate, independently
 * of the others. A stratum is divided into as many levels as there are replicates; each replicate stands on another one.
 *
 * Replicates are there so that the error of a quantile can be read off their scatter.
 *
 * Source: [MCKAY-1979] section 2, with mid-points of levels instead of random points within strata
 * Worked: libs/costing/src/risk/cost-risk.spec.ts
 */
export function latinHypercube({ variables, strata, replicates }: DesignShape, seed: number): Design {
  const random = randomStream(seed);
  const count = strata * replicates;
  const scores = Float64Array.from({ length: count }, (_, level) => normalQuantile((level + 0.5) / count));
  const levels = Array.from({ length: variables }, (_, variable) =>
    shuffledReplicates(strata, { replicates, variable, random }),
  );
  return { replicates, strata, levels, scores };
}

interface Drawing {
  readonly replicates: number;
  readonly variable: number;
  readonly random: RandomStream;
}

function shuffledReplicates(strata: number, { replicates, variable, random }: Drawing): Int32Array {
  const order = new Int32Array(strata * replicates);
  for (let replicate = 0; replicate < replicates; replicate += 1) {
    const from = replicate * strata;
    const within = (replicate + variable) % replicates;
    for (let i = 0; i < strata; i += 1) order[from + i] = i * replicates + within;
    shuffle(order.subarray(from, from + strata), random);
  }
  return order;
}

/** Fisher and Yates. */
function shuffle(order: Int32Array, random: RandomStream): void {
  for (let i = order.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    const kept = order[i];
    order[i] = order[j];
    order[j] = kept;
  }
}

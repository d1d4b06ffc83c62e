import { randomStream } from '#lib/kernel';
import { carried, carriedTo, type Ties } from './interpolation.js';
import { fillNormal } from './normal-draws.js';
import type { SurveyMap } from './survey-map.js';

export interface DrawChoice {
  readonly draws: number;
  readonly seed: number;
}

/**
 * What the readings of a deck may have wrong alike all over it (a light hand, a meter that is off, damage that no field of one
 * range describes), as a share of the doubt at each place. Judgement; chosen on simulated decks, held on others.
 */
const SHARED_DOUBT = 0.3;

/**
 * Area of bad core in conditional simulations of the whole panel, mm2, in the order drawn: each draw is a field that agrees
 * with the readings as far as they can be trusted, and its bad area is summed over the panel.
 * Source: [CHILES-DELFINER-2012] chapter 7, conditional simulation
 */
export function areaDraws({ parts, lattice }: SurveyMap, { draws, seed }: DrawChoice): Float64Array {
  const counts = wholeShares(
    parts.map(({ weight }) => weight),
    draws,
  );
  const areas = Float64Array.from(lattice.nodes, ({ areaMm2 }) => areaMm2);
  const drawn = parts.flatMap(({ posterior, bridge, evenness }, part) => {
    const next = posterior.sampler(seed + part);
    const shared = sharedBy(seed - part);
    const middle = carried(posterior.mean, bridge);
    const over = { bridge, middle, evenness, areas, sd: carried(posterior.sd, bridge) };
    return Array.from({ length: Math.ceil(counts[part] / 2) }, () => {
      const [one, other] = next();
      const shift = shared();
      return [badArea(one, shift, over), badArea(other, -shift, over)];
    })
      .flat()
      .slice(0, counts[part]);
  });
  return Float64Array.from(drawn);
}

function sharedBy(seed: number): () => number {
  const random = randomStream(seed);
  const own = new Float64Array(1);
  return () => {
    fillNormal(own, random);
    return SHARED_DOUBT * own[0];
  };
}

interface DrawnOver {
  readonly bridge: Ties;
  readonly middle: Float64Array;
  readonly sd: Float64Array;
  readonly evenness: Float64Array;
  readonly areas: Float64Array;
}

/** Between the nodes of a coarse lattice a draw strays from the middle as far as on them. */
function badArea(
  field: Float64Array,
  shift: number,
  { bridge, middle, sd, evenness, areas }: DrawnOver,
): number {
  let sum = 0;
  for (let node = 0; node < areas.length; node += 1) {
    const value = carriedTo(node, field, bridge);
    const lively = middle[node] + (value - middle[node]) / evenness[node] + shift * sd[node];
    sum += lively > 0 ? areas[node] : 0;
  }
  return sum;
}

/** Whole shares of a number that add up to it, by largest remainder. */
export function wholeShares(weights: readonly number[], total: number): readonly number[] {
  const exact = weights.map((weight) => weight * total);
  const whole = exact.map(Math.floor);
  const left = total - whole.reduce((sum, count) => sum + count, 0);
  const order = exact
    .map((value, index) => ({ index, rest: value - whole[index] }))
    .sort((a, b) => b.rest - a.rest || a.index - b.index);
  const extra = new Set(order.slice(0, left).map(({ index }) => index));
  return whole.map((count, index) => count + (extra.has(index) ? 1 : 0));
}

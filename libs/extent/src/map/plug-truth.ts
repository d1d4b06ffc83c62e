import { normalCdf } from '#lib/kernel';
import { distance, type Point } from '#lib/geometry';
import type { Survey } from '../reading.js';
import { tiedBelow } from './bivariate.js';
import { carried, tiesTo } from './interpolation.js';
import type { Lattice } from './lattice.js';
import { makeupOf } from './observed.js';
import type { Evidence } from './reading-odds.js';
import type { MapPart } from './map-part.js';

/** Farther from a plug than this the map's own Gaussian is near enough. */
const REACH_MM = 120;

/** Core this near to the middle of a plug came out with it. Common practice (a hole saw of 30 mm), no published source. */
const OWN_CORE_MM = 15;

/** Where more plugs than this were taken, those that the map contradicts most are worked out exactly. */
const MOST_PLUGS = 40;

/** What a part of the map holds at the nodes of the whole. */
export interface PartAtNodes {
  readonly part: MapPart;
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  readonly chance: Float64Array;
}

/** A plug and the nodes nearer to it than to any other, as far as it reaches. */
export interface PlugGround {
  /** Among the readings. */
  readonly index: number;
  readonly at: Point;
  readonly nodes: readonly number[];
}

/** Plugs whose truth is worked out exactly, given the chances that the map would have. */
export function plugGrounds(
  { readings }: Survey,
  lattice: Lattice,
  chance: Float64Array,
): readonly PlugGround[] {
  const plugs = readings.flatMap(({ kind, at, isUnreliable }, index) =>
    kind === 'plug' && isUnreliable !== true ? [{ index, at }] : [],
  );
  if (plugs.length === 0) return [];
  const here = carried(
    chance,
    tiesTo(
      lattice,
      plugs.map(({ at }) => at),
    ),
  );
  const doubtOf = (place: number) => here[place] * (1 - here[place]);
  const exact = [...plugs.keys()]
    .sort((one, other) => doubtOf(other) - doubtOf(one) || one - other)
    .slice(0, MOST_PLUGS)
    .map((place) => plugs[place]);
  const owners = lattice.nodes.map(({ place }) => nearestOf(exact, place));
  return exact.map((plug) => ({
    ...plug,
    nodes: owners.flatMap((owner, node) => (owner === plug ? [node] : [])),
  }));
}

function nearestOf<T extends { readonly at: Point }>(plugs: readonly T[], place: Point): T | undefined {
  let [best, least]: [T | undefined, number] = [undefined, REACH_MM];
  for (const plug of plugs) {
    const away = distance(plug.at, place);
    if (away < least) [best, least] = [plug, away];
  }
  return best;
}

/**
 * Chances round plugs, exactly. A Gaussian stands badly for proof that the rest of the readings speak against: it keeps a tail on
 * the wrong side of 0. So each plug is taken back out of its part's Gaussian, and the chance of a node given what the plug
 * showed is that of two normal numbers tied to each other.
 * Source: [RASMUSSEN-WILLIAMS-2006] section 3.6 (the cavity); [DREZNER-WESOLOWSKY-1990] (two normal numbers)
 * Worked: libs/extent/src/map/plug-truth.spec.ts
 */
export function withPlugTruth(
  { part, mean, sd, chance }: PartAtNodes,
  grounds: readonly PlugGround[],
  { nodes: places }: Lattice,
): Float64Array {
  const exact = chance.slice();
  for (const { index, at, nodes } of grounds) {
    const { covariance, shift, shrink } = besidePlug(part, index, at);
    for (const node of nodes)
      exact[node] = chanceGiven(part, index, {
        mean: mean[node] + shift,
        variance: sd[node] ** 2 * shrink,
        covariance: covariance[node],
        isOwnCore: distance(places[node].place, at) <= OWN_CORE_MM,
      });
  }
  return exact;
}

interface BesidePlug {
  /** Of each node with what the plug is heard from. */
  readonly covariance: Float64Array;
  readonly shift: number;
  readonly shrink: number;
}

/**
 * Means and spreads that were carried from a coarser lattice are a little off; by as much as they are off at the plug they are put
 * right round it.
 */
function besidePlug(part: MapPart, index: number, at: Point): BesidePlug {
  const { given, posterior, bridge, evenness } = part;
  const { field, effects } = given;
  const there = tiesTo(field.lattice, [at]);
  const carriedFrom = posterior.covarianceWith(makeupOf(field, [at], effects));
  const own = carried(carriedFrom, bridge).map((value, node) => value / evenness[node]);
  if (evenness.every((value) => value > 1 - 1e-9)) return { covariance: own, shift: 0, shrink: 1 };
  const variance = posterior.variances[index];
  const scale = (variance * field.sdAt(there)[0]) / carried(carriedFrom, there)[0];
  return {
    covariance: own.map((value) => scale * value),
    shift: posterior.means[index] - carried(posterior.mean, there)[0],
    shrink: variance / carried(posterior.sd, there)[0] ** 2,
  };
}

interface NodeBeside {
  readonly mean: number;
  readonly variance: number;
  readonly covariance: number;
  readonly isOwnCore: boolean;
}

/** Odds beyond this are proof, as they are of plugs where the caller states none. */
const PROOF = 1e5;

/** More certain than this, in standard deviations, the rest of the readings cannot be where a plug proves them wrong. */
const MOST_CERTAIN = 3;

function chanceGiven({ given, posterior }: MapPart, plug: number, node: NodeBeside): number {
  const { sites, means, variances } = posterior;
  const { ifBad, ifSound } = proven(given.evidence[plug]);
  const precision = Math.max(1e-9, 1 / variances[plug] - sites.weight[plug]);
  const [without, mean] = [1 / precision, (means[plug] / variances[plug] - sites.pull[plug]) / precision];
  const certainty = mean / Math.sqrt(without);
  const k = Math.max(-MOST_CERTAIN, Math.min(MOST_CERTAIN, certainty));
  const saw = ifSound + (ifBad - ifSound) * normalCdf(k);
  if (node.isOwnCore) return (ifBad * normalCdf(k)) / saw;
  const share = node.covariance / variances[plug];
  const own = Math.max(1e-9, node.variance + share ** 2 * (without - variances[plug]));
  const tie = Math.max(-1, Math.min(1, share * Math.sqrt(without / own)));
  const h = (node.mean + share * (mean - means[plug])) / Math.sqrt(own) - tie * (certainty - k);
  const both = normalCdf(h) * normalCdf(k) + tiedBelow(h, k, tie);
  return Math.max(0, Math.min(1, (ifSound * normalCdf(h) + (ifBad - ifSound) * both) / saw));
}

function proven({ ifBad, ifSound }: Evidence): Pick<Evidence, 'ifBad' | 'ifSound'> {
  if (ifBad > PROOF * ifSound) return { ifBad: 1, ifSound: 0 };
  return ifSound > PROOF * ifBad ? { ifBad: 0, ifSound: 1 } : { ifBad, ifSound };
}

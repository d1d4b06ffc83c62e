import { makeupOf } from '../map/observed.js';
import { carried } from '../map/interpolation.js';
import type { MapPart } from '../map/map-part.js';
import type { SurveyMap } from '../map/survey-map.js';
import type { Team } from '../map/team.js';
import { quickCdf } from './normal-table.js';

/** The map's leading parts at its nodes, for asking what one more reading would tell. */
export interface Standing {
  readonly weight: number;
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  /** Mean over standard deviation, and the chance of bad core that it stands for. */
  readonly score: Float64Array;
  readonly chance: Float64Array;
  readonly team: Team;
  readonly hearingSd: number;
  /** Covariance of every node with the field at one of them. */
  readonly covarianceWith: (node: number) => Float64Array;
}

/** More parts than this would be followed for little. */
const MOST_PARTS = 3;

export function standingsOf({ parts, lattice }: SurveyMap): readonly Standing[] {
  const leading = [...parts].sort((one, other) => other.weight - one.weight).slice(0, MOST_PARTS);
  const total = leading.reduce((sum, { weight }) => sum + weight, 0);
  return leading.map((part) => ({
    weight: part.weight / total,
    ...scored(part),
    team: part.team,
    hearingSd: part.hearingSd,
    covarianceWith: remembered((node) => covarianceOf(part, lattice.nodes[node].place)),
  }));
}

function scored({ posterior, bridge }: MapPart): Pick<Standing, 'mean' | 'variance' | 'score' | 'chance'> {
  const mean = carried(posterior.mean, bridge);
  const variance = carried(posterior.sd, bridge).map((sd) => sd * sd);
  const score = mean.map((value, node) => value / Math.sqrt(variance[node]));
  return { mean, variance, score, chance: score.map(quickCdf) };
}

function covarianceOf(
  { given: { field, effects }, posterior, bridge, evenness }: MapPart,
  place: readonly [number, number],
): Float64Array {
  const there = posterior.covarianceWith(makeupOf(field, [place], effects));
  return carried(there, bridge).map((value, node) => value / evenness[node]);
}

function remembered(work: (node: number) => Float64Array): (node: number) => Float64Array {
  const known = new Map<number, Float64Array>();
  return (node) => {
    const found = known.get(node) ?? work(node);
    known.set(node, found);
    return found;
  };
}

/** Chance of bad core at each node as these parts have it. */
export const chanceOfAll = (standings: readonly Standing[]): Float64Array =>
  standings[0].mean.map((_, node) =>
    standings.reduce((sum, { weight, chance }) => sum + weight * chance[node], 0),
  );

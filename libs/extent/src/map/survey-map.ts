import { Defect } from '#lib/kernel';
import type { Point, Region } from '#lib/geometry';
import type { Survey } from '../reading.js';
import { fieldOn } from './field.js';
import { latticeOver, type Lattice } from './lattice.js';
import { noSites, posteriorOf, type Observation, type Posterior, type Prior } from './posterior.js';
import { evidenceOf, type ReadingOdds } from './reading-odds.js';

/** The chance that core is bad, over the panel. */
export interface SurveyMap {
  readonly lattice: Lattice;
  readonly chance: Float64Array;
  /** One posterior for each range that the readings leave likely, with its weight. */
  readonly parts: readonly { readonly posterior: Posterior; readonly weight: number }[];
  /** Range of the damage as the readings suggest it. */
  readonly rangeMm: number;
}

/** Ranges tried: damage that hangs together over a hand's breadth up to over more than a metre. */
export const RANGES_MM: readonly number[] = [200, 450, 1000];

/** Enough cells that a contour is smooth and few enough that 2,000 readings take well under a second. */
const CELLS = 1000;

/** A range less likely than this is left out of the draws. */
const LEAST_WEIGHT = 0.02;

/**
 * Map of the chance of bad core from readings: one Gaussian field for each range, weighed by how well it explains the
 * readings, and averaged.
 * Source: [RUE-2009] section 3 (averaging over the field's own parameters on a grid of values)
 */
export function mapOf(panel: Region, survey: Survey, odds: ReadingOdds, prior: Prior): SurveyMap {
  const lattice = latticeOver(panel, CELLS);
  const observations = survey.readings.map((reading): Observation => ({ ...evidenceOf(reading, survey.meter, odds), ...tied(reading.at, lattice) }));
  const fits = RANGES_MM.filter((rangeMm) => rangeMm >= 2 * lattice.stepMm);
  const ranges = fits.length > 0 ? fits : [2 * lattice.stepMm];
  const posteriors = ranges.reduce<readonly Posterior[]>((found, rangeMm) =>
    [...found, posteriorOf(fieldOn(lattice, rangeMm), observations, prior, found.at(-1)?.sites ?? noSites(observations.length))], []);
  const parts = weighed(posteriors);
  const chance = lattice.nodes.map((_, node) => parts.reduce((sum, { posterior, weight }) => sum + weight * posterior.chance[node], 0));
  return {
    lattice, parts,
    chance: Float64Array.from(chance),
    rangeMm: parts.reduce((sum, { posterior, weight }) => sum + weight * posterior.field.rangeMm, 0),
  };
}

function weighed(posteriors: readonly Posterior[]): SurveyMap['parts'] {
  const best = Math.max(...posteriors.map(({ logEvidence }) => logEvidence));
  const likelihoods = posteriors.map(({ logEvidence }) => Math.exp(logEvidence - best));
  const total = likelihoods.reduce((sum, value) => sum + value, 0);
  const kept = posteriors.map((posterior, index) => ({ posterior, weight: likelihoods[index] / total })).filter(({ weight }) => weight >= LEAST_WEIGHT);
  const keptTotal = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map(({ posterior, weight }) => ({ posterior, weight: weight / keptTotal }));
}

/** The four nodes round a place, each with its share of a straight-line interpolation. */
function tied(place: Point, { cellAt, nodeAt, columns, rows }: Lattice): Pick<Observation, 'nodes' | 'shares'> {
  const [x, y] = cellAt(place);
  const column = Math.min(columns - 2, Math.max(0, Math.floor(x)));
  const row = Math.min(rows - 2, Math.max(0, Math.floor(y)));
  const [u, v] = [x - column, y - row];
  const corners = [
    { node: nodeAt[column * rows + row], share: (1 - u) * (1 - v) }, { node: nodeAt[(column + 1) * rows + row], share: u * (1 - v) },
    { node: nodeAt[column * rows + row + 1], share: (1 - u) * v }, { node: nodeAt[(column + 1) * rows + row + 1], share: u * v },
  ].filter(({ share }) => share > 1e-9);
  if (corners.some(({ node }) => node < 0)) throw new Defect(`No lattice at (${place.join(', ')})`);
  return { nodes: corners.map(({ node }) => node), shares: corners.map(({ share }) => share) };
}

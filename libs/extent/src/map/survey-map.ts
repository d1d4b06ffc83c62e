import type { Region } from '#lib/geometry';
import type { Survey } from '../reading.js';
import { fieldOn, type Field } from './field.js';
import {
  agreementWith,
  averageRates,
  greatestChange,
  learntRates,
  type HammerRates,
} from './hammer-rates.js';
import { carried, tiesTo, type Ties } from './interpolation.js';
import { latticeOver, latticeWithStep, type Lattice } from './lattice.js';
import { normalCdf } from './normal.js';
import { noSites, observed, posteriorOf, type Posterior, type Prior, type Sites } from './posterior.js';
import { evidenceOf, type ReadingOdds } from './reading-odds.js';

/** The chance that core is bad, over the panel. */
export interface SurveyMap {
  readonly lattice: Lattice;
  readonly chance: Float64Array;
  readonly parts: readonly MapPart[];
  /** Range of the damage as the readings suggest it. */
  readonly rangeMm: number;
  /** How often the hammer errs as the readings suggest it; absent where the odds of soundings are given. */
  readonly rates?: HammerRates;
}

/** What holds if the damage has one range, with the weight that the readings give this range. */
export interface MapPart {
  readonly rangeMm: number;
  readonly posterior: Posterior;
  readonly rates?: HammerRates;
  /** From the lattice of this range to that of the map. */
  readonly bridge: Ties;
  readonly weight: number;
}

/** Ranges tried, longest first: damage that hangs together over more than a metre down to a hand's breadth. */
export const RANGES_MM: readonly number[] = [1000, 450, 200];

/** Enough cells that a contour is smooth and few enough that 2,000 readings take well under a second. */
const CELLS = 1000;

/** A field needs no cells smaller than this part of its range. */
const STEPS_PER_RANGE = 8;

/** A range less likely than this is left out of the draws. */
const LEAST_WEIGHT = 0.02;

/** Rates are settled when none moves by more than this. */
const SETTLED_RATE = 0.005;

const MOST_ROUNDS = 12;

/**
 * Map of the chance of bad core from readings: one Gaussian field for each range, weighed by how well it explains the
 * readings, and averaged.
 * Source: [RUE-2009] section 3 (averaging over the field's own parameters on a grid of values)
 */
export function mapOf(panel: Region, survey: Survey, { odds, prior, rates }: Beliefs): SurveyMap {
  const lattice = latticeOver(panel, CELLS);
  const parts = weighed(candidatesOn(panel, lattice, survey, { odds, prior, rates }), rates);
  const chances = parts.map(({ posterior: { mean, sd }, bridge }) =>
    chancesFrom(carried(mean, bridge), carried(sd, bridge)),
  );
  return {
    lattice,
    parts,
    chance: Float64Array.from(lattice.nodes, (_, node) =>
      parts.reduce((sum, { weight }, index) => sum + weight * chances[index][node], 0),
    ),
    rangeMm: parts.reduce((sum, { weight, rangeMm }) => sum + weight * rangeMm, 0),
    ...(rates === undefined
      ? {}
      : {
          rates: averageRates(
            parts.flatMap(({ weight, rates: own }) => (own === undefined ? [] : [{ weight, rates: own }])),
          ),
        }),
  };
}

/** What is believed before any reading. */
export interface Beliefs {
  readonly odds: ReadingOdds;
  readonly prior: Prior;
  /** Where the hammer's error rates are to be found from the readings: what they are taken to be beforehand. */
  readonly rates?: HammerRates;
}

const chancesFrom = (means: Float64Array, sds: Float64Array): Float64Array =>
  means.map((mean, node) => normalCdf(mean / sds[node]));

/** A part that the readings have not weighed yet. */
type Candidate = Omit<MapPart, 'weight'>;

function candidatesOn(
  panel: Region,
  lattice: Lattice,
  survey: Survey,
  beliefs: Beliefs,
): readonly Candidate[] {
  const fits = RANGES_MM.filter((rangeMm) => rangeMm >= 2 * lattice.stepMm);
  const ranges = fits.length > 0 ? fits : [2 * lattice.stepMm];
  return ranges.reduce<readonly Candidate[]>((found, rangeMm) => {
    const stepMm = rangeMm / STEPS_PER_RANGE;
    const own = stepMm > lattice.stepMm ? latticeWithStep(panel, stepMm) : lattice;
    return [
      ...found,
      {
        rangeMm,
        bridge: tiesTo(
          own,
          lattice.nodes.map(({ place }) => place),
        ),
        ...settled(fieldOn(own, rangeMm), survey, beliefs, found.at(-1)),
      },
    ];
  }, []);
}

/**
 * The posterior, and with it the hammer's error rates: each is found from the other in turn until the rates settle,
 * beginning with those of the range before.
 * Source: [DAWID-SKENE-1979]
 */
function settled(
  field: Field,
  survey: Survey,
  { odds, prior, rates: before }: Beliefs,
  last?: Candidate,
): Pick<Candidate, 'posterior' | 'rates'> {
  const ties = tiesTo(
    field.lattice,
    survey.readings.map(({ at }) => at),
  );
  const posteriorWith = (rates: HammerRates | undefined, sites: Sites): Posterior =>
    posteriorOf(
      field,
      observed(
        ties,
        survey.readings.map((reading) => evidenceOf(reading, survey.meter, odds, rates)),
      ),
      prior,
      sites,
    );
  let rates = last?.rates ?? before;
  let posterior = posteriorWith(rates, last?.posterior.sites ?? noSites(survey.readings.length));
  for (let round = 0; round < MOST_ROUNDS && before !== undefined && rates !== undefined; round += 1) {
    const next = learntRates(before, survey.readings, posterior.badAt);
    const isSettled = greatestChange(next, rates) < SETTLED_RATE;
    rates = next;
    if (isSettled) break;
    posterior = posteriorWith(rates, posterior.sites);
  }
  return { posterior, rates };
}

function weighed(candidates: readonly Candidate[], before: HammerRates | undefined): readonly MapPart[] {
  const logs = candidates.map(
    ({ posterior, rates }) =>
      posterior.logEvidence +
      (before === undefined || rates === undefined ? 0 : agreementWith(before, rates)),
  );
  const likelihoods = logs.map((log) => Math.exp(log - Math.max(...logs)));
  const total = likelihoods.reduce((sum, value) => sum + value, 0);
  const kept = candidates
    .map((part, index) => ({ ...part, weight: likelihoods[index] / total }))
    .filter(({ weight }) => weight >= LEAST_WEIGHT);
  const keptTotal = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map((part) => ({ ...part, weight: part.weight / keptTotal }));
}

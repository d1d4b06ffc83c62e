import { normalCdf } from '#lib/kernel';
import type { Region } from '#lib/geometry';
import type { Survey } from '../reading.js';
import { deckFrameOf, type Mass } from './deck-frame.js';
import { fieldOn, type Field } from './field.js';
import { withHearing } from './hearing.js';
import { carried, tiesTo } from './interpolation.js';
import { latticeOver, latticeWithStep, type Lattice } from './lattice.js';
import { makeupOf, type Effects } from './observed.js';
import { noSites, type Given, type Sites } from './heard.js';
import type { MapPart } from './map-part.js';
import { plugGrounds, withPlugTruth } from './plug-truth.js';
import { posteriorOf } from './posterior.js';
import { evidenceOf, type Evidence, type ReadingOdds } from './reading-odds.js';
import { agreement, averageTeam, doubts, learnt, movedBy, trusting, type Team } from './team.js';

/** The chance that core is bad, over the panel. */
export interface SurveyMap {
  readonly lattice: Lattice;
  readonly chance: Float64Array;
  readonly parts: readonly MapPart[];
  /** Range of the damage as the readings suggest it. */
  readonly rangeMm: number;
  /** How often hammer and meter err as the readings suggest it; parts are absent where their odds are given. */
  readonly team: Team;
  /** How sure it is that the hammer's errors hang together. */
  readonly hangingTogether: number;
}

/** What is believed before any reading. */
export interface Beliefs {
  readonly odds: ReadingOdds;
  readonly effects: Effects;
  /** What the team's errors are taken to be beforehand. */
  readonly team: Team;
}

/** Ranges tried, shortest first, because what few taps side by side tell is found there and kept: from a hand's breadth to the whole panel. */
export const RANGES_MM: readonly number[] = [100, 200, 400, 800, 1600];

/** Enough cells that a contour is smooth, more of them where many readings tell more. */
const CELLS = 600;
const MOST_CELLS = 1000;

/** A field needs no cells smaller than this part of its range, and between cells larger than this too little is told of a reading's own place. */
const STEPS_PER_RANGE = 5;
const COARSEST_STEP_MM = 100;

/** Size of the observer's own field where errors hang together, in standard deviations of the deck's, and how likely that is beforehand. */
const HEARING_SD = 0.9;
const HEARING_SHARE = 0.25;

/** Only what is at least this likely is split further: by ways of stretching, by errors that hang together, by the doubt about the team's errors. */
const SPLIT_WEIGHT = 0.15;

/**
 * How many times as far damage may hang together one way as the other: water runs along strips of core, planks and seams, which
 * lie along the deck or across it. As likely beforehand as a field that is alike every way, half for either direction.
 * Judgement; no published ratio was found.
 */
const STRETCH = 2.5;
const STRETCHED_SHARE = 0.5;

/** With more readings than this they tell the shape of the damage themselves. */
const READINGS_WITHOUT_STRETCH = 500;

/** What is less likely than this is not followed up, and left out in the end. */
const LEAST_WEIGHT = 0.03;

/** Errors are settled when none moves by more than this. */
const SETTLED_RATE = 0.005;

/** With more taps than this the errors are known well enough. */
const TAPS_WITHOUT_DOUBT = 500;

/**
 * Map of the chance of bad core from readings: one Gaussian field for each range, alike every way or stretched along the
 * panel or across it, with and without errors of the hammer that hang together, with the errors of hammer and meter learnt
 * and their doubt carried along; all weighed by how well they explain the readings, and averaged.
 * Source: [RUE-2009] section 3 and 6.5 (averaging over the parameters of the field on a design of points)
 */
export function mapOf(panel: Region, survey: Survey, beliefs: Beliefs): SurveyMap {
  const cells = Math.min(MOST_CELLS, Math.max(CELLS, survey.readings.length));
  const lattice = latticeOver(panel, cells, deckFrameOf(panel, massesOf(survey, beliefs)));
  const ranged = weighed(rangesOf(panel, lattice, survey, beliefs));
  const stretched = weighed(ranged.flatMap((part) => withStretches(part, lattice, { survey, beliefs })));
  const hung = weighed(stretched.flatMap((part) => withErrorsHanging(part, survey, beliefs)));
  const parts = weighed(hung.flatMap((part) => withDoubts(part, survey, beliefs)));
  const chance = chanceOf(parts, survey, lattice);
  const average = (of: (part: MapPart) => number) =>
    parts.reduce((sum, part) => sum + part.weight * of(part), 0);
  return {
    lattice,
    parts,
    chance,
    rangeMm: average(({ rangeMm }) => rangeMm),
    team: averageTeam(parts),
    hangingTogether: average(({ hearingSd }) => (hearingSd > 0 ? 1 : 0)),
  };
}

/** Each reading by what it says, for bad core or against it. */
const massesOf = ({ readings, meter }: Survey, { odds, team }: Beliefs): readonly Mass[] =>
  readings.map((reading) => {
    const { ifBad, ifSound } = evidenceOf(reading, meter, odds, team);
    return { at: reading.at, mass: Math.log(ifBad / ifSound) };
  });

/** The parts' chances by their weights, and round plugs as these showed the core. */
function chanceOf(parts: readonly MapPart[], survey: Survey, lattice: Lattice): Float64Array {
  const each = parts.map((part) => {
    const [mean, sd] = [carried(part.posterior.mean, part.bridge), carried(part.posterior.sd, part.bridge)];
    return { part, mean, sd, chance: mean.map((value, node) => normalCdf(value / sd[node])) };
  });
  const mixed = (chances: readonly Float64Array[]) =>
    Float64Array.from(lattice.nodes, (_, node) =>
      parts.reduce((sum, { weight }, index) => sum + weight * chances[index][node], 0),
    );
  const smooth = mixed(each.map(({ chance }) => chance));
  const grounds = plugGrounds(survey, lattice, smooth);
  return grounds.length === 0 ? smooth : mixed(each.map((one) => withPlugTruth(one, grounds, lattice)));
}

/** A part that is not yet weighed against the others. */
type Candidate = Omit<MapPart, 'weight'> & {
  /** How likely it is before any reading, and after them but for a constant. */
  readonly logPrior: number;
  readonly logWeight: number;
};

function rangesOf(panel: Region, lattice: Lattice, survey: Survey, beliefs: Beliefs): readonly Candidate[] {
  const fits = RANGES_MM.filter((rangeMm) => rangeMm >= 2 * lattice.stepMm);
  const ranges = fits.length > 0 ? fits : [2 * lattice.stepMm];
  const latticeFor = latticesOver(panel, lattice);
  return ranges.reduce<readonly Candidate[]>((found, rangeMm) => {
    const last = found.at(-1);
    const start = {
      team: last?.team ?? trusting(beliefs.team),
      sites: last?.posterior.sites ?? noSites(survey.readings.length),
    };
    const asked = { survey, beliefs, logPrior: 0 };
    return [...found, candidateOn(fieldOn(latticeFor(rangeMm), rangeMm), lattice, asked, start)];
  }, []);
}

/** The lattice that a range needs, at most as fine as the map's own; each is laid once. */
function latticesOver(panel: Region, finest: Lattice): (rangeMm: number) => Lattice {
  const laid = new Map([[finest.stepMm, finest]]);
  return (rangeMm) => {
    const stepMm = Math.max(finest.stepMm, Math.min(COARSEST_STEP_MM, rangeMm / STEPS_PER_RANGE));
    const lattice = laid.get(stepMm) ?? latticeWithStep(panel, stepMm, finest.frame);
    laid.set(stepMm, lattice);
    return lattice;
  };
}

/** The part as it is, and beside it the same range stretched along the panel and across it; where that is not tried the part stands for all three. */
function withStretches(
  part: Candidate & MapPart,
  lattice: Lattice,
  { survey, beliefs }: Surveyed,
): readonly Candidate[] {
  const { lattice: own } = part.given.field;
  const isTooShort = part.rangeMm / Math.sqrt(STRETCH) < 2 * own.stepMm;
  if (isTooShort || part.weight < SPLIT_WEIGHT || survey.readings.length > READINGS_WITHOUT_STRETCH)
    return [part];
  const asked = { survey, beliefs, logPrior: Math.log(STRETCHED_SHARE / 2) };
  const start = { team: part.team, sites: part.posterior.sites };
  const stretched = [STRETCH, 1 / STRETCH].map((stretch) =>
    candidateOn(fieldOn(own, part.rangeMm, stretch), lattice, asked, start),
  );
  return [lessLikely(part, 1 - STRETCHED_SHARE), ...stretched];
}

const lessLikely = (part: Candidate, share: number): Candidate => ({
  ...part,
  logPrior: part.logPrior + Math.log(share),
  logWeight: part.logWeight + Math.log(share),
});

function candidateOn(
  field: Field,
  lattice: Lattice,
  { survey, beliefs, logPrior }: Asked,
  start: Start,
): Candidate {
  const places = survey.readings.map(({ at }) => at);
  const makeup = makeupOf(field, places, beliefs.effects);
  const found = settled({ field, effects: beliefs.effects, makeup }, survey, beliefs, start);
  return {
    rangeMm: field.rangeMm,
    hearingSd: 0,
    ...bridged(field, lattice),
    ...found,
    logPrior,
    logWeight: found.logWeight + logPrior,
  };
}

function bridged(field: Field, lattice: Lattice): Pick<MapPart, 'bridge' | 'evenness'> {
  const bridge = tiesTo(
    field.lattice,
    lattice.nodes.map(({ place }) => place),
  );
  return { bridge, evenness: field.sdAt(bridge) };
}

interface Surveyed {
  readonly survey: Survey;
  readonly beliefs: Beliefs;
}

interface Asked extends Surveyed {
  readonly logPrior: number;
}

interface Start {
  readonly team: Team;
  readonly sites: Sites;
}

/**
 * The posterior, and with it the team's errors: each is found from the other in turn until the errors settle.
 * Source: [DAWID-SKENE-1979]
 */
function settled(
  given: Omit<Given, 'evidence'>,
  survey: Survey,
  beliefs: Beliefs,
  start: Start,
): Pick<Candidate, 'given' | 'posterior' | 'team' | 'logWeight'> {
  let team = start.team;
  const learn = (badAt: Float64Array) => {
    const next = learnt(beliefs.team, survey, badAt);
    const isSettled = movedBy(next, team) < SETTLED_RATE;
    team = next;
    return { evidence: evidenceFor(survey, beliefs, team), isSettled };
  };
  const whole = { ...given, evidence: evidenceFor(survey, beliefs, team) };
  const posterior = posteriorOf(whole, start.sites, { learn, sweeps: sweepsOn(given.field) });
  return { given: whole, posterior, team, logWeight: posterior.logEvidence + agreement(beliefs.team, team) };
}

/** Work is counted and not timed: sweeps are fewer where a lattice is large, as it is where readings are many and settle soon. */
const WORK_A_PART = 4e7;
const [LEAST_SWEEPS, MOST_SWEEPS] = [5, 20];

const sweepsOn = ({ precision: { size, band } }: Field): number =>
  Math.min(MOST_SWEEPS, Math.max(LEAST_SWEEPS, Math.floor(WORK_A_PART / (size * band * band))));

const evidenceFor = (survey: Survey, { odds }: Beliefs, team: Team): readonly Evidence[] =>
  survey.readings.map((reading) => evidenceOf(reading, survey.meter, odds, team));

/** The part as it is, and beside it the same range with an observer's field of its own; where that is not tried the part stands for both. */
function withErrorsHanging(
  part: Candidate & MapPart,
  survey: Survey,
  beliefs: Beliefs,
): readonly Candidate[] {
  const isHammer = survey.readings.map(({ kind }) => kind === 'sounding');
  if (isHammer.filter(Boolean).length < 8 || part.weight < SPLIT_WEIGHT) return [part];
  const places = survey.readings.map(({ at }) => at);
  const hearing = withHearing(part.given.field, places, isHammer);
  const makeup = makeupOf(hearing.field, places, beliefs.effects, { of: hearing, sd: HEARING_SD });
  const found = settled({ field: hearing.field, effects: beliefs.effects, makeup }, survey, beliefs, {
    team: part.team,
    sites: part.posterior.sites,
  });
  const logPrior = part.logPrior + Math.log(HEARING_SHARE);
  return [
    lessLikely(part, 1 - HEARING_SHARE),
    { ...part, ...found, hearingSd: HEARING_SD, logPrior, logWeight: found.logWeight + logPrior },
  ];
}

/** Points of the design stand this many standard deviations out, and weigh as the rule of third degree says. */
const OUT = Math.sqrt(3);

/**
 * The part split by what its errors may be instead: a star of points round the learnt ones, each weighed by how well it explains
 * the readings against the normal shape that the design assumes.
 * Source: [RUE-2009] section 6.5
 */
function withDoubts(part: Candidate & MapPart, survey: Survey, beliefs: Beliefs): readonly Candidate[] {
  const taps = survey.readings.filter(({ kind }) => kind === 'sounding').length;
  if (taps < 5 || taps > TAPS_WITHOUT_DOUBT || part.weight < SPLIT_WEIGHT) return [part];
  const directions = doubts(part.team, survey, part.posterior.badAt, OUT);
  const arms = directions
    .flatMap(({ low, high }) => [low, high])
    .map((team) => shiftedTo(part, team, survey, beliefs));
  const arm = 1 / 6;
  const middle = 1 - arm * arms.length;
  return [
    { ...part, logWeight: part.logWeight + Math.log(middle) },
    ...arms.map((one) => ({ ...one, logWeight: one.logWeight + Math.log(arm) + OUT ** 2 / 2 })),
  ];
}

function shiftedTo(part: Candidate, team: Team, survey: Survey, beliefs: Beliefs): Candidate {
  const given = { ...part.given, evidence: evidenceFor(survey, beliefs, team) };
  const posterior = posteriorOf(given, part.posterior.sites, { sweeps: 3 });
  const change =
    posterior.logEvidence +
    agreement(beliefs.team, team) -
    part.posterior.logEvidence -
    agreement(beliefs.team, part.team);
  return { ...part, given, posterior, team, logWeight: part.logWeight + change };
}

function weighed(candidates: readonly Candidate[]): readonly (MapPart & Candidate)[] {
  const most = Math.max(...candidates.map(({ logWeight }) => logWeight));
  const likelihoods = candidates.map(({ logWeight }) => Math.exp(logWeight - most));
  const total = likelihoods.reduce((sum, value) => sum + value, 0);
  const kept = candidates
    .map((part, index) => ({ ...part, weight: likelihoods[index] / total }))
    .filter(({ weight }) => weight >= LEAST_WEIGHT);
  const keptTotal = kept.reduce((sum, { weight }) => sum + weight, 0);
  return kept.map((part) => ({ ...part, weight: part.weight / keptTotal }));
}

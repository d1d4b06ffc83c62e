import { cpus } from 'node:os';
import { THRESHOLDS, LEAVE_H_PER_M2, type Trial } from './trial.js';

const mean = (values: readonly number[]): number =>
  values.length === 0 ? NaN : values.reduce((sum, value) => sum + value, 0) / values.length;
const share = (trials: readonly Trial[], is: (one: Trial) => boolean): string =>
  trials.length === 0 ? '-' : `${Math.round(100 * mean(trials.map((one) => (is(one) ? 1 : 0))))} %`;

/** Area that must be opened, over the bad area, so that nine tenths of the bad core of all these decks is enclosed. */
function areaFor(trials: readonly Trial[], which: 0 | 1): number {
  const cells = trials.flatMap((one) => one.cells.map((cell) => ({ chance: cell[which], isBad: cell[2], weight: 1 / one.cells.length / one.share }))); // prettier-ignore
  cells.sort((a, b) => b.chance - a.chance);
  const bad = cells.reduce((sum, { isBad, weight }) => sum + (isBad ? weight : 0), 0);
  let [enclosed, opened] = [0, 0];
  for (const { isBad, weight } of cells) {
    opened += weight;
    enclosed += isBad ? weight : 0;
    if (enclosed >= 0.9 * bad) break;
  }
  return opened / bad;
}

function row(name: string, trials: readonly Trial[]): readonly string[] {
  if (trials.length === 0) return [];
  const thresholds = THRESHOLDS.map((_, index) => mean(trials.map((one) => one.costByThresholdH[index])));
  const cost = mean(trials.map(({ costH }) => costH));
  const best = Math.min(...thresholds);
  const [area, oracleArea] = [areaFor(trials, 0), areaFor(trials, 1)];
  const cells = [
    name,
    mean(trials.map(({ brier }) => brier)).toFixed(4),
    (mean(trials.map(({ brier }) => brier)) / mean(trials.map(({ oracleBrier }) => oracleBrier))).toFixed(2),
    share(trials, ({ isMapHolding }) => isMapHolding),
    share(trials, ({ isBelow }) => isBelow),
    share(trials, ({ isPriceHolding }) => isPriceHolding),
    share(trials, ({ isPriceBelow }) => isPriceBelow),
    `${area.toFixed(2)} / ${oracleArea.toFixed(2)}`,
    (area / oracleArea).toFixed(2),
    `${mean(trials.map(({ enclosed }) => enclosed)).toFixed(2)} / ${mean(trials.map(({ opened }) => opened)).toFixed(2)}`,
    `${cost.toFixed(1)} / ${best.toFixed(1)} (${THRESHOLDS[thresholds.indexOf(best)]})`,
    (cost / best).toFixed(3),
    share(trials, ({ isEmpty }) => isEmpty),
    share(trials, ({ isEmptySilent }) => isEmptySilent),
    mean(trials.map(({ ms }) => ms)).toFixed(0),
  ];
  return [`| ${cells.join(' | ')} |`];
}

const header = [
  'decks',
  'Brier',
  'x oracle',
  'truth in map P10 to P90',
  'below P10',
  'truth in priced P10 to P90',
  'below P10',
  'area for 90 %: map / oracle',
  'x oracle',
  'plan: enclosed / opened',
  'cost h: plan / best threshold',
  'x best',
  'empty plans',
  'of these without a next step',
  'CPU ms',
];

function table(trials: readonly Trial[], counts: readonly number[]): readonly string[] {
  const teams = [...new Set(trials.map(({ team }) => team))];
  const damages = [...new Set(trials.map(({ damage }) => damage))];
  const of = (count: number, is: (one: Trial) => boolean) =>
    trials.filter((one) => one.count === count && is(one));
  const run = counts.filter((count) => trials.some((one) => one.count === count));
  const lines = run.flatMap((count) => [
    ...damages.flatMap((damage) =>
      row(
        `${count}, ${damage}`,
        of(count, (one) => one.damage === damage),
      ),
    ),
    ...teams.flatMap((team) =>
      row(
        `${count}, hammer ${team}`,
        of(count, (one) => one.team === team),
      ),
    ),
    ...row(
      `${count}, bad share under 5 %`,
      of(count, (one) => one.share < 0.05),
    ),
    ...row(
      `${count}, over 60 %`,
      of(count, (one) => one.share > 0.6),
    ),
    ...row(
      `**${count}, all**`,
      of(count, () => true),
    ),
  ]);
  return [`| ${header.join(' | ')} |`, `|${header.map(() => '---').join('|')}|`, ...lines];
}

/** One set of simulators, under its own heading. */
export interface Set {
  readonly title: string;
  readonly trials: readonly Trial[];
}

export function report(sets: readonly Set[], counts: readonly number[]): string {
  return [
    '# How well readings find bad core',
    '',
    `${sets.reduce((sum, { trials }) => sum + trials.length, 0)} surveys, ${cpus().length}-core ${cpus()[0].model.trim()} class machine. No set shares anything with the field that the map assumes, and no error rate is told to it.`,
    '',
    'Decks the map was built on: water that fills the core from leaking fittings, along the grain and downhill; ellipses with wavy rims; rough domains of a noisy two-state lattice; a smooth random field. Four teams with fixed rates, one of them wrong in patches; three taps to one meter reading on a jittered grid, and up to three plugs where the symptoms point.',
    'Held out: the same damage with other teams, shares and seeds, never tuned on.',
    'Unseen: damage along joints and cracks, in from the edge, grown from seeds, and by blocks of scored core; crews that tire, that err near rims, of two hands, and with rates drawn by lot; lines across the deck and more readings round fittings; meters that drift, one reading in ten to two in five; none to four plugs. Fixed before the first run, never tuned on.',
    'Fourth: water that soaks along the grain by diffusion past glue lines, ponds in a sagged and dented deck, planks of core gone whole, rot that walked at random; hammers that hear a footprint of 45 mm, that are deafened within 130 mm of edges, whose attention comes and goes for some fifteen taps, and steady ones; staggered rows with taps round what sounded bad; meters whose noise grows with the reading; none to three plugs at random. Own code, parameters set before the first run, and run for the first time after the map was settled; it was 1.08, 1.10 and 1.07 x oracle then at 20, 60 and 200 readings, and has been looked at since.',
    'Fifth: damage of one wavelength, cracks that wander, pieces of core of all shapes that infect each other, bands over beams across the deck; hammers that are half deaf on one side of the deck, that are swayed by the sound before, that are misled by the backing of fittings, and honest ones with rates drawn for the deck; places by two counters, one in three checked close by; meters that drift and level off; none to four plugs. Own code, parameters set before the first run; nothing was chosen by it.',
    '',
    `Oracle: a probit process told the true share, the error rates (their mean, where they vary) and the range that suits the kind of damage; not the kind itself, nor where errors hang together. Cost: hours of the opening and ${LEAVE_H_PER_M2} h for each square metre of bad core left; best threshold: the one that would have been best over the decks of the row.`,
    '',
    ...sets.flatMap(({ title, trials }) => [`## ${title}`, '', ...table(trials, counts), '']),
  ].join('\n');
}

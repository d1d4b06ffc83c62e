import { isKnown, normalCdf } from '#lib/kernel';
import type { Figure } from '#lib/provenance';
import { ratesBehind } from '../map/hammer-rates.js';
import { SYMPTOM_EDGE, type Evidence, type ReadingOdds } from '../map/reading-odds.js';
import type { Team } from '../map/team.js';
import type { Survey } from '../reading.js';
import { readingKinds, type NextAnswers, type ReadingKind } from './questions.js';

/** Nobody bores holes into a deck that was not tapped: with fewer symptoms than this they come first. */
const SYMPTOMS_BEFORE_PLUGS = 8;

/** Kinds that can be taken: those asked for, or every one that this survey can make use of. */
export function kindsOf({ kinds }: NextAnswers, { meter, readings }: Survey): readonly ReadingKind[] {
  const symptoms = readings.filter(({ kind }) => kind !== 'plug').length;
  const usual = readingKinds.filter((kind) => kind !== 'plug' || symptoms >= SYMPTOMS_BEFORE_PLUGS);
  const asked = isKnown(kinds) ? kinds.value : usual;
  return readingKinds.filter((kind) => asked.includes(kind) && (kind !== 'moisture' || meter !== undefined));
}

export const readingWords: Readonly<Record<ReadingKind, string>> = {
  sounding: 'tap',
  moisture: 'meter reading',
  plug: 'plug',
};

/** Minutes that one reading takes. */
export const minutesOf = (
  kind: ReadingKind,
  { tapMinutes, meterMinutes, plugMinutes }: NextAnswers,
): Figure<'min'> => ({ sounding: tapMinutes, moisture: meterMinutes, plug: plugMinutes })[kind];

/** A reading that is still to be made, as either of its answers would be seen. */
export interface Foreseen {
  readonly bad: Evidence;
  readonly sound: Evidence;
}

/** How a plug may differ from the field at its own hole, as in the map. */
const PLUG_EDGE = 0.01;

/** Dull and void count as one answer of the hammer, and the meter as wet or dry about the middle between its two kinds of readings. */
export function foreseen(
  kind: ReadingKind,
  { hammer, meter }: Team,
  odds: ReadingOdds,
  hearingSd: number,
): Foreseen {
  if (kind === 'plug') return both(1, 0, PLUG_EDGE);
  if (kind === 'sounding') {
    const { overBad, overSound } = hammer ?? ratesBehind(odds.sounding);
    // Where errors hang together the hammer hears the deck and its observer's field at once.
    return both(1 - overBad.sharp, 1 - overSound.sharp, Math.hypot(SYMPTOM_EDGE, hearingSd));
  }
  const right = meter === undefined ? sharedOdds(odds.meterWet) : rightOf(meter);
  return both(right, 1 - right, SYMPTOM_EDGE);
}

const both = (ifBad: number, ifSound: number, edge: number): Foreseen => ({
  bad: { ifBad, ifSound, edge },
  sound: { ifBad: 1 - ifBad, ifSound: 1 - ifSound, edge },
});

const sharedOdds = (ratio: number): number => Math.sqrt(ratio) / (1 + Math.sqrt(ratio));

const rightOf = ({ overBad, overSound, sd }: NonNullable<Team['meter']>): number =>
  normalCdf((overBad - overSound) / (2 * sd));

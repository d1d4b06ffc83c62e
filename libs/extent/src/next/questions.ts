import {
  ask,
  askOutlines,
  askPart,
  askSome,
  commonPractice,
  practice,
  settle,
  type AnswersTo,
  type Settlement,
} from '#lib/asking';
import { Defect, type Problem } from '#lib/kernel';
import type { Reading } from '../reading.js';

export type ReadingKind = Reading['kind'];

/** Dearest last. */
export const readingKinds: readonly ReadingKind[] = ['sounding', 'moisture', 'plug'];

/** How the next readings may be taken, as the caller may choose. */
export const nextQuestions = {
  count: ask({
    unit: '1',
    meaning: 'most readings named at once',
    range: { from: 1, upTo: 30 },
    isWhole: true,
    otherwise: practice(10, 'about as many as are taken before the map is looked at again'),
  }),
  minutes: ask({
    unit: 'min',
    meaning: 'time there is for readings',
    range: { from: 0.5, upTo: 600 },
    otherwise: 'unknown',
  }),
  kinds: askSome({
    meaning: 'kinds of reading that can be taken',
    note: 'Absent: taps; the meter where its readings on dry and on soaked deck are stated; plugs once there are eight symptoms.',
    choices: ['sounding', 'moisture', 'plug'],
    least: 1,
    otherwise: 'unknown',
  }),
  tapMinutes: ask({
    unit: 'min',
    meaning: 'time of a tap: measured in, sounded, written down',
    range: { from: 0.05, upTo: 30 },
    otherwise: {
      value: 0.5,
      low: 0.2,
      high: 1,
      because: 'two a minute once a grid is chalked',
      cite: commonPractice,
    },
  }),
  meterMinutes: ask({
    unit: 'min',
    meaning: 'time of a meter reading: deck wiped dry, meter held still, written down',
    range: { from: 0.05, upTo: 30 },
    otherwise: {
      value: 1,
      low: 0.5,
      high: 2,
      because: 'the deck is wiped and the meter is tried in two directions',
      cite: commonPractice,
    },
  }),
  plugMinutes: ask({
    unit: 'min',
    meaning: 'time of a plug: drilled, looked at, photographed, closed and made good',
    range: { from: 1, upTo: 240 },
    otherwise: {
      value: 30,
      low: 15,
      high: 60,
      because: 'the hole is closed the same day, and made good where the deck is not opened later',
      cite: commonPractice,
    },
  }),
  unreachable: askOutlines({
    meaning: 'outlines of deck that nobody can get at, as under a raft or a chest',
    least: 0,
    most: 100,
    otherwise: 'unknown',
  }),
};

export type NextAsked = AnswersTo<typeof nextQuestions>;
export type NextAnswers = Settlement<typeof nextQuestions>;

const questions = {
  next: askPart({ meaning: 'how the next readings may be taken', of: nextQuestions, otherwise: 'defaults' }),
};

interface SaidOfNext {
  readonly next?: NextAsked;
}

export const nextProblems = ({ next }: SaidOfNext): readonly Problem[] => {
  const found = settle({ next }, questions);
  return found.ok ? [] : found.problems;
};

/** What holds of the next readings once the request was found right. */
export function nextAnswers({ next }: SaidOfNext): NextAnswers {
  const found = settle({ next }, questions);
  if (!found.ok) throw new Defect('Next readings were settled before their faults were looked for');
  return found.value.value.next;
}

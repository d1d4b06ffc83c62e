import {
  criticalPath,
  threePointMean,
  threePointVariance,
  type Activity,
  type ActivityTimes,
  type CriticalPath,
} from '#lib/calendar';
import type { PublishedCase } from '../published-case.js';

const solved = (activities: readonly Activity[]): CriticalPath => {
  const outcome = criticalPath(activities);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const network = (text: string): readonly Activity[] =>
  text
    .trim()
    .split(/\s*;\s*/)
    .map((part) => {
      const [code, duration, after = ''] = part.split(' ');
      return { code, duration: Number(duration), after: after === '' ? [] : after.split(',') };
    });
const timesOf = (activities: readonly Activity[], code: string): ActivityTimes =>
  solved(activities).activities.find((times) => times.code === code)!;

const lecture = network('A 6; B 2 A; C 2 A; D 3 B; F 2 C; E 4 D,F; G 1 E');
const fromLecture = (name: string, printed: string, ours: () => number): PublishedCase => ({
  id: `process-cpm-lecture-${name.replaceAll(' ', '-')}`,
  room: 'calendar',
  title: `Seven activities: ${name}`,
  source: 'PM-LECTURE-CPM',
  locus: 'tables 1 and 2',
  unit: 'h',
  printed,
  ours,
});

export const lectureExample: readonly PublishedCase[] = [
  fromLecture('length', '16', () => solved(lecture).length),
  fromLecture('number of critical activities', '5', () => solved(lecture).critical.length),
  fromLecture('earliest start of D', '8', () => timesOf(lecture, 'D').earliestStart),
  fromLecture('latest start of C', '7', () => timesOf(lecture, 'C').latestStart),
  fromLecture('latest finish of C', '9', () => timesOf(lecture, 'C').latestFinish),
  fromLecture('slack of C', '1', () => timesOf(lecture, 'C').slack),
  fromLecture('latest finish of F', '11', () => timesOf(lecture, 'F').latestFinish),
  fromLecture('slack of F', '1', () => timesOf(lecture, 'F').slack),
];

/** a, m, b and predecessors of the solved exercise. */
const threePoints: Readonly<Record<string, readonly [number, number, number, string]>> = {
  A: [5, 5, 7, ''],
  B: [1, 2, 5, ''],
  C: [5, 5, 5, 'A'],
  D: [4, 8, 13, 'A'],
  E: [1, 10, 17, 'B,C'],
  F: [1, 5, 7, 'D'],
  G: [2, 6, 9, 'D'],
  H: [4, 4, 6, 'E,F'],
  I: [2, 7, 10, 'G,H'],
  J: [2, 4, 7, 'I'],
  K: [6, 10, 13, 'I'],
  L: [2, 6, 6, 'J'],
  M: [2, 2, 3, 'K'],
  N: [7, 7, 12, 'L,M'],
};
const exercise = network(
  Object.entries(threePoints)
    .map(([code, [low, likely, high, after]]) => `${code} ${threePointMean(low, likely, high)} ${after}`)
    .join('; '),
);
const fromExercise = (name: string, printed: string, ours: () => number): PublishedCase => ({
  id: `process-pert-exercise-${name.replaceAll(' ', '-')}`,
  room: 'calendar',
  title: `Fourteen activities: ${name}`,
  source: 'PM-SOLVED-PERT',
  locus: 'solution tables',
  unit: 'd',
  printed,
  ours,
});

export const solvedExercise: readonly PublishedCase[] = [
  fromExercise('mean of A', '5.33', () => threePointMean(5, 5, 7)),
  fromExercise('mean of D', '8.17', () => threePointMean(4, 8, 13)),
  fromExercise('mean of E', '9.67', () => threePointMean(1, 10, 17)),
  fromExercise('mean of N', '7.83', () => threePointMean(7, 7, 12)),
  fromExercise('deviation of E', '2.67', () => Math.sqrt(threePointVariance(1, 17))),
  fromExercise('slack of B', '8.00', () => timesOf(exercise, 'B').slack),
  fromExercise('latest start of D', '7.17', () => timesOf(exercise, 'D').latestStart),
  fromExercise('slack of D', '1.83', () => timesOf(exercise, 'D').slack),
  fromExercise('earliest finish of F', '18.17', () => timesOf(exercise, 'F').earliestFinish),
  fromExercise('latest finish of E', '20.00', () => timesOf(exercise, 'E').latestFinish),
];

/** Construction of a plant, as recalled from the textbook's prototype example. */
const plant = network(
  'A 2; B 4 A; C 10 B; D 6 C; E 4 C; F 5 E; G 7 D; H 9 E,G; I 7 C; J 8 F,I; K 4 J; L 5 J; M 2 H; N 6 K,L',
);
export const textbookExample: readonly PublishedCase[] = [
  {
    id: 'process-cpm-plant',
    room: 'calendar',
    title: 'Fourteen activities of a plant: length',
    source: 'HILLIER-LIEBERMAN',
    locus: 'prototype example, from memory',
    unit: 'weeks',
    printed: '44',
    ours: () => solved(plant).length,
  },
];

import { pointer, problem, type Problem } from '#lib/kernel';
import { readPoint } from '#lib/geometry';
import { coreThicknessAsked, skinThicknessAsked } from './deck-asked.js';
import { optionalFaults, within } from '#lib/asking';
import { problemsOf } from './panel-reading.js';
import type { Reading, Survey } from './reading.js';

export const MOST_READINGS = 2000;
export const LEAST_READINGS = 1;

/** Everything wrong with the readings themselves. */
export function surveyProblems(survey: Survey, at: string): readonly Problem[] {
  const count = survey.readings.length;
  if (count > MOST_READINGS) return [problem('too-many', `${at}/readings`, { count, most: MOST_READINGS })];
  return [
    ...survey.readings.flatMap((reading, index) =>
      readingProblems(reading, pointer(`${at}/readings`, index)),
    ),
    ...meterProblems(survey, at),
  ];
}

function readingProblems(reading: Reading, at: string): readonly Problem[] {
  const place = problemsOf(readPoint(reading.at, `${at}/at`));
  switch (reading.kind) {
    case 'sounding':
      return [...place, ...choiceProblem(reading.sound, `${at}/sound`, ['sharp', 'dull', 'void'])];
    case 'moisture':
      return [
        ...place,
        ...optionalFaults(`${at}/value`, reading.value, {
          from: -10_000,
          upTo: 10_000,
          unit: 'on the meter’s scale',
        }),
      ];
    case 'plug':
      return [
        ...place,
        ...choiceProblem(reading.condition, `${at}/condition`, [
          'dry-sound',
          'damp-sound',
          'wet-bonded',
          'rotten',
          'debonded-dry',
        ]),
        ...optionalFaults(`${at}/moisturePercent`, reading.moisturePercent, {
          from: 0,
          upTo: 1000,
          unit: '%',
        }),
        ...optionalFaults(`${at}/outerSkinMm`, reading.outerSkinMm, within(skinThicknessAsked)),
        ...optionalFaults(`${at}/innerSkinMm`, reading.innerSkinMm, within(skinThicknessAsked)),
        ...optionalFaults(`${at}/coreMm`, reading.coreMm, within(coreThicknessAsked)),
      ];
    default:
      return [
        problem('not-one-of', `${at}/kind`, {
          value: String(kindOf(reading)),
          choices: 'sounding, moisture, plug',
        }),
      ];
  }
}

const kindOf = ({ kind }: { readonly kind?: unknown }): unknown => kind;

const choiceProblem = (value: string, at: string, choices: readonly string[]): readonly Problem[] =>
  choices.includes(value)
    ? []
    : [problem('not-one-of', at, { value: String(value), choices: choices.join(', ') })];

/** A meter says nothing by itself: its readings are judged against sound, dry deck of the same build. */
function meterProblems({ readings, meter }: Survey, at: string): readonly Problem[] {
  if (!readings.some(({ kind }) => kind === 'moisture')) return [];
  if (meter === undefined) {
    return [
      problem('missing', `${at}/meter`, {
        expected:
          'the reading of the same meter on sound, dry deck of the same build, and the reading it gives on soaked core',
      }),
    ];
  }
  const { dryReference, wetReference } = meter;
  const range = { from: -10_000, upTo: 10_000, unit: 'on the meter’s scale' };
  const problems = [
    ...optionalFaults(`${at}/meter/dryReference`, dryReference, range),
    ...optionalFaults(`${at}/meter/wetReference`, wetReference, range),
  ];
  if (problems.length > 0 || dryReference !== wetReference) return problems;
  return [
    problem('contradiction', `${at}/meter/wetReference`, {
      other: `${at}/meter/dryReference`,
      why: 'a meter that reads the same on dry and on soaked deck tells nothing',
    }),
  ];
}

import {
  ask,
  askByKind,
  askPart,
  askPlace,
  askWhether,
  askWhich,
  coreThicknessAsked,
  faultsIn,
  skinThicknessAsked,
  type Count,
  type Questions,
} from '#lib/asking';
import { problem, type Problem } from '#lib/kernel';
import type { Reading, Survey } from './reading.js';

export const MOST_READINGS = 2000;
export const LEAST_READINGS = 1;

/** Every scale that a moisture meter is sold with. */
const meterScale = { unit: '1', range: { from: -10_000, upTo: 10_000 } } as const;

const whereAndHowSure = {
  at: askPlace({ meaning: 'where it was taken' }),
  isUnreliable: askWhether({
    meaning: 'whether it is doubtful',
    note: 'Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful.',
    otherwise: 'unknown',
  }),
};

/** What is asked of each kind of reading. */
export const readingQuestions = {
  sounding: {
    ...whereAndHowSure,
    sound: askWhich({ meaning: 'sound of the hammer', choices: ['sharp', 'dull', 'void'] }),
  },
  moisture: {
    ...whereAndHowSure,
    value: ask({ ...meterScale, meaning: 'reading, on the scale of the meter itself' }),
  },
  plug: {
    ...whereAndHowSure,
    condition: askWhich({
      meaning: 'what the plug showed',
      choices: ['dry-sound', 'damp-sound', 'wet-bonded', 'rotten', 'debonded-dry'],
    }),
    moisturePercent: ask({
      unit: '%',
      meaning: 'moisture of the core in the plug, parts of its dry mass',
      range: { from: 0, upTo: 1000 },
      otherwise: 'unknown',
    }),
    outerSkinMm: ask({
      ...skinThicknessAsked,
      meaning: 'outer skin in the plug',
      description: 'Thickness of the outer skin in the plug: mm, or text with a unit.',
      otherwise: 'unknown',
    }),
    innerSkinMm: ask({
      ...skinThicknessAsked,
      meaning: 'inner skin in the plug',
      description: 'Thickness of the inner skin in the plug: mm, or text with a unit.',
      otherwise: 'unknown',
    }),
    coreMm: ask({
      ...coreThicknessAsked,
      meaning: 'core in the plug',
      description: 'Thickness of the core in the plug: mm, or text with a unit.',
      otherwise: 'unknown',
    }),
  },
};

export const meterQuestions = {
  dryReference: ask({ ...meterScale, meaning: 'reading on sound, dry deck of the same build' }),
  wetReference: ask({ ...meterScale, meaning: 'reading on soaked core' }),
};

const questionsFor = (count: Count) => ({
  readings: askByKind<Reading>({
    meaning: 'readings',
    description: 'Soundings, meter readings and plugs, in any order.',
    by: 'kind',
    kinds: readingQuestions,
    ...count,
  }),
  meter: askPart({
    meaning: 'what the meter says of sound and of soaked deck; needed beside its readings',
    of: meterQuestions,
    otherwise: 'unknown',
  }),
});

export const surveyQuestions = questionsFor({ least: LEAST_READINGS, most: MOST_READINGS });
/** Who asks where to read first has read nothing yet. */
export const surveySoFarQuestions = questionsFor({ least: 0, most: MOST_READINGS });

/** Everything wrong with the readings themselves. */
export const surveyFaults = (survey: Survey, at: string): readonly Problem[] =>
  faultsOf(survey, at, surveyQuestions);

export const surveySoFarFaults = (survey: Survey, at: string): readonly Problem[] =>
  faultsOf(survey, at, surveySoFarQuestions);

function faultsOf(survey: Survey, at: string, questions: Questions): readonly Problem[] {
  const faults = faultsIn(survey, questions, at);
  return faults.length > 0 ? faults : meterProblems(survey, at);
}

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
  return meter.dryReference === meter.wetReference
    ? [
        problem('contradiction', `${at}/meter/wetReference`, {
          other: `${at}/meter/dryReference`,
          why: 'a meter that reads the same on dry and on soaked deck tells nothing',
        }),
      ]
    : [];
}

import {
  ask,
  askDay,
  askFor,
  askSome,
  askWhether,
  askWhich,
  practice,
  type Answers,
  type Default,
} from '#lib/asking';
import { usualAttendance } from '#lib/calendar';
import {
  forecastFaults,
  heldWarmthK,
  warmthFaults,
  weekdays,
  type DeckWarmth,
  type Forecast,
} from '#lib/cure';
import { dayMean, firstDayOf } from '../forecast-conditions.js';

const forecast = askFor<Forecast, 'unknown'>({
  meaning: 'forecast of the weather',
  note: 'With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere.',
  faults: forecastFaults,
  otherwise: 'unknown',
});

const warmth = askFor<DeckWarmth, 'unknown'>({
  meaning: 'warmth of the deck above the air',
  description:
    "How much warmer the deck is than the forecast's air. Without a forecast only tent and heater count: a stated temperature of the deck has them in it already, an assumed one of the air is raised by them, and the heater is hired for every day. A shade is hired once, and rigged on each visit.",
  faults: (said, at) => warmthFaults(at, said),
  otherwise: 'unknown',
});

const afloat = askWhether({ meaning: 'whether the boat is afloat', otherwise: 'unknown' });

export const conditionQuestions = {
  temperatureC: ask({
    unit: 'degC',
    meaning: 'working temperature of the deck',
    range: { from: -20, upTo: 50 },
    otherwise: (answers: Answers) =>
      byForecast(answers, 'deckC') ??
      byWarmth(answers) ??
      practice(20, 'a heated or summer workplace; state the real one, it decides hardener and waits'),
  }),
  relativeHumidityPercent: ask({
    unit: '%',
    meaning: 'relative humidity',
    description: 'Relative humidity of the air where the boat lies.',
    // Air without any water has no dew point, so 0 itself cannot be worked with.
    range: { above: 0, upTo: 100 },
    otherwise: (answers: Answers) =>
      byForecast(answers, 'relativeHumidityPercent') ?? practice(60, 'a dry workplace; state the real one'),
  }),
  shelter: askWhich({
    meaning: 'shelter over the work',
    choices: ['shed', 'tent', 'open'],
    otherwise: practice(
      'tent',
      'an opened deck needs cover; a tent is the least that keeps rain and dew out',
    ),
  }),
  altitudeM: ask({
    unit: 'm',
    meaning: 'altitude',
    range: { from: -450, upTo: 5000 },
    otherwise: practice(0, 'most decks are repaired at sea level'),
  }),
  isAfloat: afloat,
  place: askWhich({
    meaning: 'where the boat lies',
    note: 'Decides haul-out and days in the yard: hauled for this job, ashore anyway, afloat, or on ground of the owner.',
    choices: ['afloat', 'ashore-for-this', 'ashore-anyway', 'own-ground'],
    otherwise: (answers: Answers) => {
      const said = answers.of(afloat);
      return said !== 'unknown' && said.value
        ? practice('afloat', 'the record says that she is afloat')
        : practice(
            'ashore-anyway',
            'a deck needs no haul-out; a boat hauled for this job adds haul-out, launch and each day ashore',
          );
    },
  }),
  daysAvailable: ask({
    unit: 'd',
    meaning: 'days until the deck must be closed',
    note: 'Drying in place goes by it.',
    range: { from: 0, upTo: 1000 },
    isWhole: true,
    otherwise: 'unknown',
  }),
  isFreezeExpected: askWhether({
    meaning: 'whether frost is due before the core could be dry',
    otherwise: 'unknown',
  }),
  forecast,
  warmth,
};

const byForecast = (answers: Answers, what: 'deckC' | 'relativeHumidityPercent') => {
  const said = answers.of(forecast);
  const warm = answers.of(warmth);
  return said === 'unknown'
    ? undefined
    : dayMean(said.value, warm === 'unknown' ? undefined : warm.value, what);
};

/** Air of a day on which somebody thinks of heating. */
const COLD_AIR_C = 10;

/** A deck that is heated in air of which nobody says how cold it is. */
function byWarmth(answers: Answers): Default | undefined {
  const said = answers.of(warmth);
  const heldK = said === 'unknown' ? 0 : heldWarmthK(said.value);
  return heldK === 0
    ? undefined
    : practice(
        COLD_AIR_C + heldK,
        `air of ${COLD_AIR_C} degC, for want of a forecast, and ${heldK} K by tent and heater; state the temperature of the deck as it is worked`,
      );
}

const skill = askWhich({
  meaning: 'who does the work',
  choices: ['professional', 'owner'],
  otherwise: practice('professional', 'the hours of the catalogue are for a skilled hand'),
});

/** Whose hours are billed also decides how goods are charged. */
export const labourQuestion = askWhich({
  meaning: 'whose hours are billed',
  note: "All of a yard's; none of an owner's, whose hours are shown; or mixed: the owner strips, sands, masks and cleans.",
  choices: ['yard', 'owner', 'mixed'],
  otherwise: (answers: Answers) =>
    answers.of(skill).value === 'owner'
      ? practice('owner', 'the owner does the work: his hours are shown and not billed')
      : practice('yard', 'a yard does the work and bills its hours'),
});

export const crewQuestions = {
  people: ask({
    unit: '1',
    meaning: 'people at work',
    range: { from: 1, upTo: 20 },
    isWhole: true,
    otherwise: practice(2, 'bedding core and fastening through the deck take two'),
  }),
  skill,
  labour: labourQuestion,
  hoursPerDay: ask({
    unit: 'h',
    meaning: 'hours in a day that go into the job, a head',
    range: { from: 1, upTo: 16 },
    otherwise: {
      value: 5.6,
      because: 'so much of a working day goes into one job on the boat: mean of 24 logged days',
      cite: { source: 'JOB-DECK-LOG-2023' },
    },
  }),
  startDate: askDay({
    meaning: 'day on which work may start',
    description: 'The day on which work may start.',
    otherwise: (answers: Answers) => {
      const said = answers.of(forecast);
      return said === 'unknown'
        ? 'unknown'
        : practice(firstDayOf(said.value), 'the first day of the forecast');
    },
  }),
  attendanceFraction: ask({
    unit: '1',
    meaning: 'share of its working days on which the crew comes to this boat',
    note: 'The range of days counts the days on which it does not.',
    range: { from: 0.1, upTo: 1 },
    otherwise: usualAttendance,
  }),
  workingDays: askSome({
    meaning: 'working days',
    description: 'Days of the week on which the crew works.',
    choices: weekdays,
    least: 1,
    otherwise: 'unknown',
  }),
};

import { ask, askPart, askText, type AnswersTo, practice } from '#lib/asking';
import type { ResinSystem } from '#lib/catalogue';
import type { DeckWarmth } from './weather/deck.js';
import { forecastQuestions, type Forecast } from './weather/forecast.js';

const deckRange = { unit: 'degC', range: { from: -40, upTo: 90 } } as const;

/** The temperature of a cure in one of three ways: steady, by day and night, or by the hours of a forecast. */
export const cureTemperatureQuestions = {
  temperatureC: ask({
    meaning: 'temperature',
    note: 'Steady; or dayC with nightC; or a forecast.',
    ...deckRange,
    otherwise: 'unknown',
  }),
  dayC: ask({
    meaning: 'deck by day',
    description: 'Temperature of the deck by day, where it swings between day and night.',
    ...deckRange,
    otherwise: 'unknown',
  }),
  nightC: ask({
    meaning: 'deck by night',
    description: 'Temperature of the deck by night, where it swings between day and night.',
    ...deckRange,
    otherwise: 'unknown',
  }),
  forecast: askPart({
    meaning: 'forecast',
    description: 'Weather of the place hour by hour; it says when the weather lets work be done.',
    of: forecastQuestions,
    otherwise: 'unknown',
  }),
};
export type CureTemperature = AnswersTo<typeof cureTemperatureQuestions>;

export type TemperatureInput =
  | { readonly kind: 'constant'; readonly temperatureC: number }
  | { readonly kind: 'day-night'; readonly dayC: number; readonly nightC: number }
  | {
      readonly kind: 'hourly';
      readonly forecast: Forecast;
      /** The deck where the forecast does not reach, degC; without it a cure is followed to the end of the forecast only. */
      readonly elsewhereDeckC?: number;
    };

/** When what was mixed is followed from; within the forecast when there is one. */
export const mixQuestions = {
  startHour: ask({
    meaning: 'hour at which the resin is mixed',
    description: 'Hour of the day at which the resin is mixed, where no moment is given.',
    unit: 'h',
    range: { from: 0, below: 24 },
    otherwise: practice(9, 'resin is mixed in the morning'),
  }),
  startAt: askText({
    meaning: 'moment at which the resin is mixed',
    note: 'RFC 3339 with offset; each milestone then has its moment.',
    atMost: 40,
    otherwise: 'unknown',
  }),
  step: askText({ meaning: 'step that is cured', atMost: 120, otherwise: 'unknown' }),
};

export interface CureRequest extends AnswersTo<typeof mixQuestions> {
  readonly resin: ResinSystem;
  readonly hardener: string;
  readonly temperature: TemperatureInput;
  readonly warmth?: DeckWarmth;
}

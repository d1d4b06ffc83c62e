import { askCode, askList, askPart, faultsIn, type AnswersTo } from '#lib/asking';
import { materialAt, type Catalogue } from '#lib/catalogue';
import { allOf, andThen, given, mapValue, problem, refusal, success, type Outcome } from '#lib/kernel';
import { planCure, type CurePlan } from './cure-plan.js';
import {
  cureTemperatureQuestions,
  mixQuestions,
  type CureTemperature,
  type TemperatureInput,
} from './cure-request.js';
import { deckWarmthQuestions } from './weather/deck.js';
import {
  coreMoistureAsked,
  MOST_STEPS,
  shelterAsked,
  weatherGates,
  weatherStepAsked,
  type WeatherPlan,
  type WeatherRequest,
  type WeatherStep,
} from './weather/windows.js';

/** A step that waits for weather, its coating by the code. */
export const weatherStepQuestions = {
  ...weatherStepAsked,
  coating: askCode({
    meaning: 'coating',
    description: 'For a coat: code of the coating, whose limits then count.',
    otherwise: 'unknown',
  }),
};
export type WeatherStepByCode = AnswersTo<typeof weatherStepQuestions>;

/** The mix that cures, by its codes. */
export const mixedByCodeQuestions = {
  resin: askCode({
    meaning: 'resin',
    description: 'Code of the resin system of the catalogue that is used.',
    example: 'resin-epoxy-5to1',
  }),
  hardener: askCode({
    meaning: 'hardener',
    description: 'Code of the hardener that is mixed in; it sets how fast all cures.',
    example: 'medium',
  }),
};

export const curePlanQuestions = {
  ...mixedByCodeQuestions,
  temperature: askPart({
    meaning: 'temperature',
    note: 'How warm the deck is while the mix cures.',
    of: cureTemperatureQuestions,
  }),
  warmth: askPart({
    meaning: 'warmth of the deck above the air',
    of: deckWarmthQuestions,
    otherwise: 'unknown',
  }),
  shelter: shelterAsked,
  ...mixQuestions,
  coreMoisturePercent: coreMoistureAsked,
  steps: askList({
    meaning: 'steps that wait for weather',
    description: 'Steps that wait for weather; absent: bonding.',
    of: weatherStepQuestions,
    least: 1,
    most: MOST_STEPS,
    otherwise: 'unknown',
  }),
};
export type CurePlanRequest = AnswersTo<typeof curePlanQuestions>;

export interface CureAndWeather {
  /** When each mix can be worked on. */
  readonly cure: CurePlan;
  /** When the weather lets each step be done. */
  readonly weather: WeatherPlan;
}

/** When it has cured, and when it may be begun. */
export function curePlan(request: CurePlanRequest, catalogue: Catalogue): Outcome<CureAndWeather> {
  const wrong = faultsIn(request, curePlanQuestions);
  if (wrong.length > 0) return refusal(...wrong);
  const materials = allOf({
    resin: materialAt(catalogue, 'resin', request.resin, '/resin'),
    temperature: temperatureOf(request.temperature),
    steps: weatherSteps(request, catalogue),
  });
  return andThen(materials, ({ resin, temperature, steps }) => {
    const { hardener, warmth, startHour, startAt, step, shelter, coreMoisturePercent } = request;
    const shared = { resin, hardener, ...given({ warmth }) };
    const weather: WeatherRequest = {
      ...shared,
      steps,
      shelter,
      ...given({ coreMoisturePercent, forecast: request.temperature.forecast }),
    };
    return andThen(planCure({ ...shared, temperature, ...given({ startHour, startAt, step }) }), (cure) =>
      mapValue(weatherGates(weather), (gates) => ({
        cure,
        weather: { ...gates, assumptions: gates.assumptions.map(asAsked) },
      })),
    );
  });
}

/** The forecast of this request stands under its temperature. */
const asAsked = <T extends { readonly at: string }>(assumption: T): T => ({
  ...assumption,
  at: assumption.at.replace(/^\/forecast/, '/temperature/forecast'),
});

function temperatureOf({ temperatureC, dayC, nightC, forecast }: CureTemperature): Outcome<TemperatureInput> {
  const ways = [
    temperatureC !== undefined,
    dayC !== undefined || nightC !== undefined,
    forecast !== undefined,
  ].filter(Boolean).length;
  if (ways === 0)
    return refusal(
      problem('missing', '/temperature', { expected: 'temperatureC, or dayC with nightC, or a forecast' }),
    );
  if (ways > 1)
    return refusal(
      problem('contradiction', '/temperature', {
        other: '/temperature',
        why: 'give temperatureC, or dayC with nightC, or a forecast, not several',
      }),
    );
  if (temperatureC !== undefined) return success({ kind: 'constant', temperatureC });
  if (forecast !== undefined) return success({ kind: 'hourly', forecast });
  if (dayC !== undefined && nightC !== undefined) return success({ kind: 'day-night', dayC, nightC });
  return refusal(
    problem('missing', dayC === undefined ? '/temperature/dayC' : '/temperature/nightC', {
      expected: 'both dayC and nightC',
    }),
  );
}

const bonding: readonly WeatherStepByCode[] = [
  { code: 'bond', title: 'Bond or laminate', gate: 'resin', workH: 2 },
];

function weatherSteps(
  { steps = bonding }: CurePlanRequest,
  catalogue: Catalogue,
): Outcome<readonly WeatherStep[]> {
  const read = steps.map(({ coating, ...step }, index): Outcome<WeatherStep> =>
    coating === undefined
      ? success(step)
      : mapValue(materialAt(catalogue, 'coating', coating, `/steps/${index}/coating`), (material) => ({
          ...step,
          coating: material,
        })),
  );
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0
    ? refusal(...problems)
    : success(read.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}

import { materialAt, type Catalogue } from '#lib/catalogue';
import { allOf, andThen, given, mapValue, problem, refusal, success, type Outcome } from '#lib/kernel';
import { planCure, type CurePlan } from './cure-plan.js';
import type { CureRequest, TemperatureInput } from './cure-request.js';
import type { Forecast } from './weather/forecast.js';
import { weatherGates, type WeatherPlan, type WeatherRequest, type WeatherStep } from './weather/windows.js';

/** The temperature of a cure in one of three ways: steady, by day and night, or by the hours of a forecast. */
export interface CureTemperature {
  readonly temperatureC?: number;
  readonly dayC?: number;
  readonly nightC?: number;
  readonly forecast?: Forecast;
}

export interface WeatherStepByCode extends Omit<WeatherStep, 'coating'> {
  readonly coating?: string;
}

export interface CurePlanRequest extends Omit<CureRequest, 'resin' | 'temperature'> {
  readonly resin: string;
  readonly temperature: CureTemperature;
  readonly shelter: 'shed' | 'tent' | 'open';
  readonly coreMoisturePercent?: number;
  /** Steps that wait for weather; bonding alone when left out. */
  readonly steps?: readonly WeatherStepByCode[];
}

export interface CureAndWeather {
  readonly cure: CurePlan;
  readonly weather: WeatherPlan;
}

/** When it has cured, and when it may be begun. */
export function curePlan(request: CurePlanRequest, catalogue: Catalogue): Outcome<CureAndWeather> {
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

import { findMaterial, materialsOf, type Catalogue, type Filler, type MaterialKind } from '#lib/catalogue';
import { allOf, andThen, mapValue, problem, refusal, success, type Outcome } from '#lib/kernel';
import { calendarText, type ICalendarChoice } from './calendar/icalendar.js';
import { planCalendar } from './calendar/calendar.js';
import type { CalendarPlan, CalendarRequest } from './calendar/calendar-request.js';
import { planCure, type CurePlan, type CureRequest, type TemperatureInput } from './cure/cure-plan.js';
import { instantFaults } from './weather/instant.js';
import { planBatches } from './resin/batches.js';
import type { BatchPlan, BatchRequest } from './resin/batch-request.js';
import type { Forecast } from './weather/forecast.js';
import { weatherGates, type WeatherPlan, type WeatherRequest, type WeatherStep } from './weather/windows.js';

/** A batch request with materials by their codes; every filler of the catalogue when none is named. */
export interface ResinBatchesRequest extends Omit<BatchRequest, 'resin' | 'fillers'> {
  readonly resin: string;
  readonly fillers?: readonly string[];
}

export function resinBatches(request: ResinBatchesRequest, catalogue: Catalogue): Outcome<BatchPlan> {
  const { resin, fillers, ...rest } = request;
  return andThen(
    allOf({ resin: found(catalogue, 'resin', resin, '/resin'), fillers: fillersFor(catalogue, fillers) }),
    (materials) => planBatches({ ...rest, ...materials }),
  );
}

function fillersFor(catalogue: Catalogue, codes: readonly string[] | undefined): Outcome<readonly Filler[]> {
  if (codes === undefined) return success(materialsOf(catalogue, 'filler'));
  const outcomes = codes.map((code, index) => found(catalogue, 'filler', code, `/fillers/${index}`));
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0
    ? refusal(...problems)
    : success(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}

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
    resin: found(catalogue, 'resin', request.resin, '/resin'),
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

/** Members that are not undefined; an absent option stays absent. */
type Given<T> = { readonly [K in keyof T]?: Exclude<T[K], undefined> };
const isGiven = <T extends object>(members: object, all: T): members is Given<T> =>
  Object.keys(members).every((key) => key in all);

function given<T extends object>(members: T): Given<T> {
  const present: object = Object.fromEntries(
    Object.entries(members).filter(([, value]) => value !== undefined),
  );
  return isGiven(present, members) ? present : {};
}

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
      : mapValue(found(catalogue, 'coating', coating, `/steps/${index}/coating`), (material) => ({
          ...step,
          coating: material,
        })),
  );
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0
    ? refusal(...problems)
    : success(read.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}

export interface JobCalendarRequest extends Omit<CalendarRequest, 'resin' | 'coating'> {
  readonly resin: string;
  readonly coating?: string;
  /** Asks for the calendar as iCalendar text too; the moment of making is the caller's. */
  readonly iCalendar?: ICalendarChoice;
}

export interface JobCalendar extends CalendarPlan {
  /** RFC 5545, when it was asked for. */
  readonly iCalendar?: string;
}

export function jobCalendar(request: JobCalendarRequest, catalogue: Catalogue): Outcome<JobCalendar> {
  const { resin, coating, iCalendar, ...rest } = request;
  const stampFaults = iCalendar === undefined ? [] : instantFaults('/iCalendar/stampAt', iCalendar.stampAt);
  const materials = allOf({
    resin: found(catalogue, 'resin', resin, '/resin'),
    coating: coating === undefined ? success(undefined) : found(catalogue, 'coating', coating, '/coating'),
    stamp: stampFaults.length === 0 ? success(true) : refusal(...stampFaults),
  });
  return andThen(materials, (known) =>
    mapValue(planCalendar({ ...rest, resin: known.resin, ...given({ coating: known.coating }) }), (plan) =>
      iCalendar === undefined ? plan : { ...plan, iCalendar: calendarText(plan, iCalendar) },
    ),
  );
}

function found<K extends MaterialKind>(catalogue: Catalogue, kind: K, code: string, at: string) {
  const material = findMaterial(catalogue, kind, code);
  if (material !== undefined) return success(material);
  return refusal(
    problem('unknown-code', at, {
      value: code,
      kind,
      known: materialsOf(catalogue, kind)
        .map((known) => known.code)
        .join(', '),
    }),
  );
}

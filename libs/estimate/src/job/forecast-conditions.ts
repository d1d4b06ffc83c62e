import { skyOf } from '#lib/cure';
import { chosenByDefault, saidByCaller, type Choice, type Fallback } from './choice.js';
import { commonPractice, fallbacks } from './defaults.js';
import type { DefectRecord } from './defect-record.js';

/** Hours of the day that speak for the conditions of work. */
const DAY_FROM_HOUR = 8;
const DAY_UNTIL_HOUR = 17;
const because = `mean of the forecast between ${DAY_FROM_HOUR} and ${DAY_UNTIL_HOUR} o'clock; resin and pots are planned for it`;

/** What is taken where the record states no conditions: the forecast's own days, else the usual defaults. */
export function conditionFallbacks({
  conditions,
}: DefectRecord): Pick<typeof fallbacks, 'temperatureC' | 'relativeHumidityPercent'> {
  const { forecast, warmth } = conditions ?? {};
  if (forecast === undefined) return fallbacks;
  const sky = skyOf(forecast, warmth);
  const byDay = forecast.hours.flatMap((_, hour) => (isDay(localHour(sky, hour)) ? [hour] : []));
  const hours = byDay.length === 0 ? forecast.hours.map((_, hour) => hour) : byDay;
  const mean = (valueAt: (hour: number) => number): Fallback<number> => ({
    value: Math.round((10 * hours.reduce((sum, hour) => sum + valueAt(hour), 0)) / hours.length) / 10,
    because,
    cite: commonPractice,
  });
  return {
    temperatureC: mean((hour) => sky.deckC[hour]),
    relativeHumidityPercent: mean((hour) => forecast.hours[hour].relativeHumidityPercent),
  };
}

type Sky = ReturnType<typeof skyOf>;
const HOUR_MS = 3_600_000;
const localMs = ({ startMs, offset }: Sky, hour: number): number =>
  startMs + hour * HOUR_MS + offset(startMs + hour * HOUR_MS) * 60_000;
const localHour = (sky: Sky, hour: number): number => new Date(localMs(sky, hour)).getUTCHours();
const isDay = (hour: number): boolean => hour >= DAY_FROM_HOUR && hour < DAY_UNTIL_HOUR;

/** The day on which work may start: as stated, else the first of the forecast; with neither there are no dates. */
export function startOf({ crew, conditions }: DefectRecord): Choice<string> | undefined {
  const at = '/crew/startDate';
  if (crew?.startDate !== undefined) return saidByCaller(crew.startDate, at);
  if (conditions?.forecast === undefined) return undefined;
  const first = new Date(localMs(skyOf(conditions.forecast), 0)).toISOString().slice(0, 10);
  return chosenByDefault(first, at, 'the first day of the forecast', commonPractice);
}

import { skyOf, type DeckWarmth, type Forecast } from '#lib/cure';
import { practice, type Default } from '#lib/asking';

/** Hours of the day that speak for the conditions of work. */
const DAY_FROM_HOUR = 8;
const DAY_UNTIL_HOUR = 17;
const because = `mean of the forecast between ${DAY_FROM_HOUR} and ${DAY_UNTIL_HOUR} o'clock; resin and pots are planned for it`;

/** What is taken where the record states no conditions but has a forecast: the mean of its own days. */
export function dayMean(
  forecast: Forecast,
  warmth: DeckWarmth | undefined,
  what: 'deckC' | 'relativeHumidityPercent',
): Default {
  const sky = skyOf(forecast, warmth);
  const byDay = forecast.hours.flatMap((_, hour) => (isDay(localHour(sky, hour)) ? [hour] : []));
  const hours = byDay.length === 0 ? forecast.hours.map((_, hour) => hour) : byDay;
  const valueAt = (hour: number): number =>
    what === 'deckC' ? sky.deckC[hour] : forecast.hours[hour].relativeHumidityPercent;
  const sum = hours.reduce((total, hour) => total + valueAt(hour), 0);
  return practice(Math.round((10 * sum) / hours.length) / 10, because);
}

type Sky = ReturnType<typeof skyOf>;
const HOUR_MS = 3_600_000;
const localMs = ({ startMs, offset }: Sky, hour: number): number =>
  startMs + hour * HOUR_MS + offset(startMs + hour * HOUR_MS) * 60_000;
const localHour = (sky: Sky, hour: number): number => new Date(localMs(sky, hour)).getUTCHours();
const isDay = (hour: number): boolean => hour >= DAY_FROM_HOUR && hour < DAY_UNTIL_HOUR;

/** The first day of a forecast, by the clock of the place. */
export const firstDayOf = (forecast: Forecast): string =>
  new Date(localMs(skyOf(forecast), 0)).toISOString().slice(0, 10);

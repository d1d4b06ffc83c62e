import { saidOr } from '#lib/asking';
import { deckTemperature, type DeckWarmth } from './deck.js';
import { epochOf, forecastHourQuestions, type Forecast, type ForecastHour } from './forecast.js';
import { dewPointOf } from './humid-air.js';
import { exactInstant, zoneOffset, type ZoneOffset } from './instant.js';
import type { NightAir } from './night-sky.js';

/** A forecast worked out once: deck, dew point, and what falls from the sky. */
export interface Sky {
  readonly hours: readonly ForecastHour[];
  readonly startMs: number;
  /** Local time of the place. */
  readonly offset: ZoneOffset;
  readonly deckC: Float64Array;
  readonly dewC: Float64Array;
}

export const HOUR_MS = 3_600_000;

export function skyOf(forecast: Forecast, warmth?: DeckWarmth): Sky {
  const { hours } = forecast;
  const { offset } = clockOf(forecast);
  const dewC = Float64Array.from(hours, ({ temperatureC, relativeHumidityPercent }) =>
    dewPointOf(temperatureC, relativeHumidityPercent),
  );
  const deckC = Float64Array.from(hours, (hour, index) =>
    deckTemperature(
      hour.temperatureC,
      localHour(epochOf(hour), offset),
      warmth,
      nightAirOf(hour, dewC[index]),
    ),
  );
  return {
    hours,
    startMs: epochOf(hours[0]),
    offset,
    deckC,
    dewC,
  };
}

/** Where the forecast is silent the air is still and the sky clear, which is the coldest. */
const nightAirOf = ({ temperatureC, windMPerS = 0, cloudPercent }: ForecastHour, dewC: number): NightAir => ({
  airC: temperatureC,
  dewC,
  windMPerS,
  cloudShare: saidOr(forecastHourQuestions.cloudPercent, cloudPercent) / 100,
});

const localHour = (epochMs: number, offset: ZoneOffset): number =>
  (((epochMs / HOUR_MS + offset(epochMs) / 60) % 24) + 24) % 24;

export interface PlaceClock {
  readonly name: string;
  readonly offset: ZoneOffset;
}

/** The clock of the place: the zone that is named, else the offset that the hours are written with. */
export function clockOf({ timeZone, hours }: Forecast): PlaceClock {
  const zone = timeZone === undefined ? undefined : zoneOffset(timeZone);
  if (timeZone !== undefined && zone !== undefined) return { name: timeZone, offset: zone };
  const { offsetMin } = exactInstant(hours[0].at);
  return { name: offsetMin === 0 ? 'UTC' : hours[0].at.slice(-6), offset: () => offsetMin };
}

/** Temperature of the deck so many hours after the forecast begins, straight between its hours; undefined outside them. */
export function deckAt({ deckC }: Sky, hour: number): number | undefined {
  if (hour < 0 || hour > deckC.length - 1) return undefined;
  const index = Math.min(Math.floor(hour), deckC.length - 2);
  const share = hour - index;
  return deckC[index] * (1 - share) + deckC[index + 1] * share;
}

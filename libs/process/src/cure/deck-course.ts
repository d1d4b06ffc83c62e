import { deckTemperature } from '../weather/deck.js';
import { epochOf } from '../weather/forecast.js';
import { readInstant, zoneOffset, type Instant } from '../weather/instant.js';
import type { CureRequest } from './cure-plan.js';
import type { TemperatureCourse } from './equivalent-age.js';

/** Temperature of the deck from the moment the resin is mixed. */
export interface DeckCourse extends TemperatureCourse {
  readonly kind: CureRequest['temperature']['kind'];
  readonly lengthH: number;
  readonly crossesClockChange: boolean;
  /** Offset of local time (minutes) after so many hours. */
  readonly offsetMinAt: (hours: number) => number;
}

/** How far a steady or day-and-night deck is followed. */
const HORIZON_H = 24 * 60;
/** Hour of the day at which a usual day is warmest. */
const WARMEST_HOUR = 15;
const STEP_H = 0.5;
const MS_PER_HOUR = 3_600_000;

export function courseFor(request: CureRequest): DeckCourse {
  const { temperature } = request;
  switch (temperature.kind) {
    case 'constant': return steady(request, () => temperature.temperatureC);
    case 'day-night': {
      const [mean, swing] = [(temperature.dayC + temperature.nightC) / 2, (temperature.dayC - temperature.nightC) / 2];
      return steady(request, (hour) => mean + swing * Math.cos((2 * Math.PI * (hour - WARMEST_HOUR)) / 24));
    }
    case 'hourly': return forecastCourse(request, temperature.forecast);
  }
}

export const startOf = ({ startAt, temperature }: CureRequest): Instant | undefined => {
  if (startAt !== undefined) return readInstant(startAt);
  return temperature.kind === 'hourly' ? readInstant(temperature.forecast.hours[0].at) : undefined;
};

function steady(request: CureRequest, airAt: (localHour: number) => number): DeckCourse {
  const start = startOf(request);
  const startHour = start === undefined ? request.startHour ?? 9 : localHourOf(start.epochMs, start.offsetMin);
  const temperaturesC = Float64Array.from({ length: HORIZON_H / STEP_H + 1 }, (_, step) => {
    const hour = (startHour + step * STEP_H) % 24;
    return deckTemperature(airAt(hour), hour, request.warmth);
  });
  return { kind: request.temperature.kind, stepH: STEP_H, temperaturesC, lengthH: HORIZON_H, crossesClockChange: false, offsetMinAt: () => start?.offsetMin ?? 0 };
}

const localHourOf = (epochMs: number, offsetMin: number): number => ((epochMs / MS_PER_HOUR + offsetMin / 60) % 24 + 24) % 24;

type HourlyForecast = Extract<CureRequest['temperature'], { readonly kind: 'hourly' }>['forecast'];

/** Hour by hour from the start, which may lie within an hour. */
function forecastCourse(request: CureRequest, { hours, timeZone }: HourlyForecast): DeckCourse {
  const firstMs = epochOf(hours[0]);
  const start = startOf(request);
  const fromH = ((start?.epochMs ?? firstMs) - firstMs) / MS_PER_HOUR;
  const zone = timeZone === undefined ? undefined : zoneOffset(timeZone);
  const offsetAt = zone ?? (() => readInstant(hours[0].at)?.offsetMin ?? 0);
  const lengthH = hours.length - 1 - fromH;
  const temperaturesC = Float64Array.from({ length: Math.floor(lengthH / STEP_H) + 1 }, (_, step) => {
    const hour = fromH + step * STEP_H;
    const epochMs = firstMs + hour * MS_PER_HOUR;
    return deckTemperature(airAt(hours, hour), localHourOf(epochMs, offsetAt(epochMs)), request.warmth);
  });
  return {
    kind: 'hourly', stepH: STEP_H, temperaturesC, lengthH,
    crossesClockChange: offsetAt(firstMs) !== offsetAt(epochOf(hours[hours.length - 1])),
    offsetMinAt: (after) => offsetAt(firstMs + (fromH + after) * MS_PER_HOUR),
  };
}

function airAt(hours: HourlyForecast['hours'], hour: number): number {
  const index = Math.min(Math.floor(hour), hours.length - 2);
  const share = hour - index;
  return hours[index].temperatureC * (1 - share) + hours[index + 1].temperatureC * share;
}

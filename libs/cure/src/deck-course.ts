import { saidOr } from '#lib/asking';
import { deckTemperature } from './weather/deck.js';
import { readInstant, type Instant } from './weather/instant.js';
import { deckAt, HOUR_MS, skyOf } from './weather/sky.js';
import { mixQuestions, type CureRequest } from './cure-request.js';
import type { TemperatureCourse } from './equivalent-age.js';

/** Temperature of the deck from the moment the resin is mixed. */
export interface DeckCourse extends TemperatureCourse {
  readonly kind: CureRequest['temperature']['kind'];
  readonly lengthH: number;
  /** Offset of local time (minutes) after so many hours. */
  readonly offsetMinAt: (hours: number) => number;
}

/** How far a steady or day-and-night deck is followed. */
const HORIZON_H = 24 * 60;
/** Hour of the day at which a usual day is warmest. */
const WARMEST_HOUR = 15;
const STEP_H = 0.5;

export function courseFor(request: CureRequest): DeckCourse {
  const { temperature } = request;
  switch (temperature.kind) {
    case 'constant':
      return steady(request, () => temperature.temperatureC);
    case 'day-night': {
      const [mean, swing] = [
        (temperature.dayC + temperature.nightC) / 2,
        (temperature.dayC - temperature.nightC) / 2,
      ];
      return steady(request, (hour) => mean + swing * Math.cos((2 * Math.PI * (hour - WARMEST_HOUR)) / 24));
    }
    case 'hourly':
      return forecastCourse(request, temperature);
  }
}

export const startOf = ({ startAt, temperature }: CureRequest): Instant | undefined => {
  if (startAt !== undefined) return readInstant(startAt);
  return temperature.kind === 'hourly' ? readInstant(temperature.forecast.hours[0].at) : undefined;
};

function steady(request: CureRequest, airAt: (localHour: number) => number): DeckCourse {
  const start = startOf(request);
  const startHour =
    start === undefined
      ? saidOr(mixQuestions.startHour, request.startHour)
      : localHourOf(start.epochMs, start.offsetMin);
  const temperaturesC = Float64Array.from({ length: HORIZON_H / STEP_H + 1 }, (_, step) => {
    const hour = (startHour + step * STEP_H) % 24;
    return deckTemperature(airAt(hour), hour, request.warmth);
  });
  return {
    kind: request.temperature.kind,
    stepH: STEP_H,
    temperaturesC,
    lengthH: HORIZON_H,
    offsetMinAt: () => start?.offsetMin ?? 0,
  };
}

const localHourOf = (epochMs: number, offsetMin: number): number =>
  (((epochMs / HOUR_MS + offsetMin / 60) % 24) + 24) % 24;

type Hourly = Extract<CureRequest['temperature'], { readonly kind: 'hourly' }>;

/** Along the forecast from the start, which may lie within an hour; where it does not reach, the deck as stated or nothing. */
function forecastCourse(request: CureRequest, { forecast, elsewhereDeckC }: Hourly): DeckCourse {
  const sky = skyOf(forecast, request.warmth);
  const last = sky.hours.length - 1;
  const fromH = ((startOf(request)?.epochMs ?? sky.startMs) - sky.startMs) / HOUR_MS;
  const lengthH = elsewhereDeckC === undefined ? last - fromH : HORIZON_H;
  const temperaturesC = Float64Array.from(
    { length: Math.floor(lengthH / STEP_H) + 1 },
    (_, step) => deckAt(sky, fromH + step * STEP_H) ?? elsewhereDeckC ?? Number.NaN,
  );
  return {
    kind: 'hourly',
    stepH: STEP_H,
    temperaturesC,
    lengthH,
    offsetMinAt: (after) => sky.offset(sky.startMs + (fromH + after) * HOUR_MS),
  };
}

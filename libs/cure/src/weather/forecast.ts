import { problem, type Problem } from '#lib/kernel';
import { ask, askList, askText, faultsIn, type AnswersTo, practice } from '#lib/asking';
import {
  instantFaults,
  exactInstant,
  readInstant,
  writeInstant,
  zoneFaults,
  zoneOffset,
  type ZoneOffset,
} from './instant.js';

/** One hour of a forecast that the caller brings. */
export const forecastHourQuestions = {
  at: askText({
    meaning: 'start of the hour',
    description: 'RFC 3339 with offset: the start of the hour.',
    atMost: 40,
    example: '2026-05-04T08:00:00+01:00',
  }),
  temperatureC: ask({
    meaning: 'temperature',
    description: 'Temperature of the air in that hour.',
    unit: 'degC',
    range: { from: -40, upTo: 55 },
  }),
  relativeHumidityPercent: ask({
    meaning: 'relative humidity',
    description: 'Relative humidity of the air in this hour.',
    unit: '%',
    range: { above: 0, upTo: 100 },
  }),
  windMPerS: ask({
    meaning: 'wind',
    description: 'Mean wind in that hour.',
    unit: 'm/s',
    range: { from: 0, upTo: 120 },
    otherwise: 'unknown',
  }),
  rainMm: ask({
    meaning: 'rain',
    description: 'Rain that falls in that hour.',
    unit: 'mm',
    range: { from: 0, upTo: 300 },
    otherwise: 'unknown',
  }),
  cloudPercent: ask({
    meaning: 'share of the sky under cloud',
    description: 'Share of the sky under cloud.',
    unit: '%',
    range: { from: 0, upTo: 100 },
    otherwise: practice(0, 'a clear sky is the coldest at night'),
  }),
};
export type ForecastHour = AnswersTo<typeof forecastHourQuestions>;

export const MOST_HOURS = 24 * 60;

/** With a zone of the place the offsets are checked and days are local days. */
export const forecastQuestions = {
  timeZone: askText({
    meaning: 'zone of the place',
    description: 'Zone of the place; with it every offset is checked.',
    atMost: 60,
    example: 'Europe/Lisbon',
    otherwise: 'unknown',
  }),
  hours: askList({
    meaning: 'hours of the forecast',
    note: 'Hour after hour, without a gap.',
    of: forecastHourQuestions,
    least: 2,
    most: MOST_HOURS,
  }),
};
export type Forecast = AnswersTo<typeof forecastQuestions>;

const MS_PER_HOUR = 3_600_000;
/** Every fault of a forecast: numbers, gaps, order, zone, clock change. */
export function forecastFaults(forecast: Forecast, at: string): readonly Problem[] {
  const asked = faultsIn(forecast, forecastQuestions, at);
  if (asked.length > 0) return asked;
  const { hours, timeZone } = forecast;
  const read = [
    ...zoneFaults(`${at}/timeZone`, timeZone),
    ...hours.flatMap((hour, index) => instantFaults(`${at}/hours/${index}/at`, hour.at)),
  ];
  if (read.length > 0) return read;
  const offset = timeZone === undefined ? undefined : { zone: timeZone, at: zoneOffset(timeZone) };
  return [...stepFaults(forecast, at, offset), ...offsetFaults(forecast, at, offset)];
}

interface KnownZone {
  readonly zone: string;
  readonly at: ZoneOffset | undefined;
}

export const epochOf = (hour: { readonly at: string }): number => exactInstant(hour.at).epochMs;

function stepFaults({ hours }: Forecast, at: string, zone: KnownZone | undefined): readonly Problem[] {
  return hours.slice(1).flatMap((hour, index) => {
    const hoursApart = (epochOf(hour) - epochOf(hours[index])) / MS_PER_HOUR;
    const place = `${at}/hours/${index + 1}/at`;
    if (hoursApart === 1) return [];
    if (hasClockChange(hours[index], hoursApart, zone))
      return [problem('clock-change', place, { zone: zone?.zone ?? '', value: hour.at })];
    if (hoursApart <= 0)
      return [problem('forecast-order', place, { value: hour.at, before: hours[index].at })];
    return [problem('forecast-gap', place, { hours: hoursApart, expected: 1 })];
  });
}

/** A step of no hour or of two where the zone's clocks change: somebody listed wall-clock hours. */
function hasClockChange(before: ForecastHour, hoursApart: number, zone: KnownZone | undefined): boolean {
  if (zone?.at === undefined || (hoursApart !== 0 && hoursApart !== 2)) return false;
  const from = epochOf(before);
  return zone.at(from - 2 * MS_PER_HOUR) !== zone.at(from + 3 * MS_PER_HOUR);
}

function offsetFaults({ hours }: Forecast, at: string, zone: KnownZone | undefined): readonly Problem[] {
  if (zone?.at === undefined) return [];
  const { at: offsetAt } = zone;
  const wrong = hours.flatMap((hour, index) =>
    wrongOffset(hour, `${at}/hours/${index}/at`, { zone: zone.zone, at: offsetAt }),
  );
  return wrong.slice(0, 1);
}

function wrongOffset(
  hour: ForecastHour,
  at: string,
  zone: { readonly zone: string; readonly at: ZoneOffset },
): readonly Problem[] {
  const instant = readInstant(hour.at);
  if (instant === undefined || instant.offsetMin === 0) return [];
  const expected = zone.at(instant.epochMs);
  if (expected === instant.offsetMin) return [];
  const stoodBefore = zone.at(instant.epochMs - 24 * MS_PER_HOUR) === instant.offsetMin;
  return stoodBefore
    ? [problem('clock-change', at, { zone: zone.zone, value: hour.at })]
    : [
        problem('wrong-zone', at, {
          given: inHours(instant.offsetMin),
          zone: zone.zone,
          expected: inHours(expected),
        }),
      ];
}

const inHours = (offsetMin: number): string => writeInstant(0, offsetMin).slice(19).replace('Z', '+00:00');

import { problem, type Problem } from '#lib/kernel';
import { countFaults, numberFaults, optionalFaults } from '#lib/asking';
import {
  instantFaults,
  readInstant,
  writeInstant,
  zoneFaults,
  zoneOffset,
  type ZoneOffset,
} from './instant.js';

/** One hour of a forecast that the caller brings. */
export interface ForecastHour {
  /** RFC 3339 with offset: the start of the hour. */
  readonly at: string;
  readonly temperatureC: number;
  readonly relativeHumidityPercent: number;
  readonly windMPerS?: number;
  readonly rainMm?: number;
  /** Share of the sky under cloud. */
  readonly cloudPercent?: number;
}

export interface Forecast {
  /** Zone of the place, such as `Europe/Lisbon`; with it the offsets are checked and days are local days. */
  readonly timeZone?: string;
  readonly hours: readonly ForecastHour[];
}

const MS_PER_HOUR = 3_600_000;
export const MOST_HOURS = 24 * 60;

/** Every fault of a forecast: numbers, gaps, order, zone, clock change. */
export function forecastFaults(forecast: Forecast, at: string): readonly Problem[] {
  const { hours, timeZone } = forecast;
  const count = countFaults(`${at}/hours`, hours.length, { least: 2, most: MOST_HOURS });
  const each = hours.flatMap((hour, index) => hourFaults(hour, `${at}/hours/${index}`));
  const zone = zoneFaults(`${at}/timeZone`, timeZone);
  if (count.length + each.length + zone.length > 0) return [...count, ...zone, ...each];
  const offset = timeZone === undefined ? undefined : { zone: timeZone, at: zoneOffset(timeZone) };
  return [...stepFaults(forecast, at, offset), ...offsetFaults(forecast, at, offset)];
}

const hourFaults = (hour: ForecastHour, at: string): readonly Problem[] => [
  ...instantFaults(`${at}/at`, hour.at),
  ...numberFaults(`${at}/temperatureC`, hour.temperatureC, { from: -40, upTo: 55, unit: 'degC' }),
  ...numberFaults(`${at}/relativeHumidityPercent`, hour.relativeHumidityPercent, {
    above: 0,
    upTo: 100,
    unit: '%',
  }),
  ...optionalFaults(`${at}/windMPerS`, hour.windMPerS, { from: 0, upTo: 120, unit: 'm/s' }),
  ...optionalFaults(`${at}/rainMm`, hour.rainMm, { from: 0, upTo: 300, unit: 'mm' }),
  ...optionalFaults(`${at}/cloudPercent`, hour.cloudPercent, { from: 0, upTo: 100, unit: '%' }),
];

interface KnownZone {
  readonly zone: string;
  readonly at: ZoneOffset | undefined;
}

export const epochOf = (hour: { readonly at: string }): number => readInstant(hour.at)?.epochMs ?? Number.NaN;

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

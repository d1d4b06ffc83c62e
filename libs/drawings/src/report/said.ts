import type { MoneyJson } from '#lib/money';
import type { Range } from '#lib/estimate';
import { areaText, fixed, lengthText, massText, upTo, volumeText, type Reader } from '../reader.js';

/** Formats are costly to make and hold no state, so each is made once. */
const formats = new Map<string, Intl.NumberFormat>();
const dateFormats = new Map<string, Intl.DateTimeFormat>();
const momentFormats = new Map<string, Intl.DateTimeFormat>();
const timeFormats = new Map<string, Intl.DateTimeFormat>();

/** An amount with its currency code, as many decimals as the amount itself has. */
export function moneyText(reader: Reader, { amount, currency }: MoneyJson): string {
  const decimals = amount.split('.')[1]?.length ?? 0;
  const key = `${reader.locale} ${currency} ${decimals}`;
  const known =
    formats.get(key) ??
    new Intl.NumberFormat(reader.locale, {
      style: 'currency',
      currency,
      currencyDisplay: 'code',
      minimumFractionDigits: decimals,
      maximumFractionDigits: decimals,
    });
  formats.set(key, known);
  return known.format(Number(amount));
}

/** A price of one unit is kept to four decimals; what are noughts behind the second says nothing. */
export const unitPriceText = (reader: Reader, { amount, currency }: MoneyJson): string =>
  moneyText(reader, { amount: amount.replace(/(\.\d\d\d*?)0+$/, '$1'), currency });

/** Likely value first, the outer points in brackets, each with the unit. */
export const rangeText = (reader: Reader, { p10, p50, p90 }: Range, say: (value: number) => string): string =>
  reader.words.summary.threePoints(say(p10), say(p50), say(p90));

export const hoursText = (reader: Reader, hours: number): string => `${fixed(reader, hours, 1)} h`;

const SHORT_WAIT_H = 10;

/** Nobody sets an alarm for tenths of an hour when a wait goes over night. */
export const waitText = (reader: Reader, hours: number): string =>
  `${upTo(reader, hours, hours < SHORT_WAIT_H ? 1 : 0)} h`;

export const daysText = (reader: Reader, days: number): string => `${upTo(reader, days, 1)} d`;

/** What the clock on the wall shows at an instant that is written with its offset: a report does not change with the reader's clock. */
const wallClock = (iso: string): Date =>
  new Date(/[+-]\d{2}:\d{2}$/.test(iso) ? `${iso.slice(0, 19)}Z` : iso);

/** The date of an ISO instant as it is written, or an ISO date. */
export function dateText(reader: Reader, iso: string): string {
  const instant = wallClock(iso);
  if (Number.isNaN(instant.getTime())) return iso;
  const known =
    dateFormats.get(reader.locale) ??
    new Intl.DateTimeFormat(reader.locale, { dateStyle: 'long', timeZone: 'UTC' });
  dateFormats.set(reader.locale, known);
  return known.format(instant);
}

/** The same date as short as it is still unmistakable, for the title block of a sheet. */
export function shortDateText(reader: Reader, iso: string): string {
  const instant = wallClock(iso);
  return Number.isNaN(instant.getTime())
    ? iso
    : new Intl.DateTimeFormat(reader.locale, { dateStyle: 'medium', timeZone: 'UTC' }).format(instant);
}

const unitNames: Readonly<Record<string, string>> = {
  'm2': 'm²',
  'm3': 'm³',
  'mm2': 'mm²',
  'degC': '°C',
  '1': '',
  'N.mm': 'N·mm',
  'N.mm/mm': 'N·mm/mm',
  'g/m2': 'g/m²',
  'kg/m2': 'kg/m²',
  'N/mm2': 'N/mm²',
  'kg/m3': 'kg/m³',
  'kN/m2': 'kN/m²',
};

/** No crew works to the minute. */
const HALF_HOUR_MS = 30 * 60_000;

/** Date and time of day, to the half hour, of an ISO instant as the calendar means it; no zone is added. */
export function momentText(reader: Reader, iso: string): string {
  const instant = wallClock(iso);
  if (Number.isNaN(instant.getTime())) return iso;
  const known =
    momentFormats.get(reader.locale) ??
    new Intl.DateTimeFormat(reader.locale, {
      day: 'numeric',
      month: 'short',
      hour: '2-digit',
      minute: '2-digit',
      timeZone: 'UTC',
    });
  momentFormats.set(reader.locale, known);
  return known.format(new Date(Math.round(instant.getTime() / HALF_HOUR_MS) * HALF_HOUR_MS));
}

/** The day of an ISO instant as a crew names it: day of the week, day and month. */
export function weekdayText(reader: Reader, iso: string): string {
  const key = `weekday ${reader.locale}`;
  const known =
    dateFormats.get(key) ??
    new Intl.DateTimeFormat(reader.locale, {
      weekday: 'short',
      day: 'numeric',
      month: 'short',
      timeZone: 'UTC',
    });
  dateFormats.set(key, known);
  return known.format(wallClock(iso));
}

/** The time of day of an ISO instant as the calendar means it. */
export function timeOfDayText(reader: Reader, iso: string): string {
  const known =
    timeFormats.get(reader.locale) ??
    new Intl.DateTimeFormat(reader.locale, { hour: '2-digit', minute: '2-digit', timeZone: 'UTC' });
  timeFormats.set(reader.locale, known);
  return known.format(wallClock(iso));
}

/** A unit as people write it. */
export const unitText = (unit: string): string => unitNames[unit] ?? unit;

/** Units in which stiffness per width is kept, and those in which a person reads it, with how many make one of them. */
const readUnits: Readonly<Record<string, readonly [string, number]>> = {
  'N.mm': ['N·m', 1000],
  'N/mm': ['kN/m', 1],
};

const READ_DIGITS = 3;
/** Nobody measures finer on a deck. */
const FINEST_MM_DECIMALS = 2;

/** A value of any size with its unit: three digits that mean something, never in powers of ten where it can be read plainly. */
export function valueText(reader: Reader, value: number, unit: string): string {
  const [name, per] = readUnits[unit] ?? [unitName(unit, reader), 1];
  const read = Number((value / per).toPrecision(READ_DIGITS));
  const size = Math.abs(read);
  const decimals = size === 0 ? 0 : Math.max(0, Math.min(8, READ_DIGITS - 1 - Math.floor(Math.log10(size))));
  return `${upTo(reader, read, unit === 'mm' ? Math.min(decimals, FINEST_MM_DECIMALS) : decimals)} ${name}`.trim();
}

/** A figure in the unit it is kept in, or in the reader's where he has another. */
export function figureText(reader: Reader, value: number, unit: string): string {
  switch (unit) {
    case 'm2':
      return areaText(reader, value);
    case 'm':
      return lengthText(reader, value * MM_IN_M);
    case 'kg':
      return massText(reader, value);
    case 'l':
      return volumeText(reader, value);
    default:
      return `${upTo(reader, value, 2)} ${unitName(unit, reader)}`.trim();
  }
}

const MM_IN_M = 1000;

/** A quantity of a priced line, to the three decimals it is priced with. */
export function quantityText(reader: Reader, quantity: number, unit: string): string {
  return `${upTo(reader, quantity, 3)} ${unitName(unit, reader)}`.trim();
}

/** A unit of sale or of work in the reader's words, any other unit as it is written. */
export const unitName = (unit: string, reader: Reader): string => {
  const known = Object.entries(reader.words.cost.units).find(([name]) => name === unit);
  return known === undefined ? unitText(unit) : known[1];
};

/** A code in words: from the table, else the code itself without the kind of thing it starts with. */
export const codeText = (table: Readonly<Record<string, string>>, code: string): string =>
  Object.hasOwn(table, code)
    ? table[code]
    : code.replace(/^(core|resin|filler|reinforcement|coating)-/, '').replaceAll('-', ' ');

/** A choice from a table of words; a choice without a word is said as it is. */
export function word(table: Readonly<Record<string, string>>, choice: string): string {
  return Object.hasOwn(table, choice) ? table[choice] : choice;
}

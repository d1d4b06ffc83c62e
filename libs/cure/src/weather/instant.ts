import { Defect, problem, type Problem } from '#lib/kernel';

/** A moment with the offset it was written with. */
export interface Instant {
  readonly epochMs: number;
  readonly offsetMin: number;
}

const rfc3339 = /^(\d{4})-(\d{2})-(\d{2})[Tt](\d{2}):(\d{2})(?::(\d{2})(?:\.\d+)?)?([Zz]|[+-]\d{2}:\d{2})$/;

/** Reads an RFC 3339 instant; undefined when it is none, or when its date does not exist. */
export function readInstant(text: string): Instant | undefined {
  const parts = rfc3339.exec(text);
  if (parts === null) return undefined;
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map((part) => Number(part ?? 0));
  const offsetMin = offsetOf(parts[7]);
  // Date.UTC would read the years 0 to 99 as 1900 to 1999.
  const localMs = new Date(Date.UTC(2000, 0, 1, hour, minute, second)).setUTCFullYear(year, month - 1, day);
  const isReal =
    new Date(localMs).getUTCDate() === day &&
    hour < 24 &&
    minute < 60 &&
    second < 60 &&
    month >= 1 &&
    month <= 12;
  return isReal && Math.abs(offsetMin) < MOST_OFFSET_MIN
    ? { epochMs: localMs - offsetMin * 60_000, offsetMin }
    : undefined;
}

/** An instant of which it was made sure before that it can be read. */
export function exactInstant(text: string): Instant {
  const read = readInstant(text);
  if (read === undefined) throw new Defect(`${text} is no instant`);
  return read;
}

/** No clock on earth stands farther from UTC. */
const MOST_OFFSET_MIN = 15 * 60;

function offsetOf(text: string): number {
  if (text.toUpperCase() === 'Z') return 0;
  const [hours, minutes] = text.slice(1).split(':').map(Number);
  return (text.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

/** Offset of a zone (minutes east of UTC) at a moment; undefined for a zone that the zone database does not know. */
export type ZoneOffset = (epochMs: number) => number;

export function zoneOffset(timeZone: string): ZoneOffset | undefined {
  try {
    const format = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' });
    return rememberedByDay((epochMs) =>
      offsetInName(
        format.formatToParts(new Date(epochMs)).find(({ type }) => type === 'timeZoneName')?.value ?? 'GMT',
      ),
    );
  } catch {
    return undefined;
  }
}

const DAY_MS = 24 * 3_600_000;

/** Asking the zone database is slow; a day that begins and ends with one offset is asked for once. */
function rememberedByDay(ask: ZoneOffset): ZoneOffset {
  const atDawn = new Map<number, number>();
  const dawn = (day: number): number => {
    const known = atDawn.get(day);
    if (known !== undefined) return known;
    const found = ask(day * DAY_MS);
    atDawn.set(day, found);
    return found;
  };
  return (epochMs) => {
    const day = Math.floor(epochMs / DAY_MS);
    const offset = dawn(day);
    return offset === dawn(day + 1) ? offset : ask(epochMs);
  };
}

/** `GMT`, `GMT+02:00` or `GMT-03:30`. */
function offsetInName(name: string): number {
  const found = /GMT([+-])(\d{2}):(\d{2})/.exec(name);
  return found === null ? 0 : (found[1] === '-' ? -1 : 1) * (Number(found[2]) * 60 + Number(found[3]));
}

export const zoneFaults = (at: string, timeZone: string | undefined): readonly Problem[] =>
  timeZone === undefined || zoneOffset(timeZone) !== undefined
    ? []
    : [
        problem('unknown-code', at, {
          value: timeZone,
          kind: 'time zone',
          known: 'names of the zone database such as Europe/Lisbon',
        }),
      ];

export const instantFaults = (at: string, text: string): readonly Problem[] =>
  readInstant(text) === undefined ? [problem('no-time-zone', at, { value: text })] : [];

/** A moment as RFC 3339 with the given offset. */
export function writeInstant(epochMs: number, offsetMin: number): string {
  const local = new Date(epochMs + offsetMin * 60_000).toISOString().slice(0, 19);
  if (offsetMin === 0) return `${local}Z`;
  const [sign, size] = [offsetMin < 0 ? '-' : '+', Math.abs(offsetMin)];
  return `${local}${sign}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

const two = (value: number): string => String(value).padStart(2, '0');

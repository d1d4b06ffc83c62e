import type { DefectRecord } from 'kingplank-sdk';
import { distanceMm } from './edits.js';
import { holesOf, outlineOf, placeOf, readingsOf, type Place, type Reading, type Sound } from './record.js';
import { contains } from './snapping.js';

/** The places of a grid on the panel, up one row and down the next as a hammer goes. */
export function gridPlaces(record: DefectRecord, spacingMm: number): readonly Place[] {
  const outline = outlineOf(record);
  if (outline.length < 3 || !(spacingMm > 0)) return [];
  const rows = stations(
    outline.map(([x]) => x),
    spacingMm,
  );
  const columns = stations(
    outline.map(([, y]) => y),
    spacingMm,
  );
  const isOnDeck = (place: Place): boolean =>
    contains(outline, place) && !holesOf(record).some((hole) => contains(hole, place));
  return rows.flatMap((x, row) => {
    const along = columns.map((y): Place => [x, y]);
    return (row % 2 === 0 ? along : along.reverse()).filter(isOnDeck);
  });
}

const MOST_STATIONS = 80;

/** Evenly from edge to edge, half a spacing kept at both ends. */
function stations(values: readonly number[], spacingMm: number): readonly number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const count = Math.min(MOST_STATIONS, Math.max(1, Math.round((high - low) / spacingMm)));
  const step = (high - low) / count;
  return Array.from({ length: count }, (_, at) => Math.round(low + (at + 0.5) * step));
}

/** The first place of the way that nobody has tapped yet. */
export function nextPlace(record: DefectRecord, way: readonly Place[], spacingMm: number): Place | undefined {
  const tapped = readingsOf(record)
    .filter(({ kind }) => kind === 'sounding')
    .map(({ at }) => placeOf(at));
  return way.find((place) => tapped.every((other) => distanceMm(other, place) > 0.3 * spacingMm));
}

export const soundsByLetter: Readonly<Record<string, Sound>> = { s: 'sharp', d: 'dull', v: 'void' };

export type TypedReadings =
  { readonly readings: readonly Reading[] } | { readonly line: number; readonly text: string };

/**
 * A list as somebody reads it out: `x y sound` a line, the sound by its letter (s, d, v) or a number of the moisture
 * meter; `x y plug rotten` is a plug, `x y plug rotten 3.2` with its outer skin in millimetres. All of it is taken, or the first line that cannot be read is named.
 */
export function readTyped(list: string): TypedReadings {
  const lines = list.split(/\r?\n/).map((text, at) => ({ text: text.trim(), line: at + 1 }));
  const readings: Reading[] = [];
  for (const { text, line } of lines.filter((one) => one.text !== '')) {
    const reading = readLine(text);
    if (reading === undefined) return { line, text };
    readings.push(reading);
  }
  return { readings };
}

const LINE =
  /^(-?\d+(?:\.\d+)?)[\s,;]+(-?\d+(?:\.\d+)?)[\s,;]+(\S+)(?:[\s,;]+(\S+)(?:[\s,;]+(\d+(?:\.\d+)?))?)?$/;

function readLine(text: string): Reading | undefined {
  const [, x, y, word, second, skin] = LINE.exec(text.toLowerCase()) ?? [];
  if (word === undefined) return undefined;
  const at: Place = [Number(x), Number(y)];
  const sound = soundsByLetter[word] ?? Object.values(soundsByLetter).find((name) => name === word);
  if (sound !== undefined) return { kind: 'sounding', at, sound };
  const condition = plugConditions.find((name) => name === second);
  if (word === 'plug' && condition !== undefined)
    return { kind: 'plug', at, condition, ...(skin === undefined ? {} : { outerSkinMm: Number(skin) }) };
  return /^\d+(\.\d+)?$/.test(word) ? { kind: 'moisture', at, value: Number(word) } : undefined;
}

export const plugConditions = ['dry-sound', 'damp-sound', 'wet-bonded', 'rotten', 'debonded-dry'] as const;

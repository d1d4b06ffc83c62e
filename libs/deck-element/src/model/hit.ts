import type { DefectRecord } from 'kingplank-sdk';
import { distanceMm, type Drawn } from './edits.js';
import {
  fittingsOf,
  holesOf,
  outlineOf,
  placeOf,
  readingsOf,
  ringOf,
  supportsOf,
  zonesOf,
  type Place,
  type Ring,
} from './record.js';
import { contains } from './snapping.js';

/** The thing that a finger at a place means: small things before large ones, the latest drawn first. */
export function hitAt(record: DefectRecord, at: Place, reachMm: number): Drawn | undefined {
  const isNear = (pair: readonly number[]): boolean => distanceMm(placeOf(pair), at) <= reachMm;
  const holds = (ring: Ring): boolean => contains(ring, at);
  return (
    last('reading', readingsOf(record), (reading) => isNear(reading.at)) ??
    last('fitting', fittingsOf(record), (fitting) => isNear(fitting.at)) ??
    last('support', supportsOf(record), ({ from, to }) =>
      isNearLine(at, placeOf(from), placeOf(to), reachMm),
    ) ??
    last('zone', zonesOf(record), (zone) => holds(ringOf(zone.outline))) ??
    last('hole', holesOf(record), holds) ??
    (holds(outlineOf(record)) ? { kind: 'panel', index: 0 } : undefined)
  );
}

function last<T>(kind: Drawn['kind'], list: readonly T[], isMeant: (item: T) => boolean): Drawn | undefined {
  const index = list.findLastIndex(isMeant);
  return index < 0 ? undefined : { kind, index };
}

function isNearLine(at: Place, from: Place, to: Place, reachMm: number): boolean {
  const length = distanceMm(from, to) || 1;
  const along = ((at[0] - from[0]) * (to[0] - from[0]) + (at[1] - from[1]) * (to[1] - from[1])) / length;
  const off =
    Math.abs((to[0] - from[0]) * (from[1] - at[1]) - (from[0] - at[0]) * (to[1] - from[1])) / length;
  return off <= reachMm && along >= -reachMm && along <= length + reachMm;
}

/** The corners of a thing that has any, in the order in which they are drawn. */
export function cornersOf(record: DefectRecord, { kind, index }: Drawn): Ring {
  switch (kind) {
    case 'panel':
      return outlineOf(record);
    case 'zone':
      return ringOf(zonesOf(record)[index]?.outline ?? []);
    case 'hole':
      return holesOf(record)[index] ?? [];
    case 'support': {
      const line = supportsOf(record)[index];
      return line === undefined ? [] : [placeOf(line.from), placeOf(line.to)];
    }
    default:
      return [];
  }
}

/** The corner under the finger, if one is. */
export function cornerAt(corners: Ring, at: Place, reachMm: number): number | undefined {
  const index = corners.findIndex((corner) => distanceMm(corner, at) <= reachMm);
  return index < 0 ? undefined : index;
}

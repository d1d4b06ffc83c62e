import type { DefectRecord } from 'kingplank-sdk';
import {
  fittingsOf,
  holesOf,
  outlineOf,
  placeOf,
  readingsOf,
  ringOf,
  supportsOf,
  zonesOf,
  type Fitting,
  type Place,
  type Reading,
  type Ring,
  type Support,
} from './record.js';

/** Something drawn on the sheet, by what it is and where it stands in its list. */
export interface Drawn {
  readonly kind: 'panel' | 'zone' | 'hole' | 'support' | 'fitting' | 'reading';
  readonly index: number;
}

export const withOutline = (record: DefectRecord, outline: Ring): DefectRecord => ({
  ...record,
  panel: { ...record.panel, outline },
});

export const withHoles = (record: DefectRecord, holes: readonly Ring[]): DefectRecord => {
  const { holes: before, ...panel } = record.panel;
  return { ...record, panel: holes.length === 0 && before !== undefined ? panel : { ...panel, holes } };
};

export const withSupports = (record: DefectRecord, supports: readonly Support[]): DefectRecord => ({
  ...record,
  panel: { ...record.panel, supports },
});

/** A zone under the first name that is free. */
export const withZone = (record: DefectRecord, outline: Ring): DefectRecord => ({
  ...record,
  zones: [...zonesOf(record), { id: freeName('Z', zonesOf(record)), outline, condition: 'wet-rotten' }],
});

export const withFitting = (record: DefectRecord, kind: Fitting['kind'], at: Place): DefectRecord => {
  const others = fittingsOf(record).filter((fitting) => fitting.kind === kind);
  return {
    ...record,
    fittings: [...fittingsOf(record), { id: freeName(`${kind}-`, others), kind, at }],
  };
};

export const withReadings = (record: DefectRecord, readings: readonly Reading[]): DefectRecord => {
  const { survey, ...rest } = record;
  if (readings.length === 0 && survey?.meter === undefined) return rest;
  return { ...rest, ...evidenceOf(rest, readings), survey: { ...survey, readings } };
};

/** Plugs are better evidence than what the service would take a map for; what the surveyor said stays. */
const evidenceOf = (
  { evidence }: Pick<DefectRecord, 'evidence'>,
  readings: readonly Reading[],
): Pick<DefectRecord, 'evidence'> =>
  evidence === undefined && readings.some(({ kind }) => kind === 'plug')
    ? { evidence: 'mapped-with-plugs' }
    : {};

/** One reading more; where one of its kind stands already, it takes its place. */
export function withReading(record: DefectRecord, reading: Reading): DefectRecord {
  const isThere = (other: Reading): boolean =>
    other.kind === reading.kind && distanceMm(placeOf(other.at), placeOf(reading.at)) < 1;
  return withReadings(record, [...readingsOf(record).filter((other) => !isThere(other)), reading]);
}

export function without(record: DefectRecord, { kind, index }: Drawn): DefectRecord {
  const rest = <T>(list: readonly T[]): readonly T[] => list.filter((_, at) => at !== index);
  switch (kind) {
    case 'panel':
      return withOutline(record, []);
    case 'zone':
      return { ...record, zones: rest(zonesOf(record)) };
    case 'hole':
      return withHoles(record, rest(holesOf(record)));
    case 'support':
      return withSupports(record, rest(supportsOf(record)));
    case 'fitting':
      return { ...record, fittings: rest(fittingsOf(record)) };
    case 'reading':
      return withReadings(record, rest(readingsOf(record)));
  }
}

/** The same thing somewhere else. */
export function moved(record: DefectRecord, drawn: Drawn, by: Place): DefectRecord {
  return redrawn(record, drawn, (place) => [place[0] + by[0], place[1] + by[1]]);
}

/** The same thing with one of its corners somewhere else. */
export function withCorner(record: DefectRecord, drawn: Drawn, corner: number, to: Place): DefectRecord {
  return redrawn(record, drawn, (place, at) => (at === corner ? to : place));
}

type Redraw = (place: Place, at: number) => Place;

function redrawn(record: DefectRecord, { kind, index }: Drawn, redraw: Redraw): DefectRecord {
  const one = <T>(list: readonly T[], change: (item: T) => T): readonly T[] =>
    list.map((item, at) => (at === index ? change(item) : item));
  const at = (place: readonly number[]): Place => redraw(placeOf(place), 0);
  switch (kind) {
    case 'panel':
      return withOutline(record, outlineOf(record).map(redraw));
    case 'zone':
      return {
        ...record,
        zones: one(zonesOf(record), (zone) => ({ ...zone, outline: ringOf(zone.outline).map(redraw) })),
      };
    case 'hole':
      return withHoles(
        record,
        one(holesOf(record), (ring) => ring.map(redraw)),
      );
    case 'support':
      return withSupports(
        record,
        one(supportsOf(record), (line) => ({
          ...line,
          from: redraw(placeOf(line.from), 0),
          to: redraw(placeOf(line.to), 1),
        })),
      );
    case 'fitting':
      return {
        ...record,
        fittings: one(fittingsOf(record), (fitting) => ({ ...fitting, at: at(fitting.at) })),
      };
    case 'reading':
      return withReadings(
        record,
        one(readingsOf(record), (reading) => ({ ...reading, at: at(reading.at) })),
      );
  }
}

/** Port becomes starboard: everything drawn, reflected at the centreline. */
export function flipped(record: DefectRecord): DefectRecord {
  const over = (pair: readonly number[]): Place => [placeOf(pair)[0], 0 - placeOf(pair)[1]];
  const ring = (pairs: readonly (readonly number[])[]): Ring => pairs.map(over);
  return {
    ...record,
    panel: {
      ...record.panel,
      outline: ring(record.panel.outline),
      ...(record.panel.holes === undefined ? {} : { holes: record.panel.holes.map(ring) }),
      ...(record.panel.supports === undefined
        ? {}
        : {
            supports: record.panel.supports.map((line) => ({
              ...line,
              from: over(line.from),
              to: over(line.to),
            })),
          }),
    },
    ...(record.zones === undefined
      ? {}
      : { zones: record.zones.map((zone) => ({ ...zone, outline: ring(zone.outline) })) }),
    ...(record.fittings === undefined
      ? {}
      : { fittings: record.fittings.map((fitting) => ({ ...fitting, at: over(fitting.at) })) }),
    ...(record.survey === undefined
      ? {}
      : {
          survey: {
            ...record.survey,
            readings: record.survey.readings.map((reading) => ({ ...reading, at: over(reading.at) })),
          },
        }),
  };
}

export const distanceMm = (a: Place, b: Place): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

function freeName(start: string, taken: readonly { readonly id: string }[]): string {
  const names = new Set(taken.map(({ id }) => id));
  let count = 1;
  while (names.has(`${start}${count}`)) count += 1;
  return `${start}${count}`;
}

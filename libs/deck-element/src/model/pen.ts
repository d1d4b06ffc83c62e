import type { DefectRecord } from 'kingplank-sdk';
import { directionDeg, spotAfter, type Spot } from './photograph.js';
import { distanceMm, withFitting, withHoles, withReading, withSupports, withZone } from './edits.js';
import {
  holesOf,
  supportsOf,
  type Fitting,
  type Place,
  type PlugCondition,
  type Ring,
  type Sound,
} from './record.js';
import { simplified } from './snapping.js';

export type Tool = 'select' | 'zone' | 'hatch' | 'beam' | 'fitting' | 'sounding' | 'plug' | 'photograph';

/** What a touch of the sheet would set down, and the corners set down so far. */
export interface Pen {
  readonly tool: Tool;
  readonly fitting: Fitting['kind'];
  readonly sound: Sound;
  readonly plug: PlugCondition;
  /** Of the outer skin in the next plug, as it was measured; forgotten with the plug. */
  readonly plugSkin: number | string | undefined;
  /** Where the next photograph was taken. */
  readonly spot: Spot | undefined;
  readonly corners: Ring;
}

export const freshPen: Pen = {
  tool: 'select',
  fitting: 'cleat',
  sound: 'dull',
  plug: 'rotten',
  plugSkin: undefined,
  spot: undefined,
  corners: [],
};

/** What came of a touch: another state of the pen, and the record with what was finished. */
export interface Touched {
  readonly pen: Pen;
  readonly record: DefectRecord;
}

/** A touch at one place. Zones close on their first corner, hatches and beams with their second place. */
export function touched(pen: Pen, record: DefectRecord, at: Place, reachMm: number): Touched {
  switch (pen.tool) {
    case 'select':
      return { pen, record };
    case 'fitting':
      return { pen, record: withFitting(record, pen.fitting, at) };
    case 'sounding':
      return { pen, record: withReading(record, { kind: 'sounding', at, sound: pen.sound }) };
    case 'plug':
      return withPlug(pen, record, at);
    case 'photograph':
      return { pen: { ...pen, spot: spotAfter(pen.spot, at) }, record };
    case 'zone':
      return isClosing(pen, at, reachMm) ? finished(pen, record) : withNextCorner(pen, record, at);
    case 'hatch':
    case 'beam':
      return pen.corners.length === 0
        ? withNextCorner(pen, record, at)
        : stroked(pen, record, [pen.corners[0], at], 0);
  }
}

function withPlug(pen: Pen, record: DefectRecord, at: Place): Touched {
  const skin = pen.plugSkin === undefined ? {} : { outerSkinMm: pen.plugSkin };
  return {
    pen: { ...pen, plugSkin: undefined },
    record: withReading(record, { kind: 'plug', at, condition: pen.plug, ...skin }),
  };
}

const isClosing = ({ corners }: Pen, at: Place, reachMm: number): boolean =>
  corners.length >= 3 && distanceMm(corners[0], at) <= reachMm;

const withNextCorner = (pen: Pen, record: DefectRecord, at: Place): Touched => ({
  pen: { ...pen, corners: [...pen.corners, at] },
  record,
});

/** The corners set down so far become a zone, when they enclose anything. */
export function finished(pen: Pen, record: DefectRecord): Touched {
  const lifted = { ...pen, corners: [] };
  return { pen: lifted, record: pen.corners.length < 3 ? record : withZone(record, pen.corners) };
}

/** A stroke from one place to another: a zone by finger, a hatch by its diagonal, a beam by its ends. */
export function stroked(pen: Pen, record: DefectRecord, line: Ring, toleranceMm: number): Touched {
  const lifted = { ...pen, corners: [] };
  const [from, to] = [line[0], line[line.length - 1]];
  switch (pen.tool) {
    case 'zone': {
      const ring = opened(simplified(line, toleranceMm), 2 * toleranceMm);
      return { pen: lifted, record: ring.length < 3 ? record : withZone(record, ring) };
    }
    case 'hatch':
      return { pen: lifted, record: withHoles(record, [...holesOf(record), rectangle(from, to)]) };
    case 'beam':
      return {
        pen: lifted,
        record: withSupports(record, [...supportsOf(record), { kind: 'beam', from, to }]),
      };
    case 'photograph':
      return { pen: { ...lifted, spot: { at: from, directionDeg: directionDeg(from, to) } }, record };
    default:
      return { pen: lifted, record };
  }
}

/** A finger comes back to about where it began: that is one corner, not two. */
const opened = (ring: Ring, reachMm: number): Ring =>
  ring.length > 3 && distanceMm(ring[0], ring[ring.length - 1]) <= reachMm ? ring.slice(0, -1) : ring;

const rectangle = (from: Place, to: Place): Ring => [from, [to[0], from[1]], to, [from[0], to[1]]];

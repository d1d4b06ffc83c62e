import type { DefectRecord } from 'kingplank-sdk';
import { distanceMm } from './edits.js';
import { holesOf, outlineOf, zonesOf, ringOf, type Place, type Ring } from './record.js';
import type { Units } from './lengths.js';

export interface Snapped {
  readonly place: Place;
  readonly to: 'corner' | 'centreline' | 'edge' | 'grid';
}

const EIGHTH_INCH_MM = 3.175;

/** A place as it is meant: on a corner, else on the centreline, else on an edge, else on the grid of the units. */
export function snapped(place: Place, record: DefectRecord, reachMm: number, units: Units): Snapped {
  const rings = [
    outlineOf(record),
    ...holesOf(record),
    ...zonesOf(record).map((zone) => ringOf(zone.outline)),
  ];
  const corner = nearest(rings.flat(), place, reachMm);
  if (corner !== undefined) return { place: corner, to: 'corner' };
  const onGrid = toGrid(place, units === 'si' ? 5 : EIGHTH_INCH_MM);
  if (Math.abs(place[1]) <= reachMm && crossesCentreline(outlineOf(record)))
    return { place: [onGrid[0], 0], to: 'centreline' };
  const edge = nearest(
    edgesOf(rings[0]).map(([from, to]) => foot(place, from, to)),
    place,
    reachMm,
  );
  return edge === undefined ? { place: onGrid, to: 'grid' } : { place: edge, to: 'edge' };
}

const toGrid = ([x, y]: Place, stepMm: number): Place => [
  Math.round(x / stepMm) * stepMm,
  Math.round(y / stepMm) * stepMm,
];

function nearest(places: readonly Place[], place: Place, reachMm: number): Place | undefined {
  let [best, least]: [Place | undefined, number] = [undefined, reachMm];
  for (const one of places) {
    const away = distanceMm(one, place);
    if (away <= least) [best, least] = [one, away];
  }
  return best;
}

const edgesOf = (ring: Ring): readonly (readonly [Place, Place])[] =>
  ring.map((from, at) => [from, ring[(at + 1) % ring.length]]);

/** The point of a side that lies nearest. */
function foot(place: Place, from: Place, to: Place): Place {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const along = ((place[0] - from[0]) * dx + (place[1] - from[1]) * dy) / (dx * dx + dy * dy || 1);
  const share = Math.min(1, Math.max(0, along));
  return [Math.round((from[0] + share * dx) * 10) / 10, Math.round((from[1] + share * dy) * 10) / 10];
}

const crossesCentreline = (ring: Ring): boolean => ring.some(([, y]) => y < 0) && ring.some(([, y]) => y > 0);

/** A line drawn by finger with the trembling left out: no point moves the line by less than the tolerance. */
export function simplified(line: Ring, toleranceMm: number): Ring {
  if (line.length < 3) return line;
  const [first, last] = [line[0], line[line.length - 1]];
  const away = line.map((place) => distanceMm(place, foot(place, first, last)));
  const worst = away.indexOf(Math.max(...away));
  if (away[worst] <= toleranceMm) return [first, last];
  return [
    ...simplified(line.slice(0, worst + 1), toleranceMm).slice(0, -1),
    ...simplified(line.slice(worst), toleranceMm),
  ];
}

export const contains = (ring: Ring, [x, y]: Place): boolean =>
  edgesOf(ring).reduce(
    (isInside, [[x1, y1], [x2, y2]]) =>
      y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1) ? !isInside : isInside,
    false,
  );

import {
  areaMm2,
  difference,
  intersection,
  ringsOf,
  simplifyRing,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import { keeper } from './kept.js';
import { cellsOf, fitsBox, withoutSlivers, type CellTask } from './cells.js';

/** A band along the edge of an opening, part under the lip and part in the open. */
export interface LipBand {
  readonly opening: Region;
  readonly band: Region;
  /** Farthest that the band reaches under the lip and into the opening. */
  readonly underMm: number;
  readonly insideMm: number;
}

/** Bends of the edge flatter than this are drawn straight for the joints. */
const BEND_MM = 6;
/** Shorter pieces along a lip are more joint than core. From memory. */
const SHORTEST_MM = 120;

/**
 * Cuts a band square to the edge of the opening and along the bisectors of its corners, so that each piece slides in straight
 * from the opening; no piece is larger than a hand can slide.
 */
export function lipCells(lip: LipBand, task: Omit<CellTask, 'region'>): readonly Region[] {
  const wantedMm = Math.max(SHORTEST_MM, task.largestMm2 / (lip.underMm + lip.insideMm));
  const key = [wantedMm, lip.underMm, lip.insideMm].join();
  const found = keptCuts(lip.band, key, () => cutSquare(lip, wantedMm));
  return withoutSlivers(
    // A long straight stretch, or what lies between two rings, may still be longer than sheet or camber allow.
    found.flatMap((cell) => (fitsBox(cell, task) ? [cell] : cellsOf({ ...task, region: cell }))),
    { ...task, region: lip.band },
  );
}

const keptCuts = keeper<readonly Region[]>();

function cutSquare({ opening, band, underMm, insideMm }: LipBand, wantedMm: number): readonly Region[] {
  let left = band;
  const cells: Region[] = [];
  for (const ring of ringsOf(opening)) {
    for (const wedge of wedgesOf(simplifyRing(ring, BEND_MM), { wantedMm, underMm, insideMm })) {
      const part = intersection(left, wedge);
      if (part.length === 0) continue;
      cells.push(...part.map((polygon): Region => [polygon]));
      left = difference(left, wedge);
    }
  }
  const rest = left.map((polygon): Region => [polygon]);
  return [...cells, ...rest].filter((cell) => areaMm2(cell) > 1);
}

interface Station {
  readonly at: Point;
  /** Direction of the joint, outwards. */
  readonly out: Point;
}

interface Reach {
  readonly wantedMm: number;
  readonly underMm: number;
  readonly insideMm: number;
}

function wedgesOf(ring: Ring, reach: Reach): readonly Region[] {
  const stations = stationsOf(ring, reach.wantedMm);
  return stations.map((station, k) => {
    const next = stations[(k + 1) % stations.length];
    const far = 4 * reach.underMm;
    return [
      {
        outer: [
          moved(station, -reach.insideMm * 2),
          moved(station, far),
          moved(next, far),
          moved(next, -reach.insideMm * 2),
        ].reverse(),
        holes: [],
      },
    ];
  });
}

const moved = ({ at: [x, y], out: [dx, dy] }: Station, by: number): Point => [x + by * dx, y + by * dy];

/** Where joints leave the edge: at its corners along the bisector, and evenly between them square to it. */
function stationsOf(ring: Ring, wantedMm: number): readonly Station[] {
  return ring.flatMap((corner, k) => {
    const next = ring[(k + 1) % ring.length];
    const own = outOf(corner, next);
    const before = outOf(ring[(k + ring.length - 1) % ring.length], corner);
    const length = Math.hypot(next[0] - corner[0], next[1] - corner[1]);
    const count = Math.max(1, Math.ceil(length / wantedMm));
    const between = Array.from({ length: count - 1 }, (_, j): Station => {
      const share = (j + 1) / count;
      return {
        at: [corner[0] + share * (next[0] - corner[0]), corner[1] + share * (next[1] - corner[1])],
        out: own,
      };
    });
    return [{ at: corner, out: bisector(before, own) }, ...between];
  });
}

/** The opening lies to the left of its edge, holes included. */
function outOf([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(bx - ax, by - ay) || 1;
  return [(by - ay) / length, (ax - bx) / length];
}

function bisector([ax, ay]: Point, [bx, by]: Point): Point {
  const length = Math.hypot(ax + bx, ay + by);
  return length < 1e-6 ? [bx, by] : [(ax + bx) / length, (ay + by) / length];
}

import {
  containsPoint,
  distanceToEdge,
  ringsOf,
  squaredToSegment,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';

/** Farthest that bad core lies from the opening it is reamed out from; 0 when there is none. */
export function reachUnder(undercut: Region, opening: Region): number {
  const edges = ringsOf(opening);
  let farthest = 0;
  for (const ring of ringsOf(undercut))
    for (const corner of ring)
      if (isFarther(corner, edges, farthest) && !containsPoint(opening, corner))
        farthest = Math.max(farthest, distanceToEdge(corner, opening));
  return farthest;
}

/** Whether every edge lies farther off: one that is nearer tells at once. */
function isFarther(corner: Point, rings: readonly Ring[], thanMm: number): boolean {
  for (const ring of rings)
    for (let index = 0, before = ring.length - 1; index < ring.length; before = index, index += 1)
      if (squaredToSegment(corner, ring[before], ring[index]) < thanMm * thanMm) return false;
  return true;
}

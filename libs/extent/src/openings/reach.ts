import { distanceToRegion, ringsOf, type Region } from '#lib/geometry';

/** Farthest that bad core lies from the opening it is reamed out from; 0 when there is none. */
export const reachUnder = (undercut: Region, opening: Region): number =>
  ringsOf(undercut)
    .flat()
    .reduce((farthest, corner) => Math.max(farthest, distanceToRegion(corner, opening)), 0);

import { ringsOf, type Region } from '#lib/geometry';

/**
 * Work of laying out openings, in corners that were looked at while pairs were joined, cuts
 * kept clear of supports and short edges put right. It is counted
 * and never timed, so that a record gets the same openings everywhere.
 */
export interface DesignWork {
  used: number;
  readonly most: number;
}

export const isSpent = ({ used, most }: DesignWork): boolean => used >= most;

export function spend(work: DesignWork, corners: number): void {
  work.used += corners;
}

export const cornersOf = (region: Region): number =>
  ringsOf(region).reduce((sum, ring) => sum + ring.length, 0);

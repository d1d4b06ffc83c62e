import { usualTimeLimitS } from '#lib/nesting';

/** The clock is read here, so that the rooms need none; the best answer so far is the answer when time is up. */
export function untilTimeIsUp(limitS = usualTimeLimitS): () => boolean {
  const end = performance.now() + 1000 * limitS;
  return () => performance.now() >= end;
}

/** Measured: what a thousand pairs of pieces, looked at, take. */
const MS_PER_WORK_UNIT = 0.035;

/** A search ends at its work budget or at its time limit, whichever comes first. */
export const expectedSearchMs = (workUnits: number, limitS = usualTimeLimitS): number =>
  Math.min(workUnits * MS_PER_WORK_UNIT, 1000 * limitS);

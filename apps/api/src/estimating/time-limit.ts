import { saidOr, type AnswersTo } from '#lib/asking';
import { searchQuestions } from '#lib/nesting';

/** The clock is read here, so that the rooms need none; the best answer so far is the answer when time is up. */
export function untilTimeIsUp(limitS?: number): () => boolean {
  const end = performance.now() + 1000 * saidOr(searchQuestions.timeLimitS, limitS);
  return () => performance.now() >= end;
}

/** Measured: what a thousand pairs of pieces, looked at, take. */
const MS_PER_WORK_UNIT = 0.035;

/** A search ends at its work budget or at its time limit, whichever comes first. */
export const expectedSearchMs = ({ workUnits, timeLimitS }: AnswersTo<typeof searchQuestions>): number =>
  Math.min(
    saidOr(searchQuestions.workUnits, workUnits) * MS_PER_WORK_UNIT,
    1000 * saidOr(searchQuestions.timeLimitS, timeLimitS),
  );

import { materialAt, materialsOf, type Catalogue, type Filler } from '#lib/catalogue';
import { allOf, andThen, refusal, success, type Outcome } from '#lib/kernel';
import type { BatchPlan, BatchRequest } from './batch-request.js';
import { planBatches } from './batches.js';

/** A batch request with materials by their codes; every filler of the catalogue when none is named. */
export interface ResinBatchesRequest extends Omit<BatchRequest, 'resin' | 'fillers'> {
  readonly resin: string;
  readonly fillers?: readonly string[];
}

export function resinBatches(request: ResinBatchesRequest, catalogue: Catalogue): Outcome<BatchPlan> {
  const { resin, fillers, ...rest } = request;
  return andThen(
    allOf({
      resin: materialAt(catalogue, 'resin', resin, '/resin'),
      fillers: fillersFor(catalogue, fillers),
    }),
    (materials) => planBatches({ ...rest, ...materials }),
  );
}

function fillersFor(catalogue: Catalogue, codes: readonly string[] | undefined): Outcome<readonly Filler[]> {
  if (codes === undefined) return success(materialsOf(catalogue, 'filler'));
  const outcomes = codes.map((code, index) => materialAt(catalogue, 'filler', code, `/fillers/${index}`));
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0
    ? refusal(...problems)
    : success(outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}

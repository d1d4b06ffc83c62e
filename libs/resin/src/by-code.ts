import { askCode, askEach, askText, faultsIn, type AnswersTo } from '#lib/asking';
import { materialAt, materialsOf, type Catalogue, type Filler } from '#lib/catalogue';
import { allOf, andThen, refusal, success, type Outcome } from '#lib/kernel';
import { batchQuestions, type BatchPlan } from './batch-request.js';
import { planBatches } from './batches.js';

/** A batch request with materials by their codes; every filler of the catalogue when none is named. */
export const resinBatchesQuestions = {
  resin: askCode({
    meaning: 'resin',
    description: 'Code of the resin system.',
    example: 'resin-epoxy-5to1',
  }),
  hardener: askCode({
    meaning: 'hardener',
    description: 'Code of one of its hardeners; absent: chosen, with the reasons.',
    otherwise: 'unknown',
  }),
  fillers: askEach({
    meaning: 'fillers',
    description: 'Codes of the fillers at hand; absent: every filler of the catalogue.',
    least: 1,
    most: 20,
    of: askText({ meaning: 'code of a filler', atMost: 80 }),
    otherwise: 'unknown',
  }),
  ...batchQuestions,
};

export type ResinBatchesRequest = AnswersTo<typeof resinBatchesQuestions>;

export function resinBatches(request: ResinBatchesRequest, catalogue: Catalogue): Outcome<BatchPlan> {
  const wrong = faultsIn(request, resinBatchesQuestions);
  if (wrong.length > 0) return refusal(...wrong);
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

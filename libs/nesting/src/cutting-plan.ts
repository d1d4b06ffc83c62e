import { faultsIn, saidOr, type AnswersTo } from '#lib/asking';
import { mapValue, problem, refusal, type Outcome, type Problem } from '#lib/kernel';
import { nestInSheets } from './nest-in-sheets.js';
import { nestInStrip, type StripLayout } from './nest-in-strip.js';
import { cuttingQuestions, searchQuestions, type CuttingPlanRequest } from './questions.js';
import type { SheetLayout } from './sheet-layout.js';

export interface CuttingPlan {
  /** Layout on sheets, where sheets were asked for. */
  readonly onSheets?: SheetLayout;
  /** Layout on a roll, where a roll was asked for. */
  readonly onRoll?: StripLayout;
  /** What the answer depends on besides the pieces and the stock; the same settings give the same answer. */
  readonly seed: number;
  /** Work that the search was given; more may find a better layout. */
  readonly workUnits: number;
  /** Seconds after which the search is ended, finished or not. */
  readonly timeLimitS: number;
}

/** The work budget decides the answer; the time limit only cuts a search short that would keep others waiting. */
export function cuttingPlan(
  request: CuttingPlanRequest,
  shouldStop: () => boolean = () => false,
): Outcome<CuttingPlan> {
  const { pieces, kerfMm, edgeTrimMm, stock, roll } = request;
  const settings = searchSettings(request);
  const problems = [...faultsIn(request, cuttingQuestions), ...eitherProblems(request)];
  if (problems.length > 0) return refusal(...problems);
  const { seed, workUnits } = settings;
  const common = { pieces, kerfMm, edgeTrimMm, seed, workUnits };
  return roll === undefined
    ? mapValue(nestInSheets({ ...common, stock: stock ?? [] }, shouldStop), (onSheets) => ({
        onSheets,
        ...settings,
      }))
    : mapValue(nestInStrip({ ...common, ...roll }, shouldStop), (onRoll) => ({ onRoll, ...settings }));
}

/** How long and from where a layout is looked for. */
export const searchSettings = ({ seed, workUnits, timeLimitS }: AnswersTo<typeof searchQuestions>) => ({
  seed: saidOr(searchQuestions.seed, seed),
  workUnits: saidOr(searchQuestions.workUnits, workUnits),
  timeLimitS: saidOr(searchQuestions.timeLimitS, timeLimitS),
});

function eitherProblems({ stock, roll }: CuttingPlanRequest): readonly Problem[] {
  if (stock !== undefined && roll !== undefined) {
    return [
      problem('contradiction', '/roll', {
        other: 'stock',
        why: 'pieces are cut from sheets or from a roll, not from both',
      }),
    ];
  }
  return stock === undefined && roll === undefined
    ? [problem('missing', '/stock', { expected: 'sheets in stock, or a roll' })]
    : [];
}

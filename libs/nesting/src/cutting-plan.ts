import { faultsIn } from '#lib/asking';
import { mapValue, problem, refusal, type Outcome, type Problem } from '#lib/kernel';
import { nestInSheets } from './nest-in-sheets.js';
import { nestInStrip, type StripLayout } from './nest-in-strip.js';
import { cuttingQuestions, usualTimeLimitS, usualWorkUnits, type CuttingPlanRequest } from './questions.js';
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
  const {
    pieces,
    kerfMm,
    edgeTrimMm,
    stock,
    roll,
    seed = 1,
    workUnits = usualWorkUnits,
    timeLimitS = usualTimeLimitS,
  } = request;
  const problems = [...faultsIn(request, cuttingQuestions), ...eitherProblems(request)];
  if (problems.length > 0) return refusal(...problems);
  const common = { pieces, kerfMm, edgeTrimMm, seed, workUnits };
  const settings = { seed, workUnits, timeLimitS };
  return roll === undefined
    ? mapValue(nestInSheets({ ...common, stock: stock ?? [] }, shouldStop), (onSheets) => ({
        onSheets,
        ...settings,
      }))
    : mapValue(nestInStrip({ ...common, ...roll }, shouldStop), (onRoll) => ({ onRoll, ...settings }));
}

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

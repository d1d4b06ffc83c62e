import { mapValue, problem, refusal, type Outcome, type Problem } from '#lib/kernel';
import { nestInSheets, stockProblems } from './nest-in-sheets.js';
import { nestInStrip, type StripLayout } from './nest-in-strip.js';
import { commonProblems, within, type NestPiece, type StockSheet } from './request.js';
import type { SheetLayout } from './sheet-layout.js';

/** Any pieces on any stock: sheets and offcuts, or a roll. */
export interface CuttingPlanRequest {
  readonly pieces: readonly NestPiece[];
  readonly stock?: readonly StockSheet[];
  readonly roll?: { readonly widthMm: number; readonly longestMm?: number };
  readonly kerfMm: number;
  readonly edgeTrimMm: number;
  readonly seed?: number;
  readonly workUnits?: number;
  readonly timeLimitS?: number;
}

export interface CuttingPlan {
  readonly onSheets?: SheetLayout;
  readonly onRoll?: StripLayout;
  /** What the answer depends on besides the pieces and the stock; the same settings give the same answer. */
  readonly seed: number;
  readonly workUnits: number;
  readonly timeLimitS: number;
}

/** A good layout of a deck's worth of pieces takes a fraction of this. */
export const usualWorkUnits = 4000;
export const usualTimeLimitS = 20;
export const longestTimeLimitS = 120;

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
  const common = { pieces, kerfMm, edgeTrimMm, seed, workUnits };
  const problems = [...timeProblems(request.timeLimitS), ...eitherProblems(request)];
  if (problems.length > 0)
    return refusal(
      ...problems,
      ...commonProblems(common),
      ...(stock === undefined ? [] : stockProblems(stock)),
    );
  const settings = { seed, workUnits, timeLimitS };
  return roll === undefined
    ? mapValue(nestInSheets({ ...common, stock: stock ?? [] }, shouldStop), (onSheets) => ({
        onSheets,
        ...settings,
      }))
    : mapValue(nestInStrip({ ...common, ...roll }, shouldStop), (onRoll) => ({ onRoll, ...settings }));
}

export function timeProblems(timeLimitS: number | undefined): readonly Problem[] {
  if (timeLimitS === undefined) return [];
  return within(timeLimitS, '/timeLimitS', 0.05, longestTimeLimitS);
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

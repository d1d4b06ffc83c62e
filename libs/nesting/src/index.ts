export { costInSheets, nestInSheets } from './nest-in-sheets.js';
export { nestInStrip, type StripLayout } from './nest-in-strip.js';
export {
  longestPieceMm,
  mostOutlines,
  mostPieces,
  type NestPiece,
  type SheetRequest,
  type StockSheet,
  type StripRequest,
} from './request.js';
export type { CutSheet, Offcut, Placement, SheetLayout } from './sheet-layout.js';
export {
  cuttingPlan,
  longestTimeLimitS,
  timeProblems,
  usualTimeLimitS,
  usualWorkUnits,
  type CuttingPlan,
  type CuttingPlanRequest,
} from './cutting-plan.js';

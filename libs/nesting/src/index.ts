export { costInSheets, nestInSheets } from './nest-in-sheets.js';
export { nestInStrip, type StripLayout } from './nest-in-strip.js';
export {
  cuttingQuestions,
  edgeTrimAsked,
  holesAsked,
  kerfAsked,
  longestPieceMm,
  longestTimeLimitS,
  mostOutlines,
  mostPieces,
  pieceQuestions,
  rollQuestions,
  searchQuestions,
  sheetAvailableAsked,
  sheetCostAsked,
  stockQuestions,
  type CuttingPlanRequest,
} from './questions.js';
export type { NestPiece, SheetRequest, StockSheet, StripRequest } from './request.js';
export type { CutSheet, Offcut, Placement, SheetLayout } from './sheet-layout.js';
export { cuttingPlan, type CuttingPlan } from './cutting-plan.js';

import { cuttingQuestions, pieceQuestions, rollQuestions, stockQuestions } from '#lib/nesting';
import { answering } from '../../edge/dto/index.js';

export class NestPieceDto extends answering(pieceQuestions) {}

export class StockSheetDto extends answering(stockQuestions) {}

export class RollDto extends answering(rollQuestions) {}

/** Any pieces, any stock. */
export class CuttingPlanRequestDto extends answering(cuttingQuestions, {
  pieces: () => NestPieceDto,
  stock: () => StockSheetDto,
  roll: () => RollDto,
}) {}

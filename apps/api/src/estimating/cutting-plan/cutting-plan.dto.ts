import {
  cuttingQuestions,
  pieceQuestions,
  rollQuestions,
  stockQuestions,
  type CuttingPlanRequest,
  type NestPiece,
  type StockSheet,
} from '#lib/nesting';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';

type Corners = NestPiece['outline'];

export class NestPieceDto implements NestPiece {
  @Asked(pieceQuestions.id)
  readonly id!: string;

  @Asked(pieceQuestions.outline)
  readonly outline!: Corners;

  @Asked(pieceQuestions.holes)
  readonly holes?: readonly Corners[];

  @Asked(pieceQuestions.count)
  readonly count?: number;

  @Asked(pieceQuestions.turnsDeg)
  readonly turnsDeg!: readonly number[];
}

export class StockSheetDto implements StockSheet {
  @Asked(stockQuestions.id)
  readonly id!: string;

  @Asked(stockQuestions.outline)
  readonly outline!: Corners;

  @Asked(stockQuestions.holes)
  readonly holes?: readonly Corners[];

  @Asked(stockQuestions.cost)
  readonly cost!: number;

  @Asked(stockQuestions.available)
  readonly available?: number;
}

export class RollDto {
  @Asked(rollQuestions.widthMm)
  readonly widthMm!: number;

  @Asked(rollQuestions.longestMm)
  readonly longestMm?: number;
}

/** Any pieces, any stock. */
export class CuttingPlanRequestDto implements CuttingPlanRequest {
  @AskedParts(cuttingQuestions.pieces, () => NestPieceDto)
  readonly pieces!: readonly NestPieceDto[];

  @AskedParts(cuttingQuestions.stock, () => StockSheetDto)
  readonly stock?: readonly StockSheetDto[];

  @AskedPart(cuttingQuestions.roll, () => RollDto)
  readonly roll?: RollDto;

  @Asked(cuttingQuestions.kerfMm)
  readonly kerfMm!: number;

  @Asked(cuttingQuestions.edgeTrimMm)
  readonly edgeTrimMm!: number;

  @Asked(cuttingQuestions.seed)
  readonly seed?: number;

  @Asked(cuttingQuestions.workUnits)
  readonly workUnits?: number;

  @Asked(cuttingQuestions.timeLimitS)
  readonly timeLimitS?: number;
}

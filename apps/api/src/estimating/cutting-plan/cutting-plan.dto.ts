import {
  longestTimeLimitS,
  mostOutlines,
  usualTimeLimitS,
  usualWorkUnits,
  type CuttingPlanRequest,
  type NestPiece,
  type StockSheet,
} from '#lib/nesting';
import { Length, Num, Nums, Outline, Outlines, Part, Parts, Text, Whole } from '../../edge/dto/index.js';

type Corners = NestPiece['outline'];

export class NestPieceDto implements NestPiece {
  @Text({ atMost: 60, description: 'Name of the piece, unique in the request.' })
  readonly id!: string;

  @Outline({ description: 'Its edge.' })
  readonly outline!: Corners;

  @Outlines({ optional: true, most: 20, description: 'Holes in it; other pieces may be cut from them.' })
  readonly holes?: readonly Corners[];

  @Whole({ optional: true, from: 1, upTo: 100_000, description: 'How many alike; absent: 1.' })
  readonly count?: number;

  @Nums({
    most: 72,
    description:
      'Turns in degrees that keep the grain right, such as [0, 180]; an empty list means any turn.',
  })
  readonly turnsDeg!: readonly number[];
}

export class StockSheetDto implements StockSheet {
  @Text({ atMost: 60, description: 'Name of the sheet, unique in the request.' })
  readonly id!: string;

  @Outline({ description: 'A whole, half or quarter sheet, or an offcut as it is.' })
  readonly outline!: Corners;

  @Outlines({ optional: true, most: 20, description: 'Bad spots and cut-outs.' })
  readonly holes?: readonly Corners[];

  @Num({ from: 0, upTo: 1e9, description: 'In any one currency; costs are only compared.' })
  readonly cost!: number;

  @Whole({
    optional: true,
    from: 1,
    upTo: 1500,
    description: 'How many there are; absent: as many as it takes. Needed for a sheet that costs nothing.',
  })
  readonly available?: number;
}

export class RollDto {
  @Length({ above: 0, upTo: 16_000 })
  readonly widthMm!: number;

  @Length({ optional: true, above: 0, upTo: 1_000_000, description: 'Longest length that can be had.' })
  readonly longestMm?: number;
}

/** Any pieces, any stock. */
export class CuttingPlanRequestDto implements CuttingPlanRequest {
  @Parts(() => NestPieceDto, { least: 1, most: mostOutlines })
  readonly pieces!: readonly NestPieceDto[];

  @Parts(() => StockSheetDto, {
    optional: true,
    least: 1,
    most: 40,
    description: 'Sheets and offcuts; give these or a roll.',
  })
  readonly stock?: readonly StockSheetDto[];

  @Part(() => RollDto, { optional: true, description: 'Plies off a roll: x runs along it.' })
  readonly roll?: RollDto;

  @Length({ from: 0, upTo: 50, description: 'Width that the blade takes.' })
  readonly kerfMm!: number;

  @Length({ from: 0, upTo: 500, description: 'Strip along every edge of the stock that is not used.' })
  readonly edgeTrimMm!: number;

  @Whole({
    optional: true,
    from: 0,
    upTo: 4_294_967_295,
    description: 'The same seed gives the same layout; absent: 1.',
  })
  readonly seed?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 1e6,
    description: `Thousands of pairs of pieces looked at; more never gives a worse layout. Absent: ${usualWorkUnits}.`,
  })
  readonly workUnits?: number;

  @Num({
    optional: true,
    from: 0.05,
    upTo: longestTimeLimitS,
    unit: 's',
    description: `After this time the best layout so far is the answer; absent: ${usualTimeLimitS}.`,
  })
  readonly timeLimitS?: number;
}

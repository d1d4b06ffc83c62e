import {
  beddedPieceQuestions,
  plyToWetQuestions,
  resinBatchesQuestions,
  resinStepQuestions,
  type BeddedPiece,
  type PlyToWet,
  type ResinBatchesRequest,
  type ResinStepRequest,
  type StepCode,
} from '#lib/resin';
import { Asked, AskedParts } from '../../edge/dto/index.js';

export class BeddedPieceDto implements BeddedPiece {
  @Asked(beddedPieceQuestions.label)
  readonly label!: string;

  @Asked(beddedPieceQuestions.areaM2)
  readonly areaM2!: number;
}

export class PlyToWetDto implements PlyToWet {
  @Asked(plyToWetQuestions.label)
  readonly label?: string;

  @Asked(plyToWetQuestions.areaM2)
  readonly areaM2!: number;

  @Asked(plyToWetQuestions.arealMassGPerM2)
  readonly arealMassGPerM2!: number;

  @Asked(plyToWetQuestions.fibreMassFraction)
  readonly fibreMassFraction!: number;
}

export class ResinStepDto implements ResinStepRequest {
  @Asked(resinStepQuestions.step)
  readonly step!: StepCode;

  @Asked(resinStepQuestions.title)
  readonly title?: string;

  @Asked(resinStepQuestions.areaM2)
  readonly areaM2?: number;

  @Asked(resinStepQuestions.litresPerM2)
  readonly litresPerM2?: number;

  @Asked(resinStepQuestions.coats)
  readonly coats?: number;

  @Asked(resinStepQuestions.thicknessMm)
  readonly thicknessMm?: number;

  @Asked(resinStepQuestions.lengthM)
  readonly lengthM?: number;

  @Asked(resinStepQuestions.widthMm)
  readonly widthMm?: number;

  @Asked(resinStepQuestions.heightMm)
  readonly heightMm?: number;

  @Asked(resinStepQuestions.spacingMm)
  readonly spacingMm?: number;

  @Asked(resinStepQuestions.depthMm)
  readonly depthMm?: number;

  @Asked(resinStepQuestions.openFraction)
  readonly openFraction?: number;

  @AskedParts(resinStepQuestions.plies, () => PlyToWetDto)
  readonly plies?: readonly PlyToWetDto[];

  @Asked(resinStepQuestions.holes)
  readonly holes?: number;

  @Asked(resinStepQuestions.diameterMm)
  readonly diameterMm?: number;

  @Asked(resinStepQuestions.filler)
  readonly filler?: string;

  @Asked(resinStepQuestions.fillerPartsPerHundred)
  readonly fillerPartsPerHundred?: number;

  @Asked(resinStepQuestions.wasteFraction)
  readonly wasteFraction?: number;

  @Asked(resinStepQuestions.minutesPerUnit)
  readonly minutesPerUnit?: number;

  @AskedParts(resinStepQuestions.pieces, () => BeddedPieceDto)
  readonly pieces?: readonly BeddedPieceDto[];
}

/** Resin by step, in pots; materials by their codes. */
export class ResinBatchesRequestDto implements ResinBatchesRequest {
  @Asked(resinBatchesQuestions.resin)
  readonly resin!: string;

  @Asked(resinBatchesQuestions.hardener)
  readonly hardener?: string;

  @Asked(resinBatchesQuestions.fillers)
  readonly fillers?: readonly string[];

  @AskedParts(resinBatchesQuestions.steps, () => ResinStepDto)
  readonly steps!: readonly ResinStepDto[];

  @Asked(resinBatchesQuestions.temperatureC)
  readonly temperatureC!: number;

  @Asked(resinBatchesQuestions.deckTemperatureC)
  readonly deckTemperatureC?: number;

  @Asked(resinBatchesQuestions.people)
  readonly people!: number;

  @Asked(resinBatchesQuestions.wasteFraction)
  readonly wasteFraction?: number;

  @Asked(resinBatchesQuestions.largestPotG)
  readonly largestPotG?: number;

  @Asked(resinBatchesQuestions.usableFraction)
  readonly usableFraction?: number;

  @Asked(resinBatchesQuestions.mixingMinutes)
  readonly mixingMinutes?: number;

  @Asked(resinBatchesQuestions.pumpResinMlPerStroke)
  readonly pumpResinMlPerStroke?: number;
}

import {
  beddedPieceQuestions,
  plyToWetQuestions,
  resinBatchesQuestions,
  resinStepQuestions,
} from '#lib/resin';
import { answering } from '../../edge/dto/index.js';

export class BeddedPieceDto extends answering(beddedPieceQuestions) {}

export class PlyToWetDto extends answering(plyToWetQuestions) {}

export class ResinStepDto extends answering(resinStepQuestions, {
  plies: () => PlyToWetDto,
  pieces: () => BeddedPieceDto,
}) {}

/** Resin by step, in pots; materials by their codes. */
export class ResinBatchesRequestDto extends answering(resinBatchesQuestions, { steps: () => ResinStepDto }) {}

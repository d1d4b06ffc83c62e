import {
  battensQuestions,
  bondPressureQuestions,
  pressedCamberQuestions,
  pressedSkinQuestions,
  vacuumQuestions,
  weightsQuestions,
} from '#lib/press';
import { answering } from '../../edge/dto/index.js';

export class PressedSkinDto extends answering(pressedSkinQuestions) {}

export class PressedCamberDto extends answering(pressedCamberQuestions) {}

export class WeightsDto extends answering(weightsQuestions) {}

export class BattensDto extends answering(battensQuestions) {}

export class VacuumDto extends answering(vacuumQuestions) {}

/** What presses the bed, and what that rests on. */
export class BondPressureRequestDto extends answering(bondPressureQuestions, {
  camber: () => PressedCamberDto,
  innerSkin: () => PressedSkinDto,
  weights: () => WeightsDto,
  battens: () => BattensDto,
  vacuum: () => VacuumDto,
}) {}

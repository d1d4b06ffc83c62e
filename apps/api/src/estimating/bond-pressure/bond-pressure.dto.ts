import {
  battensQuestions,
  bondPressureQuestions,
  pressedCamberQuestions,
  pressedSkinQuestions,
  vacuumQuestions,
  weightsQuestions,
  type BondPressureRequest,
} from '#lib/press';
import { Asked, AskedPart } from '../../edge/dto/index.js';

type Battens = NonNullable<BondPressureRequest['battens']>;

export class PressedSkinDto {
  @Asked(pressedSkinQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(pressedSkinQuestions.modulusMPa)
  readonly modulusMPa?: number;

  @Asked(pressedSkinQuestions.strengthMPa)
  readonly strengthMPa?: number;

  @Asked(pressedSkinQuestions.spanMm)
  readonly spanMm!: number;

  @Asked(pressedSkinQuestions.isAirtight)
  readonly isAirtight?: boolean;
}

export class PressedCamberDto {
  @Asked(pressedCamberQuestions.radiusMm)
  readonly radiusMm!: number;

  @Asked(pressedCamberQuestions.pieceLengthMm)
  readonly pieceLengthMm!: number;

  @Asked(pressedCamberQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(pressedCamberQuestions.modulusMPa)
  readonly modulusMPa!: number;
}

export class WeightsDto {
  @Asked(weightsQuestions.availableKg)
  readonly availableKg?: number;

  @Asked(weightsQuestions.bagKg)
  readonly bagKg?: number;
}

export class BattensDto implements Battens {
  @Asked(battensQuestions.deckAround)
  readonly deckAround!: 'wood' | 'laminate-only' | 'none';

  @Asked(battensQuestions.isIntoInnerSkin)
  readonly isIntoInnerSkin?: boolean;

  @Asked(battensQuestions.woodSpecificGravity)
  readonly woodSpecificGravity?: number;

  @Asked(battensQuestions.widthMm)
  readonly widthMm?: number;

  @Asked(battensQuestions.heightMm)
  readonly heightMm?: number;

  @Asked(battensQuestions.modulusMPa)
  readonly modulusMPa?: number;

  @Asked(battensQuestions.spacingMm)
  readonly spacingMm?: number;

  @Asked(battensQuestions.screwSpacingMm)
  readonly screwSpacingMm?: number;

  @Asked(battensQuestions.screwDiameterMm)
  readonly screwDiameterMm?: number;

  @Asked(battensQuestions.threadMm)
  readonly threadMm?: number;
}

export class VacuumDto {
  @Asked(vacuumQuestions.fraction)
  readonly fraction?: number;

  @Asked(vacuumQuestions.pumpLPerMin)
  readonly pumpLPerMin?: number;

  @Asked(vacuumQuestions.bagVolumeL)
  readonly bagVolumeL?: number;

  @Asked(vacuumQuestions.dropKPa)
  readonly dropKPa?: number;

  @Asked(vacuumQuestions.dropMinutes)
  readonly dropMinutes?: number;
}

/** What presses the bed, and what that rests on. */
export class BondPressureRequestDto implements BondPressureRequest {
  @Asked(bondPressureQuestions.areaM2)
  readonly areaM2!: number;

  @Asked(bondPressureQuestions.lengthMm)
  readonly lengthMm!: number;

  @Asked(bondPressureQuestions.widthMm)
  readonly widthMm!: number;

  @Asked(bondPressureQuestions.perimeterM)
  readonly perimeterM?: number;

  @Asked(bondPressureQuestions.prefer)
  readonly prefer?: BondPressureRequest['prefer'];

  @Asked(bondPressureQuestions.requiredKPa)
  readonly requiredKPa?: number;

  @AskedPart(bondPressureQuestions.camber, () => PressedCamberDto)
  readonly camber?: PressedCamberDto;

  @AskedPart(bondPressureQuestions.innerSkin, () => PressedSkinDto)
  readonly innerSkin!: PressedSkinDto;

  @Asked(bondPressureQuestions.deadLoadKgPerM2)
  readonly deadLoadKgPerM2?: number;

  @Asked(bondPressureQuestions.slopeDeg)
  readonly slopeDeg?: number;

  @Asked(bondPressureQuestions.canPropFromBelow)
  readonly canPropFromBelow?: boolean;

  @AskedPart(bondPressureQuestions.weights, () => WeightsDto)
  readonly weights?: WeightsDto;

  @AskedPart(bondPressureQuestions.battens, () => BattensDto)
  readonly battens?: BattensDto;

  @AskedPart(bondPressureQuestions.vacuum, () => VacuumDto)
  readonly vacuum?: VacuumDto;

  @Asked(bondPressureQuestions.altitudeM)
  readonly altitudeM?: number;
}

import { pressMethods, type BondPressureRequest } from '#lib/press';
import { Area, Flag, Length, Mass, Num, OneOf, Part } from '../../edge/dto/index.js';

type Battens = NonNullable<BondPressureRequest['battens']>;

export class PressedSkinDto {
  @Length({ from: 0.3, upTo: 30, description: 'The skin that stays.', example: 3 })
  readonly thicknessMm!: number;

  @Num({
    optional: true,
    from: 1000,
    upTo: 100_000,
    unit: 'MPa',
    description: 'Absent: 9000 MPa, hand-laid glass.',
  })
  readonly modulusMPa?: number;

  @Num({
    optional: true,
    from: 5,
    upTo: 2000,
    unit: 'MPa',
    description: 'Bending strength; absent: 140 MPa.',
  })
  readonly strengthMPa?: number;

  @Length({
    above: 0,
    upTo: 5000,
    description: 'Clear distance between the supports that are there.',
    example: 600,
  })
  readonly spanMm!: number;

  @Flag({ optional: true, description: 'Proven by a drop test; absent: not known, which refuses a bag.' })
  readonly isAirtight?: boolean;
}

export class PressedCamberDto {
  @Length({ from: 100, upTo: 1_000_000 })
  readonly radiusMm!: number;

  @Length({ from: 10, upTo: 5000 })
  readonly pieceLengthMm!: number;

  @Length({ above: 0, upTo: 100 })
  readonly thicknessMm!: number;

  @Num({ above: 0, upTo: 20_000, unit: 'MPa' })
  readonly modulusMPa!: number;
}

export class WeightsDto {
  @Mass({ optional: true, above: 0, upTo: 20_000, description: 'At hand.' })
  readonly availableKg?: number;

  @Mass({ optional: true, above: 0, upTo: 50, description: 'One bag; absent: 20 kg.' })
  readonly bagKg?: number;
}

export class BattensDto implements Battens {
  @OneOf(['wood', 'laminate-only', 'none'], { description: 'What the screws hold in, around the opening.' })
  readonly deckAround!: 'wood' | 'laminate-only' | 'none';

  @Flag({
    optional: true,
    description:
      'Whether the screws go through the piece into the inner skin, which then hangs on them; threadMm is its thickness.',
  })
  readonly isIntoInnerSkin?: boolean;

  @Num({ optional: true, above: 0.1, upTo: 1.2, description: 'Specific gravity of that wood, oven-dry.' })
  readonly woodSpecificGravity?: number;

  @Length({ optional: true, from: 10, upTo: 500 })
  readonly widthMm?: number;

  @Length({ optional: true, from: 5, upTo: 200 })
  readonly heightMm?: number;

  @Num({ optional: true, from: 500, upTo: 210_000, unit: 'MPa' })
  readonly modulusMPa?: number;

  @Length({ optional: true, from: 10, upTo: 1000 })
  readonly spacingMm?: number;

  @Length({ optional: true, from: 20, upTo: 2000 })
  readonly screwSpacingMm?: number;

  @Length({ optional: true, above: 1, upTo: 12 })
  readonly screwDiameterMm?: number;

  @Length({ optional: true, above: 0, upTo: 150 })
  readonly threadMm?: number;
}

export class VacuumDto {
  @Num({
    optional: true,
    above: 0,
    upTo: 0.98,
    description: 'Share of the air that the pump takes away; absent: 0.75.',
  })
  readonly fraction?: number;

  @Num({ optional: true, above: 0, upTo: 10_000, unit: 'l/min' })
  readonly pumpLPerMin?: number;

  @Num({ optional: true, above: 0, upTo: 10_000, unit: 'l' })
  readonly bagVolumeL?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 100,
    unit: 'kPa',
    description: 'Loss of vacuum in a drop test with the pump shut off.',
  })
  readonly dropKPa?: number;

  @Num({ optional: true, above: 0, upTo: 600, unit: 'min' })
  readonly dropMinutes?: number;
}

/** What presses the bed, and what that rests on. */
export class BondPressureRequestDto implements BondPressureRequest {
  @Area({ above: 0, upTo: 100, example: 0.8 })
  readonly areaM2!: number;

  @Length({ above: 0, upTo: 20_000, example: 1000 })
  readonly lengthMm!: number;

  @Length({ above: 0, upTo: 20_000, example: 800 })
  readonly widthMm!: number;

  @Num({ optional: true, above: 0, upTo: 200, unit: 'm' })
  readonly perimeterM?: number;

  @OneOf(pressMethods, { optional: true, description: 'What the crew would like best.' })
  readonly prefer?: BondPressureRequest['prefer'];

  @Num({
    optional: true,
    above: 0,
    upTo: 100,
    unit: 'kPa',
    description: 'Absent: 2 kPa, for a wet bed under a piece that lies on its camber.',
  })
  readonly requiredKPa?: number;

  @Part(() => PressedCamberDto, {
    optional: true,
    description: 'Plain core that must be bent onto the camber.',
  })
  readonly camber?: PressedCamberDto;

  @Part(() => PressedSkinDto)
  readonly innerSkin!: PressedSkinDto;

  @Num({
    optional: true,
    from: 0,
    upTo: 200,
    unit: 'kg/m2',
    description: 'Core, bed and skin on the inner skin; absent: 10 kg/m2.',
  })
  readonly deadLoadKgPerM2?: number;

  @Num({ optional: true, from: 0, upTo: 60, unit: 'degrees' })
  readonly slopeDeg?: number;

  @Flag({ optional: true, description: 'Whether anybody can set props from below; absent: yes.' })
  readonly canPropFromBelow?: boolean;

  @Part(() => WeightsDto, { optional: true })
  readonly weights?: WeightsDto;

  @Part(() => BattensDto, { optional: true })
  readonly battens?: BattensDto;

  @Part(() => VacuumDto, { optional: true })
  readonly vacuum?: VacuumDto;

  @Num({ optional: true, from: -500, upTo: 5000, unit: 'm', description: 'Absent: at the sea.' })
  readonly altitudeM?: number;
}

import type {
  LaminateScheduleRequest,
  LayingOrder,
  LayOutRequest,
  NamedFabric,
  NamedPly,
  PanelBelow,
  PlyMethodName,
  RebeddedSkinRequest,
  RelaidSkinRequest,
  ScheduleLimits,
} from '#lib/laminate';
import { Code, Flag, Length, Num, Nums, OneOf, Outline, Part, Parts, Whole } from '../../edge/dto/index.js';

type OutlinePoints = LayOutRequest['opening'];

const methods = [
  'class-bv',
  'small-craft-yardstick',
  'class-gl',
  'class-lr',
  'micromechanics',
] as const satisfies readonly PlyMethodName[];
const orders = ['smallest-first', 'largest-first'] as const satisfies readonly LayingOrder[];

export class NamedPlyDto implements NamedPly {
  @Code({ description: 'Code of a reinforcement in the catalogue.', example: 'reinforcement-cloth-335' })
  readonly material!: string;

  @Num({
    optional: true,
    from: -360,
    upTo: 360,
    unit: 'degrees',
    description: 'Roll direction from forward; absent: 0.',
  })
  readonly turnDeg?: number;

  @Num({
    optional: true,
    above: 0,
    below: 1,
    description: 'Fibre mass fraction; absent: hand lay-up by the catalogue.',
  })
  readonly fibreMassFraction?: number;
}

export class NamedFabricDto implements NamedFabric {
  @Code({
    description: 'Code of a reinforcement in the catalogue.',
    example: 'reinforcement-woven-roving-600',
  })
  readonly material!: string;

  @Num({
    optional: true,
    from: 0,
    upTo: 10_000_000,
    description:
      'Fabric with its resin per m2 of ply, in one currency for all: it ranks and is never billed. Give it for every fabric or for none.',
  })
  readonly pricePerM2?: number;

  @Nums({
    optional: true,
    least: 1,
    most: 6,
    description:
      'Roll directions it may be laid in, degrees from forward; absent: 0, and 0 and 90 for unidirectional.',
  })
  readonly turnsDeg?: readonly number[];

  @Num({ optional: true, above: 0, below: 1 })
  readonly fibreMassFraction?: number;
}

export class OldSkinDto {
  @Length({ above: 0, upTo: 40, description: 'Measured thickness.', example: 3 })
  readonly thicknessMm!: number;

  @Parts(() => NamedPlyDto, {
    optional: true,
    least: 1,
    most: 60,
    description:
      'Its plies from the core outwards; absent: guessed from the thickness, with the spread stated.',
  })
  readonly plies?: readonly NamedPlyDto[];

  @Code({ optional: true, description: 'Code of its resin; absent: polyester.' })
  readonly resin?: string;
}

export class CoreLayerDto {
  @Length({ above: 0, upTo: 200 })
  readonly thicknessMm!: number;

  @Num({ from: 0, upTo: 50_000, unit: 'MPa', description: 'Modulus in the plane of the panel.' })
  readonly youngMPa!: number;
}

export class OtherSkinDto {
  @Length({ above: 0, upTo: 40 })
  readonly thicknessMm!: number;

  @Num({
    above: 0,
    upTo: 10_000_000,
    unit: 'N/mm',
    description: 'Extensional stiffness along (modulus times thickness).',
  })
  readonly alongNPerMm!: number;

  @Num({ above: 0, upTo: 10_000_000, unit: 'N/mm' })
  readonly acrossNPerMm!: number;
}

export class PanelBelowDto implements PanelBelow {
  @Part(() => CoreLayerDto, { description: 'The core as it was.' })
  readonly core!: CoreLayerDto;

  @Part(() => CoreLayerDto, { optional: true, description: 'The core that goes in; absent: as the old.' })
  readonly newCore?: CoreLayerDto;

  @Part(() => OtherSkinDto, { description: 'The skin that stays.' })
  readonly otherSkin!: OtherSkinDto;
}

export class FlushDto {
  @Length({ from: 0, upTo: 20 })
  readonly proudUpToMm!: number;

  @Length({ from: 0, upTo: 20 })
  readonly lowUpToMm!: number;
}

export class ScheduleLimitsDto implements ScheduleLimits {
  @Whole({ optional: true, from: 1, upTo: 12 })
  readonly mostPlies?: number;

  @Whole({ optional: true, from: 1, upTo: 12 })
  readonly mostKinds?: number;

  @Num({
    optional: true,
    from: 1,
    upTo: 100,
    description:
      'Taper width over skin thickness; absent: 12, and on thin skins as much as makes it 20 mm wide.',
  })
  readonly taperRatio?: number;

  @Length({ optional: true, above: 0, upTo: 100 })
  readonly smallestStepMm?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 3,
    description: 'How much the outer ply may print, 0 to 3; absent: 1.',
  })
  readonly worstPrintThrough?: number;
}

export class LayOutDto implements LayOutRequest {
  @Outline({ description: 'Where the old skin is cut away.' })
  readonly opening!: OutlinePoints;

  @Outline({ optional: true, description: 'Sound skin that the taper may use.' })
  readonly soundSkin?: OutlinePoints;

  @OneOf(orders, { optional: true, description: 'Absent: smallest-first.' })
  readonly order?: LayingOrder;

  @Length({ optional: true, from: 0, upTo: 500 })
  readonly overlapMm?: number;

  @Length({ optional: true, from: 0, upTo: 1000 })
  readonly endAllowanceMm?: number;

  @Length({ optional: true, above: 0, upTo: 40, description: 'Thickest wet stack in one go; absent: 4 mm.' })
  readonly wetLimitMm?: number;
}

export class RelaidSkinDto implements RelaidSkinRequest {
  @Part(() => OldSkinDto)
  readonly oldSkin!: OldSkinDto;

  @Parts(() => NamedFabricDto, {
    optional: true,
    least: 1,
    most: 40,
    description: 'Fabrics at hand; absent: every reinforcement of the catalogue.',
  })
  readonly fabrics?: readonly NamedFabricDto[];

  @Part(() => PanelBelowDto, {
    optional: true,
    description: 'With it, the bending of the panel is restored too.',
  })
  readonly panel?: PanelBelowDto;

  @Part(() => FlushDto, { optional: true, description: 'Absent: 0.5 mm proud, 1 mm low.' })
  readonly flush?: FlushDto;

  @Part(() => ScheduleLimitsDto, { optional: true })
  readonly limits?: ScheduleLimitsDto;

  @OneOf(['likely', 'strongest'], {
    optional: true,
    description: 'Which build of a guessed old skin is restored; absent: likely.',
  })
  readonly restore?: 'likely' | 'strongest';

  @Flag({ optional: true, description: 'Restore shear stiffness in the plane too; absent: false.' })
  readonly restoreShear?: boolean;

  @Part(() => LayOutDto, {
    optional: true,
    description: 'With it, the best skin is laid out over the opening.',
  })
  readonly layOut?: LayOutDto;
}

export class JointDto {
  @Num({ from: 0, upTo: 5000, unit: 'MPa', description: 'Stress in the skin across the cut.' })
  readonly stressMPa!: number;

  @Num({ above: 0, upTo: 100, unit: 'MPa' })
  readonly allowableShearMPa!: number;

  @Num({ optional: true, above: 0, upTo: 100, unit: 'MPa' })
  readonly allowablePeelMPa?: number;
}

export class RebeddedSkinDto implements RebeddedSkinRequest {
  @Length({ above: 0, upTo: 40, example: 2 })
  readonly skinThicknessMm!: number;

  @Outline({ optional: true, description: 'The opening whose edge is the cut.' })
  readonly opening?: OutlinePoints;

  @Length({
    optional: true,
    above: 0,
    upTo: 200_000,
    description: 'Length of the cut, where no outline is given.',
  })
  readonly cutLengthMm?: number;

  @Length({ optional: true, from: 0, upTo: 50, description: 'Width of the saw cut; absent: 4 mm.' })
  readonly kerfMm?: number;

  @Num({
    optional: true,
    from: 1,
    upTo: 100,
    description: 'Absent: 12, and on thin skins as much as makes it 20 mm wide.',
  })
  readonly taperRatio?: number;

  @Parts(() => NamedPlyDto, {
    optional: true,
    least: 1,
    most: 60,
    description: 'Plies over the cut from the core outwards.',
  })
  readonly plies?: readonly NamedPlyDto[];

  @Code({ optional: true, description: 'Instead of plies: one fabric, laid as often as fills the groove.' })
  readonly fillWith?: string;

  @OneOf(orders, { optional: true, description: 'Absent: smallest-first.' })
  readonly order?: LayingOrder;

  @Length({ optional: true, from: 0, upTo: 500 })
  readonly overlapMm?: number;

  @Length({ optional: true, from: 100, upTo: 100_000 })
  readonly longestStripMm?: number;

  @Length({ optional: true, above: 0, upTo: 40 })
  readonly wetLimitMm?: number;

  @Length({
    optional: true,
    from: 0,
    upTo: 200_000,
    description: 'Clear width from the cut to the nearest edge or fitting.',
  })
  readonly roomMm?: number;

  @Part(() => JointDto, { optional: true })
  readonly joint?: JointDto;
}

/** A skin laid anew, one bonded back, or both; materials by their codes. */
export class LaminateScheduleRequestDto implements LaminateScheduleRequest {
  @Code({ description: 'Code of the resin system that is laid.', example: 'resin-epoxy-2to1' })
  readonly resin!: string;

  @OneOf(methods, {
    optional: true,
    description:
      'Where ply properties are taken from; absent: class-bv. One method serves old and new skin alike.',
  })
  readonly method?: PlyMethodName;

  @Part(() => RelaidSkinDto, { optional: true })
  readonly relaid?: RelaidSkinDto;

  @Part(() => RebeddedSkinDto, { optional: true })
  readonly rebedded?: RebeddedSkinDto;
}

import { ApiExtraModels } from '@nestjs/swagger';
import type { CoreType } from '#lib/catalogue';
import type {
  AsFound,
  CoreValues,
  CraftForPanel,
  Criteria,
  EachEdge,
  EdgeFixing,
  EdgeKindAsked,
  FittingRequest,
  LoadedFitting,
  LoadRequest,
  OpenedPanel,
  PanelCheckRequest,
  PanelSize,
  SandwichValues,
  SkinValues,
} from '#lib/panel';
import {
  Label,
  Length,
  Mass,
  Num,
  OneOf,
  Part,
  Parts,
  PartsByKind,
  Text,
  Texts,
  Whole,
} from '../../edge/dto/index.js';

const edgeKinds = ['simply-supported', 'clamped', 'free'] as const satisfies readonly EdgeKindAsked[];
const edgeFixings = ['simply-supported', 'clamped'] as const satisfies readonly EdgeFixing[];
const coreTypes = [
  'end-grain-balsa',
  'cross-linked-foam',
  'san-foam',
  'linear-foam',
  'marine-plywood',
] as const satisfies readonly CoreType[];
const fittingKinds = [
  'stanchion',
  'cleat',
  'winch',
  'windlass',
  'chainplate',
  'mast-step',
  'track',
  'hatch',
  'fill',
  'vent',
  'pad-eye',
  'other',
] as const satisfies readonly LoadedFitting[];

export class EachEdgeDto implements EachEdge {
  @OneOf(edgeKinds, { description: 'The edge at x = 0.' })
  readonly xStart!: EdgeKindAsked;

  @OneOf(edgeKinds)
  readonly xEnd!: EdgeKindAsked;

  @OneOf(edgeKinds, { description: 'The edge at y = 0.' })
  readonly yStart!: EdgeKindAsked;

  @OneOf(edgeKinds)
  readonly yEnd!: EdgeKindAsked;
}

export class PanelSizeDto implements PanelSize {
  @Length({ above: 1, upTo: 20_000, description: 'Fore and aft, between supports.', example: 900 })
  readonly lengthXMm!: number;

  @Length({ above: 1, upTo: 20_000, description: 'Athwartships, between supports.', example: 600 })
  readonly widthYMm!: number;

  @OneOf(edgeKinds, {
    optional: true,
    description: 'All four edges alike; absent: simply-supported, stated as an assumption.',
  })
  readonly edges?: EdgeKindAsked;

  @Part(() => EachEdgeDto, { optional: true, description: 'Each edge by itself, instead of edges.' })
  readonly eachEdge?: EachEdgeDto;
}

const modulus = { from: 1, upTo: 1_000_000, unit: 'MPa' } as const;
const strength = { above: 0, upTo: 10_000, unit: 'MPa' } as const;

export class SkinValuesDto implements SkinValues {
  @Length({ from: 0.1, upTo: 100, example: 3 })
  readonly thicknessMm!: number;

  @Num({ ...modulus, description: 'Membrane modulus along x.' })
  readonly modulusXMPa!: number;

  @Num({ ...modulus, description: 'Membrane modulus along y.' })
  readonly modulusYMPa!: number;

  @Num(modulus)
  readonly shearModulusMPa!: number;

  @Num({ above: -1, upTo: 5, description: 'Strain across y over strain along x under a pull along x.' })
  readonly poissonXY!: number;

  @Num({ ...strength, description: 'Ultimate; along x, or in both directions.' })
  readonly tensileStrengthMPa!: number;

  @Num({ ...strength, description: 'Ultimate; along x, or in both directions.' })
  readonly compressiveStrengthMPa!: number;

  @Num({ ...strength, optional: true })
  readonly tensileStrengthYMPa?: number;

  @Num({ ...strength, optional: true })
  readonly compressiveStrengthYMPa?: number;

  @Num({
    above: 0,
    upTo: 100,
    optional: true,
    unit: 'kg/m2',
    description: 'For the least fibre mass of the yardstick.',
  })
  readonly dryFibreKgPerM2?: number;
}

export class CoreValuesDto implements CoreValues {
  @OneOf(coreTypes)
  readonly coreType!: CoreType;

  @Length({ from: 1, upTo: 200, example: '1/2 in' })
  readonly thicknessMm!: number;

  @Num({ from: 0.1, upTo: 100_000, unit: 'MPa' })
  readonly shearModulusMPa!: number;

  @Num(strength)
  readonly shearStrengthMPa!: number;

  @Num({ from: 0.1, upTo: 1_000_000, unit: 'MPa', description: 'Through the thickness.' })
  readonly compressiveModulusMPa!: number;

  @Num({ ...strength, description: 'Through the thickness.' })
  readonly compressiveStrengthMPa!: number;

  @Num({
    from: 0,
    upTo: 1_000_000,
    unit: 'MPa',
    optional: true,
    description: 'Absent: the core adds nothing in its plane.',
  })
  readonly inPlaneModulusMPa?: number;

  @Num({ above: 0, upTo: 2000, unit: 'kg/m3', optional: true })
  readonly densityKgPerM3?: number;
}

export class SandwichValuesDto implements SandwichValues {
  @Part(() => SkinValuesDto)
  readonly outer!: SkinValuesDto;

  @Part(() => SkinValuesDto)
  readonly inner!: SkinValuesDto;

  @Part(() => CoreValuesDto)
  readonly core!: CoreValuesDto;
}

export class AsFoundDto implements AsFound {
  @Num({ from: 0, upTo: 1, optional: true, description: 'Share of the panel with bad core; absent: 1.' })
  readonly degradedFraction?: number;

  @Num({ from: 0, upTo: 1, optional: true, description: 'What is left of the moduli there; absent: 0.1.' })
  readonly stiffnessFraction?: number;

  @Num({ from: 0, upTo: 1, optional: true, description: 'What is left of the strengths there; absent: 0.1.' })
  readonly strengthFraction?: number;
}

export class OpenedPanelDto implements OpenedPanel {
  @Length({ above: 1, upTo: 20_000, optional: true, description: 'The opening; absent: the whole panel.' })
  readonly lengthXMm?: number;

  @Length({ above: 1, upTo: 20_000, optional: true })
  readonly widthYMm?: number;

  @OneOf(edgeFixings, { optional: true })
  readonly edges?: EdgeFixing;

  @Num({
    above: 0,
    upTo: 110,
    unit: 'kPa',
    optional: true,
    description: 'What presses the new core down; absent: 2 kPa.',
  })
  readonly clampPressureKPa?: number;

  @Length({
    above: 0,
    upTo: 50,
    optional: true,
    description: 'Sag that the new core may keep; absent: 1 mm.',
  })
  readonly allowedSagMm?: number;
}

export class PressureLoadDto {
  @OneOf(['pressure'])
  readonly kind!: 'pressure';

  @Text({ optional: true, atMost: 80 })
  readonly name?: string;

  @Num({ above: 0, upTo: 1000, unit: 'kPa' })
  readonly pressureKPa!: number;
}

export class PatchLoadDto {
  @OneOf(['patch'])
  readonly kind!: 'patch';

  @Text({ optional: true, atMost: 80 })
  readonly name?: string;

  @Num({ above: 0, upTo: 1_000_000, unit: 'N' })
  readonly forceN!: number;

  @Length({ description: 'Middle of the patch.' })
  readonly xMm!: number;

  @Length()
  readonly yMm!: number;

  @Length({ from: 1, upTo: 20_000 })
  readonly lengthXMm!: number;

  @Length({ from: 1, upTo: 20_000 })
  readonly widthYMm!: number;
}

export class PersonLoadDto {
  @OneOf(['person'])
  readonly kind!: 'person';

  @Text({ optional: true, atMost: 80 })
  readonly name?: string;

  @Num({ above: 0, upTo: 1_000_000, unit: 'N', optional: true, description: 'Absent: 1000 N.' })
  readonly forceN?: number;

  @Length({ from: 5, upTo: 200, optional: true, description: 'Absent: 30 mm.' })
  readonly heelRadiusMm?: number;

  @Length({ optional: true, description: 'Absent: the middle of the panel.' })
  readonly xMm?: number;

  @Length({ optional: true })
  readonly yMm?: number;
}

export class ClassDeckLoadDto {
  @OneOf(['class-deck'])
  readonly kind!: 'class-deck';

  @Text({ optional: true, atMost: 80 })
  readonly name?: string;
}

export class YardstickLoadDto {
  @OneOf(['yardstick'])
  readonly kind!: 'yardstick';

  @Text({ optional: true, atMost: 80 })
  readonly name?: string;
}

export class CraftForPanelDto implements CraftForPanel {
  @OneOf(['sail', 'motor'])
  readonly craftType!: CraftForPanel['craftType'];

  @Num({ from: 2, upTo: 24, unit: 'm' })
  readonly lengthWaterlineM!: number;

  @Num({ from: 2.5, upTo: 24, unit: 'm', optional: true })
  readonly lengthHullM?: number;

  @Mass({ from: 50, upTo: 500_000 })
  readonly massLoadedKg!: number;

  @OneOf(['A', 'B', 'C', 'D'])
  readonly designCategory!: CraftForPanel['designCategory'];

  @Num({
    from: 0,
    upTo: 1,
    optional: true,
    description: 'Place of the panel from aft over the waterline; absent: 1, the most severe.',
  })
  readonly shareOfWaterline?: number;

  @Num({ from: 0, upTo: 20, optional: true })
  readonly dynamicLoadFactor?: number;
}

export class CriteriaDto implements Criteria {
  @Num({ above: 0, upTo: 1, optional: true, description: 'Usable share of a skin strength; absent: 0.5.' })
  readonly skinShare?: number;

  @Num({
    above: 0,
    upTo: 1,
    optional: true,
    description: 'Usable share of a core shear strength; absent: by kind of core.',
  })
  readonly coreShearShare?: number;

  @Num({
    above: 0,
    upTo: 1,
    optional: true,
    description: 'Usable share of a core compressive strength; absent: 0.5.',
  })
  readonly coreCrushShare?: number;

  @Num({ from: 1, upTo: 10_000, optional: true, description: 'Short span over deflection; absent: 100.' })
  readonly spanOverDeflection?: number;
}

export class BackingPlateDto {
  @Length({ above: 0, upTo: 2000 })
  readonly lengthMm!: number;

  @Length({ above: 0, upTo: 2000 })
  readonly widthMm!: number;
}

export class PanelFittingDto implements FittingRequest {
  @Label()
  readonly id!: string;

  @OneOf(fittingKinds)
  readonly kind!: LoadedFitting;

  @Whole({ from: 1, upTo: 100 })
  readonly bolts!: number;

  @Length({ from: 2, upTo: 50, example: '5/16 in' })
  readonly boltMm!: number;

  @Num({ above: 0, upTo: 1_000_000, unit: 'N', optional: true, description: 'Clamp force of one bolt.' })
  readonly clampForceN?: number;

  @Num({
    above: 0,
    upTo: 1000,
    unit: 'N.m',
    optional: true,
    description: 'Tightening torque, when the clamp force is not known.',
  })
  readonly torqueNm?: number;

  @Num({ above: 0, upTo: 1_000_000, unit: 'N', optional: true, description: 'Pull away from the deck.' })
  readonly pullN?: number;

  @Num({ above: 0, upTo: 1_000_000, unit: 'N', optional: true, description: 'Load along the deck.' })
  readonly shearN?: number;

  @Length({ above: 0, upTo: 300, optional: true })
  readonly washerMm?: number;

  @Part(() => BackingPlateDto, { optional: true })
  readonly backingPlate?: BackingPlateDto;

  @Length({
    above: 0,
    upTo: 200,
    optional: true,
    description: 'Diameter of the hole potted with thickened resin.',
  })
  readonly pottedMm?: number;

  @Num({
    ...strength,
    optional: true,
    description: 'Compressive strength of the thickened resin; absent: 60 MPa.',
  })
  readonly pottedStrengthMPa?: number;
}

const loadKinds = () => ({
  'pressure': PressureLoadDto,
  'patch': PatchLoadDto,
  'person': PersonLoadDto,
  'class-deck': ClassDeckLoadDto,
  'yardstick': YardstickLoadDto,
});

@ApiExtraModels(PressureLoadDto, PatchLoadDto, PersonLoadDto, ClassDeckLoadDto, YardstickLoadDto)
export class PanelCheckRequestDto implements PanelCheckRequest {
  @Part(() => PanelSizeDto)
  readonly panel!: PanelSizeDto;

  @Part(() => SandwichValuesDto)
  readonly asBuilt!: SandwichValuesDto;

  @Part(() => SandwichValuesDto)
  readonly repaired!: SandwichValuesDto;

  @Part(() => AsFoundDto, { optional: true, description: 'What rot and water left of the core.' })
  readonly asFound?: AsFoundDto;

  @Part(() => OpenedPanelDto, { optional: true, description: 'The inner skin alone while the core is out.' })
  readonly opened?: OpenedPanelDto;

  @PartsByKind('kind', loadKinds, {
    optional: true,
    least: 1,
    most: 12,
    description:
      'Absent: the yardstick pressure when the craft is known, else that of a class rule; and a person on one foot.',
  })
  readonly loads?: readonly LoadRequest[];

  @Part(() => CraftForPanelDto, { optional: true })
  readonly craft?: CraftForPanelDto;

  @Parts(() => PanelFittingDto, { optional: true, most: 50 })
  readonly fittings?: readonly PanelFittingDto[];

  @Part(() => CriteriaDto, { optional: true })
  readonly criteria?: CriteriaDto;

  @Texts({
    optional: true,
    most: 20,
    each: { atMost: 120 },
    description:
      'Keys of checks, ratios and loads to explain down to their inputs, such as repaired:person:core-shear.',
  })
  readonly explain?: readonly string[];

  @Length({
    from: 0.1,
    upTo: 200,
    optional: true,
    description: 'Measured total of the deck, to catch a skin that cannot be.',
  })
  readonly deckThicknessMm?: number;
}

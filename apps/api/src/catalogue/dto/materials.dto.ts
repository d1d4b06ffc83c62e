import type {
  BoltSize,
  Chemistry,
  Coating,
  Consumable,
  CoreForm,
  CoreSheet,
  CoreType,
  Fabric,
  FabricLayer,
  Filler,
  FillerUse,
  Hardener,
  Layup,
  PotLife,
  Reinforcement,
  ResinSystem,
  SheetFormat,
  Usage,
  UsageDriver,
} from '#lib/catalogue';
import { Code, Flag, Num, Nums, OneOf, Part, Parts, SomeOf, Text, Texts } from '../../edge/dto/index.js';
import { DatumDto, Value } from './datum.dto.js';

const wordsOf = <T extends string>(words: Readonly<Record<T, true>>): readonly string[] => Object.keys(words);

const coreTypes = wordsOf<CoreType>({
  'end-grain-balsa': true,
  'cross-linked-foam': true,
  'san-foam': true,
  'linear-foam': true,
  'marine-plywood': true,
});
const fabrics = wordsOf<Fabric>({
  'mat': true,
  'cloth': true,
  'woven-roving': true,
  'biaxial': true,
  'biaxial-mat': true,
  'unidirectional': true,
  'tape': true,
});
const layups = wordsOf<Layup>({ mat: true, woven: true, unidirectional: true });
const chemistries = wordsOf<Chemistry>({ epoxy: true, polyester: true, vinylester: true });
const speeds = wordsOf<Hardener['speed']>({ 'fast': true, 'medium': true, 'slow': true, 'extra-slow': true });
const fillerUses = wordsOf<FillerUse>({
  bedding: true,
  filleting: true,
  potting: true,
  fairing: true,
  thickening: true,
});
const coatings = wordsOf<Coating['coating']>({
  'fairing-compound': true,
  'primer': true,
  'topcoat': true,
  'nonskid': true,
  'gelcoat': true,
});
const drivers = wordsOf<UsageDriver>({
  'job': true,
  'opened-m2': true,
  'cut-m': true,
  'taper-m': true,
  'laminate-m2': true,
  'laminate-session-m2': true,
  'faired-m2': true,
  'finish-m2': true,
  'hole': true,
  'fitting': true,
  'labour-h': true,
  'mixed-l': true,
  'bag-perimeter-m': true,
  'person': true,
  'prop': true,
  'prop-board-m': true,
  'press-bag': true,
  'batten-m': true,
  'batten-screw': true,
});
const units = wordsOf<Consumable['unit']>({
  each: true,
  pair: true,
  m: true,
  m2: true,
  l: true,
  kg: true,
  roll: true,
  pack: true,
});
const occasions = wordsOf<NonNullable<Consumable['when']>>({
  'relay': true,
  're-bed': true,
  'vacuum': true,
  'battens': true,
  'weights': true,
  'epoxy': true,
  'polyester': true,
  'paint': true,
  'nonskid': true,
  'from-below': true,
});

abstract class DescribedDto {
  @Code({ description: 'Stable code, unique in the edition.' })
  readonly code!: string;

  @Text({ atMost: 200, description: 'Generic specification in trade words.' })
  readonly name!: string;

  @Texts({
    optional: true,
    most: 40,
    each: { atMost: 20 },
    description: 'Hazard statements (GHS), such as H226.',
  })
  readonly hazards?: readonly string[];
}

export class SheetFormatDto implements SheetFormat {
  @Num({ above: 0, upTo: 20_000, unit: 'mm' })
  readonly lengthMm!: number;

  @Num({ above: 0, upTo: 10_000, unit: 'mm' })
  readonly widthMm!: number;
}

export class CoreFormDto implements CoreForm {
  @OneOf(['plain', 'scored'])
  readonly form!: CoreForm['form'];

  @Num({ optional: true, above: 0, upTo: 500, unit: 'mm' })
  readonly scoreSpacingMm?: number;

  @Num({ optional: true, from: 0, upTo: 20, unit: 'mm' })
  readonly scoreWidthMm?: number;

  @Num({ optional: true, from: 0, upTo: 1 })
  readonly scoreDepthFraction?: number;
}

export class CoreSheetDto extends DescribedDto implements CoreSheet {
  @OneOf(['core'])
  readonly kind!: 'core';

  @OneOf(coreTypes)
  readonly coreType!: CoreType;

  @Value({ above: 0, upTo: 3000 })
  readonly densityKgPerM3!: DatumDto;

  @Value({ above: 0, upTo: 1000 })
  readonly shearStrengthMPa!: DatumDto;

  @Value({ above: 0, upTo: 10_000 })
  readonly shearModulusMPa!: DatumDto;

  @Value({ above: 0, upTo: 1000 })
  readonly compressiveStrengthMPa!: DatumDto;

  @Value({ above: 0, upTo: 50_000 })
  readonly compressiveModulusMPa!: DatumDto;

  @Value({ above: 0, upTo: 50_000 })
  readonly inPlaneModulusMPa!: DatumDto;

  @Nums({ least: 1, most: 60 })
  readonly thicknessesMm!: readonly number[];

  @Parts(() => SheetFormatDto, { least: 1, most: 20 })
  readonly sheets!: readonly SheetFormatDto[];

  @Parts(() => CoreFormDto, { least: 1, most: 10 })
  readonly forms!: readonly CoreFormDto[];

  @Nums({ most: 16, description: 'Turns in degrees that keep the grain right; empty when any turn will do.' })
  readonly allowedTurnsDeg!: readonly number[];

  @Value({ above: 0, upTo: 100 })
  readonly largestPieceM2!: DatumDto;

  @Flag()
  readonly needsBleedHoles!: boolean;

  @Value({ from: 0, upTo: 20 })
  readonly wetOutLPerM2!: DatumDto;
}

export class FabricLayerDto implements FabricLayer {
  @OneOf(layups)
  readonly layup!: Layup;

  @Num({ from: -90, upTo: 90, unit: 'deg' })
  readonly angleDeg!: number;

  @Num({ above: 0, upTo: 10_000, unit: 'g/m2' })
  readonly arealMassGPerM2!: number;
}

export class ReinforcementDto extends DescribedDto implements Reinforcement {
  @OneOf(['reinforcement'])
  readonly kind!: 'reinforcement';

  @OneOf(fabrics)
  readonly fabric!: Fabric;

  @OneOf(['e-glass'])
  readonly fibre!: 'e-glass';

  @Value({ above: 0, upTo: 10_000 })
  readonly arealMassGPerM2!: DatumDto;

  @Parts(() => FabricLayerDto, { least: 1, most: 12, description: 'Bottom first.' })
  readonly layers!: readonly FabricLayerDto[];

  @Value({ above: 0, below: 1 })
  readonly fibreMassFraction!: DatumDto;

  @Nums({ least: 1, most: 20 })
  readonly rollWidthsMm!: readonly number[];

  @Nums({ least: 1, most: 20 })
  readonly rollLengthsM!: readonly number[];

  @Flag()
  readonly suitsAgainstCore!: boolean;

  @Num({ from: 0, upTo: 3, description: '0 not at all, 3 strongly.' })
  readonly printThrough!: number;

  @SomeOf(chemistries, { least: 1, most: 3 })
  readonly suitsResins!: readonly Chemistry[];
}

export class PotLifeDto implements PotLife {
  @Num({ above: 0, upTo: 10_000, unit: 'g' })
  readonly massG!: number;

  @Num({ from: -20, upTo: 100, unit: 'degC' })
  readonly temperatureC!: number;

  @Value({ above: 0, upTo: 10_000 })
  readonly minutes!: DatumDto;
}

export class HardenerDto implements Hardener {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @OneOf(speeds)
  readonly speed!: Hardener['speed'];

  @Value({ above: 0, upTo: 5 })
  readonly densityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 200 })
  readonly partsByMass!: DatumDto;

  @Value({ above: 0, upTo: 200 })
  readonly partsByVolume!: DatumDto;

  @Parts(() => PotLifeDto, { least: 1, most: 20 })
  readonly potLives!: readonly PotLifeDto[];

  @Value({ from: -20, upTo: 60 })
  readonly lowestTemperatureC!: DatumDto;

  @Value({ from: -20, upTo: 100 })
  readonly highestTemperatureC!: DatumDto;

  @Value({ above: 0, upTo: 1000 })
  readonly gelH!: DatumDto;

  @Value({ above: 0, upTo: 1000 })
  readonly releaseH!: DatumDto;

  @Value({ above: 0, upTo: 1000 })
  readonly sandableH!: DatumDto;

  @Value({ above: 0, upTo: 5000 })
  readonly recoatShutsH!: DatumDto;

  @Value({ above: 0, upTo: 5000 })
  readonly fullCureH!: DatumDto;

  @Texts({ optional: true, most: 40, each: { atMost: 20 } })
  readonly hazards?: readonly string[];
}

export class ResinSystemDto extends DescribedDto implements ResinSystem {
  @OneOf(['resin'])
  readonly kind!: 'resin';

  @OneOf(chemistries)
  readonly chemistry!: Chemistry;

  @Value({ above: 0, upTo: 5 })
  readonly densityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 5 })
  readonly curedDensityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 50_000 })
  readonly youngModulusMPa!: DatumDto;

  @Value({ above: 0, below: 0.5 })
  readonly poissonRatio!: DatumDto;

  @Value({ above: 0, upTo: 5000 })
  readonly heatOfReactionJPerG!: DatumDto;

  @Value({ above: 0, upTo: 10 })
  readonly specificHeatJPerGK!: DatumDto;

  @Value({ above: 0, upTo: 500 })
  readonly activationEnergyKJPerMol!: DatumDto;

  @Parts(() => HardenerDto, { least: 1, most: 10 })
  readonly hardeners!: readonly HardenerDto[];
}

export class FillerDto extends DescribedDto implements Filler {
  @OneOf(['filler'])
  readonly kind!: 'filler';

  @Value({ above: 0, upTo: 10 })
  readonly trueDensityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 10 })
  readonly bulkDensityGPerCm3!: DatumDto;

  @SomeOf(fillerUses, { least: 1, most: 5 })
  readonly uses!: readonly FillerUse[];

  @Value({ above: 0, upTo: 1000 })
  readonly partsPerHundred!: DatumDto;
}

export class CoatingDto extends DescribedDto implements Coating {
  @OneOf(['coating'])
  readonly kind!: 'coating';

  @OneOf(coatings)
  readonly coating!: Coating['coating'];

  @Value({ above: 0, upTo: 10 })
  readonly densityKgPerL!: DatumDto;

  @Value({ above: 0, upTo: 100 })
  readonly coverageM2PerL!: DatumDto;

  @Value({ above: 0, upTo: 20 })
  readonly coats!: DatumDto;

  @Value({ from: 0, upTo: 1000 })
  readonly recoatH!: DatumDto;

  @Value({ from: -20, upTo: 60 })
  readonly lowestTemperatureC!: DatumDto;

  @Value({ above: 0, upTo: 100 })
  readonly highestRelativeHumidityPercent!: DatumDto;

  @Flag()
  readonly isIsocyanate!: boolean;
}

export class UsageDto implements Usage {
  @OneOf(drivers)
  readonly driver!: UsageDriver;

  @Value({ from: 0 })
  readonly perDriver!: DatumDto;
}

export class BoltSizeDto implements BoltSize {
  @Num({ unit: 'mm', above: 0, upTo: 50 })
  readonly diameterMm!: number;

  @Num({ unit: 'mm', above: 0, upTo: 1000 })
  readonly lengthMm!: number;
}

export class ConsumableDto extends DescribedDto implements Consumable {
  @OneOf(['consumable', 'safety', 'fastener'])
  readonly kind!: Consumable['kind'];

  @OneOf(units)
  readonly unit!: Consumable['unit'];

  @OneOf(occasions, { optional: true, description: 'When it belongs to a job at all; absent means always.' })
  readonly when?: Consumable['when'];

  @Part(() => BoltSizeDto, {
    optional: true,
    description: 'Size of a screw that is bought by its diameter and length.',
  })
  readonly bolt?: BoltSizeDto;

  @Value({
    from: 1,
    upTo: 1000,
    optional: true,
    description: 'Jobs that one of it serves; absent, it is used up or stays in the boat.',
  })
  readonly servesJobs?: DatumDto;

  @Parts(() => UsageDto, {
    least: 0,
    most: 12,
    description: 'None for what is bought by a card of its own, as fastenings are.',
  })
  readonly usages!: readonly UsageDto[];
}

export const materialKinds = {
  core: CoreSheetDto,
  reinforcement: ReinforcementDto,
  resin: ResinSystemDto,
  filler: FillerDto,
  coating: CoatingDto,
  consumable: ConsumableDto,
  safety: ConsumableDto,
  fastener: ConsumableDto,
} as const;

export const materialClasses = [
  CoreSheetDto,
  ReinforcementDto,
  ResinSystemDto,
  FillerDto,
  CoatingDto,
  ConsumableDto,
] as const;

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
  'styrenated-l': true,
  'gelcoat-m2': true,
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

/** What every kind of material says of itself. */
function describedAs(kind: string) {
  abstract class DescribedDto {
    @Code({ description: `Stable code of the ${kind}, unique in the edition.` })
    readonly code!: string;

    @Text({ atMost: 200, description: `Generic specification of the ${kind} in trade words.` })
    readonly name!: string;

    @Texts({
      optional: true,
      most: 40,
      each: { atMost: 20 },
      description: `Hazard statements (GHS) of the ${kind}, such as H226.`,
    })
    readonly hazards?: readonly string[];
  }
  return DescribedDto;
}

export class SheetFormatDto implements SheetFormat {
  @Num({ above: 0, upTo: 20_000, unit: 'mm', description: 'Length of a sheet.' })
  readonly lengthMm!: number;

  @Num({ above: 0, upTo: 10_000, unit: 'mm', description: 'Width of a sheet.' })
  readonly widthMm!: number;
}

export class CoreFormDto implements CoreForm {
  @OneOf(['plain', 'scored'], { description: 'Plain sheet, or scored so that it can bend.' })
  readonly form!: CoreForm['form'];

  @Num({
    optional: true,
    above: 0,
    upTo: 500,
    unit: 'mm',
    description: 'Distance between the cuts of a scored sheet.',
  })
  readonly scoreSpacingMm?: number;

  @Num({ optional: true, from: 0, upTo: 20, unit: 'mm', description: 'Width of those cuts.' })
  readonly scoreWidthMm?: number;

  @Num({ optional: true, from: 0, upTo: 1, description: 'Depth of the cuts as a share of the thickness.' })
  readonly scoreDepthFraction?: number;
}

export class CoreSheetDto extends describedAs('core sheet') implements CoreSheet {
  @OneOf(['core'], { description: 'Says that the material is a core sheet.' })
  readonly kind!: 'core';

  @OneOf(coreTypes, { description: 'What the core is made of.' })
  readonly coreType!: CoreType;

  @Value({ above: 0, upTo: 3000, description: 'Density of the dry core.' })
  readonly densityKgPerM3!: DatumDto;

  @Value({ above: 0, upTo: 1000, description: 'Shear strength through the thickness.' })
  readonly shearStrengthMPa!: DatumDto;

  @Value({ above: 0, upTo: 10_000, description: 'Shear modulus through the thickness.' })
  readonly shearModulusMPa!: DatumDto;

  @Value({ above: 0, upTo: 1000, description: 'Compressive strength through the thickness.' })
  readonly compressiveStrengthMPa!: DatumDto;

  @Value({ above: 0, upTo: 50_000, description: 'Compressive modulus through the thickness.' })
  readonly compressiveModulusMPa!: DatumDto;

  @Value({ above: 0, upTo: 50_000, description: "Young's modulus in the plane of the sheet." })
  readonly inPlaneModulusMPa!: DatumDto;

  @Nums({ least: 1, most: 60, description: 'Thicknesses that the core is sold in.' })
  readonly thicknessesMm!: readonly number[];

  @Parts(() => SheetFormatDto, { least: 1, most: 20, description: 'Sizes that the sheets are sold in.' })
  readonly sheets!: readonly SheetFormatDto[];

  @Parts(() => CoreFormDto, { least: 1, most: 10, description: 'Forms that the sheets are sold in.' })
  readonly forms!: readonly CoreFormDto[];

  @Nums({ most: 16, description: 'Turns in degrees that keep the grain right; empty when any turn will do.' })
  readonly allowedTurnsDeg!: readonly number[];

  @Value({ above: 0, upTo: 100, description: 'Largest piece that can be bedded before the resin kicks.' })
  readonly largestPieceM2!: DatumDto;

  @Flag({ description: 'Whether pieces are drilled so that air can leave under them.' })
  readonly needsBleedHoles!: boolean;

  @Value({ from: 0, upTo: 20, description: 'Mixed resin that both faces take before bedding.' })
  readonly wetOutLPerM2!: DatumDto;
}

export class FabricLayerDto implements FabricLayer {
  @OneOf(layups, { description: 'How the fibres of the layer lie.' })
  readonly layup!: Layup;

  @Num({ from: -90, upTo: 90, unit: 'deg', description: 'Direction of its fibres against the roll.' })
  readonly angleDeg!: number;

  @Num({ above: 0, upTo: 10_000, unit: 'g/m2', description: 'Glass in the layer, per square metre.' })
  readonly arealMassGPerM2!: number;
}

export class ReinforcementDto extends describedAs('fabric') implements Reinforcement {
  @OneOf(['reinforcement'], { description: 'Says that the material is a fabric.' })
  readonly kind!: 'reinforcement';

  @OneOf(fabrics, { description: 'How the fabric is made.' })
  readonly fabric!: Fabric;

  @OneOf(['e-glass'], { description: 'What its fibres are.' })
  readonly fibre!: 'e-glass';

  @Value({ above: 0, upTo: 10_000, description: 'Mass of the dry fabric.' })
  readonly arealMassGPerM2!: DatumDto;

  @Parts(() => FabricLayerDto, { least: 1, most: 12, description: 'Bottom first.' })
  readonly layers!: readonly FabricLayerDto[];

  @Value({
    above: 0,
    below: 1,
    description: 'Glass over laminate by mass, as it is usually wetted out by hand.',
  })
  readonly fibreMassFraction!: DatumDto;

  @Nums({ least: 1, most: 20, description: 'Widths that its rolls are sold in.' })
  readonly rollWidthsMm!: readonly number[];

  @Nums({ least: 1, most: 20, description: 'Lengths that its rolls are sold in.' })
  readonly rollLengthsM!: readonly number[];

  @Flag({ description: 'Whether it may lie next to the core.' })
  readonly suitsAgainstCore!: boolean;

  @Num({ from: 0, upTo: 3, description: '0 not at all, 3 strongly.' })
  readonly printThrough!: number;

  @SomeOf(chemistries, { least: 1, most: 3, description: 'Chemistries that wet it out.' })
  readonly suitsResins!: readonly Chemistry[];
}

export class PotLifeDto implements PotLife {
  @Num({ above: 0, upTo: 10_000, unit: 'g', description: 'Mass in the pot.' })
  readonly massG!: number;

  @Num({ from: -20, upTo: 100, unit: 'degC', description: 'Warmth at which it was mixed.' })
  readonly temperatureC!: number;

  @Value({ above: 0, upTo: 10_000, description: 'Minutes that this pot stays workable.' })
  readonly minutes!: DatumDto;
}

export class HardenerDto implements Hardener {
  @Code({ description: 'Code of the hardener, unique in its system.' })
  readonly code!: string;

  @Text({ description: 'Name that the crew knows the hardener by.' })
  readonly name!: string;

  @OneOf(speeds, { description: 'How fast it cures, against the others of the system.' })
  readonly speed!: Hardener['speed'];

  @Value({ above: 0, upTo: 5, description: 'Density of the liquid hardener.' })
  readonly densityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 200, description: 'Hardener to 100 parts of resin by mass.' })
  readonly partsByMass!: DatumDto;

  @Value({ above: 0, upTo: 200, description: 'Hardener to 100 parts of resin by volume.' })
  readonly partsByVolume!: DatumDto;

  @Parts(() => PotLifeDto, {
    least: 1,
    most: 20,
    description: 'Pot lives from the data sheet, each for a mass and a warmth.',
  })
  readonly potLives!: readonly PotLifeDto[];

  @Value({ from: -20, upTo: 60, description: 'Coldest deck that it cures on.' })
  readonly lowestTemperatureC!: DatumDto;

  @Value({ from: -20, upTo: 100, description: 'Warmest deck that it can be worked on.' })
  readonly highestTemperatureC!: DatumDto;

  @Value({ above: 0, upTo: 1000, description: 'Hours at 25 degC until it gels.' })
  readonly gelH!: DatumDto;

  @Value({ above: 0, upTo: 1000, description: 'Hours at 25 degC until clamps may come off.' })
  readonly releaseH!: DatumDto;

  @Value({ above: 0, upTo: 1000, description: 'Hours at 25 degC until it sands well.' })
  readonly sandableH!: DatumDto;

  @Value({
    above: 0,
    upTo: 5000,
    description: 'Hours at 25 degC within which the next layer bonds without sanding.',
  })
  readonly recoatShutsH!: DatumDto;

  @Value({ above: 0, upTo: 5000, description: 'Hours at 25 degC to full hardness.' })
  readonly fullCureH!: DatumDto;

  @Texts({
    optional: true,
    most: 40,
    each: { atMost: 20 },
    description: 'Hazard statements of the hardener, such as H314.',
  })
  readonly hazards?: readonly string[];
}

export class ResinSystemDto extends describedAs('resin') implements ResinSystem {
  @OneOf(['resin'], { description: 'Says that the material is a resin system.' })
  readonly kind!: 'resin';

  @OneOf(chemistries, { description: 'Family that the resin belongs to.' })
  readonly chemistry!: Chemistry;

  @Value({ above: 0, upTo: 5, description: 'Density of the liquid resin.' })
  readonly densityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 5, description: 'Density of the cured mix.' })
  readonly curedDensityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 50_000, description: "Young's modulus of the cured mix." })
  readonly youngModulusMPa!: DatumDto;

  @Value({ above: 0, below: 0.5, description: "Poisson's ratio of the cured mix." })
  readonly poissonRatio!: DatumDto;

  @Value({ above: 0, upTo: 5000, description: 'Heat that a gram of the mix gives off.' })
  readonly heatOfReactionJPerG!: DatumDto;

  @Value({ above: 0, upTo: 10, description: 'Heat that a gram of the mix takes up for a kelvin.' })
  readonly specificHeatJPerGK!: DatumDto;

  @Value({ above: 0, upTo: 500, description: 'How strongly warmth hastens its cure.' })
  readonly activationEnergyKJPerMol!: DatumDto;

  @Parts(() => HardenerDto, { least: 1, most: 10, description: 'Hardeners that cure it.' })
  readonly hardeners!: readonly HardenerDto[];
}

export class FillerDto extends describedAs('filler') implements Filler {
  @OneOf(['filler'], { description: 'Says that the material is a filler.' })
  readonly kind!: 'filler';

  @Value({ above: 0, upTo: 10, description: 'Density of the particles.' })
  readonly trueDensityGPerCm3!: DatumDto;

  @Value({ above: 0, upTo: 10, description: 'Density as it lies in the tub.' })
  readonly bulkDensityGPerCm3!: DatumDto;

  @SomeOf(fillerUses, { least: 1, most: 5, description: 'What mixes with it are good for.' })
  readonly uses!: readonly FillerUse[];

  @Value({
    above: 0,
    upTo: 1000,
    description: 'Filler to 100 parts of mixed resin by mass, for its main use.',
  })
  readonly partsPerHundred!: DatumDto;
}

export class CoatingDto extends describedAs('coating') implements Coating {
  @OneOf(['coating'], { description: 'Says that the material is a coating.' })
  readonly kind!: 'coating';

  @OneOf(coatings, { description: 'What the coating is for.' })
  readonly coating!: Coating['coating'];

  @Value({ above: 0, upTo: 10, description: 'Density as it is applied.' })
  readonly densityKgPerL!: DatumDto;

  @Value({ above: 0, upTo: 100, description: 'Area that a litre covers in one coat.' })
  readonly coverageM2PerL!: DatumDto;

  @Value({ above: 0, upTo: 20, description: 'Coats that make it complete.' })
  readonly coats!: DatumDto;

  @Value({ from: 0, upTo: 1000, description: 'Hours before the next coat may follow.' })
  readonly recoatH!: DatumDto;

  @Value({ from: -20, upTo: 60, description: 'Coldest deck that it may be applied on.' })
  readonly lowestTemperatureC!: DatumDto;

  @Value({ above: 0, upTo: 100, description: 'Dampest air that it may be applied in.' })
  readonly highestRelativeHumidityPercent!: DatumDto;

  @Flag({ description: 'Whether it holds isocyanates, which need air-fed protection when sprayed.' })
  readonly isIsocyanate!: boolean;
}

export class UsageDto implements Usage {
  @OneOf(drivers, { description: 'What the use is counted by.' })
  readonly driver!: UsageDriver;

  @Value({ from: 0, description: 'How much is used for one of those.' })
  readonly perDriver!: DatumDto;
}

export class BoltSizeDto implements BoltSize {
  @Num({ unit: 'mm', above: 0, upTo: 50, description: 'Diameter of the bolt.' })
  readonly diameterMm!: number;

  @Num({ unit: 'mm', above: 0, upTo: 1000, description: 'Length of the bolt under its head.' })
  readonly lengthMm!: number;
}

export class ConsumableDto extends describedAs('consumable') implements Consumable {
  @OneOf(['consumable', 'safety', 'fastener'], {
    description: 'Says that the material is used up by the work.',
  })
  readonly kind!: Consumable['kind'];

  @OneOf(units, { description: 'Unit that it is counted in.' })
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

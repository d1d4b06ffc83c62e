import type {
  CauseClass,
  CauseRecord,
  Conditions,
  Craft,
  Crew,
  DefectRecord,
  EdgeKind,
  FittingKind,
  FittingRecord,
  MethodChoice,
  OldCore,
  PanelRecord,
  PricingChoice,
  SkinRecord,
  SupportLine,
  ZoneCondition,
  ZoneRecord,
} from '#lib/estimate';
import type {
  EvidenceGrade,
  HammerSound,
  MeterReading,
  Place,
  Plug,
  PlugCondition,
  Reading,
  Sounding,
  Survey,
} from '#lib/extent';
import { DepreciationDto } from './depreciation.dto.js';
import { DeckWarmthDto, ForecastDto } from './weather.dto.js';
import { ApiExtraModels } from '@nestjs/swagger';
import {
  Area,
  CalendarDate,
  Code,
  Flag,
  Label,
  Length,
  Mass,
  Num,
  OneOf,
  Outline,
  Outlines,
  Part,
  Parts,
  PartsByKind,
  Point,
  SomeOf,
  Temperature,
  Text,
  Whole,
} from '../edge/dto/index.js';

/** Every member of a union of words, held to the union by the compiler in both directions. */
const wordsOf = <T extends string>(words: Readonly<Record<T, true>>): readonly string[] => Object.keys(words);

const edgeKinds = wordsOf<EdgeKind>({
  'hull-joint': true,
  'coaming': true,
  'hatch': true,
  'toe-rail': true,
  'bulkhead': true,
  'beam': true,
  'other': true,
});
const surfaces = wordsOf<NonNullable<PanelRecord['surface']>>({
  'smooth-paint': true,
  'painted-nonskid': true,
  'moulded-nonskid': true,
  'planked': true,
});
const beneath = wordsOf<NonNullable<PanelRecord['under']>[number]>({
  'wiring': true,
  'fuel-tank': true,
  'water-tank': true,
  'hoses': true,
  'lining': true,
  'insulation': true,
});
const coreTypes = wordsOf<NonNullable<OldCore['coreType']>>({
  'end-grain-balsa': true,
  'cross-linked-foam': true,
  'san-foam': true,
  'linear-foam': true,
  'marine-plywood': true,
});
const conditions = wordsOf<ZoneCondition>({ 'wet-rotten': true, 'wet-bonded': true, 'dry-debonded': true });
const fittingKinds = wordsOf<FittingKind>({
  'stanchion': true,
  'cleat': true,
  'winch': true,
  'windlass': true,
  'chainplate': true,
  'mast-step': true,
  'track': true,
  'hatch': true,
  'fill': true,
  'vent': true,
  'pad-eye': true,
  'other': true,
});
const evidenceGrades = wordsOf<EvidenceGrade>({
  'mapped-with-plugs': true,
  'sounded-and-metered': true,
  'single-symptom': true,
});
const causes = wordsOf<CauseRecord['cause']>({
  'leaking-fitting': true,
  'impact': true,
  'construction': true,
  'unknown': true,
});
const causeClasses = wordsOf<CauseClass>({ 'sudden': true, 'pre-existing': true, 'maintenance': true });
const sounds = wordsOf<HammerSound>({ sharp: true, dull: true, void: true });
const plugConditions = wordsOf<PlugCondition>({
  'dry-sound': true,
  'damp-sound': true,
  'wet-bonded': true,
  'rotten': true,
  'debonded-dry': true,
});
const days = wordsOf<NonNullable<Crew['workingDays']>[number]>({
  mon: true,
  tue: true,
  wed: true,
  thu: true,
  fri: true,
  sat: true,
  sun: true,
});

export class CraftDto implements Craft {
  @OneOf(['sail', 'motor'], { optional: true })
  readonly craftType?: Craft['craftType'];

  @Num({ optional: true, from: 2, upTo: 120, unit: 'm' })
  readonly lengthHullM?: number;

  @Num({ optional: true, from: 2, upTo: 120, unit: 'm' })
  readonly lengthWaterlineM?: number;

  @Mass({ optional: true, above: 0, upTo: 10_000_000, description: 'Loaded mass: kg, or text with a unit.' })
  readonly massLoadedKg?: number;

  @OneOf(['A', 'B', 'C', 'D'], { optional: true, description: 'Design category.' })
  readonly designCategory?: Craft['designCategory'];

  @Whole({ optional: true, from: 1900, upTo: 2200 })
  readonly yearBuilt?: number;
}

export class SupportLineDto implements SupportLine {
  @OneOf(edgeKinds)
  readonly kind!: EdgeKind;

  @Point()
  readonly from!: Place;

  @Point()
  readonly to!: Place;
}

export class PanelDto implements PanelRecord {
  @Text({ optional: true, atMost: 100 })
  readonly name?: string;

  @Outline({
    description: 'The edge of the panel, from support to support.',
    example: [
      [0, 0],
      [1600, 0],
      [1600, 1200],
      [0, 1200],
    ],
  })
  readonly outline!: readonly Place[];

  @Outlines({ optional: true, description: 'Hatches and other openings in the deck.' })
  readonly holes?: readonly (readonly Place[])[];

  @Parts(() => SupportLineDto, {
    optional: true,
    most: 100,
    description: 'Lines the deck rests on: no joint of core or skin over them.',
  })
  readonly supports?: readonly SupportLineDto[];

  @OneOf(['simply-supported', 'clamped'], { optional: true })
  readonly edges?: PanelRecord['edges'];

  @Length({
    optional: true,
    from: 500,
    upTo: 1_000_000,
    description: 'Radius of the camber; absent means flat.',
  })
  readonly camberRadiusMm?: number;

  @SomeOf(beneath, {
    optional: true,
    most: 6,
    description: 'What lies below: each brings its caution and its checks.',
  })
  readonly under?: PanelRecord['under'];

  @OneOf(['open', 'lined', 'none'], { optional: true })
  readonly accessBelow?: PanelRecord['accessBelow'];

  @OneOf(surfaces, { optional: true })
  readonly surface?: PanelRecord['surface'];
}

export class KnownPlyDto {
  @Code({ description: 'Code of a reinforcement in the catalogue.' })
  readonly material!: string;
}

export class SkinDto implements SkinRecord {
  @Length({
    above: 0,
    upTo: 60,
    description: 'Thickness of the skin: mm, or text with a unit.',
    example: '1/8 in',
  })
  readonly thicknessMm!: number;

  @Parts(() => KnownPlyDto, {
    optional: true,
    most: 60,
    description: 'Known plies, from the face of the skin inwards.',
  })
  readonly plies?: readonly KnownPlyDto[];
}

export class OldCoreDto implements OldCore {
  @Length({
    above: 0,
    upTo: 200,
    description: 'Thickness of the old core: mm, or text with a unit.',
    example: '1/2 in',
  })
  readonly thicknessMm!: number;

  @Length({
    optional: true,
    above: 0,
    upTo: 220,
    description:
      'From the inner skin to the underside of the outer skin, where measured: the core with its old bond lines.',
  })
  readonly cavityMm?: number;

  @OneOf(coreTypes, { optional: true })
  readonly coreType?: OldCore['coreType'];

  @Num({ optional: true, from: 30, upTo: 1200, unit: 'kg/m3' })
  readonly densityKgPerM3?: number;
}

export class ZoneDto implements ZoneRecord {
  @Label()
  readonly id!: string;

  @Outline({ description: 'The region of bad core.' })
  readonly outline!: readonly Place[];

  @OneOf(conditions, { optional: true })
  readonly condition?: ZoneCondition;
}

abstract class ReadingDto {
  @Point()
  readonly at!: Place;

  @Flag({
    optional: true,
    description: 'Metal, a tank, a fitting or a thick spot nearby makes the reading doubtful.',
  })
  readonly isUnreliable?: boolean;
}

export class SoundingDto extends ReadingDto implements Sounding {
  @OneOf(['sounding'])
  readonly kind!: 'sounding';

  @OneOf(sounds)
  readonly sound!: HammerSound;
}

export class MeterReadingDto extends ReadingDto implements MeterReading {
  @OneOf(['moisture'])
  readonly kind!: 'moisture';

  @Num({ from: -10_000, upTo: 10_000, description: 'On the scale of the meter itself.' })
  readonly value!: number;
}

export class PlugDto extends ReadingDto implements Plug {
  @OneOf(['plug'])
  readonly kind!: 'plug';

  @OneOf(plugConditions)
  readonly condition!: PlugCondition;

  @Num({ optional: true, from: 0, upTo: 1000, unit: '%' })
  readonly moisturePercent?: number;

  @Length({ optional: true, above: 0, upTo: 60 })
  readonly outerSkinMm?: number;

  @Length({ optional: true, above: 0, upTo: 60 })
  readonly innerSkinMm?: number;

  @Length({ optional: true, above: 0, upTo: 200 })
  readonly coreMm?: number;
}

export const readingKinds = { sounding: SoundingDto, moisture: MeterReadingDto, plug: PlugDto } as const;

export class MeterDto {
  @Num({ from: -10_000, upTo: 10_000, description: 'On sound, dry deck of the same build.' })
  readonly dryReference!: number;

  @Num({ from: -10_000, upTo: 10_000, description: 'On soaked core.' })
  readonly wetReference!: number;
}

@ApiExtraModels(SoundingDto, MeterReadingDto, PlugDto)
export class SurveyDto implements Survey {
  @PartsByKind('kind', () => readingKinds, { least: 1, most: 2000 })
  readonly readings!: readonly Reading[];

  @Part(() => MeterDto, { optional: true })
  readonly meter?: MeterDto;
}

export class FittingDto implements FittingRecord {
  @Label()
  readonly id!: string;

  @OneOf(fittingKinds)
  readonly kind!: FittingKind;

  @Point()
  readonly at!: Place;

  @Whole({ optional: true, from: 0, upTo: 200 })
  readonly holes?: number;

  @Length({ optional: true, above: 0, upTo: 150 })
  readonly holeDiameterMm?: number;

  @Length({ optional: true, above: 0, upTo: 3000, description: 'Largest size of its base on deck.' })
  readonly baseMm?: number;

  @Flag({ optional: true })
  readonly isLeaking?: boolean;
}

export class CauseDto implements CauseRecord {
  @OneOf(causes)
  readonly cause!: CauseRecord['cause'];

  @OneOf(causeClasses, {
    optional: true,
    description: 'What the insurer will ask: sudden, already there, or upkeep.',
  })
  readonly causeClass?: CauseClass;

  @Text({ optional: true, atMost: 2000 })
  readonly note?: string;
}

export class MethodDto implements MethodChoice {
  @OneOf(['re-bed', 'relay'], { optional: true })
  readonly skin?: MethodChoice['skin'];

  @OneOf(['from-above', 'from-below'], { optional: true })
  readonly access?: MethodChoice['access'];

  @OneOf(['weights', 'battens', 'vacuum'], { optional: true })
  readonly press?: MethodChoice['press'];

  @Code({ optional: true, description: 'Code of a core sheet in the catalogue.' })
  readonly core?: string;

  @Code({ optional: true, description: 'Code of a resin system in the catalogue.' })
  readonly resin?: string;

  @Num({
    optional: true,
    above: 0,
    upTo: 500,
    unit: 'ml',
    description: 'What one stroke of the resin pump gives; the batch cards then count strokes.',
  })
  readonly pumpResinMlPerStroke?: number;

  @OneOf(['patch', 'panel', 'whole-deck'], { optional: true })
  readonly finish?: MethodChoice['finish'];

  @Area({ optional: true, above: 0, upTo: 2000 })
  readonly wholeDeckAreaM2?: number;

  @Num({ optional: true, from: 3, upTo: 100 })
  readonly taperRatio?: number;

  @Length({ optional: true, from: 0, upTo: 500 })
  readonly cutMarginMm?: number;

  @Length({ optional: true, from: 0, upTo: 300 })
  readonly flangeMm?: number;
}

export class ConditionsDto implements Conditions {
  @Temperature({ optional: true, from: -20, upTo: 50 })
  readonly temperatureC?: number;

  @Num({ optional: true, from: 0, upTo: 100, unit: '%' })
  readonly relativeHumidityPercent?: number;

  @OneOf(['shed', 'tent', 'open'], { optional: true })
  readonly shelter?: Conditions['shelter'];

  @Num({ optional: true, from: -450, upTo: 5000, unit: 'm' })
  readonly altitudeM?: number;

  @Flag({ optional: true })
  readonly isAfloat?: boolean;

  @Part(() => ForecastDto, {
    optional: true,
    description:
      'With it each step has its windows, and the calendar and the cures follow the weather as far as it reaches; the stated conditions count elsewhere.',
  })
  readonly forecast?: ForecastDto;

  @Part(() => DeckWarmthDto, {
    optional: true,
    description: "How much warmer the deck is than the forecast's air.",
  })
  readonly warmth?: DeckWarmthDto;
}

export class CrewDto implements Crew {
  @Whole({ optional: true, from: 1, upTo: 20 })
  readonly people?: number;

  @OneOf(['professional', 'owner'], { optional: true })
  readonly skill?: Crew['skill'];

  @Num({ optional: true, from: 1, upTo: 16, unit: 'h' })
  readonly hoursPerDay?: number;

  @CalendarDate({ optional: true, description: 'The day on which work may start.' })
  readonly startDate?: string;

  @SomeOf(days, { optional: true, least: 1, most: 7 })
  readonly workingDays?: Crew['workingDays'];
}

export class PricingDto implements PricingChoice {
  @Code({ optional: true })
  readonly priceList?: string;

  @Code({ optional: true })
  readonly labourRates?: string;

  @Num({
    optional: true,
    from: 0,
    upTo: 100,
    unit: '%',
    description: 'Absent: P80 minus the point estimate.',
  })
  readonly contingencyPercent?: number;

  @Whole({ optional: true, from: 0, upTo: 4_294_967_295 })
  readonly seed?: number;

  @Whole({ optional: true, from: 1000, upTo: 100_000 })
  readonly samples?: number;

  @Part(() => DepreciationDto, {
    optional: true,
    description: 'Wear of the parts that are replaced; shown beside the price, which it does not change.',
  })
  readonly depreciation?: DepreciationDto;
}

/** A defect record: only the panel's outline, one of `zones` and `survey`, and the thicknesses are needed. */
export class DefectRecordDto implements DefectRecord {
  @Text({ optional: true, atMost: 200 })
  readonly title?: string;

  @Text({ optional: true, atMost: 100, description: "The caller's own reference." })
  readonly reference?: string;

  @Part(() => CraftDto, { optional: true })
  readonly craft?: CraftDto;

  @Part(() => PanelDto)
  readonly panel!: PanelDto;

  @Part(() => SkinDto)
  readonly outerSkin!: SkinDto;

  @Part(() => SkinDto)
  readonly innerSkin!: SkinDto;

  @Part(() => OldCoreDto)
  readonly core!: OldCoreDto;

  @Parts(() => ZoneDto, { optional: true, least: 1, most: 50 })
  readonly zones?: readonly ZoneDto[];

  @Part(() => SurveyDto, { optional: true })
  readonly survey?: SurveyDto;

  @Parts(() => FittingDto, { optional: true, most: 200 })
  readonly fittings?: readonly FittingDto[];

  @OneOf(evidenceGrades, { optional: true })
  readonly evidence?: EvidenceGrade;

  @Part(() => CauseDto, { optional: true })
  readonly cause?: CauseDto;

  @Part(() => MethodDto, { optional: true })
  readonly method?: MethodDto;

  @Part(() => ConditionsDto, { optional: true })
  readonly conditions?: ConditionsDto;

  @Part(() => CrewDto, { optional: true })
  readonly crew?: CrewDto;

  @Part(() => PricingDto, { optional: true })
  readonly pricing?: PricingDto;

  @Text({
    optional: true,
    atMost: 35,
    form: { pattern: /^[a-zA-Z]{2,8}(?:-[a-zA-Z0-9]{1,8})*$/, words: 'a language tag such as en-GB' },
  })
  readonly locale?: string;
}

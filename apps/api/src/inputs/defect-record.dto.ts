import {
  causeQuestions,
  conditionQuestions,
  coreQuestions,
  craftQuestions,
  crewQuestions,
  findingQuestions,
  fittingQuestions,
  inspectionQuestions,
  methodQuestions,
  occurrenceQuestions,
  outerSkinQuestions,
  overlayQuestions,
  panelQuestions,
  partyQuestions,
  plyQuestions,
  pricingQuestions,
  recordQuestions,
  supportQuestions,
  surveyorQuestions,
  vesselQuestions,
  zoneQuestions,
  type CauseClass,
  type CauseRecord,
  type Conditions,
  type Craft,
  type Crew,
  type DefectRecord,
  type EdgeKind,
  type FittingKind,
  type FittingRecord,
  type Inspection,
  type MethodChoice,
  type Occurrence,
  type OldCore,
  type OverlayRecord,
  type PanelRecord,
  type Parties,
  type PricingChoice,
  type SkinRecord,
  type StatedFinding,
  type SupportLine,
  type Surveyor,
  type Vessel,
  type ZoneCondition,
  type ZoneRecord,
} from '#lib/estimate';
import {
  meterQuestions,
  readingQuestions,
  surveyQuestions,
  type EvidenceGrade,
  type HammerSound,
  type MeterReading,
  type Place,
  type Plug,
  type PlugCondition,
  type Reading,
  type Sounding,
  type Survey,
} from '#lib/extent';
import { DepreciationDto } from './depreciation.dto.js';
import { DeckWarmthDto, ForecastDto } from './weather.dto.js';
import { ApiExtraModels } from '@nestjs/swagger';
import { Asked, AskedByKind, AskedPart, AskedParts, OneOf, Part, saidOf } from '../edge/dto/index.js';

export class CraftDto implements Craft {
  @Asked(craftQuestions.craftType)
  readonly craftType?: Craft['craftType'];

  @Asked(craftQuestions.lengthHullM)
  readonly lengthHullM?: number;

  @Asked(craftQuestions.lengthWaterlineM)
  readonly lengthWaterlineM?: number;

  @Asked(craftQuestions.massLoadedKg)
  readonly massLoadedKg?: number;

  @Asked(craftQuestions.designCategory)
  readonly designCategory?: Craft['designCategory'];

  @Asked(craftQuestions.yearBuilt)
  readonly yearBuilt?: number;
}

export class SupportLineDto implements SupportLine {
  @Asked(supportQuestions.kind)
  readonly kind!: EdgeKind;

  @Asked(supportQuestions.from)
  readonly from!: Place;

  @Asked(supportQuestions.to)
  readonly to!: Place;
}

export class OverlayDto implements OverlayRecord {
  @Asked(overlayQuestions.kind)
  readonly kind!: OverlayRecord['kind'];

  @Asked(overlayQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(overlayQuestions.then)
  readonly then?: OverlayRecord['then'];
}

export class PanelDto implements PanelRecord {
  @Asked(panelQuestions.name)
  readonly name?: string;

  @Asked(panelQuestions.outline)
  readonly outline!: readonly Place[];

  @Asked(panelQuestions.holes)
  readonly holes?: readonly (readonly Place[])[];

  @AskedParts(panelQuestions.supports, () => SupportLineDto)
  readonly supports?: readonly SupportLineDto[];

  @Asked(panelQuestions.edges)
  readonly edges?: PanelRecord['edges'];

  @Asked(panelQuestions.camberRadiusMm)
  readonly camberRadiusMm?: number;

  @Asked(panelQuestions.under)
  readonly under?: PanelRecord['under'];

  @Asked(panelQuestions.accessBelow)
  readonly accessBelow?: PanelRecord['accessBelow'];

  @Asked(panelQuestions.isInnerSkinAirtight)
  readonly isInnerSkinAirtight?: boolean;

  @Asked(panelQuestions.surface)
  readonly surface?: PanelRecord['surface'];

  @AskedPart(panelQuestions.overlay, () => OverlayDto)
  readonly overlay?: OverlayDto;

  @Asked(panelQuestions.outerSkinState)
  readonly outerSkinState?: PanelRecord['outerSkinState'];

  @Asked(panelQuestions.lining)
  readonly lining?: PanelRecord['lining'];

  @Asked(panelQuestions.workingHeightMm)
  readonly workingHeightMm?: number;

  @Asked(panelQuestions.coreEndsMm)
  readonly coreEndsMm?: number;
}

export class KnownPlyDto {
  @Asked(plyQuestions.material)
  readonly material!: string;
}

export class SkinDto implements SkinRecord {
  @Asked(outerSkinQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @AskedParts(outerSkinQuestions.plies, () => KnownPlyDto)
  readonly plies?: readonly KnownPlyDto[];
}

export class OldCoreDto implements OldCore {
  @Asked(coreQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(coreQuestions.cavityMm)
  readonly cavityMm?: number;

  @Asked(coreQuestions.coreType)
  readonly coreType?: OldCore['coreType'];

  @Asked(coreQuestions.densityKgPerM3)
  readonly densityKgPerM3?: number;
}

export class ZoneDto implements ZoneRecord {
  @Asked(zoneQuestions.id)
  readonly id!: string;

  @Asked(zoneQuestions.outline)
  readonly outline!: readonly Place[];

  @Asked(zoneQuestions.condition)
  readonly condition?: ZoneCondition;
}

abstract class ReadingDto {
  @Asked(readingQuestions.sounding.at)
  readonly at!: Place;

  @Asked(readingQuestions.sounding.isUnreliable)
  readonly isUnreliable?: boolean;
}

export class SoundingDto extends ReadingDto implements Sounding {
  @OneOf(['sounding'], { description: 'Says that the place was tapped.' })
  readonly kind!: 'sounding';

  @Asked(readingQuestions.sounding.sound)
  readonly sound!: HammerSound;
}

export class MeterReadingDto extends ReadingDto implements MeterReading {
  @OneOf(['moisture'], { description: 'Says that a meter was held to the place.' })
  readonly kind!: 'moisture';

  @Asked(readingQuestions.moisture.value)
  readonly value!: number;
}

export class PlugDto extends ReadingDto implements Plug {
  @OneOf(['plug'], { description: 'Says that a plug was drilled at the place.' })
  readonly kind!: 'plug';

  @Asked(readingQuestions.plug.condition)
  readonly condition!: PlugCondition;

  @Asked(readingQuestions.plug.moisturePercent)
  readonly moisturePercent?: number;

  @Asked(readingQuestions.plug.outerSkinMm)
  readonly outerSkinMm?: number;

  @Asked(readingQuestions.plug.innerSkinMm)
  readonly innerSkinMm?: number;

  @Asked(readingQuestions.plug.coreMm)
  readonly coreMm?: number;
}

export const readingKinds = { sounding: SoundingDto, moisture: MeterReadingDto, plug: PlugDto } as const;

export class MeterDto {
  @Asked(meterQuestions.dryReference)
  readonly dryReference!: number;

  @Asked(meterQuestions.wetReference)
  readonly wetReference!: number;
}

@ApiExtraModels(SoundingDto, MeterReadingDto, PlugDto)
export class SurveyDto implements Survey {
  @AskedByKind(surveyQuestions.readings, () => readingKinds)
  readonly readings!: readonly Reading[];

  @AskedPart(surveyQuestions.meter, () => MeterDto)
  readonly meter?: MeterDto;
}

export class FittingDto implements FittingRecord {
  @Asked(fittingQuestions.id)
  readonly id!: string;

  @Asked(fittingQuestions.kind)
  readonly kind!: FittingKind;

  @Asked(fittingQuestions.at)
  readonly at!: Place;

  @Asked(fittingQuestions.holes)
  readonly holes?: number;

  @Asked(fittingQuestions.holeDiameterMm)
  readonly holeDiameterMm?: number;

  @Asked(fittingQuestions.baseMm)
  readonly baseMm?: number;

  @Asked(fittingQuestions.isLeaking)
  readonly isLeaking?: boolean;

  @Asked(fittingQuestions.wetReachMm)
  readonly wetReachMm?: number;

  @Asked(fittingQuestions.boltMm)
  readonly boltMm?: number;

  @Asked(fittingQuestions.boltLengthMm)
  readonly boltLengthMm?: number;

  @Asked(fittingQuestions.plateMm)
  readonly plateMm?: number;

  @Asked(fittingQuestions.plateThicknessMm)
  readonly plateThicknessMm?: number;

  @Asked(fittingQuestions.insertMm)
  readonly insertMm?: number;

  @Asked(fittingQuestions.offH)
  readonly offH?: number;

  @Asked(fittingQuestions.onH)
  readonly onH?: number;
}

export class CauseDto implements CauseRecord {
  @Asked(causeQuestions.cause)
  readonly cause!: CauseRecord['cause'];

  @Asked(causeQuestions.causeClass)
  readonly causeClass?: CauseClass;

  @Asked(causeQuestions.leak)
  readonly leak?: CauseRecord['leak'];

  @Asked(causeQuestions.lengthMm)
  readonly lengthMm?: number;

  @Asked(causeQuestions.note)
  readonly note?: string;
}

export class MethodDto implements MethodChoice {
  @Asked(methodQuestions.rung)
  readonly rung?: MethodChoice['rung'];

  @Asked(methodQuestions.skin)
  readonly skin?: MethodChoice['skin'];

  @Asked(methodQuestions.access)
  readonly access?: MethodChoice['access'];

  @Asked(methodQuestions.press)
  readonly press?: MethodChoice['press'];

  @Asked(methodQuestions.core)
  readonly core?: string;

  @Asked(methodQuestions.resin)
  readonly resin?: string;

  @Asked(methodQuestions.pumpResinMlPerStroke)
  readonly pumpResinMlPerStroke?: number;

  @Asked(methodQuestions.finish)
  readonly finish?: MethodChoice['finish'];

  @Asked(methodQuestions.topcoat)
  readonly topcoat?: string;

  @Asked(methodQuestions.application)
  readonly application?: MethodChoice['application'];

  @Asked(methodQuestions.soundCore)
  readonly soundCore?: 'stays' | 'comes-out';

  @Asked(methodQuestions.wholeDeckAreaM2)
  readonly wholeDeckAreaM2?: number;

  @Asked(methodQuestions.taperRatio)
  readonly taperRatio?: number;

  @Asked(methodQuestions.cutMarginMm)
  readonly cutMarginMm?: number;

  @Asked(methodQuestions.flangeMm)
  readonly flangeMm?: number;
}

export class ConditionsDto implements Conditions {
  @Asked(conditionQuestions.temperatureC)
  readonly temperatureC?: number;

  @Asked(conditionQuestions.relativeHumidityPercent)
  readonly relativeHumidityPercent?: number;

  @Asked(conditionQuestions.shelter)
  readonly shelter?: Conditions['shelter'];

  @Asked(conditionQuestions.altitudeM)
  readonly altitudeM?: number;

  @Asked(conditionQuestions.isAfloat)
  readonly isAfloat?: boolean;

  @Asked(conditionQuestions.daysAvailable)
  readonly daysAvailable?: number;

  @Asked(conditionQuestions.isFreezeExpected)
  readonly isFreezeExpected?: boolean;

  @Asked(conditionQuestions.place)
  readonly place?: Conditions['place'];

  @Part(() => ForecastDto, saidOf(conditionQuestions.forecast))
  readonly forecast?: ForecastDto;

  @Part(() => DeckWarmthDto, saidOf(conditionQuestions.warmth))
  readonly warmth?: DeckWarmthDto;
}

export class CrewDto implements Crew {
  @Asked(crewQuestions.people)
  readonly people?: number;

  @Asked(crewQuestions.skill)
  readonly skill?: Crew['skill'];

  @Asked(crewQuestions.labour)
  readonly labour?: Crew['labour'];

  @Asked(crewQuestions.hoursPerDay)
  readonly hoursPerDay?: number;

  @Asked(crewQuestions.startDate)
  readonly startDate?: string;

  @Asked(crewQuestions.attendanceFraction)
  readonly attendanceFraction?: number;

  @Asked(crewQuestions.workingDays)
  readonly workingDays?: Crew['workingDays'];
}

export class PricingDto implements PricingChoice {
  @Asked(pricingQuestions.priceList)
  readonly priceList?: string;

  @Asked(pricingQuestions.labourRates)
  readonly labourRates?: string;

  @Asked(pricingQuestions.goods)
  readonly goods?: PricingChoice['goods'];

  @Asked(pricingQuestions.contingencyPercent)
  readonly contingencyPercent?: number;

  @Asked(pricingQuestions.authorisationPercent)
  readonly authorisationPercent?: number;

  @Asked(pricingQuestions.foundOverRecorded)
  readonly foundOverRecorded?: readonly number[];

  @Asked(pricingQuestions.deductible)
  readonly deductible?: string;

  @Asked(pricingQuestions.seed)
  readonly seed?: number;

  @Asked(pricingQuestions.samples)
  readonly samples?: number;

  @Part(() => DepreciationDto, saidOf(pricingQuestions.depreciation))
  readonly depreciation?: DepreciationDto;
}

export class VesselDto implements Vessel {
  @Asked(vesselQuestions.name)
  readonly name?: string;

  @Asked(vesselQuestions.registration)
  readonly registration?: string;

  @Asked(vesselQuestions.hullNumber)
  readonly hullNumber?: string;

  @Asked(vesselQuestions.builder)
  readonly builder?: string;

  @Asked(vesselQuestions.model)
  readonly model?: string;
}

export class InspectionDto implements Inspection {
  @Asked(inspectionQuestions.place)
  readonly place?: string;

  @Asked(inspectionQuestions.lies)
  readonly lies?: Inspection['lies'];

  @Asked(inspectionQuestions.on)
  readonly on?: string;

  @Asked(inspectionQuestions.conditions)
  readonly conditions?: string;

  @Asked(inspectionQuestions.instruments)
  readonly instruments?: string;

  @Asked(inspectionQuestions.notInspected)
  readonly notInspected?: string;
}

export class SurveyorDto implements Surveyor {
  @Asked(surveyorQuestions.name)
  readonly name?: string;

  @Asked(surveyorQuestions.firm)
  readonly firm?: string;

  @Asked(surveyorQuestions.qualification)
  readonly qualification?: string;
}

export class PartiesDto implements Parties {
  @Asked(partyQuestions.client)
  readonly client?: string;

  @Asked(partyQuestions.instructedBy)
  readonly instructedBy?: string;

  @AskedPart(partyQuestions.surveyor, () => SurveyorDto)
  readonly surveyor?: SurveyorDto;
}

export class OccurrenceDto implements Occurrence {
  @Asked(occurrenceQuestions.on)
  readonly on?: string;

  @Asked(occurrenceQuestions.cause)
  readonly cause?: string;

  @Asked(occurrenceQuestions.insurerReference)
  readonly insurerReference?: string;
}

export class FindingDto implements StatedFinding {
  @Asked(findingQuestions.about)
  readonly about!: string;

  @Asked(findingQuestions.class)
  readonly class?: StatedFinding['class'];

  @Asked(findingQuestions.wording)
  readonly wording?: string;

  @Asked(findingQuestions.recommendation)
  readonly recommendation?: string;

  @Asked(findingQuestions.restriction)
  readonly restriction?: string;
}

export class DefectRecordDto implements DefectRecord {
  @Asked(recordQuestions.title)
  readonly title?: string;

  @Asked(recordQuestions.reference)
  readonly reference?: string;

  @AskedPart(recordQuestions.vessel, () => VesselDto)
  readonly vessel?: VesselDto;

  @AskedPart(recordQuestions.inspection, () => InspectionDto)
  readonly inspection?: InspectionDto;

  @AskedPart(recordQuestions.parties, () => PartiesDto)
  readonly parties?: PartiesDto;

  @AskedPart(recordQuestions.occurrence, () => OccurrenceDto)
  readonly occurrence?: OccurrenceDto;

  @AskedParts(recordQuestions.findings, () => FindingDto)
  readonly findings?: readonly FindingDto[];

  @AskedPart(recordQuestions.craft, () => CraftDto)
  readonly craft?: CraftDto;

  @AskedPart(recordQuestions.panel, () => PanelDto)
  readonly panel!: PanelDto;

  @AskedPart(recordQuestions.outerSkin, () => SkinDto)
  readonly outerSkin!: SkinDto;

  @AskedPart(recordQuestions.innerSkin, () => SkinDto)
  readonly innerSkin!: SkinDto;

  @AskedPart(recordQuestions.core, () => OldCoreDto)
  readonly core!: OldCoreDto;

  @AskedParts(recordQuestions.zones, () => ZoneDto)
  readonly zones?: readonly ZoneDto[];

  @Part(() => SurveyDto, saidOf(recordQuestions.survey))
  readonly survey?: SurveyDto;

  @AskedParts(recordQuestions.fittings, () => FittingDto)
  readonly fittings?: readonly FittingDto[];

  @Asked(recordQuestions.soundedDeck)
  readonly soundedDeck?: 'whole' | 'part';

  @Asked(recordQuestions.evidence)
  readonly evidence?: EvidenceGrade;

  @AskedPart(recordQuestions.cause, () => CauseDto)
  readonly cause?: CauseDto;

  @AskedPart(recordQuestions.method, () => MethodDto)
  readonly method?: MethodDto;

  @AskedPart(recordQuestions.conditions, () => ConditionsDto)
  readonly conditions?: ConditionsDto;

  @AskedPart(recordQuestions.crew, () => CrewDto)
  readonly crew?: CrewDto;

  @AskedPart(recordQuestions.pricing, () => PricingDto)
  readonly pricing?: PricingDto;

  @Asked(recordQuestions.locale)
  readonly locale?: string;
}

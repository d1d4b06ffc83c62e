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
} from '#lib/estimate';
import { meterQuestions, readingQuestions, surveyQuestions } from '#lib/extent';
import { DepreciationDto } from './depreciation.dto.js';
import { DeckWarmthDto, ForecastDto } from './weather.dto.js';
import { ApiExtraModels } from '@nestjs/swagger';
import { OneOf, answering } from '../edge/dto/index.js';

export class CraftDto extends answering(craftQuestions) {}

export class SupportLineDto extends answering(supportQuestions) {}

export class OverlayDto extends answering(overlayQuestions) {}

export class PanelDto extends answering(panelQuestions, {
  supports: () => SupportLineDto,
  overlay: () => OverlayDto,
}) {}

export class KnownPlyDto extends answering(plyQuestions) {}

export class SkinDto extends answering(outerSkinQuestions, { plies: () => KnownPlyDto }) {}

export class OldCoreDto extends answering(coreQuestions) {}

export class ZoneDto extends answering(zoneQuestions) {}

export class SoundingDto extends answering(readingQuestions.sounding) {
  @OneOf(['sounding'], { description: 'Says that the place was tapped.' })
  readonly kind!: 'sounding';
}

export class MeterReadingDto extends answering(readingQuestions.moisture) {
  @OneOf(['moisture'], { description: 'Says that a meter was held to the place.' })
  readonly kind!: 'moisture';
}

export class PlugDto extends answering(readingQuestions.plug) {
  @OneOf(['plug'], { description: 'Says that a plug was drilled at the place.' })
  readonly kind!: 'plug';
}

export const readingKinds = { sounding: SoundingDto, moisture: MeterReadingDto, plug: PlugDto } as const;

export class MeterDto extends answering(meterQuestions) {}

@ApiExtraModels(SoundingDto, MeterReadingDto, PlugDto)
export class SurveyDto extends answering(surveyQuestions, {
  readings: () => readingKinds,
  meter: () => MeterDto,
}) {}

export class FittingDto extends answering(fittingQuestions) {}

export class CauseDto extends answering(causeQuestions) {}

export class MethodDto extends answering(methodQuestions) {}

export class ConditionsDto extends answering(conditionQuestions, {
  forecast: () => ForecastDto,
  warmth: () => DeckWarmthDto,
}) {}

export class CrewDto extends answering(crewQuestions) {}

export class PricingDto extends answering(pricingQuestions, { depreciation: () => DepreciationDto }) {}

export class VesselDto extends answering(vesselQuestions) {}

export class InspectionDto extends answering(inspectionQuestions) {}

export class SurveyorDto extends answering(surveyorQuestions) {}

export class PartiesDto extends answering(partyQuestions, { surveyor: () => SurveyorDto }) {}

export class OccurrenceDto extends answering(occurrenceQuestions) {}

export class FindingDto extends answering(findingQuestions) {}

export class DefectRecordDto extends answering(recordQuestions, {
  vessel: () => VesselDto,
  inspection: () => InspectionDto,
  parties: () => PartiesDto,
  occurrence: () => OccurrenceDto,
  findings: () => FindingDto,
  craft: () => CraftDto,
  panel: () => PanelDto,
  outerSkin: () => SkinDto,
  innerSkin: () => SkinDto,
  core: () => OldCoreDto,
  zones: () => ZoneDto,
  survey: () => SurveyDto,
  fittings: () => FittingDto,
  cause: () => CauseDto,
  method: () => MethodDto,
  conditions: () => ConditionsDto,
  crew: () => CrewDto,
  pricing: () => PricingDto,
}) {}

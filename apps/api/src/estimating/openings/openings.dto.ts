import { openedZoneQuestions, openingsQuestions, type OpeningsAsked } from '#lib/estimate';
import {
  bondableQuestions,
  mapQuestions,
  openingMethodQuestions,
  openingRuleQuestions,
  type EvidenceGrade,
  type MapSettings,
  type OpeningMethod,
  type OpeningRules,
  type Place,
} from '#lib/extent';
import {
  FittingDto,
  OldCoreDto,
  PanelDto,
  SkinDto,
  SurveyDto,
  ZoneDto,
} from '../../inputs/defect-record.dto.js';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';

export class OpeningMethodDto implements OpeningMethod {
  @Asked(openingMethodQuestions.skin)
  readonly skin?: OpeningMethod['skin'];

  @Asked(openingMethodQuestions.access)
  readonly access?: OpeningMethod['access'];

  @Asked(openingMethodQuestions.taperRatio)
  readonly taperRatio?: number;

  @Asked(openingMethodQuestions.cutMarginMm)
  readonly cutMarginMm?: number;

  @Asked(openingMethodQuestions.flangeMm)
  readonly flangeMm?: number;
}

export class OpeningRulesDto implements OpeningRules {
  @Asked(openingRuleQuestions.cornerRadiusMm)
  readonly cornerRadiusMm?: number;

  @Asked(openingRuleQuestions.depthMarginMm)
  readonly depthMarginMm?: number;

  @Asked(openingRuleQuestions.innerSkinClearanceMm)
  readonly innerSkinClearanceMm?: number;

  @Asked(openingRuleQuestions.supportClearanceMm)
  readonly supportClearanceMm?: number;

  @Asked(openingRuleQuestions.undercutReachMm)
  readonly undercutReachMm?: number;

  @Asked(openingRuleQuestions.fittingReachMm)
  readonly fittingReachMm?: number;

  @Asked(bondableQuestions.bondableAreaM2)
  readonly bondableAreaM2?: number;

  @Asked(bondableQuestions.bondableLengthMm)
  readonly bondableLengthMm?: number;

  @Asked(openingRuleQuestions.cutHPerM)
  readonly cutHPerM?: number;

  @Asked(openingRuleQuestions.openedHPerM2)
  readonly openedHPerM2?: number;

  @Asked(openingRuleQuestions.openingH)
  readonly openingH?: number;

  @Asked(openingRuleQuestions.cornerH)
  readonly cornerH?: number;
}

export class MapSettingsDto implements MapSettings {
  @Asked(mapQuestions.cutProbability)
  readonly cutProbability?: number;

  @Asked(mapQuestions.leaveCostHPerM2)
  readonly leaveCostHPerM2?: number;

  @Asked(mapQuestions.contourProbabilities)
  readonly contourProbabilities?: readonly number[];

  @Asked(mapQuestions.usualBadShare)
  readonly usualBadShare?: number;

  @Asked(mapQuestions.draws)
  readonly draws?: number;

  @Asked(mapQuestions.seed)
  readonly seed?: number;
}

export class OpeningZoneDto extends ZoneDto {
  @Asked(openedZoneQuestions.holes)
  readonly holes?: readonly (readonly Place[])[];
}

/** One panel with its zones, its readings, or both; the words are those of a defect record. */
export class OpeningsRequestDto implements OpeningsAsked {
  @AskedPart(openingsQuestions.panel, () => PanelDto)
  readonly panel!: PanelDto;

  @AskedPart(openingsQuestions.outerSkin, () => SkinDto)
  readonly outerSkin!: SkinDto;

  @AskedPart(openingsQuestions.innerSkin, () => SkinDto)
  readonly innerSkin!: SkinDto;

  @AskedPart(openingsQuestions.core, () => OldCoreDto)
  readonly core!: OldCoreDto;

  @AskedParts(openingsQuestions.zones, () => OpeningZoneDto)
  readonly zones?: readonly OpeningZoneDto[];

  @AskedPart(openingsQuestions.survey, () => SurveyDto)
  readonly survey?: SurveyDto;

  @AskedParts(openingsQuestions.fittings, () => FittingDto)
  readonly fittings?: readonly FittingDto[];

  @Asked(openingsQuestions.evidence)
  readonly evidence?: EvidenceGrade;

  @AskedPart(openingsQuestions.method, () => OpeningMethodDto)
  readonly method?: OpeningMethodDto;

  @AskedPart(openingsQuestions.rules, () => OpeningRulesDto)
  readonly rules?: OpeningRulesDto;

  @AskedPart(openingsQuestions.map, () => MapSettingsDto)
  readonly map?: MapSettingsDto;
}

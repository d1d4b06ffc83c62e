import {
  LEAVE_COST,
  bondableQuestions,
  evidenceGrades,
  openingMethodQuestions,
  openingRuleQuestions,
  type EvidenceGrade,
  type ExtentAndOpeningsRequest,
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
import { Asked, Num, Nums, OneOf, Outlines, Part, Parts, Whole } from '../../edge/dto/index.js';

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
  @Num({
    optional: true,
    from: 0.01,
    upTo: 0.99,
    description:
      'Core this likely to be bad, or more, lies inside the zones; absent: chosen by expected hours.',
  })
  readonly cutProbability?: number;

  @Num({
    optional: true,
    from: LEAVE_COST.from,
    upTo: LEAVE_COST.upTo,
    unit: LEAVE_COST.unit,
    description: `The ${LEAVE_COST.meaning}; absent: ${LEAVE_COST.value} (${LEAVE_COST.because}).`,
  })
  readonly leaveCostHPerM2?: number;

  @Nums({ optional: true, most: 12, description: 'Further contours; absent: 0.1, 0.5 and 0.9.' })
  readonly contourProbabilities?: readonly number[];

  @Num({
    optional: true,
    from: 0.01,
    upTo: 0.99,
    description: 'Share of such a panel that is bad before any reading; absent: 0.25.',
  })
  readonly usualBadShare?: number;

  @Whole({ optional: true, from: 100, upTo: 5000, description: 'Draws behind the range of the area.' })
  readonly draws?: number;

  @Whole({ optional: true, from: 0, upTo: 4_294_967_295, description: 'The same seed gives the same range.' })
  readonly seed?: number;
}

export class OpeningZoneDto extends ZoneDto {
  @Outlines({ optional: true, description: 'Sound core inside the zone.' })
  readonly holes?: readonly (readonly Place[])[];
}

/** One panel with its zones, its readings, or both; the words are those of a defect record. */
export class OpeningsRequestDto implements ExtentAndOpeningsRequest {
  @Part(() => PanelDto)
  readonly panel!: PanelDto;

  @Part(() => SkinDto)
  readonly outerSkin!: SkinDto;

  @Part(() => SkinDto)
  readonly innerSkin!: SkinDto;

  @Part(() => OldCoreDto)
  readonly core!: OldCoreDto;

  @Parts(() => OpeningZoneDto, {
    optional: true,
    least: 1,
    most: 50,
    description: 'Bad core as somebody drew it; absent: mapped from the readings.',
  })
  readonly zones?: readonly OpeningZoneDto[];

  @Part(() => SurveyDto, { optional: true })
  readonly survey?: SurveyDto;

  @Parts(() => FittingDto, { optional: true, most: 200 })
  readonly fittings?: readonly FittingDto[];

  @OneOf(evidenceGrades, {
    optional: true,
    description: 'How the extent was found; readings can lower it, never raise it.',
  })
  readonly evidence?: EvidenceGrade;

  @Part(() => OpeningMethodDto, { optional: true })
  readonly method?: OpeningMethodDto;

  @Part(() => OpeningRulesDto, { optional: true })
  readonly rules?: OpeningRulesDto;

  @Part(() => MapSettingsDto, { optional: true })
  readonly map?: MapSettingsDto;
}

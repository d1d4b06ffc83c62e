import {
  openingRules,
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
import { Length, Num, Nums, OneOf, Outlines, Part, Parts, Whole } from '../../edge/dto/index.js';

const {
  cutMarginMm,
  flangeMm,
  taperRatio,
  cornerRadiusMm,
  depthMarginMm,
  innerSkinClearanceMm,
  supportClearanceMm,
  undercutReachMm,
  fittingReachMm,
  cutHPerM,
  openedHPerM2,
  openingH,
  cornerH,
} = openingRules;

/** What is said of a rule: its meaning, and the default that stands when it is absent. */
const rule = ({
  meaning,
  value,
  from,
  upTo,
  because,
}: {
  readonly meaning: string;
  readonly value: number;
  readonly from: number;
  readonly upTo: number;
  readonly because: string;
}) => ({ optional: true, from, upTo, description: `The ${meaning}; absent: ${value} (${because}).` });

export class OpeningMethodDto implements OpeningMethod {
  @OneOf(['re-bed', 'relay'], {
    optional: true,
    description: 'Bond the lifted skin back, or laminate a new one; absent: relay.',
  })
  readonly skin?: OpeningMethod['skin'];

  @OneOf(['from-above', 'from-below'], { optional: true, description: 'Absent: from-above.' })
  readonly access?: OpeningMethod['access'];

  @Num(rule(taperRatio))
  readonly taperRatio?: number;

  @Length(rule(cutMarginMm))
  readonly cutMarginMm?: number;

  @Length(rule(flangeMm))
  readonly flangeMm?: number;
}

export class OpeningRulesDto implements OpeningRules {
  @Length(rule(cornerRadiusMm))
  readonly cornerRadiusMm?: number;

  @Length(rule(depthMarginMm))
  readonly depthMarginMm?: number;

  @Length(rule(innerSkinClearanceMm))
  readonly innerSkinClearanceMm?: number;

  @Length(rule(supportClearanceMm))
  readonly supportClearanceMm?: number;

  @Length(rule(undercutReachMm))
  readonly undercutReachMm?: number;

  @Length(rule(fittingReachMm))
  readonly fittingReachMm?: number;

  @Num({
    optional: true,
    from: 0.02,
    upTo: 50,
    unit: 'm2',
    description: 'Largest skin piece that can be bedded before the resin gels.',
  })
  readonly bondableAreaM2?: number;

  @Length({
    optional: true,
    from: 150,
    upTo: 20_000,
    description: 'Longest skin piece that can be bedded before the resin gels.',
  })
  readonly bondableLengthMm?: number;

  @Num(rule(cutHPerM))
  readonly cutHPerM?: number;

  @Num(rule(openedHPerM2))
  readonly openedHPerM2?: number;

  @Num(rule(openingH))
  readonly openingH?: number;

  @Num(rule(cornerH))
  readonly cornerH?: number;
}

export class MapSettingsDto implements MapSettings {
  @Num({
    optional: true,
    from: 0.01,
    upTo: 0.99,
    description: 'Core this likely to be bad, or more, lies inside the zones; absent: 1/3.',
  })
  readonly cutProbability?: number;

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

  @OneOf(['mapped-with-plugs', 'sounded-and-metered', 'single-symptom'], {
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

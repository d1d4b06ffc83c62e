import { openedZoneQuestions, openingsQuestions } from '#lib/estimate';
import { bondableQuestions, mapQuestions, openingMethodQuestions, openingRuleQuestions } from '#lib/extent';
import { FittingDto, OldCoreDto, PanelDto, SkinDto, SurveyDto } from '../../inputs/defect-record.dto.js';
import { answering } from '../../edge/dto/index.js';

export class OpeningMethodDto extends answering(openingMethodQuestions) {}

export class OpeningRulesDto extends answering({ ...openingRuleQuestions, ...bondableQuestions }) {}

export class MapSettingsDto extends answering(mapQuestions) {}

export class OpeningZoneDto extends answering(openedZoneQuestions) {}

/** One panel with its zones, its readings, or both; the words are those of a defect record. */
export class OpeningsRequestDto extends answering(openingsQuestions, {
  panel: () => PanelDto,
  outerSkin: () => SkinDto,
  innerSkin: () => SkinDto,
  core: () => OldCoreDto,
  zones: () => OpeningZoneDto,
  survey: () => SurveyDto,
  fittings: () => FittingDto,
  method: () => OpeningMethodDto,
  rules: () => OpeningRulesDto,
  map: () => MapSettingsDto,
}) {}

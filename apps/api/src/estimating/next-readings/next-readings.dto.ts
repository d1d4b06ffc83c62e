import { nextReadingsQuestions } from '#lib/estimate';
import { nextQuestions, surveySoFarQuestions } from '#lib/extent';
import { FittingDto, MeterDto, PanelDto, SkinDto, readingKinds } from '../../inputs/defect-record.dto.js';
import {
  MapSettingsDto,
  OpeningMethodDto,
  OpeningRulesDto,
  OpeningZoneDto,
} from '../openings/openings.dto.js';
import { answering } from '../../edge/dto/index.js';

export class NextAskedDto extends answering(nextQuestions) {}

/** Readings so far; none yet is an answer too. */
export class SurveySoFarDto extends answering(surveySoFarQuestions, {
  readings: () => readingKinds,
  meter: () => MeterDto,
}) {}

/** One panel and what was read of it so far; the words are those of a defect record. */
export class NextReadingsRequestDto extends answering(nextReadingsQuestions, {
  panel: () => PanelDto,
  survey: () => SurveySoFarDto,
  next: () => NextAskedDto,
  zones: () => OpeningZoneDto,
  fittings: () => FittingDto,
  outerSkin: () => SkinDto,
  method: () => OpeningMethodDto,
  rules: () => OpeningRulesDto,
  map: () => MapSettingsDto,
}) {}

import { nextReadingsQuestions, type NextReadingsAsked } from '#lib/estimate';
import {
  nextQuestions,
  surveySoFarQuestions,
  type NextAsked,
  type Place,
  type Reading,
  type ReadingKind,
  type Survey,
} from '#lib/extent';
import { Asked, AskedByKind, AskedPart, AskedParts } from '../../edge/dto/index.js';
import { FittingDto, MeterDto, PanelDto, SkinDto, readingKinds } from '../../inputs/defect-record.dto.js';
import {
  MapSettingsDto,
  OpeningMethodDto,
  OpeningRulesDto,
  OpeningZoneDto,
} from '../openings/openings.dto.js';

export class NextAskedDto implements NextAsked {
  @Asked(nextQuestions.count)
  readonly count?: number;

  @Asked(nextQuestions.minutes)
  readonly minutes?: number;

  @Asked(nextQuestions.kinds)
  readonly kinds?: readonly ReadingKind[];

  @Asked(nextQuestions.tapMinutes)
  readonly tapMinutes?: number;

  @Asked(nextQuestions.meterMinutes)
  readonly meterMinutes?: number;

  @Asked(nextQuestions.plugMinutes)
  readonly plugMinutes?: number;

  @Asked(nextQuestions.unreachable)
  readonly unreachable?: readonly (readonly Place[])[];
}

/** Readings so far; none yet is an answer too. */
export class SurveySoFarDto implements Survey {
  @AskedByKind(surveySoFarQuestions.readings, () => readingKinds)
  readonly readings!: readonly Reading[];

  @AskedPart(surveySoFarQuestions.meter, () => MeterDto)
  readonly meter?: MeterDto;
}

/** One panel and what was read of it so far; the words are those of a defect record. */
export class NextReadingsRequestDto implements NextReadingsAsked {
  @AskedPart(nextReadingsQuestions.panel, () => PanelDto)
  readonly panel!: PanelDto;

  @AskedPart(nextReadingsQuestions.survey, () => SurveySoFarDto)
  readonly survey!: SurveySoFarDto;

  @AskedPart(nextReadingsQuestions.next, () => NextAskedDto)
  readonly next?: NextAskedDto;

  @AskedParts(nextReadingsQuestions.zones, () => OpeningZoneDto)
  readonly zones?: readonly OpeningZoneDto[];

  @AskedParts(nextReadingsQuestions.fittings, () => FittingDto)
  readonly fittings?: readonly FittingDto[];

  @AskedPart(nextReadingsQuestions.outerSkin, () => SkinDto)
  readonly outerSkin?: SkinDto;

  @AskedPart(nextReadingsQuestions.method, () => OpeningMethodDto)
  readonly method?: OpeningMethodDto;

  @AskedPart(nextReadingsQuestions.rules, () => OpeningRulesDto)
  readonly rules?: OpeningRulesDto;

  @AskedPart(nextReadingsQuestions.map, () => MapSettingsDto)
  readonly map?: MapSettingsDto;
}

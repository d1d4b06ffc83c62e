import {
  nextQuestions,
  type ExtentRequest,
  type NextAsked,
  type Place,
  type Reading,
  type ReadingKind,
  type Survey,
} from '#lib/extent';
import { Asked, Outlines, Part, Parts, PartsByKind, saidOf } from '../../edge/dto/index.js';
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

  @Outlines(saidOf(nextQuestions.unreachable))
  readonly unreachable?: readonly (readonly Place[])[];
}

/** Readings so far; none yet is an answer too. */
export class SurveySoFarDto implements Survey {
  @PartsByKind('kind', () => readingKinds, { least: 0, most: 2000 })
  readonly readings!: readonly Reading[];

  @Part(() => MeterDto, { optional: true })
  readonly meter?: MeterDto;
}

/** One panel and what was read of it so far; the words are those of a defect record. */
export class NextReadingsRequestDto implements ExtentRequest {
  @Part(() => PanelDto)
  readonly panel!: PanelDto;

  @Part(() => SurveySoFarDto)
  readonly survey!: SurveySoFarDto;

  @Part(() => NextAskedDto, { optional: true })
  readonly next?: NextAskedDto;

  @Parts(() => OpeningZoneDto, {
    optional: true,
    least: 1,
    most: 50,
    description: 'What is opened as things stand; absent: what the map would open.',
  })
  readonly zones?: readonly OpeningZoneDto[];

  @Parts(() => FittingDto, { optional: true, most: 200 })
  readonly fittings?: readonly FittingDto[];

  @Part(() => SkinDto, { optional: true })
  readonly outerSkin?: SkinDto;

  @Part(() => OpeningMethodDto, { optional: true })
  readonly method?: OpeningMethodDto;

  @Part(() => OpeningRulesDto, { optional: true })
  readonly rules?: OpeningRulesDto;

  @Part(() => MapSettingsDto, { optional: true })
  readonly map?: MapSettingsDto;
}

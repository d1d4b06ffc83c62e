import {
  curePlanQuestions,
  cureTemperatureQuestions,
  weatherStepQuestions,
  type CurePlanRequest,
  type CureTemperature,
  type WeatherStepByCode,
} from '#lib/cure';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';

export class CureTemperatureDto implements CureTemperature {
  @Asked(cureTemperatureQuestions.temperatureC)
  readonly temperatureC?: number;

  @Asked(cureTemperatureQuestions.dayC)
  readonly dayC?: number;

  @Asked(cureTemperatureQuestions.nightC)
  readonly nightC?: number;

  @AskedPart(cureTemperatureQuestions.forecast, () => ForecastDto)
  readonly forecast?: ForecastDto;
}

export class WeatherStepDto implements WeatherStepByCode {
  @Asked(weatherStepQuestions.code)
  readonly code!: string;

  @Asked(weatherStepQuestions.title)
  readonly title!: string;

  @Asked(weatherStepQuestions.gate)
  readonly gate!: 'none' | 'dry-deck' | 'resin' | 'coating';

  @Asked(weatherStepQuestions.workH)
  readonly workH!: number;

  @Asked(weatherStepQuestions.coating)
  readonly coating?: string;

  @Asked(weatherStepQuestions.untilSafeH)
  readonly untilSafeH?: number;

  @Asked(weatherStepQuestions.earliestAt)
  readonly earliestAt?: string;
}

/** When it has cured, and when it may be begun. */
export class CurePlanRequestDto implements CurePlanRequest {
  @Asked(curePlanQuestions.resin)
  readonly resin!: string;

  @Asked(curePlanQuestions.hardener)
  readonly hardener!: string;

  @AskedPart(curePlanQuestions.temperature, () => CureTemperatureDto)
  readonly temperature!: CureTemperatureDto;

  @AskedPart(curePlanQuestions.warmth, () => DeckWarmthDto)
  readonly warmth?: DeckWarmthDto;

  @Asked(curePlanQuestions.shelter)
  readonly shelter!: 'shed' | 'tent' | 'open';

  @Asked(curePlanQuestions.startHour)
  readonly startHour?: number;

  @Asked(curePlanQuestions.startAt)
  readonly startAt?: string;

  @Asked(curePlanQuestions.step)
  readonly step?: string;

  @Asked(curePlanQuestions.coreMoisturePercent)
  readonly coreMoisturePercent?: number;

  @AskedParts(curePlanQuestions.steps, () => WeatherStepDto)
  readonly steps?: readonly WeatherStepDto[];
}

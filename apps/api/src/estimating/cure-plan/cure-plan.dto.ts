import { curePlanQuestions, cureTemperatureQuestions, weatherStepQuestions } from '#lib/cure';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';
import { answering } from '../../edge/dto/index.js';

export class CureTemperatureDto extends answering(cureTemperatureQuestions, {
  forecast: () => ForecastDto,
}) {}

export class WeatherStepDto extends answering(weatherStepQuestions) {}

/** When it has cured, and when it may be begun. */
export class CurePlanRequestDto extends answering(curePlanQuestions, {
  temperature: () => CureTemperatureDto,
  warmth: () => DeckWarmthDto,
  steps: () => WeatherStepDto,
}) {}

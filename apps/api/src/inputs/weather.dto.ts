import {
  deckWarmthQuestions,
  forecastHourQuestions,
  forecastQuestions,
  type DeckWarmth,
  type Forecast,
  type ForecastHour,
} from '#lib/cure';
import { Asked, AskedParts } from '../edge/dto/index.js';

export class ForecastHourDto implements ForecastHour {
  @Asked(forecastHourQuestions.at)
  readonly at!: string;

  @Asked(forecastHourQuestions.temperatureC)
  readonly temperatureC!: number;

  @Asked(forecastHourQuestions.relativeHumidityPercent)
  readonly relativeHumidityPercent!: number;

  @Asked(forecastHourQuestions.windMPerS)
  readonly windMPerS?: number;

  @Asked(forecastHourQuestions.rainMm)
  readonly rainMm?: number;

  @Asked(forecastHourQuestions.cloudPercent)
  readonly cloudPercent?: number;
}

export class ForecastDto implements Forecast {
  @Asked(forecastQuestions.timeZone)
  readonly timeZone?: string;

  @AskedParts(forecastQuestions.hours, () => ForecastHourDto)
  readonly hours!: readonly ForecastHourDto[];
}

export class DeckWarmthDto implements DeckWarmth {
  @Asked(deckWarmthQuestions.sunK)
  readonly sunK?: number;

  @Asked(deckWarmthQuestions.heaterK)
  readonly heaterK?: number;

  @Asked(deckWarmthQuestions.tentK)
  readonly tentK?: number;

  @Asked(deckWarmthQuestions.isUnderSky)
  readonly isUnderSky?: boolean;
}

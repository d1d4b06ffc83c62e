import { deckWarmthQuestions, forecastHourQuestions, forecastQuestions } from '#lib/cure';
import { answering } from '../edge/dto/index.js';

export class ForecastHourDto extends answering(forecastHourQuestions) {}

export class ForecastDto extends answering(forecastQuestions, { hours: () => ForecastHourDto }) {}

export class DeckWarmthDto extends answering(deckWarmthQuestions) {}

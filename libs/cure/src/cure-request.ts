import type { ResinSystem } from '#lib/catalogue';
import type { DeckWarmth } from './weather/deck.js';
import type { Forecast } from './weather/forecast.js';

export type TemperatureInput =
  | { readonly kind: 'constant'; readonly temperatureC: number }
  | { readonly kind: 'day-night'; readonly dayC: number; readonly nightC: number }
  | {
      readonly kind: 'hourly';
      readonly forecast: Forecast;
      /** The deck where the forecast does not reach, degC; without it a cure is followed to the end of the forecast only. */
      readonly elsewhereDeckC?: number;
    };

export interface CureRequest {
  readonly resin: ResinSystem;
  readonly hardener: string;
  readonly temperature: TemperatureInput;
  readonly warmth?: DeckWarmth;
  /** Hour of the day at which the resin is mixed, 0 to 24, when no `startAt` is given. */
  readonly startHour?: number;
  /** RFC 3339; with it each milestone has its moment. Within the forecast when there is one. */
  readonly startAt?: string;
  readonly step?: string;
}

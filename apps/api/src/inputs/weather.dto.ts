import type { DeckWarmth, Forecast, ForecastHour } from '#lib/cure';
import { Flag, Num, Parts, Speed, Temperature, Text } from '../edge/dto/index.js';

export class ForecastHourDto implements ForecastHour {
  @Text({
    atMost: 40,
    description: 'RFC 3339 with offset: the start of the hour.',
    example: '2026-05-04T08:00:00+01:00',
  })
  readonly at!: string;

  @Temperature({ from: -40, upTo: 55 })
  readonly temperatureC!: number;

  @Num({ above: 0, upTo: 100, unit: '%' })
  readonly relativeHumidityPercent!: number;

  @Speed({ optional: true, from: 0, upTo: 120 })
  readonly windMPerS?: number;

  @Num({ optional: true, from: 0, upTo: 300, unit: 'mm' })
  readonly rainMm?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 100,
    unit: '%',
    description: 'Share of the sky under cloud; absent: a clear sky, which is the coldest at night.',
  })
  readonly cloudPercent?: number;
}

export class ForecastDto implements Forecast {
  @Text({
    optional: true,
    atMost: 60,
    description: 'Zone of the place; with it every offset is checked.',
    example: 'Europe/Lisbon',
  })
  readonly timeZone?: string;

  @Parts(() => ForecastHourDto, { least: 2, most: 1440, description: 'Hour after hour, without a gap.' })
  readonly hours!: readonly ForecastHourDto[];
}

export class DeckWarmthDto implements DeckWarmth {
  @Num({
    optional: true,
    from: 0,
    upTo: 50,
    unit: 'K',
    description: 'How much the midday sun warms the deck above the air; absent: nothing is counted on.',
  })
  readonly sunK?: number;

  @Num({ optional: true, from: 0, upTo: 60, unit: 'K', description: 'Lamp, blanket or heater.' })
  readonly heaterK?: number;

  @Num({ optional: true, from: 0, upTo: 30, unit: 'K', description: 'A closed tent over the deck.' })
  readonly tentK?: number;

  @Flag({
    optional: true,
    description:
      'Whether the deck lies open to the sky at night, where it is colder than the air; absent: it does where there is no shed and no tent.',
  })
  readonly isUnderSky?: boolean;
}

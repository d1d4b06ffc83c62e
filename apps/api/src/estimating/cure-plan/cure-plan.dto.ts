import type { CurePlanRequest, CureTemperature, WeatherStepByCode } from '#lib/cure';
import { Code, Num, OneOf, Part, Parts, Temperature, Text } from '../../edge/dto/index.js';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';

export class CureTemperatureDto implements CureTemperature {
  @Temperature({
    optional: true,
    from: -40,
    upTo: 90,
    description: 'Steady; or dayC with nightC; or a forecast.',
  })
  readonly temperatureC?: number;

  @Temperature({ optional: true, from: -40, upTo: 90 })
  readonly dayC?: number;

  @Temperature({ optional: true, from: -40, upTo: 90 })
  readonly nightC?: number;

  @Part(() => ForecastDto, { optional: true })
  readonly forecast?: ForecastDto;
}

export class WeatherStepDto implements WeatherStepByCode {
  @Code({ description: 'A name for the step.', example: 'bed-core' })
  readonly code!: string;

  @Text({ atMost: 120 })
  readonly title!: string;

  @OneOf(['none', 'dry-deck', 'resin', 'coating'], { description: 'What it waits for.' })
  readonly gate!: 'none' | 'dry-deck' | 'resin' | 'coating';

  @Num({ from: 0, upTo: 24, unit: 'h', description: 'Hours of work.' })
  readonly workH!: number;

  @Code({ optional: true, description: 'For a coat: code of the coating, whose limits then count.' })
  readonly coating?: string;

  @Num({
    optional: true,
    from: 0,
    upTo: 240,
    unit: 'h',
    description:
      'Hours after the work until rain and dew no longer hurt; absent: the gel of the resin, or four hours for a coat.',
  })
  readonly untilSafeH?: number;

  @Text({
    optional: true,
    atMost: 40,
    description: 'RFC 3339: what comes before is done then, and no earlier hour counts.',
  })
  readonly earliestAt?: string;
}

/** When it has cured, and when it may be begun. */
export class CurePlanRequestDto implements CurePlanRequest {
  @Code({ example: 'resin-epoxy-5to1' })
  readonly resin!: string;

  @Code({ example: 'medium' })
  readonly hardener!: string;

  @Part(() => CureTemperatureDto)
  readonly temperature!: CureTemperatureDto;

  @Part(() => DeckWarmthDto, { optional: true })
  readonly warmth?: DeckWarmthDto;

  @OneOf(['shed', 'tent', 'open'])
  readonly shelter!: 'shed' | 'tent' | 'open';

  @Num({
    optional: true,
    from: 0,
    below: 24,
    unit: 'h',
    description: 'Hour of the day at which the resin is mixed, where no moment is given; absent: 9.',
  })
  readonly startHour?: number;

  @Text({
    optional: true,
    atMost: 40,
    description: 'RFC 3339 with offset; each milestone then has its moment.',
  })
  readonly startAt?: string;

  @Text({ optional: true, atMost: 120 })
  readonly step?: string;

  @Num({ optional: true, from: 0, upTo: 700, unit: '%', description: 'Moisture of the core.' })
  readonly coreMoisturePercent?: number;

  @Parts(() => WeatherStepDto, {
    optional: true,
    least: 1,
    most: 60,
    description: 'Steps that wait for weather; absent: bonding.',
  })
  readonly steps?: readonly WeatherStepDto[];
}

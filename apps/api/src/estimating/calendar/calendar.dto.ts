import type { ThreePoint } from '#lib/kernel';
import { weekdays, type Weekday } from '#lib/cure';
import type { CustomOperation, JobCalendarRequest } from '#lib/calendar';
import type { Driver, OperationFlags } from '#lib/work';
import {
  CalendarDate,
  Code,
  Flag,
  Num,
  OneOf,
  Part,
  Parts,
  SomeOf,
  Temperature,
  Text,
  Texts,
  Whole,
} from '../../edge/dto/index.js';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';

const amount = { optional: true, from: 0, upTo: 100_000 } as const;

/** How much of each driver the job has; one left out is none of it, `job` is one. */
export class DriverAmountsDto implements Partial<Record<Driver, number>> {
  @Num(amount) readonly 'job'?: number;
  @Num({ ...amount, description: 'Opened area.' }) readonly 'opened-m2'?: number;
  @Num({
    ...amount,
    description: 'Of the opening, skin that has let go; absent, with the other three: by the condition.',
  })
  readonly 'loose-skin-m2'?: number;
  @Num({ ...amount, description: 'Skin that still holds.' }) readonly 'held-skin-m2'?: number;
  @Num({ ...amount, description: 'Rotten core.' }) readonly 'loose-core-m2'?: number;
  @Num({ ...amount, description: 'Core that still holds.' }) readonly 'held-core-m2'?: number;
  @Num({ ...amount, description: 'Covering bonded to the deck that comes off.' })
  readonly 'covering-m2'?: number;
  @Num({ ...amount, description: 'Length of cut.' }) readonly 'cut-m'?: number;
  @Num(amount) readonly 'taper-m'?: number;
  @Num({ ...amount, description: 'Area of the new skin, two plies.' }) readonly 'laminate-m2'?: number;
  @Num({ ...amount, description: 'Ply area beyond two plies.' }) readonly 'extra-ply-m2'?: number;
  @Num({ ...amount, description: 'Faired area times cycles.' }) readonly 'faired-m2-cycle'?: number;
  @Num({ ...amount, description: 'Primed area times coats.' }) readonly 'primed-m2-coat'?: number;
  @Num({ ...amount, description: 'Painted area times coats.' }) readonly 'topcoat-m2-coat'?: number;
  @Num(amount) readonly 'finish-m2'?: number;
  @Num(amount) readonly 'nonskid-m2'?: number;
  @Num(amount) readonly 'hole'?: number;
  @Num({ ...amount, description: 'Four-bolt fittings.' }) readonly 'fitting-small'?: number;
  @Num({ ...amount, description: 'Winches, windlass, track.' }) readonly 'fitting-large'?: number;
  @Num(amount) readonly 'insert'?: number;
  @Num(amount) readonly 'plate'?: number;
  @Num({ ...amount, description: 'Lining below.' }) readonly 'support-m2-below'?: number;
  @Num({ ...amount, description: 'Holes drilled to inject resin under the skin.' })
  readonly 'injection-hole'?: number;
}

export class OperationFlagsDto implements OperationFlags {
  @OneOf(['re-bed', 'relay', 'inject', 'closed']) readonly skin!: OperationFlags['skin'];
  @OneOf(['from-above', 'from-below']) readonly access!: OperationFlags['access'];
  @OneOf(['wet-rotten', 'wet-bonded', 'dry-debonded']) readonly condition!: OperationFlags['condition'];
  @OneOf(['weights', 'battens', 'vacuum']) readonly press!: OperationFlags['press'];
  @OneOf(['shed', 'tent', 'open']) readonly shelter!: OperationFlags['shelter'];
  @OneOf(['open', 'lined', 'none']) readonly below!: OperationFlags['below'];
  @OneOf(['professional', 'owner']) readonly skill!: OperationFlags['skill'];
  @OneOf(['needed', 'not-needed']) readonly props!: OperationFlags['props'];
  @OneOf(['painted', 'none']) readonly finish!: OperationFlags['finish'];
  @OneOf(['yes', 'no']) readonly nonskid!: OperationFlags['nonskid'];
  @OneOf(['ashore', 'afloat']) readonly berth!: OperationFlags['berth'];
  @OneOf(['flat', 'cambered']) readonly panel!: OperationFlags['panel'];
}

export class CalendarCrewDto {
  @Whole({ from: 1, upTo: 50 })
  readonly people!: number;

  @Num({ optional: true, from: 1, upTo: 16, unit: 'h', description: 'Absent: 8.' })
  readonly hoursPerDay?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 22,
    unit: 'h',
    description: 'Local hour at which the day begins; absent: 8.',
  })
  readonly startHour?: number;

  @SomeOf(weekdays, { optional: true, least: 1, most: 7, description: 'Absent: Monday to Friday.' })
  readonly workingDays?: readonly Weekday[];

  @Texts({ optional: true, most: 400, each: { atMost: 10 }, description: 'ISO dates without work.' })
  readonly daysOff?: readonly string[];
}

export class CyclesDto {
  @Whole({ optional: true, from: 1, upTo: 12, description: 'Absent: 3.' })
  readonly fair?: number;

  @Whole({ optional: true, from: 1, upTo: 12, description: 'Absent: 2.' })
  readonly prime?: number;

  @Whole({ optional: true, from: 1, upTo: 12, description: 'Absent: 2.' })
  readonly topcoat?: number;
}

export class ThreePointDto implements ThreePoint {
  @Num({ from: 0, upTo: 10_000, unit: 'h' }) readonly low!: number;
  @Num({ from: 0, upTo: 10_000, unit: 'h' }) readonly likely!: number;
  @Num({ from: 0, upTo: 10_000, unit: 'h' }) readonly high!: number;
}

export class CustomOperationDto implements CustomOperation {
  @Code({ example: 'deliver-core' })
  readonly code!: string;

  @Text({ atMost: 120 })
  readonly title!: string;

  @Part(() => ThreePointDto, { description: 'Man-hours.' })
  readonly hours!: ThreePointDto;

  @Texts({ most: 60, each: { atMost: 80 }, description: 'Codes of operations that come before it.' })
  readonly after!: readonly string[];

  @Texts({
    optional: true,
    most: 60,
    each: { atMost: 80 },
    description: 'Codes of operations that wait for it.',
  })
  readonly before?: readonly string[];

  @Part(() => ThreePointDto, {
    optional: true,
    description: 'Hours that pass before its successors may start.',
  })
  readonly waitH?: ThreePointDto;

  @OneOf(['none', 'dry-deck', 'resin', 'coating'], { optional: true })
  readonly gate?: 'none' | 'dry-deck' | 'resin' | 'coating';

  @Flag({ optional: true })
  readonly isHoldPoint?: boolean;
}

export class ICalendarDto {
  @Code({ description: 'Begins every UID, such as the id of the estimate.' })
  readonly uidPrefix!: string;

  @Code({ description: 'Domain part of every UID.', example: 'yard.example' })
  readonly uidDomain!: string;

  @Text({ atMost: 40, description: 'RFC 3339: when this export is made.' })
  readonly stampAt!: string;

  @Flag({ description: 'Every task as an event, besides the milestones.' })
  readonly withTasks!: boolean;
}

/** The precedence network of a job under a crew, a clock and the weather. */
export class CalendarRequestDto implements JobCalendarRequest {
  @CalendarDate({ description: 'Day on which work may start.' })
  readonly startDate!: string;

  @Text({
    optional: true,
    atMost: 60,
    description: 'Zone of the place; absent: UTC.',
    example: 'Europe/Lisbon',
  })
  readonly timeZone?: string;

  @Part(() => DriverAmountsDto)
  readonly drivers!: DriverAmountsDto;

  @Part(() => OperationFlagsDto)
  readonly flags!: OperationFlagsDto;

  @Part(() => CalendarCrewDto)
  readonly crew!: CalendarCrewDto;

  @Part(() => CyclesDto, { optional: true })
  readonly cycles?: CyclesDto;

  @Code({ example: 'resin-epoxy-5to1' })
  readonly resin!: string;

  @Code({ example: 'medium' })
  readonly hardener!: string;

  @Code({ optional: true, description: 'Code of the coating whose limits count for paint.' })
  readonly coating?: string;

  @Temperature({
    optional: true,
    from: -40,
    upTo: 80,
    description: 'Deck where no forecast reaches; absent: 18 degC.',
  })
  readonly deckTemperatureC?: number;

  @Part(() => DeckWarmthDto, { optional: true })
  readonly warmth?: DeckWarmthDto;

  @Part(() => ForecastDto, { optional: true })
  readonly forecast?: ForecastDto;

  @Num({
    optional: true,
    from: 0,
    upTo: 0.9,
    description: 'Share of working days lost to weather beyond the forecast.',
  })
  readonly weatherLossFraction?: number;

  @Num({ optional: true, from: 0, upTo: 700, unit: '%' })
  readonly coreMoisturePercent?: number;

  @Num({
    optional: true,
    from: 0,
    upTo: 700,
    unit: '%',
    description: 'Of the core that stays, at the edge: drying follows it. Absent: that of the core.',
  })
  readonly edgeMoisturePercent?: number;

  @OneOf(['balsa', 'plywood', 'foam'], {
    optional: true,
    description: 'What dries under the lip; absent: balsa.',
  })
  readonly dryingCore?: 'balsa' | 'plywood' | 'foam';

  @Parts(() => CustomOperationDto, { optional: true, most: 60 })
  readonly customOperations?: readonly CustomOperationDto[];

  @Whole({ optional: true, from: 0, upTo: 4_294_967_295 })
  readonly seed?: number;

  @Whole({ optional: true, from: 100, upTo: 20_000, description: 'Simulated calendars; absent: 2000.' })
  readonly runs?: number;

  @CalendarDate({ optional: true, description: 'Day for which the work is listed.' })
  readonly today?: string;

  @Part(() => ICalendarDto, { optional: true, description: 'Asks for the calendar as iCalendar text too.' })
  readonly iCalendar?: ICalendarDto;
}

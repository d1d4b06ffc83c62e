import type { ThreePoint } from '#lib/kernel';
import type { Weekday } from '#lib/cure';
import {
  calendarCrewQuestions,
  customOperationQuestions,
  cyclesQuestions,
  iCalendarQuestions,
  jobCalendarQuestions,
  threePointQuestions,
  type CustomOperation,
  type JobCalendarRequest,
} from '#lib/calendar';
import {
  driverAmountsQuestions,
  operationFlagsQuestions,
  type DriverAmounts,
  type OperationFlags,
} from '#lib/work';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';

/** How much of each driver the job has; one left out is none of it, `job` is one. */
export class DriverAmountsDto implements DriverAmounts {
  @Asked(driverAmountsQuestions['job']) readonly 'job'?: number;
  @Asked(driverAmountsQuestions['day']) readonly 'day'?: number;
  @Asked(driverAmountsQuestions['opened-m2']) readonly 'opened-m2'?: number;
  @Asked(driverAmountsQuestions['loose-skin-m2']) readonly 'loose-skin-m2'?: number;
  @Asked(driverAmountsQuestions['held-skin-m2']) readonly 'held-skin-m2'?: number;
  @Asked(driverAmountsQuestions['loose-core-m2']) readonly 'loose-core-m2'?: number;
  @Asked(driverAmountsQuestions['held-core-m2']) readonly 'held-core-m2'?: number;
  @Asked(driverAmountsQuestions['bared-m2']) readonly 'bared-m2'?: number;
  @Asked(driverAmountsQuestions['kept-core-m2']) readonly 'kept-core-m2'?: number;
  @Asked(driverAmountsQuestions['dried-m2']) readonly 'dried-m2'?: number;
  @Asked(driverAmountsQuestions['cored-m2']) readonly 'cored-m2'?: number;
  @Asked(driverAmountsQuestions['solid-l']) readonly 'solid-l'?: number;
  @Asked(driverAmountsQuestions['cut-m']) readonly 'cut-m'?: number;
  @Asked(driverAmountsQuestions['lip-m']) readonly 'lip-m'?: number;
  @Asked(driverAmountsQuestions['taper-m']) readonly 'taper-m'?: number;
  @Asked(driverAmountsQuestions['laminate-m2']) readonly 'laminate-m2'?: number;
  @Asked(driverAmountsQuestions['extra-ply-m2']) readonly 'extra-ply-m2'?: number;
  @Asked(driverAmountsQuestions['faired-m2-cycle']) readonly 'faired-m2-cycle'?: number;
  @Asked(driverAmountsQuestions['primed-m2-coat']) readonly 'primed-m2-coat'?: number;
  @Asked(driverAmountsQuestions['topcoat-m2-coat']) readonly 'topcoat-m2-coat'?: number;
  @Asked(driverAmountsQuestions['finish-m2']) readonly 'finish-m2'?: number;
  @Asked(driverAmountsQuestions['old-finish-m2']) readonly 'old-finish-m2'?: number;
  @Asked(driverAmountsQuestions['covering-m2']) readonly 'covering-m2'?: number;
  @Asked(driverAmountsQuestions['nonskid-m2']) readonly 'nonskid-m2'?: number;
  @Asked(driverAmountsQuestions['hole']) readonly 'hole'?: number;
  @Asked(driverAmountsQuestions['fitting-off-h']) readonly 'fitting-off-h'?: number;
  @Asked(driverAmountsQuestions['fitting-on-h']) readonly 'fitting-on-h'?: number;
  @Asked(driverAmountsQuestions['fitting-helped-h']) readonly 'fitting-helped-h'?: number;
  @Asked(driverAmountsQuestions['insert']) readonly 'insert'?: number;
  @Asked(driverAmountsQuestions['plate']) readonly 'plate'?: number;
  @Asked(driverAmountsQuestions['support-m2-below']) readonly 'support-m2-below'?: number;
  @Asked(driverAmountsQuestions['injection-hole']) readonly 'injection-hole'?: number;
  @Asked(driverAmountsQuestions['dry-hole']) readonly 'dry-hole'?: number;
  @Asked(driverAmountsQuestions['dry-set-up']) readonly 'dry-set-up'?: number;
  @Asked(driverAmountsQuestions['dry-reading']) readonly 'dry-reading'?: number;
  @Asked(driverAmountsQuestions['strip-m']) readonly 'strip-m'?: number;
  @Asked(driverAmountsQuestions['slot-m']) readonly 'slot-m'?: number;
  @Asked(driverAmountsQuestions['injected-place']) readonly 'injected-place'?: number;
  @Asked(driverAmountsQuestions['laminate-pause-m2']) readonly 'laminate-pause-m2'?: number;
  @Asked(driverAmountsQuestions['joint-m']) readonly 'joint-m'?: number;
  @Asked(driverAmountsQuestions['crack-m']) readonly 'crack-m'?: number;
  @Asked(driverAmountsQuestions['leak-frame']) readonly 'leak-frame'?: number;
  @Asked(driverAmountsQuestions['leak-slot']) readonly 'leak-slot'?: number;
  @Asked(driverAmountsQuestions['core-joint-m']) readonly 'core-joint-m'?: number;
  @Asked(driverAmountsQuestions['leak-hunt']) readonly 'leak-hunt'?: number;
  @Asked(driverAmountsQuestions['upstand-m']) readonly 'upstand-m'?: number;
  @Asked(driverAmountsQuestions['rail-m']) readonly 'rail-m'?: number;
  @Asked(driverAmountsQuestions['bow']) readonly 'bow'?: number;
  @Asked(driverAmountsQuestions['overlay-screwed-m2']) readonly 'overlay-screwed-m2'?: number;
  @Asked(driverAmountsQuestions['overlay-glued-m2']) readonly 'overlay-glued-m2'?: number;
  @Asked(driverAmountsQuestions['overlay-relay-m2']) readonly 'overlay-relay-m2'?: number;
  @Asked(driverAmountsQuestions['lining-zipped-m2']) readonly 'lining-zipped-m2'?: number;
  @Asked(driverAmountsQuestions['lining-panel-m2']) readonly 'lining-panel-m2'?: number;
  @Asked(driverAmountsQuestions['lining-glued-m2']) readonly 'lining-glued-m2'?: number;
}

export class OperationFlagsDto implements OperationFlags {
  @Asked(operationFlagsQuestions.skin) readonly skin!: OperationFlags['skin'];
  @Asked(operationFlagsQuestions.access) readonly access!: OperationFlags['access'];
  @Asked(operationFlagsQuestions.condition) readonly condition!: OperationFlags['condition'];
  @Asked(operationFlagsQuestions.press) readonly press!: OperationFlags['press'];
  @Asked(operationFlagsQuestions.shelter) readonly shelter!: OperationFlags['shelter'];
  @Asked(operationFlagsQuestions.below) readonly below!: OperationFlags['below'];
  @Asked(operationFlagsQuestions.skill) readonly skill!: OperationFlags['skill'];
  @Asked(operationFlagsQuestions.props) readonly props!: OperationFlags['props'];
  @Asked(operationFlagsQuestions.finish) readonly finish!: OperationFlags['finish'];
  @Asked(operationFlagsQuestions.nonskid) readonly nonskid!: OperationFlags['nonskid'];
  @Asked(operationFlagsQuestions.berth) readonly berth!: OperationFlags['berth'];
  @Asked(operationFlagsQuestions.panel) readonly panel!: OperationFlags['panel'];
}

export class CalendarCrewDto {
  @Asked(calendarCrewQuestions.people)
  readonly people!: number;

  @Asked(calendarCrewQuestions.hoursPerDay)
  readonly hoursPerDay?: number;

  @Asked(calendarCrewQuestions.presentH)
  readonly presentH?: number;

  @Asked(calendarCrewQuestions.startHour)
  readonly startHour?: number;

  @Asked(calendarCrewQuestions.workingDays)
  readonly workingDays?: readonly Weekday[];

  @Asked(calendarCrewQuestions.daysOff)
  readonly daysOff?: readonly string[];
}

export class CyclesDto {
  @Asked(cyclesQuestions.bedding)
  readonly bedding?: number;

  @Asked(cyclesQuestions.laminating)
  readonly laminating?: number;

  @Asked(cyclesQuestions.fair)
  readonly fair?: number;

  @Asked(cyclesQuestions.prime)
  readonly prime?: number;

  @Asked(cyclesQuestions.topcoat)
  readonly topcoat?: number;
}

export class ThreePointDto implements ThreePoint {
  @Asked(threePointQuestions.low) readonly low!: number;
  @Asked(threePointQuestions.likely) readonly likely!: number;
  @Asked(threePointQuestions.high) readonly high!: number;
}

export class CustomOperationDto implements CustomOperation {
  @Asked(customOperationQuestions.code)
  readonly code!: string;

  @Asked(customOperationQuestions.title)
  readonly title!: string;

  @AskedPart(customOperationQuestions.hours, () => ThreePointDto)
  readonly hours!: ThreePointDto;

  @Asked(customOperationQuestions.after)
  readonly after!: readonly string[];

  @Asked(customOperationQuestions.before)
  readonly before?: readonly string[];

  @AskedPart(customOperationQuestions.waitH, () => ThreePointDto)
  readonly waitH?: ThreePointDto;

  @Asked(customOperationQuestions.gate)
  readonly gate?: 'none' | 'dry-deck' | 'resin' | 'coating';

  @Asked(customOperationQuestions.isHoldPoint)
  readonly isHoldPoint?: boolean;
}

export class ICalendarDto {
  @Asked(iCalendarQuestions.uidPrefix)
  readonly uidPrefix!: string;

  @Asked(iCalendarQuestions.uidDomain)
  readonly uidDomain!: string;

  @Asked(iCalendarQuestions.stampAt)
  readonly stampAt!: string;

  @Asked(iCalendarQuestions.withTasks)
  readonly withTasks!: boolean;
}

/** The precedence network of a job under a crew, a clock and the weather. */
export class CalendarRequestDto implements JobCalendarRequest {
  @Asked(jobCalendarQuestions.startDate)
  readonly startDate!: string;

  @Asked(jobCalendarQuestions.timeZone)
  readonly timeZone?: string;

  @AskedPart(jobCalendarQuestions.drivers, () => DriverAmountsDto)
  readonly drivers!: DriverAmountsDto;

  @AskedPart(jobCalendarQuestions.flags, () => OperationFlagsDto)
  readonly flags!: OperationFlagsDto;

  @AskedPart(jobCalendarQuestions.crew, () => CalendarCrewDto)
  readonly crew!: CalendarCrewDto;

  @AskedPart(jobCalendarQuestions.cycles, () => CyclesDto)
  readonly cycles?: CyclesDto;

  @Asked(jobCalendarQuestions.resin)
  readonly resin!: string;

  @Asked(jobCalendarQuestions.hardener)
  readonly hardener!: string;

  @Asked(jobCalendarQuestions.coating)
  readonly coating?: string;

  @Asked(jobCalendarQuestions.deckTemperatureC)
  readonly deckTemperatureC?: number;

  @AskedPart(jobCalendarQuestions.warmth, () => DeckWarmthDto)
  readonly warmth?: DeckWarmthDto;

  @AskedPart(jobCalendarQuestions.forecast, () => ForecastDto)
  readonly forecast?: ForecastDto;

  @Asked(jobCalendarQuestions.weatherLossFraction)
  readonly weatherLossFraction?: number;

  @Asked(jobCalendarQuestions.coreMoisturePercent)
  readonly coreMoisturePercent?: number;

  @Asked(jobCalendarQuestions.edgeMoisturePercent)
  readonly edgeMoisturePercent?: number;

  @Asked(jobCalendarQuestions.dryingCore)
  readonly dryingCore?: 'balsa' | 'plywood' | 'foam';

  @Asked(jobCalendarQuestions.isExtentAgreed)
  readonly isExtentAgreed?: boolean;

  @AskedParts(jobCalendarQuestions.customOperations, () => CustomOperationDto)
  readonly customOperations?: readonly CustomOperationDto[];

  @Asked(jobCalendarQuestions.seed)
  readonly seed?: number;

  @Asked(jobCalendarQuestions.runs)
  readonly runs?: number;

  @Asked(jobCalendarQuestions.today)
  readonly today?: string;

  @AskedPart(jobCalendarQuestions.iCalendar, () => ICalendarDto)
  readonly iCalendar?: ICalendarDto;
}

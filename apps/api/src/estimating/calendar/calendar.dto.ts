import {
  calendarCrewQuestions,
  customOperationQuestions,
  cyclesQuestions,
  iCalendarQuestions,
  jobCalendarQuestions,
  threePointQuestions,
} from '#lib/calendar';
import { driverAmountsQuestions, operationFlagsQuestions } from '#lib/work';
import { DeckWarmthDto, ForecastDto } from '../../inputs/weather.dto.js';
import { answering } from '../../edge/dto/index.js';

/** How much of each driver the job has; one left out is none of it, `job` is one. */
export class DriverAmountsDto extends answering(driverAmountsQuestions) {}

export class OperationFlagsDto extends answering(operationFlagsQuestions) {}

export class CalendarCrewDto extends answering(calendarCrewQuestions) {}

export class CyclesDto extends answering(cyclesQuestions) {}

export class ThreePointDto extends answering(threePointQuestions) {}

export class CustomOperationDto extends answering(customOperationQuestions, {
  hours: () => ThreePointDto,
  waitH: () => ThreePointDto,
}) {}

export class ICalendarDto extends answering(iCalendarQuestions) {}

/** The precedence network of a job under a crew, a clock and the weather. */
export class CalendarRequestDto extends answering(jobCalendarQuestions, {
  drivers: () => DriverAmountsDto,
  flags: () => OperationFlagsDto,
  crew: () => CalendarCrewDto,
  cycles: () => CyclesDto,
  warmth: () => DeckWarmthDto,
  forecast: () => ForecastDto,
  customOperations: () => CustomOperationDto,
  iCalendar: () => ICalendarDto,
}) {}

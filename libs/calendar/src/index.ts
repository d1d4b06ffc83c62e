export {
  planCalendar,
  planWithScenarios,
  withDays,
  workTimes,
  type CalendarWithScenarios,
} from './calendar.js';
export {
  absentPerDayWorked,
  meanAbsentPerDayWorked,
  usualAttendance,
  weatherLostPerDayWorked,
  type Absence,
} from './attendance.js';
export { balsaEdgeDays, cureFactor, dryingDays, type Drying, type DryingCore } from './waits.js';
export { type CalendarEvents, type ICalendarChoice, calendarText, iCalendarQuestions } from './icalendar.js';
export {
  calendarCrewQuestions,
  customOperationQuestions,
  weatherLoss,
  cyclesQuestions,
  threePointQuestions,
} from './calendar-request.js';
export { type DatedTask, todayFor } from './today.js';
export {
  type Activity,
  type ActivityTimes,
  type CriticalPath,
  criticalPath,
  threePointMean,
  threePointVariance,
} from './critical-path.js';
export type {
  CalendarMilestone,
  CalendarPlan,
  CalendarRequest,
  CalendarScenario,
  DayRange,
  ScenarioDays,
  CustomOperation,
  PlannedTask,
  TodayItem,
} from './calendar-request.js';
export { jobCalendar, jobCalendarQuestions, type JobCalendar, type JobCalendarRequest } from './by-code.js';

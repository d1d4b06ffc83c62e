export { planCalendar, workTimes } from './calendar.js';
export { type CalendarEvents, type ICalendarChoice, calendarText } from './icalendar.js';
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
  CustomOperation,
  PlannedTask,
  TodayItem,
} from './calendar-request.js';
export { jobCalendar, type JobCalendar, type JobCalendarRequest } from './by-code.js';

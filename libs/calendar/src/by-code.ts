import { materialAt, type Catalogue } from '#lib/catalogue';
import { instantFaults } from '#lib/cure';
import { allOf, andThen, given, mapValue, refusal, success, type Outcome } from '#lib/kernel';
import type { CalendarPlan, CalendarRequest } from './calendar-request.js';
import { planCalendar } from './calendar.js';
import { calendarText, type ICalendarChoice } from './icalendar.js';

export interface JobCalendarRequest extends Omit<CalendarRequest, 'resin' | 'coating'> {
  readonly resin: string;
  readonly coating?: string;
  /** Asks for the calendar as iCalendar text too; the moment of making is the caller's. */
  readonly iCalendar?: ICalendarChoice;
}

export interface JobCalendar extends CalendarPlan {
  /** RFC 5545, when it was asked for. */
  readonly iCalendar?: string;
}

export function jobCalendar(request: JobCalendarRequest, catalogue: Catalogue): Outcome<JobCalendar> {
  const { resin, coating, iCalendar, ...rest } = request;
  const stampFaults = iCalendar === undefined ? [] : instantFaults('/iCalendar/stampAt', iCalendar.stampAt);
  const materials = allOf({
    resin: materialAt(catalogue, 'resin', resin, '/resin'),
    coating:
      coating === undefined ? success(undefined) : materialAt(catalogue, 'coating', coating, '/coating'),
    stamp: stampFaults.length === 0 ? success(true) : refusal(...stampFaults),
  });
  return andThen(materials, (known) =>
    mapValue(planCalendar({ ...rest, resin: known.resin, ...given({ coating: known.coating }) }), (plan) =>
      iCalendar === undefined ? plan : { ...plan, iCalendar: calendarText(plan, iCalendar) },
    ),
  );
}

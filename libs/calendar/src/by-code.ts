import { askCode, askPart, faultsIn, type AnswersTo } from '#lib/asking';
import { materialAt, type Catalogue } from '#lib/catalogue';
import { instantFaults, mixedByCodeQuestions } from '#lib/cure';
import { allOf, andThen, given, mapValue, refusal, success, type Outcome } from '#lib/kernel';
import { calendarQuestions, type CalendarPlan } from './calendar-request.js';
import { planCalendar } from './calendar.js';
import { calendarText, iCalendarQuestions } from './icalendar.js';

/** A calendar by the codes of a catalogue. */
export const jobCalendarQuestions = {
  ...calendarQuestions,
  ...mixedByCodeQuestions,
  coating: askCode({
    meaning: 'coating',
    description: 'Code of the coating whose limits count for paint.',
    otherwise: 'unknown',
  }),
  iCalendar: askPart({
    meaning: 'calendar as iCalendar text',
    description: 'Asks for the calendar as iCalendar text too.',
    of: iCalendarQuestions,
    otherwise: 'unknown',
  }),
};
export type JobCalendarRequest = AnswersTo<typeof jobCalendarQuestions>;

export interface JobCalendar extends CalendarPlan {
  /** RFC 5545, when it was asked for. */
  readonly iCalendar?: string;
}

export function jobCalendar(request: JobCalendarRequest, catalogue: Catalogue): Outcome<JobCalendar> {
  const wrong = faultsIn(request, jobCalendarQuestions);
  if (wrong.length > 0) return refusal(...wrong);
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

import { askCode, askText, askWhether, type AnswersTo } from '#lib/asking';
import ical, { ICalCalendarMethod, type ICalCalendarProdIdData } from 'ical-generator';
import { Defect } from '#lib/kernel';
import { readInstant } from '#lib/cure';
import type { CalendarPlan } from './calendar-request.js';

/** The moment of making is the caller's, since this room has no clock. */
export const iCalendarQuestions = {
  uidPrefix: askCode({
    meaning: 'beginning of every UID',
    description: 'Begins every UID, such as the id of the estimate.',
  }),
  uidDomain: askCode({
    meaning: 'domain of every UID',
    description: 'Domain part of every UID.',
    example: 'yard.example',
  }),
  stampAt: askText({
    meaning: 'moment of the export',
    description: 'RFC 3339: when this export is made.',
    atMost: 40,
  }),
  withTasks: askWhether({
    meaning: 'whether tasks are events too',
    description: 'Every task as an event, besides the milestones.',
  }),
};

export interface ICalendarChoice extends AnswersTo<typeof iCalendarQuestions> {
  /** Rises with each issue of the same calendar, so that a newer one moves the events of the older; 0 when left out. */
  readonly sequence?: number;
}

/** What is exported of a calendar. */
export interface CalendarEvents {
  readonly finish: CalendarPlan['finish'];
  readonly milestones: CalendarPlan['milestones'];
  readonly tasks: readonly Pick<
    CalendarPlan['tasks'][number],
    'code' | 'title' | 'startAt' | 'endAt' | 'startsBecause'
  >[];
}

const maker: ICalCalendarProdIdData = { company: 'kingplank', product: 'repair-calendar', language: 'EN' };
/** A milestone is shown for a quarter of an hour. */
const MILESTONE_MS = 15 * 60_000;

/** The calendar as iCalendar text (RFC 5545), all moments in UTC. */
export function calendarText(plan: CalendarEvents, choice: ICalendarChoice): string {
  const calendar = ical({ prodId: maker, method: ICalCalendarMethod.PUBLISH });
  const { sequence = 0 } = choice;
  const stamp = dateOf(choice.stampAt);
  const uid = (code: string): string => `${choice.uidPrefix}-${code}@${choice.uidDomain}`;
  for (const { code, title, at } of plan.milestones) {
    calendar.createEvent({
      id: uid(`milestone-${code}`),
      stamp,
      sequence,
      start: dateOf(at),
      end: new Date(dateOf(at).getTime() + MILESTONE_MS),
      summary: title,
      description: descriptionOf(plan),
    });
  }
  for (const { code, title, startAt, endAt, startsBecause } of choice.withTasks ? plan.tasks : []) {
    const [start, end] = [dateOf(startAt), dateOf(endAt)];
    if (end > start)
      calendar.createEvent({
        id: uid(`task-${code}`),
        stamp,
        sequence,
        start,
        end,
        summary: title,
        description: `Starts because ${startsBecause}.`,
      });
  }
  return `${calendar.toString()}\r\n`;
}

function dateOf(at: string): Date {
  const instant = readInstant(at);
  if (instant === undefined) throw new Defect(`A plan holds a moment that cannot be read: ${at}`);
  return new Date(instant.epochMs);
}

const descriptionOf = ({ finish }: CalendarEvents): string =>
  `By likely values. Finish early ${finish.early.slice(0, 10)}, likely ${finish.likely.slice(0, 10)}, late ${finish.late.slice(0, 10)} (one in ten earlier, one in ten later).`;

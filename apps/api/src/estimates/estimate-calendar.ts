import type { CalendarTask } from '#lib/estimate';
import { calendarText, todayFor, type CalendarEvents, type DatedTask, type TodayItem } from '#lib/calendar';
import { HttpProblem } from '../edge/problems.js';
import type { StoredEstimate } from './stored-estimate.js';

/** Domain part of every UID; the part before it is unique by itself. */
const UID_DOMAIN = 'kingplank';

/**
 * The calendar as iCalendar text, the same bytes each time: stamped with the moment the estimate was made.
 *
 * @throws {HttpProblem} conflict, when the estimate counts days without dates
 */
export function iCalendarOf(
  {
    createdAt,
    revision,
    estimate: {
      process: { calendar },
    },
  }: StoredEstimate,
  events: 'milestones' | 'all',
): string {
  const { finish } = calendar;
  if (finish === undefined) throw withoutDates();
  const dated: CalendarEvents = {
    finish,
    milestones: calendar.milestones.flatMap(({ code, title, at }) =>
      at === undefined ? [] : [{ code, title, at }],
    ),
    tasks: datedTasks(calendar.tasks),
  };
  return calendarText(dated, {
    uidPrefix: revision.rootId,
    uidDomain: UID_DOMAIN,
    stampAt: createdAt,
    withTasks: events === 'all',
    sequence: revision.number,
  });
}

/**
 * What the calendar holds for a day.
 *
 * @throws {HttpProblem} conflict, when the estimate counts days without dates
 */
export function dayList(
  {
    estimate: {
      process: { calendar },
    },
  }: StoredEstimate,
  date: string,
): readonly TodayItem[] {
  if (calendar.finish === undefined) throw withoutDates();
  return todayFor(datedTasks(calendar.tasks), date);
}

const datedTasks = (tasks: readonly CalendarTask[]): readonly (CalendarTask & DatedTask)[] =>
  tasks.flatMap((task) => {
    const { startAt, endAt, readyAt } = task;
    return startAt === undefined || endAt === undefined || readyAt === undefined
      ? []
      : [{ ...task, startAt, endAt, readyAt }];
  });

const withoutDates = (): HttpProblem =>
  new HttpProblem('conflict', {
    detail:
      'The record names no day on which work may start and has no forecast, so its calendar counts days without dates. Revise the estimate with crew.startDate.',
  });

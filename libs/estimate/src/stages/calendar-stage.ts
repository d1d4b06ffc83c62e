import { isKnown, refusal, type Outcome } from '#lib/kernel';
import { planCalendar, type CalendarPlan, type CalendarRequest } from '#lib/calendar';
import { strictestCoating } from './coatings.js';
import type { CalendarSection } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import { driverAmountsOf, type JobQuantities } from './labour-drivers.js';
import type { LabourWork } from './labour-stage.js';
import type { ProcessWork } from './process-stage.js';
import { atRecord } from '../job/record-pointers.js';

/** A Monday: the week's pattern counts, not the date, and the answer then carries no dates. */
const ANY_MONDAY = '2001-01-01';

/** Enough for days rounded to whole ones; the calendar endpoint runs as many as it is asked for. */
export const CALENDARS = 300;

export interface CalendarContext {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly labour: LabourWork;
  readonly process: ProcessWork;
}

export function calendarOf(context: CalendarContext, runs: number = CALENDARS): Outcome<CalendarPlan> {
  const outcome = planCalendar(requestOf(context, runs));
  return outcome.ok ? outcome : refusal(...atRecord(outcome.problems, calendarFields, '/crew'));
}

const calendarFields = {
  '/startDate': '/crew/startDate',
  '/crew': '/crew',
  '/deckTemperatureC': '/conditions/temperatureC',
  '/forecast': '/conditions/forecast',
  '/timeZone': '/conditions/forecast/timeZone',
  '/warmth': '/conditions/warmth',
};

function requestOf({ job, quantities, labour, process }: CalendarContext, runs: number): CalendarRequest {
  const { conditions, pricing } = job.record;
  const { startDate } = job.answers.crew;
  const coating = strictestCoating(job);
  return {
    startDate: isKnown(startDate) ? startDate.value : ANY_MONDAY,
    drivers: { ...driverAmountsOf(quantities), day: Math.ceil(labour.crewDays.value) },
    flags: labour.flags,
    crew: crewOf(job),
    cycles: {
      fair: quantities.fairingCycles.value,
      prime: quantities.primerCoats.value,
      topcoat: quantities.topcoatCoats.value,
    },
    resin: job.resin,
    hardener: process.batches.resin.hardener,
    ...(coating === undefined ? {} : { coating }),
    deckTemperatureC: job.answers.conditions.temperatureC.value - steadyWarmthK(job),
    runs,
    ...(conditions?.forecast === undefined ? {} : { forecast: conditions.forecast }),
    ...(conditions?.warmth === undefined ? {} : { warmth: conditions.warmth }),
    ...(pricing?.seed === undefined ? {} : { seed: pricing.seed }),
  };
}

export const crewOf = ({
  answers: {
    crew: { people, hoursPerDay, workingDays },
  },
}: Job): CalendarRequest['crew'] => ({
  people: people.value,
  hoursPerDay: hoursPerDay.value,
  ...(isKnown(workingDays) ? { workingDays: workingDays.value } : {}),
});

/** The stated temperature is that of the deck as it is worked; the calendar counts heater and tent on top of what it is told. */
const steadyWarmthK = ({ record: { conditions } }: Job): number =>
  (conditions?.warmth?.heaterK ?? 0) + (conditions?.warmth?.tentK ?? 0);

export function calendarSection(plan: CalendarPlan, startDate: string | undefined): CalendarSection {
  const hasDates = startDate !== undefined;
  return {
    ...(hasDates ? { startDate, timeZone: plan.timeZone, finish: plan.finish } : {}),
    workingDays: plan.workingDays,
    calendarDays: plan.calendarDays,
    criticalChain: plan.criticalChain,
    tasks: plan.tasks.map(
      ({
        code,
        title,
        gate,
        startDay,
        endDay,
        startAt,
        endAt,
        readyAt,
        labourH,
        waitH,
        waitKind,
        isCritical,
        isHoldPoint,
        startsBecause,
        after,
      }) => ({
        code,
        title,
        gate,
        startDay,
        endDay,
        labourH,
        waitH,
        waitKind,
        isCritical,
        isHoldPoint,
        startsBecause,
        after,
        ...(hasDates ? { startAt, endAt, readyAt } : {}),
      }),
    ),
    milestones: plan.milestones.map(({ code, title, at }) => ({ code, title, ...(hasDates ? { at } : {}) })),
    notes: plan.notes,
  };
}

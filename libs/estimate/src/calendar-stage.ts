import { below, refusal, type Outcome } from '#lib/kernel';
import { materialsOf } from '#lib/catalogue';
import { planCalendar, type CalendarPlan, type CalendarRequest } from '#lib/process';
import type { CalendarSection } from './estimate.js';
import type { Job } from './job.js';
import { driverAmountsOf, type JobQuantities } from './labour-drivers.js';
import type { LabourWork } from './labour-stage.js';
import type { ProcessWork } from './process-stage.js';

/** A Monday: the week's pattern counts, not the date, and the answer then carries no dates. */
const ANY_MONDAY = '2001-01-01';

/** Enough for days rounded to whole ones; the calendar endpoint runs as many as it is asked for. */
const CALENDARS = 300;

export interface CalendarContext {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly labour: LabourWork;
  readonly process: ProcessWork;
}

export function calendarOf(context: CalendarContext): Outcome<CalendarPlan> {
  const outcome = planCalendar(requestOf(context));
  return outcome.ok ? outcome : refusal(...below('/conditions', outcome.problems));
}

function requestOf({ job, quantities, labour, process }: CalendarContext): CalendarRequest {
  const { crew, pricing } = job.record;
  const primer = materialsOf(job.catalogue, 'coating').find(({ coating }) => coating === 'primer');
  return {
    startDate: crew?.startDate ?? ANY_MONDAY,
    drivers: { ...driverAmountsOf(quantities), day: Math.ceil(labour.crewDays.value) }, flags: labour.flags,
    crew: {
      people: job.numbers.people.value, hoursPerDay: job.numbers.hoursPerDay.value,
      ...(crew?.workingDays === undefined ? {} : { workingDays: crew.workingDays }),
    },
    cycles: { fair: quantities.fairingCycles.value, prime: quantities.primerCoats.value, topcoat: quantities.topcoatCoats.value },
    resin: job.resin, hardener: process.batches.resin.hardener, ...(primer === undefined ? {} : { coating: primer }),
    deckTemperatureC: job.numbers.temperatureC.value, runs: CALENDARS,
    ...(pricing?.seed === undefined ? {} : { seed: pricing.seed }),
  };
}

export function calendarSection(plan: CalendarPlan, startDate: string | undefined): CalendarSection {
  const hasDates = startDate !== undefined;
  return {
    ...(hasDates ? { startDate, finish: plan.finish } : {}),
    workingDays: plan.workingDays, calendarDays: plan.calendarDays, criticalChain: plan.criticalChain,
    tasks: plan.tasks.map(({ code, title, startDay, endDay, startAt, endAt, labourH, waitH, waitKind, isCritical, isHoldPoint, after }) => ({
      code, title, startDay, endDay, labourH, waitH, waitKind, isCritical, isHoldPoint, after, ...(hasDates ? { startAt, endAt } : {}),
    })),
    milestones: plan.milestones.map(({ code, title, at }) => ({ code, title, ...(hasDates ? { at } : {}) })),
    notes: plan.notes,
  };
}

import { heldWarmthK } from '#lib/cure';
import { isKnown, refusal, success, type Outcome } from '#lib/kernel';
import {
  absentPerDayWorked,
  meanAbsentPerDayWorked,
  planWithScenarios,
  weatherLoss,
  weatherLostPerDayWorked,
  type Absence,
  type CalendarPlan,
  type CalendarRequest,
  type CalendarScenario,
  type CalendarWithScenarios,
  type DryingCore,
  type ScenarioDays,
} from '#lib/calendar';
import { derived, type Figure } from '#lib/provenance';
import { days as inDays } from '#lib/units';
import { strictestCoating } from './coatings.js';
import { visitHoursADay } from './visit-work.js';
import type { CalendarSection } from '../document/estimate-document.js';
import { rangeOf } from '../document/range.js';
import type { Job } from '../job/job.js';
import { driverAmountsOf, type JobQuantities } from './labour-drivers.js';
import type { LabourWork } from './labour-stage.js';
import type { ProcessWork } from './process-stage.js';
import { paysForAbsence } from './hands.js';
import { asRecorded, type PlannedExtent } from './replan-stage.js';
import { atRecord } from '../job/record-pointers.js';

/** A Monday: the week's pattern counts, not the date, and the answer then carries no dates. */
const ANY_MONDAY = '2001-01-01';

/** The plan's own spread is replaced by that of the job's money and hours: the least number of calendars will do. */
const CALENDARS = 100;

export interface CalendarContext {
  readonly job: Job;
  readonly planned: readonly PlannedExtent[];
  readonly quantities: JobQuantities;
  readonly labour: Pick<LabourWork, 'flags'>;
  readonly process: Pick<ProcessWork, 'batches'>;
  /** In which core is bedded, because no more can be pressed at once. */
  readonly turns: number;
  /** In which plies are laid, wet on wet within each. */
  readonly sessions: number;
}

/** How long the job takes at any extent, pace and luck with its waits. */
export interface ScheduleWork extends CalendarWithScenarios {
  readonly daysAt: (extentFactor: number, pace: number, waitQuantile: number) => ScenarioDays;
  /** Mean days of the recorded extent. */
  readonly visits: Figure<'d'>;
  /** Those that a yard charges. */
  readonly chargedDays: Figure<'d'>;
  readonly absentPerDayWorked: (quantile: number) => number;
}

export function scheduleOf(context: CalendarContext): Outcome<ScheduleWork> {
  const asked = scenariosOf(context.planned);
  const outcome = planWithScenarios(requestOf(context), asked.scenarios);
  return outcome.ok
    ? success(scheduled(context.job, outcome.value, asked))
    : refusal(...atRecord(outcome.problems, calendarFields, '/crew'));
}

const paces = [0.75, 1, 1.4] as const;
const waitQuantiles = [0.1, 0.5, 0.9] as const;

interface Asked {
  readonly extents: readonly number[];
  /** By extent, how the numbers of fairing cycles share in its days. */
  readonly shares: readonly (readonly CycleShare[])[];
  readonly scenarios: readonly CalendarScenario[];
}

/** The least, the recorded and the greatest extent, each at three paces and three runs of luck. */
function scenariosOf(planned: readonly PlannedExtent[]): Asked {
  const recorded = asRecorded(planned);
  const chosen = [...new Set([planned[0], recorded, planned[planned.length - 1]])];
  const shares = chosen.map(({ quantities }) => cycleShares(quantities.fairingCycles.value));
  return {
    extents: chosen.map(({ extentFactor }) => extentFactor),
    shares,
    scenarios: chosen.flatMap(({ drivers }, place) =>
      shares[place].flatMap(({ fairingCycles }) => atEveryPace(drivers, fairingCycles)),
    ),
  };
}

const atEveryPace = (
  drivers: CalendarScenario['drivers'],
  fairingCycles: number,
): readonly CalendarScenario[] =>
  paces.flatMap((hoursFactor) =>
    waitQuantiles.map((waitQuantile) => ({ drivers, fairingCycles, hoursFactor, waitQuantile })),
  );

interface CycleShare {
  readonly fairingCycles: number;
  readonly share: number;
}

/** Of jobs with 2.4 cycles on average, six in ten take two and four take three: each cycle cures by itself, so days come in steps. */
function cycleShares(mean: number): readonly CycleShare[] {
  const fewer = Math.floor(mean);
  const more = mean - fewer;
  return more < 1e-9
    ? [{ fairingCycles: fewer, share: 1 }]
    : [
        { fairingCycles: fewer, share: 1 - more },
        { fairingCycles: fewer + 1, share: more },
      ];
}

/** Days of every extent, pace and run of luck, averaged over the numbers of cycles; in the order in which they were asked. */
function averaged(days: readonly ScenarioDays[], shares: Asked['shares']): readonly ScenarioDays[] {
  const each = paces.length * waitQuantiles.length;
  let from = 0;
  return shares.flatMap((own) => {
    const parts = own.map(({ share }, place) => ({
      share,
      days: days.slice(from + place * each, from + (place + 1) * each),
    }));
    from += own.length * each;
    const mean = (name: keyof ScenarioDays, at: number): number =>
      parts.reduce((sum, part) => sum + part.share * part.days[at][name], 0);
    return parts[0].days.map((_, at) => ({
      calendarDays: mean('calendarDays', at),
      workingDays: mean('workingDays', at),
    }));
  });
}

function scheduled(job: Job, found: CalendarWithScenarios, { extents, shares }: Asked): ScheduleWork {
  const days = averaged(found.days, shares);
  const absence = absenceOf(job);
  const weatherDays = weatherLostPerDayWorked(absence);
  const tables = {
    calendarDays: Float64Array.from(
      days,
      ({ calendarDays, workingDays }) => calendarDays + workingDays * weatherDays,
    ),
    workingDays: Float64Array.from(days, ({ workingDays }) => workingDays),
  };
  const size = [extents.length, paces.length, waitQuantiles.length] as const;
  const daysAt: ScheduleWork['daysAt'] = (extentFactor, pace, waitQuantile) => {
    const extent = cellsUpTo(extents, extentFactor);
    const [hours, wait] = [cellsUpTo(paces, pace), cellsUpTo(waitQuantiles, waitQuantile)];
    return between(tables, size, { extent, hours, wait });
  };
  const meanOf = (name: keyof ScenarioDays): number =>
    MIDDLES.reduce((sum, quantile) => sum + daysAt(1, 1, quantile)[name] / MIDDLES.length, 0);
  const visits = meanOf('workingDays');
  const absentDays = paysForAbsence(job) ? visits * meanAbsentPerDayWorked(absence) : 0;
  const figure = (meaning: string, value: number): Figure<'d'> =>
    derived<'d'>('d', inDays(value), meaning, {
      formula: 'calendar.mean-days',
      title: 'Mean over short and long waits, of the recorded extent',
      symbol: 'd',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    });
  return {
    ...found,
    daysAt,
    visits: figure('days on which somebody works', visits),
    chargedDays: figure(
      'days from the first to the last, waits counted',
      meanOf('calendarDays') + absentDays,
    ),
    absentPerDayWorked: (quantile) => absentPerDayWorked(absence, quantile),
  };
}

const WEEKDAYS = 5;

/** A forecast shuts the days itself that weather takes. */
const absenceOf = ({ answers: { crew, conditions }, record }: Job): Absence => ({
  ...(crew.attendanceFraction.origin.kind === 'assumed'
    ? {}
    : { attendanceFraction: crew.attendanceFraction.value }),
  lossFraction: record.conditions?.forecast === undefined ? weatherLoss[conditions.shelter.value] : 0,
  workingDaysAWeek: isKnown(crew.workingDays) ? crew.workingDays.value.length : WEEKDAYS,
});

const MIDDLES = [0.1, 0.3, 0.5, 0.7, 0.9] as const;

/** Cell and way within it, as one number. */
function cellsUpTo(axis: readonly number[], at: number): number {
  const last = axis.length - 1;
  if (last === 0 || at <= axis[0]) return 0;
  if (at >= axis[last]) return last;
  let cell = 0;
  while (axis[cell + 1] < at) cell += 1;
  return cell + (at - axis[cell]) / (axis[cell + 1] - axis[cell]);
}

/** A cell on each axis and the way within it, as one number each. */
interface Place {
  readonly extent: number;
  readonly hours: number;
  readonly wait: number;
}

/** Straight between the eight neighbours in tables of three axes; the risk looks up thousands of places. */
function between(
  tables: Readonly<Record<keyof ScenarioDays, Float64Array>>,
  [extents, rows, columns]: readonly [number, number, number],
  { extent, hours, wait }: Place,
): ScenarioDays {
  const [x, y, z] = [below(extent, extents), below(hours, rows), below(wait, columns)];
  let [calendarDays, workingDays] = [0, 0];
  for (let corner = 0; corner < 8; corner += 1) {
    const [dx, dy, dz] = [corner & 1, (corner >> 1) & 1, corner >> 2];
    const weight = shareOf(extent - x, dx) * shareOf(hours - y, dy) * shareOf(wait - z, dz);
    if (weight === 0) continue;
    const row = Math.min(extents - 1, x + dx) * rows + Math.min(rows - 1, y + dy);
    const cell = row * columns + Math.min(columns - 1, z + dz);
    calendarDays += weight * tables.calendarDays[cell];
    workingDays += weight * tables.workingDays[cell];
  }
  return { calendarDays, workingDays };
}

/** The last cell of an axis has a neighbour above it, unless the axis has one cell alone. */
const below = (cells: number, length: number): number => Math.min(Math.floor(cells), Math.max(0, length - 2));

const shareOf = (share: number, above: number): number => (above === 1 ? share : 1 - share);

const calendarFields = {
  '/startDate': '/crew/startDate',
  '/crew': '/crew',
  '/deckTemperatureC': '/conditions/temperatureC',
  '/forecast': '/conditions/forecast',
  '/timeZone': '/conditions/forecast/timeZone',
  '/warmth': '/conditions/warmth',
};

function requestOf(context: CalendarContext): CalendarRequest {
  const { job, planned, labour, process, quantities, turns, sessions } = context;
  const { conditions } = job.record;
  const { startDate } = job.answers.crew;
  const coating = strictestCoating(job);
  return {
    startDate: isKnown(startDate) ? startDate.value : ANY_MONDAY,
    drivers: driversOf(planned, quantities),
    flags: labour.flags,
    crew: crewOf(job),
    cycles: {
      bedding: turns,
      laminating: sessions,
      fair: Math.round(quantities.fairingCycles.value),
      ...(quantities.primerCoats.value === 0 ? {} : { prime: quantities.primerCoats.value }),
      topcoat: quantities.topcoatCoats.value,
    },
    resin: job.resin,
    hardener: process.batches.resin.hardener,
    ...(coating === undefined ? {} : { coating }),
    deckTemperatureC: job.answers.conditions.temperatureC.value - steadyWarmthK(job),
    runs: CALENDARS,
    isExtentAgreed: job.answers.evidence.value === 'opened-and-measured',
    ...(conditions?.forecast === undefined ? {} : { forecast: conditions.forecast }),
    ...(conditions?.warmth === undefined ? {} : { warmth: conditions.warmth }),
    ...dryingOf(job),
  };
}

/** Those of the recorded extent, where it is planned: its scenarios then need no network of their own. */
const driversOf = (
  planned: readonly PlannedExtent[],
  quantities: JobQuantities,
): PlannedExtent['drivers'] => {
  const recorded = planned.find((one) => one.quantities === quantities);
  return recorded?.drivers ?? driverAmountsOf(quantities);
};

/** A yard's day from coming to going, into which the assumed hours on the boat fall; who states his hours is there for those. */
const YARD_DAY_H = 8;

export const crewOf = (job: Job): CalendarRequest['crew'] => {
  const { people, hoursPerDay, workingDays } = job.answers.crew;
  return {
    people: people.value,
    hoursPerDay: Math.max(LEAST_DAY_H, hoursPerDay.value - visitHoursADay(job)),
    ...(hoursPerDay.origin.kind === 'assumed' ? { presentH: YARD_DAY_H } : {}),
    ...(isKnown(workingDays) ? { workingDays: workingDays.value } : {}),
  };
};

/** No crew comes for less. */
const LEAST_DAY_H = 1;

const dryingCores: Readonly<Record<Job['answers']['core']['coreType']['value'], DryingCore>> = {
  'end-grain-balsa': 'balsa',
  'marine-plywood': 'plywood',
  'cross-linked-foam': 'foam',
  'san-foam': 'foam',
  'linear-foam': 'foam',
};

/** The core that stays dries: as long as the wettest plug of it says, where one was taken. */
function dryingOf({
  answers: {
    core: { coreType },
  },
  record: { survey },
}: Job): Pick<CalendarRequest, 'dryingCore' | 'edgeMoisturePercent'> {
  const percents = (survey?.readings ?? []).flatMap((reading) =>
    reading.kind === 'plug' && stays.includes(reading.condition) ? (reading.moisturePercent ?? []) : [],
  );
  return {
    dryingCore: dryingCores[coreType.value],
    ...(percents.length === 0 ? {} : { edgeMoisturePercent: Math.max(...percents) }),
  };
}

const stays: readonly string[] = ['dry-sound', 'damp-sound'];

/** The stated temperature is that of the deck as it is worked; the calendar counts heater and tent on top of what it is told. */
const steadyWarmthK = ({ record: { conditions } }: Job): number => heldWarmthK(conditions?.warmth);

export function calendarSection(plan: CalendarPlan, startDate: string | undefined): CalendarSection {
  const hasDates = startDate !== undefined;
  return {
    ...(hasDates ? { startDate, timeZone: plan.timeZone, finish: plan.finish } : {}),
    workingDays: rangeOf(plan.workingDays),
    calendarDays: rangeOf(plan.calendarDays),
    planned: plan.planned,
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

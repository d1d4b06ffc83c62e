import { allOfList, andThen, mapValue, refusal, success, type Outcome } from '#lib/kernel';
import { operations } from '#lib/work';
import {
  planCure,
  rateRatioOf,
  skyOf,
  warmthUnder,
  weatherGates,
  writeInstant,
  type CurePlan,
  type Forecast,
  type Sky,
  type StepWeather,
  type WeatherPlan,
  type WeatherStep,
} from '#lib/cure';
import { workTimes, type CalendarPlan, type PlannedTask } from '#lib/calendar';
import { crewOf } from './calendar-stage.js';
import { coatingOf } from './coatings.js';
import type { Job } from '../job/job.js';
import type { ProcessWork } from './process-stage.js';
import type { WeatherSection } from '../document/estimate-document.js';
import { atRecord } from '../job/record-pointers.js';

/** What a forecast says about the job as the calendar has it. */
export interface WeatherWork {
  /** Absent without a forecast. */
  readonly outlook?: Outlook;
  readonly steps: readonly StepInWeather[];
  readonly cures: readonly CureInWeather[];
  readonly notes: readonly string[];
  readonly assumptions: WeatherPlan['assumptions'];
}

export interface Outlook {
  readonly fromMs: number;
  readonly untilMs: number;
  /** A moment by the clock of the place. */
  readonly local: (epochMs: number) => string;
  /** As the document says it. */
  readonly said: Omit<WeatherSection, 'steps' | 'notes'>;
}

/** One operation that waits for weather: all its cycles together. */
export interface StepInWeather {
  readonly code: string;
  readonly gate: 'dry-deck' | 'resin' | 'coating';
  readonly earliestAt: string;
  readonly plannedAt: string;
  readonly plannedEndAt: string;
  readonly neededH: number;
  readonly openH: number;
  readonly weather: StepWeather;
}

/** The cure of one task along the forecast, from the moment its last resin is on. */
export interface CureInWeather {
  readonly task: PlannedTask;
  readonly cure: CurePlan;
  readonly isWithinForecast: boolean;
}

export interface WeatherContext {
  readonly job: Job;
  readonly process: ProcessWork;
  readonly calendar: CalendarPlan;
}

export function weatherOf(context: WeatherContext): Outcome<WeatherWork> {
  const { forecast, warmth } = context.job.record.conditions ?? {};
  const { shelter } = context.job.answers.conditions;
  if (forecast === undefined) return success({ steps: [], cures: [], notes: [], assumptions: [] });
  const sky = skyOf(forecast, warmthUnder(shelter.value, warmth));
  const outlook = outlookOf(sky, context.calendar.timeZone);
  return andThen(stepsOf(context, forecast), ({ steps, assumptions }) =>
    mapValue(curesOf(context, forecast, outlook), (cures): WeatherWork => ({
      outlook,
      steps,
      cures,
      assumptions,
      notes: notesOn(context, outlook, sky),
    })),
  );
}

const HOUR_MS = 3_600_000;

function outlookOf({ hours, startMs, offset, deckC, dewC }: Sky, timeZone: string): Outlook {
  const untilMs = startMs + hours.length * HOUR_MS;
  const local = (epochMs: number): string => writeInstant(epochMs, offset(epochMs));
  return {
    fromMs: startMs,
    untilMs,
    local,
    said: {
      fromAt: local(startMs),
      untilAt: local(untilMs),
      timeZone,
      hours: hours.length,
      coldestDeckC: deckC.reduce((a, b) => Math.min(a, b)),
      warmestDeckC: deckC.reduce((a, b) => Math.max(a, b)),
      leastDewMarginK: deckC.reduce(
        (least, deck, hour) => Math.min(least, deck - dewC[hour]),
        Number.POSITIVE_INFINITY,
      ),
    },
  };
}

interface GatedOperation {
  readonly code: string;
  readonly gate: StepInWeather['gate'];
  readonly tasks: readonly PlannedTask[];
}

/** Operations that some weather can stop, in the order of the calendar. */
function gatedOperations({ tasks }: CalendarPlan): readonly GatedOperation[] {
  const codes = [...new Set(tasks.filter(({ gate }) => gate !== 'none').map(({ operation }) => operation))];
  return codes.flatMap((code) => {
    const own = tasks.filter(({ operation }) => operation === code);
    const [{ gate }] = own;
    return gate === 'none' ? [] : [{ code, gate, tasks: own }];
  });
}

/** Windows are asked for an hour of work at a time, as the calendar fills them. */
const WORK_H = 1;

function stepsOf(
  context: WeatherContext,
  forecast: Forecast,
): Outcome<Pick<WeatherWork, 'steps' | 'assumptions'>> {
  const { job, process, calendar } = context;
  const { warmth } = job.record.conditions ?? {};
  const gated = gatedOperations(calendar);
  const planned = weatherGates({
    steps: gated.map((operation) => weatherStep(job, calendar, operation)),
    resin: job.resin,
    hardener: process.batches.resin.hardener,
    shelter: job.answers.conditions.shelter.value,
    forecast,
    workTimes: workTimes({ crew: crewOf(job) }),
    ...(warmth === undefined ? {} : { warmth }),
  });
  if (!planned.ok) return refusal(...atRecord(planned.problems, weatherFields, '/conditions'));
  const steps = planned.value.steps.map((weather, index) => stepInWeather(gated[index], weather, calendar));
  return success({
    steps: steps.filter(({ weather }) => weather.requires.length > 0),
    assumptions: planned.value.assumptions,
  });
}

const weatherFields = {
  '/forecast': '/conditions/forecast',
  '/temperature/forecast': '/conditions/forecast',
  '/warmth': '/conditions/warmth',
};

function weatherStep(job: Job, calendar: CalendarPlan, operation: GatedOperation): WeatherStep {
  const coating = coatingOf(job, operation.code);
  return {
    code: operation.code,
    title: titleOf(operation),
    gate: operation.gate,
    workH: WORK_H,
    earliestAt: earliestOf(operation, calendar),
    ...(coating === undefined ? {} : { coating }),
  };
}

const titleOf = ({ code, tasks: [{ title }] }: GatedOperation): string =>
  operations.find((operation) => operation.code === code)?.title ?? title;

/** When everything before its first cycle is done; its own planned start when nothing comes before it. */
function earliestOf({ tasks: [first] }: GatedOperation, { tasks }: CalendarPlan): string {
  const before = tasks.filter(({ code }) => first.after.includes(code)).map(({ readyAt }) => readyAt);
  return before.length === 0
    ? first.startAt
    : before.reduce((latest, at) => (Date.parse(at) > Date.parse(latest) ? at : latest));
}

function stepInWeather(
  operation: GatedOperation,
  weather: StepWeather,
  calendar: CalendarPlan,
): StepInWeather {
  const { code, gate, tasks } = operation;
  return {
    code,
    gate,
    weather,
    earliestAt: earliestOf(operation, calendar),
    plannedAt: tasks[0].startAt,
    plannedEndAt: tasks[tasks.length - 1].endAt,
    neededH: tasks.reduce((sum, { labourH, hands }) => sum + labourH / hands, 0),
    openH: weather.windows.reduce((sum, { startHours }) => sum + startHours, 0),
  };
}

/** Each cure that begins under the forecast; those after it are as stated. */
function curesOf(
  { job, process, calendar }: WeatherContext,
  forecast: Forecast,
  { fromMs, untilMs }: Outlook,
): Outcome<readonly CureInWeather[]> {
  const { warmth } = job.record.conditions ?? {};
  const inside = calendar.tasks.filter(
    ({ waitKind, endAt }) =>
      waitKind === 'cure' && Date.parse(endAt) >= fromMs && Date.parse(endAt) < untilMs,
  );
  const planned = inside.map((task) =>
    mapValue(
      planCure({
        resin: job.resin,
        hardener: process.batches.resin.hardener,
        step: task.title,
        startAt: task.endAt,
        warmth: warmthUnder(job.answers.conditions.shelter.value, warmth),
        temperature: { kind: 'hourly', forecast, elsewhereDeckC: job.answers.conditions.temperatureC.value },
      }),
      (cure): CureInWeather => ({
        task,
        cure,
        isWithinForecast: Date.parse(task.endAt) + fullH(cure) * HOUR_MS <= untilMs,
      }),
    ),
  );
  const cures = allOfList(planned);
  return cures.ok ? cures : refusal(...atRecord(cures.problems, weatherFields, '/conditions'));
}

const fullH = ({ milestones }: CurePlan): number =>
  milestones.find(({ code }) => code === 'full')?.likelyH ?? Number.POSITIVE_INFINITY;

/** A moment as people say it, by the clock of the place. */
export const minuteOf = (at: string): string => at.slice(0, 16).replace('T', ' ');

/** What a reader of the dates has to know about the forecast behind them. */
function notesOn(context: WeatherContext, outlook: Outlook, sky: Sky): readonly string[] {
  const { job, calendar } = context;
  const stated = `the ${job.answers.conditions.temperatureC.origin.kind === 'entered' ? 'stated' : 'assumed'} ${job.answers.conditions.temperatureC.value.toFixed(1)} degC`;
  const startMs = Date.parse(
    calendar.tasks.reduce(
      (first, { startAt }) => (Date.parse(startAt) < Date.parse(first) ? startAt : first),
      calendar.plannedFinish,
    ),
  );
  const endsEarly = Date.parse(calendar.finish.late) > outlook.untilMs;
  return [
    ...(startMs >= outlook.untilMs
      ? [
          `The forecast ends on ${minuteOf(outlook.said.untilAt)}, before the work begins: nothing in this calendar rests on it.`,
        ]
      : []),
    ...(startMs < outlook.fromMs
      ? [
          `The forecast begins on ${minuteOf(outlook.said.fromAt)}, after the work: until then ${stated} counts.`,
        ]
      : []),
    ...(startMs < outlook.untilMs && endsEarly
      ? [
          `The forecast ends on ${minuteOf(outlook.said.untilAt)}, before the job: from then on ${stated} counts, and days are lost to weather as a season loses them. Bring a new forecast then.`,
        ]
      : []),
    ...potNotes(context, sky),
  ];
}

/** A deck this much warmer than the pots were planned for is said. */
const POT_MARGIN_K = 3;

/** Pots are sized for one temperature; a bonding step that the calendar puts on a warmer deck shortens their life. */
function potNotes({ job, calendar }: WeatherContext, sky: Sky): readonly string[] {
  const plannedC = job.answers.conditions.temperatureC.value;
  return calendar.tasks
    .filter(({ gate, waitKind }) => gate === 'resin' && waitKind === 'cure')
    .flatMap(({ title, startAt }) => {
      const deckC = sky.deckC[Math.floor((Date.parse(startAt) - sky.startMs) / HOUR_MS)];
      if (deckC === undefined || deckC < plannedC + POT_MARGIN_K) return [];
      const share = 1 / rateRatioOf(job.resin.activationEnergyKJPerMol.value, plannedC, deckC);
      return [
        `"${title}" is planned for a deck of ${deckC.toFixed(0)} degC, and its pots for ${plannedC.toFixed(0)} degC: they last about ${(100 * share).toFixed(0)} % as long. Mix smaller, start early, or plan again with that temperature.`,
      ];
    });
}

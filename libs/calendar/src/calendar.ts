import type { Hardener } from '#lib/catalogue';
import { andThen, laidOver, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { assumptionFrom, assumptionsIn, assumedIn, saidOr, type ProcessAssumption } from '#lib/asking';
import { skyAssumptions, warmthAssumptions, warmthUnder, heldWarmthK } from '#lib/cure';
import { writeInstant } from '#lib/cure';
import type { WorkTimes } from '#lib/cure';
import { operations } from '#lib/work';
import { calendarFaults } from './calendar-faults.js';
import {
  calendarCrewQuestions,
  calendarQuestions,
  weatherLoss,
  type CalendarMilestone,
  type CalendarPlan,
  type CalendarRequest,
  type CalendarScenario,
  type DayRange,
  type PlannedTask,
  type ScenarioDays,
} from './calendar-request.js';
import { settingFor } from './course.js';
import { circleIn } from './critical-path.js';
import { networkFor, networksBeside, waitKindOf, type NetworkTask, type SizedNetwork } from './network.js';
import {
  chainOf,
  daysWorked,
  expectedDraw,
  percentile,
  scenarioDraw,
  simulate,
  type Simulation,
} from './simulate.js';
import { placeClock, SLOT_H, slotClock, type SlotClock } from './slots.js';
import { todayFor } from './today.js';
import type { Crew, Draw } from './step-plan.js';
import { fewestVisits } from './visits.js';
import { walkTables, type WalkTables } from './walk-steps.js';
import { walk, walkPlan, walkPlanBeside, type Walk, type WalkPlan } from './walk.js';

/** The calendar of a job: tasks in order with dates, the chain that decides, early, likely and late finish, and what to do today. */
export const planCalendar = (request: CalendarRequest): Outcome<CalendarPlan> =>
  andThen(planWithScenarios(request, []), ({ plan }) => plan());

/** The calendar, and beside it how long the same job takes at other sizes and paces: one walk for each. */
export function planWithScenarios(
  request: CalendarRequest,
  scenarios: readonly CalendarScenario[],
): Outcome<CalendarWithScenarios> {
  const problems = calendarFaults(request);
  const hardener = request.resin.hardeners.find(({ code }) => code === request.hardener);
  if (problems.length > 0 || hardener === undefined) return refusal(...problems);
  const deckC = steadyDeckC(request, hardener);
  const tasks = networkFor(request, hardener, coldestUse(request, deckC));
  const faults = [...unknownPredecessors(request, tasks), ...circleFaults(request, tasks)];
  if (faults.length > 0) return refusal(...faults);
  const networkOf = networksBeside(tasks, { request, hardener, deckC: coldestUse(request, deckC) });
  const others = scenarios.map((scenario) => laidOver(scenario, networkOf(scenario)));
  return calendarOver(request, hardener, { tasks, deckC, others });
}

export interface CalendarWithScenarios {
  /** The calendar of this job, worked out when it is asked for: whoever wants days alone is spared its simulation. */
  readonly plan: () => Outcome<CalendarPlan>;
  readonly days: readonly ScenarioDays[];
  /** The moment so many days after the start. */
  readonly momentAfter: (days: number) => string;
}

interface Tried extends CalendarScenario, SizedNetwork {}

interface Networks {
  readonly tasks: readonly NetworkTask[];
  readonly deckC: number;
  readonly others: readonly Tried[];
}

function calendarOver(
  request: CalendarRequest,
  hardener: Hardener,
  { tasks, deckC, others }: Networks,
): Outcome<CalendarWithScenarios> {
  if (coldestUse(request, deckC) < hardener.lowestTemperatureC.value) {
    return refusal(
      problem('resin-too-cold', '/deckTemperatureC', {
        value: deckC,
        resin: `${request.resin.name} with ${hardener.name}`,
        lowest: hardener.lowestTemperatureC.value,
        instead: 'a hardener made for the cold, or a tent and a heater',
      }),
    );
  }
  const clock = slotClock(request, workTimes(request), horizonOf(request, tasks, others));
  const setting = settingFor(request, hardener, { clock, deckC });
  const hands = { people: request.crew.people, workShare: workShare(request) };
  const plan = walkPlan(tasks, setting, hands);
  const likely = walk(plan, expectedDraw(tasks));
  if (!likely.isComplete) return refusal(neverReady(request));
  return success({
    plan: () => simulatedPlan({ request, plan, likely, deckC }),
    days: daysOfAll(others, plan, hands),
    momentAfter: (days) => momentOf(clock, days * 48),
  });
}

function simulatedPlan(walked: Omit<Written, 'simulation'>): Outcome<CalendarPlan> {
  const { request, plan } = walked;
  const simulation = simulate(plan, {
    seed: saidOr(calendarQuestions.seed, request.seed),
    runs: saidOr(calendarQuestions.runs, request.runs),
    lossFraction: lossFractionOf(request),
  });
  return simulation.incomplete > 0
    ? refusal(neverReady(request))
    : success(written({ ...walked, simulation }));
}

const horizonOf = (
  request: CalendarRequest,
  tasks: readonly NetworkTask[],
  others: readonly Tried[],
): number =>
  others.reduce(
    (longest, tried) => {
      const days = horizonDays(request, tried.tasks) * Math.max(1, tried.hoursFactor);
      return Math.max(longest, Math.min(MOST_DAYS, Math.ceil(days)));
    },
    Math.ceil(horizonDays(request, tasks)),
  );

interface Walkable {
  readonly plan: WalkPlan;
  readonly tables: WalkTables;
}

/** Scenarios of one network share its plan and the tables of its walks; those that differ in hours alone share orders. */
function daysOfAll(others: readonly Tried[], own: WalkPlan, crew: Crew): readonly ScenarioDays[] {
  const known = new Map<readonly NetworkTask[], Walkable>([[own.tasks, walkable(own)]]);
  const walkableOf = (tasks: readonly NetworkTask[], beside: WalkPlan): Walkable => {
    const found = known.get(tasks) ?? walkable(walkPlanBeside(beside, tasks, crew));
    known.set(tasks, found);
    return found;
  };
  return others.map((tried) => {
    const { plan, tables } = walkableOf(tried.tasks, walkableOf(tried.base, own).plan);
    const draw = scenarioDraw(tried.tasks, tried);
    const calendarDays = walk(plan, draw, tables).finish / 48;
    return { calendarDays, workingDays: fewestVisits(plan, draw, tables) };
  });
}

const walkable = (plan: WalkPlan): Walkable => ({ plan, tables: walkTables(plan) });

const steadyDeckC = ({ deckTemperatureC }: CalendarRequest, hardener: Hardener): number =>
  deckTemperatureC ??
  Math.max(calendarQuestions.deckTemperatureC.otherwise.value, hardener.lowestTemperatureC.value);

const coldestUse = ({ warmth }: CalendarRequest, deckC: number): number => deckC + heldWarmthK(warmth);

/** The plan with the days of another simulation of the same job, so that days, hours and money come from one. */
export function withDays(
  plan: CalendarPlan,
  momentAfter: CalendarWithScenarios['momentAfter'],
  { calendarDays, workingDays }: { readonly calendarDays: DayRange; readonly workingDays: DayRange },
): CalendarPlan {
  const finish = {
    early: momentAfter(calendarDays.p10),
    likely: momentAfter(calendarDays.p50),
    late: momentAfter(calendarDays.p90),
  };
  const milestones = plan.milestones.map((one) =>
    one.code === 'finish' ? { ...one, at: finish.likely } : one,
  );
  return { ...plan, calendarDays, workingDays, finish, milestones };
}

const neverReady = (request: CalendarRequest): Problem =>
  problem('not-supported', request.coreMoisturePercent === undefined ? '/crew' : '/coreMoisturePercent', {
    why: 'the job does not end within the years that a calendar covers: add hands or hours, or wait until core and deck are fit',
  });

interface Written {
  readonly request: CalendarRequest;
  readonly plan: WalkPlan;
  readonly likely: Walk;
  readonly simulation: Simulation;
  readonly deckC: number;
}

function written({ request, plan, likely, simulation, deckC }: Written): CalendarPlan {
  const { clock } = plan.setting;
  const chain = chainOf(likely);
  const tasks = plan.tasks
    .map((_, index) => taskAt({ plan, likely, chain, simulation }, index))
    .sort((a, b) => a.startDay - b.startDay || a.endDay - b.endDay);
  const [early, middle, late] = [0.1, 0.5, 0.9].map(
    (share) => simulation.finishes[Math.round(share * (simulation.finishes.length - 1))],
  );
  return {
    startDate: request.startDate,
    timeZone: placeClock(request).name,
    tasks,
    criticalChain: chain.map((index) => plan.tasks[index].code),
    finish: { early: momentOf(clock, early), likely: momentOf(clock, middle), late: momentOf(clock, late) },
    plannedFinish: momentOf(clock, likely.finish),
    calendarDays: { p10: early / 48, p50: middle / 48, p90: late / 48 },
    planned: plannedOf(plan, likely, expectedDraw(plan.tasks)),
    workingDays: rangeOf(simulation.workedDays),
    labourH: labourOf(plan.tasks),
    milestones: milestonesOf(tasks, momentOf(clock, middle)),
    simulation: {
      seed: saidOr(calendarQuestions.seed, request.seed),
      runs: saidOr(calendarQuestions.runs, request.runs),
      distribution: 'triangular over low, likely and high; half of each spread common to the job',
    },
    ...(request.today === undefined ? {} : { today: todayFor(tasks, request.today) }),
    assumptions: assumptionsOf(request, deckC),
    notes: notesOn(request, tasks),
  };
}

/** What the one walk of the tasks shown comes to. */
function plannedOf(plan: WalkPlan, likely: Walk, draw: Draw): CalendarPlan['planned'] {
  const { clock } = plan.setting;
  const seen = new Uint8Array(clock.workday[clock.count - 1] + 2);
  return {
    workingDays: daysWorked(plan, likely, { draw, seen }),
    calendarDays: likely.finish / 48,
  };
}

const rangeOf = (sorted: Float64Array): DayRange => ({
  p10: percentile(sorted, 0.1),
  p50: percentile(sorted, 0.5),
  p90: percentile(sorted, 0.9),
});

const labourOf = (tasks: readonly NetworkTask[]): CalendarPlan['labourH'] =>
  tasks.reduce(
    (sum, { hours }) => ({
      low: sum.low + hours.low,
      likely: sum.likely + hours.likely,
      high: sum.high + hours.high,
    }),
    { low: 0, likely: 0, high: 0 },
  );

export function momentOf({ startMs, offset }: SlotClock, slot: number): string {
  const epochMs = startMs + Math.round(slot * SLOT_H * 60) * 60_000;
  return writeInstant(epochMs, offset(epochMs));
}

interface TaskContext {
  readonly plan: WalkPlan;
  readonly likely: Walk;
  readonly chain: readonly number[];
  readonly simulation: Simulation;
}

function taskAt({ plan, likely, chain, simulation }: TaskContext, index: number): PlannedTask {
  const task = plan.tasks[index];
  const [start, end, ready] = [likely.start[index], likely.end[index], likely.ready[index]];
  const { clock } = plan.setting;
  return {
    code: task.code,
    operation: task.operation,
    title: task.title,
    phase: task.phase,
    skill: task.skill,
    gate: task.gate,
    startAt: momentOf(clock, start),
    endAt: momentOf(clock, end),
    readyAt: momentOf(clock, ready),
    startDay: start / 48,
    endDay: end / 48,
    labourH: task.meanH,
    hands: plan.hands[index],
    waitH: (ready - end) * SLOT_H,
    waitKind: waitKindOf(task),
    isCritical: chain.includes(index),
    criticality: simulation.criticality[index],
    startsBecause: reasonOf(plan, likely, index),
    isHoldPoint: task.isHoldPoint,
    after: task.after,
  };
}

function reasonOf({ tasks }: WalkPlan, { waitedFor, start, ready, end }: Walk, index: number): string {
  const before = waitedFor[index];
  if (before === -1) return 'nothing comes before it';
  const isDirect = tasks[index].after.includes(tasks[before].code);
  if (!isDirect) return `the crew comes from "${tasks[before].title}"`;
  if (start[index] < ready[before])
    return `"${tasks[before].title}" ${tasks[index].wetOn.includes(tasks[before].code) ? 'is still wet' : 'has gelled and is still tacky'}`;
  return ready[before] > end[before]
    ? `"${tasks[before].title}" has ${waitWords[tasks[before].wait.kind]}`
    : `"${tasks[before].title}" is done`;
}

const waitWords: Readonly<Record<NetworkTask['wait']['kind'], string>> = {
  none: 'ended',
  cure: 'cured far enough',
  drying: 'dried',
  hold: 'been released',
  elapsed: 'stood long enough',
};

const milestoneTasks: readonly {
  readonly task: string;
  readonly code: string;
  readonly title: string;
  readonly point: 'startAt' | 'endAt' | 'readyAt';
}[] = [
  { task: 'cut-skin', code: 'first-cut', title: 'First cut', point: 'startAt' },
  { task: 'hold-remeasure', code: 'hold', title: 'Hold: re-measure, client authorises', point: 'endAt' },
  { task: 'hold-remeasure', code: 'released', title: 'Released to go on', point: 'readyAt' },
  { task: 'dry-edges', code: 'dry', title: 'Edges dry enough to bond', point: 'readyAt' },
  { task: 'bed-core', code: 'core-released', title: 'Core: pressure off', point: 'readyAt' },
  { task: 'bed-skin', code: 'skin-released', title: 'Saved skin: pressure off', point: 'readyAt' },
  { task: 'laminate-top', code: 'skin-sandable', title: 'New skin: sandable', point: 'readyAt' },
  {
    task: 'check-before-paint',
    code: 'checked',
    title: 'Sounded and hose-tested, before the finish',
    point: 'endAt',
  },
  { task: 'prime', code: 'primed', title: 'Primed', point: 'readyAt' },
  { task: 'topcoat', code: 'painted', title: 'Painted', point: 'readyAt' },
  { task: 'buff-gelcoat', code: 'gelcoated', title: 'Gelcoat buffed', point: 'endAt' },
  { task: 'final-check', code: 'leak-tested', title: 'Leak-tested', point: 'endAt' },
];

function milestonesOf(tasks: readonly PlannedTask[], likelyFinish: string): readonly CalendarMilestone[] {
  const found = milestoneTasks.flatMap(({ task, code, title, point }) =>
    tasks.filter((planned) => planned.code === task).map((planned) => ({ code, title, at: planned[point] })),
  );
  return [...found, { code: 'finish', title: 'Finish, likely', at: likelyFinish }];
}

/** From coming to going; the work of a day is spread over it. */
export function workTimes({ crew }: Pick<CalendarRequest, 'crew'>): WorkTimes {
  const workH = workHoursADay(crew);
  return {
    hoursPerDay: Math.max(workH, (crew.presentH ?? 0) - SET_UP_H),
    startHour: saidOr(calendarCrewQuestions.startHour, crew.startHour),
    workingDays: saidOr(calendarCrewQuestions.workingDays, crew.workingDays),
    ...(crew.daysOff === undefined ? {} : { daysOff: crew.daysOff }),
  };
}

const SET_UP_H = operations.find(({ driver }) => driver === 'day')?.hours.likely ?? 0;

/** What is left of a day for the job when everything is set up. */
const workHoursADay = ({ hoursPerDay }: CalendarRequest['crew']): number =>
  Math.max(SLOT_H, saidOr(calendarCrewQuestions.hoursPerDay, hoursPerDay) - SET_UP_H);

/** Of each hour at the boat, so much goes into the job. */
const workShare = (request: CalendarRequest): number =>
  workHoursADay(request.crew) / workTimes(request).hoursPerDay;

const MOST_DAYS = 3650;

/** Long enough that only a hopeless job runs past it. */
function horizonDays(request: CalendarRequest, tasks: readonly NetworkTask[]): number {
  const { workingDays } = workTimes(request);
  const hoursPerDay = workHoursADay(request.crew);
  const hours = tasks.reduce(
    (sum, task) => sum + task.hours.high / Math.min(request.crew.people, task.mostHands),
    0,
  );
  const waitsH = tasks.reduce(
    (sum, { wait }) =>
      sum + (wait.kind === 'none' ? 0 : wait.kind === 'cure' ? wait.ageH.high * 12 : wait.hours.high),
    0,
  );
  const days =
    (hours / hoursPerDay + tasks.length) * (7 / workingDays.length) * (1 / (1 - lossFractionOf(request))) +
    waitsH / 24;
  return Math.min(
    MOST_DAYS,
    Math.ceil(days * 1.2) +
      90 +
      (request.crew.daysOff?.length ?? 0) * 2 +
      (request.forecast?.hours.length ?? 0) / 12,
  );
}

/** By the shelter, unless it is stated. */
const lossFractionOf = (request: CalendarRequest): number =>
  request.weatherLossFraction ?? weatherLoss[request.flags.shelter];

/** What a calendar takes when nobody says; the seed and the runs stand with the simulation. */
const { flags, crew, cycles, weatherLossFraction } = calendarQuestions;
const askedWithDefaults = { flags, crew, cycles, weatherLossFraction };

function assumptionsOf(request: CalendarRequest, deckC: number): readonly ProcessAssumption[] {
  return [
    ...assumptionsIn(request, askedWithDefaults),
    ...(request.deckTemperatureC === undefined ? deckAssumption(deckC) : []),
    ...wordAssumptions(request),
    ...(request.forecast === undefined
      ? []
      : [
          ...warmthAssumptions('/warmth', request.warmth),
          ...skyAssumptions('/warmth', {
            warmth: warmthUnder(request.flags.shelter, request.warmth),
            told: request.warmth,
          }),
        ]),
  ];
}

function deckAssumption(deckC: number): readonly ProcessAssumption[] {
  const { unit, meaning, otherwise } = calendarQuestions.deckTemperatureC;
  return assumptionFrom(assumedIn(unit, { ...otherwise, value: deckC }, meaning, '/deckTemperatureC'));
}

const wordAssumptions = (request: CalendarRequest): readonly ProcessAssumption[] => [
  ...(request.timeZone === undefined && request.forecast?.timeZone === undefined
    ? [
        {
          at: '/timeZone',
          meaning: 'zone of the place',
          value: placeClock(request).name,
          because:
            request.forecast === undefined
              ? 'no zone was given'
              : 'the hours of the forecast are written with this offset, and no zone was given',
          source: 'COMMON-PRACTICE',
        },
      ]
    : []),
  ...(request.coating === undefined && request.flags.finish !== 'none'
    ? [
        {
          at: '/coating',
          meaning: 'limits of the finish',
          value: 'no rain',
          because: 'no coating was named, so its own temperature and humidity are not watched',
          source: 'COMMON-PRACTICE',
        },
      ]
    : []),
  {
    at: '/customOperations',
    meaning: 'materials are at hand when they are needed',
    value: 'yes',
    because: 'no delivery was given; add it as an operation with its wait',
    source: 'COMMON-PRACTICE',
  },
];

function notesOn(request: CalendarRequest, tasks: readonly PlannedTask[]): readonly string[] {
  const drying = tasks.find(({ waitKind }) => waitKind === 'drying');
  return [
    ...(request.forecast === undefined && request.flags.shelter === 'open'
      ? ['No forecast was given: each step waits for its conditions on the day.']
      : []),
    ...(drying === undefined
      ? []
      : [
          'Drying decides this calendar more than work does: two equal readings a few days apart end it, not the date.',
        ]),
    'The steps are set as if the crew came on every one of its working days, each as soon as it can be; the count of days on which somebody must come leaves small steps for the next of them.',
    'Nobody walks on an opened or unfilled deck; nothing is sanded near wet paint; each day ends with a cure.',
  ];
}

function unknownPredecessors(
  { customOperations = [] }: CalendarRequest,
  tasks: readonly NetworkTask[],
): readonly Problem[] {
  const codes = new Set(tasks.map(({ code }) => code));
  const known = new Set(operations.map(({ code }) => code));
  const repeated = customOperations.flatMap(({ code }, index) =>
    customOperations.findIndex((other) => other.code === code) === index
      ? []
      : [problem('duplicate', `/customOperations/${index}/code`, { value: code })],
  );
  const unknown = customOperations.flatMap(({ after }, index) =>
    after.flatMap((code, place) =>
      codes.has(code) || known.has(code)
        ? []
        : [
            problem('unknown-code', `/customOperations/${index}/after/${place}`, {
              value: code,
              kind: 'operation',
              known: [...codes].join(', '),
            }),
          ],
    ),
  );
  return [...repeated, ...unknown];
}

function circleFaults(
  { customOperations = [] }: CalendarRequest,
  tasks: readonly NetworkTask[],
): readonly Problem[] {
  const circle = circleIn(tasks);
  if (circle === undefined) return [];
  const index = customOperations.findIndex(({ code }) => circle.includes(code));
  return [
    problem('network-cycle', index === -1 ? '/customOperations' : `/customOperations/${index}/after`, {
      circle: circle.join(' → '),
    }),
  ];
}

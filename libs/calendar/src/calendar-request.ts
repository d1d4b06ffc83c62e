import type { ThreePoint } from '#lib/kernel';
import type { Coating, ResinSystem, Skill } from '#lib/catalogue';
import {
  ask,
  askCode,
  askDay,
  askEach,
  askList,
  askPart,
  askSome,
  askText,
  askWhether,
  askWhich,
  fromMemory,
  practice,
  remembered,
  type Answers,
  type AnswersTo,
  type Default,
  type ProcessAssumption,
} from '#lib/asking';
import { coreMoistureAsked, deckWarmthQuestions, forecastQuestions, weekdays } from '#lib/cure';
import {
  driverAmountsQuestions,
  gateKinds,
  operationFlagsQuestions,
  type DriverAmounts,
  type GateKind,
  type Phase,
} from '#lib/work';
import { dryingCores } from './waits.js';

const manHours = { unit: 'h', range: { from: 0, upTo: 10_000 } } as const;

export const threePointQuestions = {
  low: ask({ meaning: 'least', description: 'Least that it may come to.', ...manHours }),
  likely: ask({
    meaning: 'likely',
    description: 'What it most likely comes to.',
    ...manHours,
  }),
  high: ask({ meaning: 'most', description: 'Most that it may come to.', ...manHours }),
};

const codes = { least: 0, most: 60, of: askText({ meaning: 'code of an operation', atMost: 80 }) } as const;

/** Work that the trade's list does not know. */
export const customOperationQuestions = {
  code: askCode({ meaning: 'code of the operation', example: 'deliver-core' }),
  title: askText({ meaning: 'title of the operation', atMost: 120 }),
  hours: askPart({
    meaning: 'man-hours',
    description: 'Man-hours.',
    of: threePointQuestions,
  }),
  after: askEach({
    meaning: 'what comes before it',
    description: 'Codes of operations that come before it.',
    ...codes,
  }),
  before: askEach({
    meaning: 'what waits for it',
    description: 'Codes of operations that wait for it.',
    ...codes,
    otherwise: 'unknown',
  }),
  waitH: askPart({
    meaning: 'wait after it',
    description: 'Hours that pass before its successors may start.',
    of: threePointQuestions,
    otherwise: 'unknown',
  }),
  gate: askWhich({
    meaning: 'weather gate',
    description: 'What the weather must be for the operation.',
    choices: gateKinds,
    otherwise: 'unknown',
  }),
  isHoldPoint: askWhether({
    meaning: 'whether it is a hold point',
    otherwise: 'unknown',
  }),
};
export type CustomOperation = AnswersTo<typeof customOperationQuestions>;

export const calendarCrewQuestions = {
  people: ask({
    meaning: 'people at work',
    unit: '1',
    range: { from: 1, upTo: 50 },
    isWhole: true,
  }),
  hoursPerDay: ask({
    meaning: 'length of the working day',
    description: 'Hours that go into the job.',
    unit: 'h',
    range: { from: 1, upTo: 16 },
    otherwise: practice(8, "a yard's day"),
  }),
  presentH: ask({
    meaning: 'hours from coming to going',
    note: 'So long cures and coats are watched over; absent: the length of the working day.',
    unit: 'h',
    range: { from: 1, upTo: 16 },
    otherwise: 'unknown',
  }),
  startHour: ask({
    meaning: 'hour at which the day begins',
    description: 'Local hour at which the day begins.',
    unit: 'h',
    range: { from: 0, upTo: 22 },
    otherwise: practice(8, "a yard's day"),
  }),
  workingDays: askSome({
    meaning: 'working days',
    description: 'Days of the week on which the crew works.',
    choices: weekdays,
    least: 1,
    most: 7,
    otherwise: practice(['mon', 'tue', 'wed', 'thu', 'fri'], "a yard's week"),
  }),
  daysOff: askEach({
    meaning: 'days off',
    description: 'ISO dates without work.',
    least: 0,
    most: 400,
    of: askDay({ meaning: 'day without work' }),
    otherwise: 'unknown',
  }),
};

const cycles = { unit: '1', range: { from: 1, upTo: 12 }, isWhole: true } as const;
const usualCycles = (value: number): Default => ({ value, because: 'the usual number', cite: fromMemory });

export const cyclesQuestions = {
  bedding: ask({
    meaning: 'turns in which core is bedded',
    note: 'Each waits until the one before holds.',
    ...cycles,
    otherwise: practice(1, 'core is bedded in one turn unless its plan says more'),
  }),
  laminating: ask({
    meaning: 'sessions in which plies are laid',
    note: 'Plies of one session are laid wet on wet.',
    ...cycles,
    otherwise: practice(1, 'plies are laid in one session unless the laminate says more'),
  }),
  fair: ask({
    meaning: 'cycles of fairing',
    ...cycles,
    otherwise: usualCycles(3),
  }),
  prime: ask({
    meaning: 'coats of primer',
    ...cycles,
    otherwise: usualCycles(2),
  }),
  topcoat: ask({
    meaning: 'coats of paint or gelcoat',
    ...cycles,
    otherwise: usualCycles(2),
  }),
};

/** Share of working days lost to weather beyond the forecast. */
export const weatherLoss = { open: 0.25, tent: 0.05, shed: 0 } as const;
const lossInWords = Object.entries(weatherLoss)
  .map(([shelter, share]) => `${shelter} ${share}`)
  .join(', ');

function lossUnder(answers: Answers): Default {
  const shelter = answers.of(operationFlagsQuestions.shelter).value;
  const where = shelter === 'open' ? 'in the open' : `in a ${shelter}`;
  return { value: weatherLoss[shelter], low: 0, high: 0.5, because: `work ${where}`, cite: fromMemory };
}

/** What a calendar is planned by, besides its materials. */
export const calendarQuestions = {
  startDate: askDay({
    meaning: 'day on which work may start',
    description: 'Day on which work may start.',
  }),
  timeZone: askText({
    meaning: 'zone of the place',
    description: 'Zone of the place; absent: UTC.',
    atMost: 60,
    example: 'Europe/Lisbon',
    otherwise: 'unknown',
  }),
  drivers: askPart({ meaning: 'amounts of the job', of: driverAmountsQuestions }),
  flags: askPart({ meaning: 'kind of the job', of: operationFlagsQuestions }),
  crew: askPart({
    meaning: 'crew',
    note: 'How many, how long a day, and on which days.',
    of: calendarCrewQuestions,
  }),
  cycles: askPart({
    meaning: 'how often work is repeated that waits in between',
    of: cyclesQuestions,
    otherwise: 'defaults',
  }),
  deckTemperatureC: ask({
    meaning: 'deck temperature',
    description:
      'Temperature of the deck where no forecast reaches; never taken below what the hardener needs.',
    unit: 'degC',
    range: { from: -40, upTo: 80 },
    otherwise: remembered(18, { low: 12, high: 25, because: 'nothing was said about the season' }),
  }),
  warmth: askPart({
    meaning: 'warmth of the deck above the air',
    of: deckWarmthQuestions,
    otherwise: 'unknown',
  }),
  forecast: askPart({
    meaning: 'forecast',
    description: 'Weather of the place hour by hour; it says when the weather lets work be done.',
    of: forecastQuestions,
    otherwise: 'unknown',
  }),
  weatherLossFraction: ask({
    meaning: 'share of working days lost to weather',
    description: `Share of working days lost to weather beyond the forecast. Absent, by the shelter: ${lossInWords}.`,
    unit: '1',
    range: { from: 0, upTo: 0.9 },
    otherwise: lossUnder,
  }),
  coreMoisturePercent: coreMoistureAsked,
  edgeMoisturePercent: ask({
    ...coreMoistureAsked,
    meaning: 'moisture of the core at the edge',
    note: 'Of the core that stays, at the edge: drying follows it. Absent: that of the core.',
  }),
  dryingCore: askWhich({
    meaning: 'what dries under the lip',
    choices: dryingCores,
    otherwise: practice('balsa', 'the usual core of a deck, and the one that dries slowest'),
  }),
  isExtentAgreed: askWhether({
    meaning: 'whether the extent is agreed already',
    note: 'The deck is opened and measured: the hold for re-measuring waits for nobody.',
    otherwise: 'unknown',
  }),
  customOperations: askList({
    meaning: 'operations of the caller',
    of: customOperationQuestions,
    least: 0,
    most: 60,
    otherwise: 'unknown',
  }),
  seed: ask({
    meaning: 'seed of the simulation',
    unit: '1',
    range: { from: 0, upTo: 4_294_967_295 },
    isWhole: true,
    otherwise: practice(20260504, 'any seed gives the same spread to within the runs'),
  }),
  runs: ask({
    meaning: 'simulated calendars',
    unit: '1',
    range: { from: 100, upTo: 20_000 },
    isWhole: true,
    otherwise: practice(2000, 'enough that the finish of nine in ten holds to a day'),
  }),
  today: askDay({
    meaning: 'day for which work is listed',
    description: 'Day for which the work is listed.',
    otherwise: 'unknown',
  }),
};

export interface CalendarRequest extends AnswersTo<typeof calendarQuestions> {
  readonly resin: ResinSystem;
  readonly hardener: string;
  readonly coating?: Coating;
}

/** The same job at another size, pace and luck with its waits. */
export interface CalendarScenario {
  readonly drivers: DriverAmounts;
  readonly fairingCycles: number;
  readonly hoursFactor: number;
  /** 0 to 1: how long every cure, drying and hold takes among its low and high. */
  readonly waitQuantile: number;
}

export interface ScenarioDays {
  readonly calendarDays: number;
  readonly workingDays: number;
}

export interface PlannedTask {
  /** Code of the planned task. */
  readonly code: string;
  /** Code of the operation it is a cycle of, or its own. */
  readonly operation: string;
  /** What the planned task does. */
  readonly title: string;
  /** Part of the job that the task belongs to. */
  readonly phase: Phase;
  /** Skill that the task needs. */
  readonly skill: Skill;
  /** What the weather must allow for the task. */
  readonly gate: GateKind;
  /** Planned start (RFC 3339). */
  readonly startAt: string;
  /** Planned end (RFC 3339). */
  readonly endAt: string;
  /** When its cure, drying or hold is over and successors may start. */
  readonly readyAt: string;
  /** Days since the start date began, local. */
  readonly startDay: number;
  /** When the work of the task ends, in days from the start of the plan. */
  readonly endDay: number;
  /** Mean hours of work in the task. */
  readonly labourH: number;
  /** How many work on it at once. */
  readonly hands: number;
  /** Wait that follows the task. */
  readonly waitH: number;
  /** Reason of that wait. */
  readonly waitKind: 'none' | 'cure' | 'drying' | 'hold' | 'elapsed';
  /** On the chain that decides the finish, by mean values. */
  readonly isCritical: boolean;
  /** Share of the simulated calendars in which it decided the finish. */
  readonly criticality: number;
  /** What holds the task back until its start. */
  readonly startsBecause: string;
  /** Whether somebody must agree before work goes on. */
  readonly isHoldPoint: boolean;
  /** Codes of the tasks it follows. */
  readonly after: readonly string[];
}

/** Days as a spread: one job in ten, half, and nine in ten stay below. */
export interface DayRange {
  /** Days that one job in ten stays below. */
  readonly p10: number;
  /** Days that half of the jobs stay below. */
  readonly p50: number;
  /** Days that nine jobs in ten stay below. */
  readonly p90: number;
}

export interface CalendarMilestone {
  /** Code of what is reached. */
  readonly code: string;
  /** Name of what is reached. */
  readonly title: string;
  /** Planned moment (RFC 3339). */
  readonly at: string;
}

/** Something to do or to wait for on a day. */
export interface TodayItem {
  /** Work, a wait, a hold point, or what comes next. */
  readonly kind: 'work' | 'wait' | 'hold' | 'next';
  /** Task that it belongs to, by code. */
  readonly task: string;
  /** What to do or wait for, in a sentence. */
  readonly text: string;
}

export interface CalendarPlan {
  /** Day that the plan starts on (ISO 8601). */
  readonly startDate: string;
  /** IANA time zone of the plan's days. */
  readonly timeZone: string;
  /** Planned tasks in order of their start. */
  readonly tasks: readonly PlannedTask[];
  /** Codes of tasks that the end depends on. */
  readonly criticalChain: readonly string[];
  /** When the job is done, as a spread. */
  readonly finish: {
    /** Day that one simulated job in ten ends by. */
    readonly early: string;
    /** Day that half of the simulated jobs end by. */
    readonly likely: string;
    /** Day that nine simulated jobs in ten end by. */
    readonly late: string;
  };
  /** Of the one walk that the tasks show, by mean hours and waits, without chance. */
  readonly plannedFinish: string;
  /** Length of the plan as drawn. */
  readonly planned: {
    /** Days with work in the plan. */
    readonly workingDays: number;
    /** Days from first to last in the plan. */
    readonly calendarDays: number;
  };
  /** Length of the job in days, as a spread. */
  readonly calendarDays: DayRange;
  /** Days on which the crew must come. */
  readonly workingDays: DayRange;
  /** Hours of all tasks, as three points. */
  readonly labourH: ThreePoint;
  /** Milestones of the plan. */
  readonly milestones: readonly CalendarMilestone[];
  /** How the spread was found. */
  readonly simulation: {
    /** Seed; the same seed gives the same spread. */
    readonly seed: number;
    /** Jobs that were simulated. */
    readonly runs: number;
    /** How hours were drawn between their three points. */
    readonly distribution: string;
  };
  /** What happens on the day asked about. */
  readonly today?: readonly TodayItem[];
  /** What was taken about crew and days. */
  readonly assumptions: readonly ProcessAssumption[];
  /** What the planner should know. */
  readonly notes: readonly string[];
}

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
  type AnswersTo,
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
  low: ask({ meaning: 'least', ...manHours }),
  likely: ask({
    meaning: 'likely',
    ...manHours,
  }),
  high: ask({ meaning: 'most', ...manHours }),
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
    description: 'Absent: 8.',
    unit: 'h',
    range: { from: 1, upTo: 16 },
    otherwise: 'unknown',
  }),
  startHour: ask({
    meaning: 'hour at which the day begins',
    description: 'Local hour at which the day begins; absent: 8.',
    unit: 'h',
    range: { from: 0, upTo: 22 },
    otherwise: 'unknown',
  }),
  workingDays: askSome({
    meaning: 'working days',
    description: 'Absent: Monday to Friday.',
    choices: weekdays,
    least: 1,
    most: 7,
    otherwise: 'unknown',
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

const cycles = { unit: '1', range: { from: 1, upTo: 12 }, isWhole: true, otherwise: 'unknown' } as const;

export const cyclesQuestions = {
  bedding: ask({
    meaning: 'turns in which core is bedded',
    description: 'Each waits until the one before holds. Absent: 1.',
    ...cycles,
  }),
  laminating: ask({
    meaning: 'sessions in which plies are laid',
    description: 'Plies of one session are laid wet on wet. Absent: 1.',
    ...cycles,
  }),
  fair: ask({
    meaning: 'cycles of fairing',
    description: 'Absent: 3.',
    ...cycles,
  }),
  prime: ask({
    meaning: 'coats of primer',
    description: 'Absent: 2.',
    ...cycles,
  }),
  topcoat: ask({
    meaning: 'coats of paint',
    description: 'Absent: 2.',
    ...cycles,
  }),
};

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
  crew: askPart({ meaning: 'crew', of: calendarCrewQuestions }),
  cycles: askPart({
    meaning: 'how often work is repeated that waits in between',
    of: cyclesQuestions,
    otherwise: 'unknown',
  }),
  deckTemperatureC: ask({
    meaning: 'deck temperature',
    description: 'Deck where no forecast reaches; absent: 18 degC.',
    unit: 'degC',
    range: { from: -40, upTo: 80 },
    otherwise: 'unknown',
  }),
  warmth: askPart({
    meaning: 'warmth of the deck above the air',
    of: deckWarmthQuestions,
    otherwise: 'unknown',
  }),
  forecast: askPart({
    meaning: 'forecast',
    of: forecastQuestions,
    otherwise: 'unknown',
  }),
  weatherLossFraction: ask({
    meaning: 'share of working days lost to weather',
    description: 'Share of working days lost to weather beyond the forecast.',
    unit: '1',
    range: { from: 0, upTo: 0.9 },
    otherwise: 'unknown',
  }),
  coreMoisturePercent: coreMoistureAsked,
  edgeMoisturePercent: ask({
    ...coreMoistureAsked,
    meaning: 'moisture of the core at the edge',
    description: 'Of the core that stays, at the edge: drying follows it. Absent: that of the core.',
  }),
  dryingCore: askWhich({
    meaning: 'what dries under the lip',
    description: 'What dries under the lip; absent: balsa.',
    choices: dryingCores,
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
    otherwise: 'unknown',
  }),
  runs: ask({
    meaning: 'simulated calendars',
    description: 'Simulated calendars; absent: 2000.',
    unit: '1',
    range: { from: 100, upTo: 20_000 },
    isWhole: true,
    otherwise: 'unknown',
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
  readonly hoursFactor: number;
  /** 0 to 1: how long every cure, drying and hold takes among its low and high. */
  readonly waitQuantile: number;
}

export interface ScenarioDays {
  readonly calendarDays: number;
  readonly workingDays: number;
}

export interface PlannedTask {
  readonly code: string;
  /** Code of the operation it is a cycle of, or its own. */
  readonly operation: string;
  readonly title: string;
  readonly phase: Phase;
  readonly skill: Skill;
  readonly gate: GateKind;
  readonly startAt: string;
  readonly endAt: string;
  /** When its cure, drying or hold is over and successors may start. */
  readonly readyAt: string;
  /** Days since the start date began, local. */
  readonly startDay: number;
  readonly endDay: number;
  readonly labourH: number;
  /** How many work on it at once. */
  readonly hands: number;
  readonly waitH: number;
  readonly waitKind: 'none' | 'cure' | 'drying' | 'hold' | 'elapsed';
  /** On the chain that decides the finish, by mean values. */
  readonly isCritical: boolean;
  /** Share of the simulated calendars in which it decided the finish. */
  readonly criticality: number;
  readonly startsBecause: string;
  readonly isHoldPoint: boolean;
  readonly after: readonly string[];
}

export interface DayRange {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

export interface CalendarMilestone {
  readonly code: string;
  readonly title: string;
  readonly at: string;
}

export interface TodayItem {
  readonly kind: 'work' | 'wait' | 'hold' | 'next';
  readonly task: string;
  readonly text: string;
}

export interface CalendarPlan {
  readonly startDate: string;
  readonly timeZone: string;
  readonly tasks: readonly PlannedTask[];
  readonly criticalChain: readonly string[];
  readonly finish: { readonly early: string; readonly likely: string; readonly late: string };
  /** Of the one walk that the tasks show, by mean hours and waits, without chance. */
  readonly plannedFinish: string;
  readonly planned: { readonly workingDays: number; readonly calendarDays: number };
  readonly calendarDays: DayRange;
  /** Days on which the crew works. */
  readonly workingDays: DayRange;
  readonly labourH: ThreePoint;
  readonly milestones: readonly CalendarMilestone[];
  readonly simulation: { readonly seed: number; readonly runs: number; readonly distribution: string };
  readonly today?: readonly TodayItem[];
  readonly assumptions: readonly ProcessAssumption[];
  readonly notes: readonly string[];
}

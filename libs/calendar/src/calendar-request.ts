import type { ThreePoint } from '#lib/kernel';
import type { Coating, ResinSystem, Skill } from '#lib/catalogue';
import type { DriverAmounts, GateKind, OperationFlags, Phase } from '#lib/work';
import type { ProcessAssumption } from '#lib/asking';
import type { DeckWarmth } from '#lib/cure';
import type { Forecast } from '#lib/cure';
import type { Weekday } from '#lib/cure';
import type { DryingCore } from './waits.js';

/** Work that the trade's list does not know. */
export interface CustomOperation {
  readonly code: string;
  readonly title: string;
  /** Man-hours. */
  readonly hours: ThreePoint;
  readonly after: readonly string[];
  /** Operations of the list that must wait for this one. */
  readonly before?: readonly string[];
  readonly waitH?: ThreePoint;
  readonly gate?: GateKind;
  readonly isHoldPoint?: boolean;
}

export interface CalendarRequest {
  /** ISO 8601 date on which work may start. */
  readonly startDate: string;
  /** Zone of the place; that of the forecast when left out, else UTC, which is then listed as assumed. */
  readonly timeZone?: string;
  readonly drivers: DriverAmounts;
  readonly flags: OperationFlags;
  readonly crew: {
    readonly people: number;
    readonly hoursPerDay?: number;
    /** Local hour at which the day begins. */
    readonly startHour?: number;
    readonly workingDays?: readonly Weekday[];
    /** ISO dates without work. */
    readonly daysOff?: readonly string[];
  };
  readonly cycles?: { readonly fair?: number; readonly prime?: number; readonly topcoat?: number };
  readonly resin: ResinSystem;
  readonly hardener: string;
  readonly coating?: Coating;
  /** Temperature of the deck where no forecast reaches. */
  readonly deckTemperatureC?: number;
  readonly warmth?: DeckWarmth;
  readonly forecast?: Forecast;
  /** Share of working days lost to weather beyond the forecast. */
  readonly weatherLossFraction?: number;
  readonly coreMoisturePercent?: number;
  /** What dries under the lip; balsa when absent. */
  readonly dryingCore?: DryingCore;
  /** Of the core that stays, at the edge; that of the core where nobody measured it. Drying follows it. */
  readonly edgeMoisturePercent?: number;
  readonly customOperations?: readonly CustomOperation[];
  readonly seed?: number;
  readonly runs?: number;
  /** ISO date for which the day's work is listed. */
  readonly today?: string;
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

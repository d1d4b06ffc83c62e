import type { CalendarSection, Estimate, WeatherSection } from '#lib/estimate';
import type { MoneyJson } from '#lib/money';
import type { TodayItem } from '#lib/calendar';
import type { Figure } from '#lib/provenance';

/** An estimate as it is kept: the document, and what the service adds to it. Never changed once made. */
export interface StoredEstimate {
  /** Id that the estimate is kept under. */
  readonly id: string;
  /** When the estimate was kept (RFC 3339). */
  readonly createdAt: string;
  /** Its place among the revisions of the job. */
  readonly revision: RevisionMark;
  /** SHA-256 of the defect record, with its members in order. */
  readonly inputHash: string;
  /** Opens this estimate and its revisions; only in the answer to a publishable key, and kept by nobody else. */
  readonly clientSecret?: string;
  /** When that secret stops opening the estimate (RFC 3339). */
  readonly clientSecretExpiresAt?: string;
  /** The estimate with all its sections. */
  readonly estimate: Estimate;
}

/** Which revision of a job an estimate is, and why it was made. */
export interface RevisionMark {
  /** The first estimate of this line of revisions. */
  readonly rootId: string;
  /** Number of the revision; 0 for the first estimate of the job. */
  readonly number: number;
  /** Why this revision was made; absent for the first estimate. */
  readonly reason?: string;
}

/** An estimate in a list. */
export interface EstimateSummary {
  /** Id of the estimate. */
  readonly id: string;
  /** When the estimate was made (RFC 3339). */
  readonly createdAt: string;
  /** Title of the job. */
  readonly title: string;
  /** The caller's own word for the job. */
  readonly reference?: string;
  /** Which revision of the job the estimate is. */
  readonly revision: RevisionMark;
  /** Price with tax, at the likely quantities. */
  readonly total: MoneyJson;
  /** Price that one job in ten stays below. */
  readonly totalP10: MoneyJson;
  /** Price that nine jobs in ten stay below. */
  readonly totalP90: MoneyJson;
  /** Expected hours of work. */
  readonly labourH: number;
  /** How the repair compares with the deck that it replaces. */
  readonly verdict: string;
  /** Version of the program that estimated it. */
  readonly engineVersion: string;
  /** Edition of the catalogue that priced it. */
  readonly edition: string;
}

export interface EstimatePage {
  /** Estimates, newest first. */
  readonly items: readonly EstimateSummary[];
  /** Give it as `cursor` for older estimates; absent on the last page. */
  readonly nextCursor?: string;
}

/** The revisions of one estimate, first to last. */
export interface RevisionList {
  /** Revisions of the job, the first one first. */
  readonly items: readonly EstimateSummary[];
}

/** Why a figure is what it is: the tree of formulas, inputs and sources below it. */
export interface WhyAnswer {
  /** Line that was asked about. */
  readonly code: string;
  /** Derivation of the line's quantity, down to what was entered. */
  readonly figure: Figure;
}

export interface DrawingList {
  /** Drawings of the estimate. */
  readonly items: readonly {
    /** Name of the drawing in its address. */
    readonly name: string;
    /** Address of the drawing, in the form that Accept asks for. */
    readonly href: string;
  }[];
}

/** The calendar of an estimate by itself. */
export interface EstimateCalendar {
  /** Estimate whose calendar it is. */
  readonly id: string;
  /** Revision that the calendar belongs to. */
  readonly revision: RevisionMark;
  /** Tasks, waits and milestones. */
  readonly calendar: CalendarSection;
  /** Windows of the weather for each step; absent without a forecast. */
  readonly weather?: WeatherSection;
  /** The work, the waits and the holds of the day that was asked for, or what comes next. */
  readonly day?: {
    /** Day that was asked about (ISO 8601). */
    readonly date: string;
    /** What is done and waited for on that day. */
    readonly items: readonly TodayItem[];
  };
}

/** The estimate computed again from its own record and edition. */
export interface Replay {
  /** True when every digit of the document came out again. */
  readonly isSame: boolean;
  /** What the stored estimate was made with. */
  readonly madeWith: {
    /** Version of the program then. */
    readonly engineVersion: string;
    /** Edition of the catalogue then. */
    readonly edition: string;
    /** Hash of that edition's content. */
    readonly catalogueHash: string;
  };
  /** Version of the program that replayed it. */
  readonly engineVersionNow: string;
  /** False when the edition's content is no longer the one that was used. */
  readonly isSameCatalogue: boolean;
  /** Total that was stored. */
  readonly totalThen: MoneyJson;
  /** Total that came out now. */
  readonly totalNow: MoneyJson;
}

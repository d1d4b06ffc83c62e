import type { CalendarSection, Estimate, WeatherSection } from '#lib/estimate';
import type { MoneyJson } from '#lib/money';
import type { TodayItem } from '#lib/calendar';
import type { Figure } from '#lib/provenance';

/** An estimate as it is kept: the document, and what the service adds to it. Never changed once made. */
export interface StoredEstimate {
  readonly id: string;
  /** RFC 3339 instant. */
  readonly createdAt: string;
  readonly revision: RevisionMark;
  /** SHA-256 of the defect record, with its members in order. */
  readonly inputHash: string;
  /** Opens this estimate and its revisions; only in the answer to a publishable key, and kept by nobody else. */
  readonly clientSecret?: string;
  /** RFC 3339 instant. */
  readonly clientSecretExpiresAt?: string;
  readonly estimate: Estimate;
}

export interface RevisionMark {
  /** The first estimate of this line of revisions. */
  readonly rootId: string;
  /** 0 for the first. */
  readonly number: number;
  readonly reason?: string;
}

/** An estimate in a list. */
export interface EstimateSummary {
  readonly id: string;
  readonly createdAt: string;
  readonly title: string;
  readonly reference?: string;
  readonly revision: RevisionMark;
  readonly total: MoneyJson;
  readonly totalP10: MoneyJson;
  readonly totalP90: MoneyJson;
  readonly labourH: number;
  readonly verdict: string;
  readonly engineVersion: string;
  readonly edition: string;
}

export interface EstimatePage {
  readonly items: readonly EstimateSummary[];
  /** Give it as `cursor` to read on; absent on the last page. */
  readonly nextCursor?: string;
}

/** The revisions of one estimate, first to last. */
export interface RevisionList {
  readonly items: readonly EstimateSummary[];
}

/** Why a figure is what it is: the tree of formulas, inputs and sources below it. */
export interface WhyAnswer {
  readonly code: string;
  readonly figure: Figure;
}

export interface DrawingList {
  readonly items: readonly { readonly name: string; readonly href: string }[];
}

/** The calendar of an estimate by itself. */
export interface EstimateCalendar {
  readonly id: string;
  readonly revision: RevisionMark;
  readonly calendar: CalendarSection;
  /** Only with a forecast. */
  readonly weather?: WeatherSection;
  /** The work, the waits and the holds of the day that was asked for, or what comes next. */
  readonly day?: { readonly date: string; readonly items: readonly TodayItem[] };
}

/** The estimate computed again from its own record and edition. */
export interface Replay {
  /** True when every digit of the document came out again. */
  readonly isSame: boolean;
  readonly madeWith: {
    readonly engineVersion: string;
    readonly edition: string;
    readonly catalogueHash: string;
  };
  readonly engineVersionNow: string;
  /** False when the edition's content is no longer the one that was used. */
  readonly isSameCatalogue: boolean;
  readonly totalThen: MoneyJson;
  readonly totalNow: MoneyJson;
}

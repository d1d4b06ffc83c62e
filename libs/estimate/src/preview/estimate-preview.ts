import type { MoneyJson } from '#lib/money';
import type { RepairVerdict } from '../conclusion/verdict.js';
import type { Finding, MoneyRange, Opening, Range, Scope } from '../document/estimate-document.js';

/** What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept. */
export interface EstimatePreview {
  /** Title of the job previewed. */
  readonly title: string;
  /** The figures that can be had at once. */
  readonly summary: PreviewSummary;
  /** Damaged zones as drawn or mapped. */
  readonly zones: Scope['zones'];
  /** Openings with their saw lines. */
  readonly openings: readonly PreviewedOpening[];
  /** What the full estimate would stop at or warn of so far. */
  readonly findings: readonly Finding[];
  /** How the repaired deck compares, as far as looked at. */
  readonly panel: PreviewPanel;
  /** What the job may cost, as a first range. */
  readonly price: PreviewPrice;
  /** In words: what the estimate works out and this leaves out, or takes a shorter way to. */
  readonly leftOut: readonly string[];
}

export interface PreviewSummary {
  /** Absent where the deck stays closed. */
  readonly damagedAreaM2?: Range;
  /** Skin that comes off, in all openings. */
  readonly openedAreaM2: number;
  /** Length of all saw cuts. */
  readonly cutLengthM: number;
  /** Plies of the new skin. */
  readonly plyCount: number;
  /** Mixed resin with losses. */
  readonly mixedResinL: number;
  /** Sum of the labour lines: each at its likely hours. */
  readonly labourLikelyH: number;
  /** Hours of work, as a spread. */
  readonly labourH: Range;
  /** Days of work, as a spread. */
  readonly workingDays: Range;
  /** Days from start to end, waits included, as a spread. */
  readonly calendarDays: Range;
}

export type PreviewedOpening = Pick<
  Opening,
  'label' | 'area' | 'sawLine' | 'areaM2' | 'cutLengthM' | 'cutDepthMm' | 'reason'
>;

/** Of the repaired panel beside the deck as built. */
export interface PreviewPanel {
  /** How the repaired deck compares with the old one. */
  readonly verdict: RepairVerdict;
  /** The comparison in a sentence. */
  readonly sentence: string;
  /** Every measure of which the repair gives back less than there was, worst first. */
  readonly shortfalls: readonly string[];
}

export interface PreviewPrice {
  /** Base and what will probably be found besides, with tax; no contingency. */
  readonly withoutContingency: MoneyJson;
  /** With tax, as the extent and the rates may turn out. */
  readonly range: MoneyRange;
  /** Needs that nothing on the price list covers, and that are not in the price. */
  readonly missing: readonly string[];
}

import type { MoneyJson } from '#lib/money';
import type { RepairVerdict } from '../conclusion/verdict.js';
import type { Finding, MoneyRange, Opening, Range, Scope } from '../document/estimate-document.js';

/** What a page shows while somebody still draws: where the saw goes, how long it takes, what it costs. Nothing of it is kept. */
export interface EstimatePreview {
  readonly title: string;
  readonly summary: PreviewSummary;
  readonly zones: Scope['zones'];
  readonly openings: readonly PreviewedOpening[];
  readonly findings: readonly Finding[];
  readonly panel: PreviewPanel;
  readonly price: PreviewPrice;
  /** In words: what the estimate works out and this leaves out, or takes a shorter way to. */
  readonly leftOut: readonly string[];
}

export interface PreviewSummary {
  /** Absent where the deck stays closed. */
  readonly damagedAreaM2?: Range;
  readonly openedAreaM2: number;
  readonly cutLengthM: number;
  readonly plyCount: number;
  readonly mixedResinL: number;
  /** Sum of the labour lines: each at its likely hours. */
  readonly labourLikelyH: number;
  readonly labourH: Range;
  readonly workingDays: Range;
  readonly calendarDays: Range;
}

export type PreviewedOpening = Pick<
  Opening,
  'label' | 'area' | 'sawLine' | 'areaM2' | 'cutLengthM' | 'cutDepthMm' | 'reason'
>;

/** Of the repaired panel beside the deck as built. */
export interface PreviewPanel {
  readonly verdict: RepairVerdict;
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

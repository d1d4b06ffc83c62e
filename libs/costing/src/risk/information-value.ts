import { moneyJson, type Currency, type MoneyJson } from '#lib/money';
import { moneyNear } from '../exact.js';
import { mean, quantileOfSorted } from './sample-statistics.js';

/** What it is worth to open the deck and measure before the price is agreed. */
export interface InformationValue {
  /** Money set aside above the mean so that it suffices in 8 of 10 cases, as things stand. */
  readonly reserveNow: MoneyJson;
  /** The same, on average, once the extent is known. */
  readonly reserveThen: MoneyJson;
  /** What need not be set aside any more. */
  readonly reserveFreed: MoneyJson;
  /** Price of opening up and mapping; absent when it is not priced. */
  readonly stageZeroCost?: MoneyJson;
  /**
   * Expected gain from being able to say no: a repair that turns out dearer than it is worth is not done.
   * Present when the worth of the repair is known.
   */
  readonly decisionValue?: MoneyJson;
  /** Gain from saying no, less the price of stage 0. */
  readonly decisionValueNet?: MoneyJson;
  /** How likely the repair turns out dearer than it is worth. */
  readonly shareAboveWorth?: number;
}

export interface InformationRequest {
  readonly totals: Float64Array;
  /** Level of the extent in each sample, 0 to one less than the number of samples. */
  readonly extentLevels: Int32Array;
  readonly currency: Currency;
  readonly stageZeroCost: number | undefined;
  readonly worthOfRepair: number | undefined;
}

const BINS = 50;

/**
 * Value of knowing the extent: samples are grouped by the extent they were drawn with, and what is still open within
 * a group is what unit rates alone leave open.
 *
 * Reserve: P80 less the mean, before, and on average over the groups, after. Decision: the expected value of perfect
 * information about the extent, E[max(0, W - C_e)] - max(0, W - E[C]), for a repair worth W that may be declined.
 */
export function informationValue(request: InformationRequest): InformationValue {
  const { totals, currency, stageZeroCost, worthOfRepair } = request;
  const near = (major: number): MoneyJson => moneyJson(moneyNear(major, currency, 'half-away-from-zero'));
  const groups = groupsByExtent(request);
  const now = reserve(totals);
  const then = groups.reduce((sum, group) => sum + reserve(group) * group.length, 0) / totals.length;
  const decision = worthOfRepair === undefined ? undefined : decisionValue(totals, groups, worthOfRepair);
  return {
    reserveNow: near(now),
    reserveThen: near(then),
    reserveFreed: near(now - then),
    ...(stageZeroCost === undefined ? {} : { stageZeroCost: near(stageZeroCost) }),
    ...(decision === undefined || worthOfRepair === undefined
      ? {}
      : {
          decisionValue: near(decision),
          decisionValueNet: near(decision - (stageZeroCost ?? 0)),
          shareAboveWorth: totals.filter((total) => total > worthOfRepair).length / totals.length,
        }),
  };
}

function groupsByExtent({ totals, extentLevels }: InformationRequest): readonly Float64Array[] {
  const groups: number[][] = Array.from({ length: BINS }, () => []);
  for (let i = 0; i < totals.length; i += 1)
    groups[Math.floor((extentLevels[i] * BINS) / totals.length)].push(totals[i]);
  return groups.map((group) => Float64Array.from(group));
}

const reserve = (totals: Float64Array): number => quantileOfSorted(totals.slice().sort(), 0.8) - mean(totals);

function decisionValue(totals: Float64Array, groups: readonly Float64Array[], worth: number): number {
  const informed =
    groups.reduce((sum, group) => sum + Math.max(0, worth - mean(group)) * group.length, 0) / totals.length;
  return informed - Math.max(0, worth - mean(totals));
}

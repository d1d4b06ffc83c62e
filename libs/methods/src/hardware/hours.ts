import type { FittingCard } from './schedule.js';

/** What the cards of a job's fittings come to, at their likely values. */
export interface FittingHours {
  readonly offH: number;
  readonly onH: number;
  /** Of the hours to set them again, those with somebody below who holds the nuts. */
  readonly helpedH: number;
}

export type FittingTimes = Pick<FittingCard, 'kind' | 'offH' | 'onH' | 'needsSecondPerson' | 'isTimeStated'>;

/**
 * A row of like fittings is bedded in one go, with tools out, sealant open and somebody below already. From memory; held to
 * fourteen feet of a rail that were set on prepared holes in four hours.
 */
const NEXT_ALIKE = 0.5;

/** Each fitting comes off by its card; the first of a kind is set by its card and those like it in half of that. */
export function fittingHours(fittings: readonly FittingTimes[]): FittingHours {
  const turns = fittings.map((fitting, index) => ({
    fitting,
    onH: fitting.onH.likely * (isNextAlike(fitting, fittings.slice(0, index)) ? NEXT_ALIKE : 1),
  }));
  const sum = (of: (turn: (typeof turns)[number]) => number): number =>
    turns.reduce((total, turn) => total + of(turn), 0);
  return {
    offH: sum(({ fitting }) => fitting.offH.likely),
    onH: sum(({ onH }) => onH),
    helpedH: sum(({ fitting, onH }) => (fitting.needsSecondPerson ? onH : 0)),
  };
}

/** Hours that the record states for one fitting are that fitting's own, whatever stands beside it. */
const isNextAlike = ({ kind, isTimeStated }: FittingTimes, earlier: readonly FittingTimes[]): boolean =>
  !isTimeStated && earlier.some((one) => one.kind === kind && !one.isTimeStated);

import type { DefectRecord } from '#lib/estimate';

/**
 * Situations of a yard's week, invented, with the rung that an experienced repairer would take and the reason, written
 * down before the ladder was run on them. What the ladder says otherwise is kept beside the expectation, never tuned away.
 */
export interface Situation {
  readonly id: string;
  readonly title: string;
  readonly record: DefectRecord;
  /** Code of the rung, or `none` where nothing is to be opened. */
  readonly expected: string;
  readonly because: string;
  /** Rungs that must be refused, each with the word that the refusal has to contain. */
  readonly unfit?: Readonly<Record<string, string>>;
  /** What the ladder says instead, and why that was left standing. */
  readonly disagreement?: { readonly says: string; readonly kept: string };
}

type Corner = readonly [number, number];
export const box = (
  fromXMm: number,
  fromYMm: number,
  lengthMm: number,
  widthMm: number,
): readonly [Corner, Corner, Corner, Corner] => [
  [fromXMm, fromYMm],
  [fromXMm + lengthMm, fromYMm],
  [fromXMm + lengthMm, fromYMm + widthMm],
  [fromXMm, fromYMm + widthMm],
];
export const zoneless = (record: DefectRecord): DefectRecord => ({ ...record, zones: [] });

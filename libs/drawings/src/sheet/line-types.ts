/**
 * Line types of technical drawings: two widths in the ratio 1:2 and dashes measured in line widths d.
 *
 * Source: [ISO-128-2] basic types 01 continuous, 02 dashed, 04 long-dashed dotted, 05 long-dashed double-dotted,
 *         07 dotted;
 *         dash 12 d, gap 3 d, long dash 24 d, dot 0.5 d.
 */
export type LineType =
  | 'visible'
  | 'saw'
  | 'fine'
  | 'hidden'
  | 'hidden-wide'
  | 'edge'
  | 'centre'
  | 'cutting-plane'
  | 'adjacent'
  | 'dimension'
  | 'hatch'
  | 'contour'
  | 'dotted';

export const NARROW_MM = 0.25;
export const WIDE_MM = 0.5;

export const DASH = 12;
export const GAP = 3;
export const LONG_DASH = 24;
export const DOT = 0.5;

export interface Stroke {
  readonly widthMm: number;
  /** Dash and gap lengths in line widths; empty for a continuous line. */
  readonly dashes: readonly number[];
}

const longDashedDotted = [LONG_DASH, GAP, DOT, GAP];

export const strokes: Readonly<Record<LineType, Stroke>> = {
  'visible': { widthMm: WIDE_MM, dashes: [] },
  'saw': { widthMm: 0.7, dashes: [] },
  'fine': { widthMm: NARROW_MM, dashes: [] },
  'hidden': { widthMm: NARROW_MM, dashes: [DASH, GAP] },
  'hidden-wide': { widthMm: WIDE_MM, dashes: [DASH, GAP] },
  'edge': { widthMm: 2 * WIDE_MM, dashes: [] },
  'centre': { widthMm: NARROW_MM, dashes: longDashedDotted },
  'cutting-plane': { widthMm: WIDE_MM, dashes: longDashedDotted },
  'adjacent': { widthMm: NARROW_MM, dashes: [LONG_DASH, GAP, DOT, GAP, DOT, GAP] },
  'dimension': { widthMm: 0.18, dashes: [] },
  'hatch': { widthMm: 0.13, dashes: [] },
  'contour': { widthMm: 0.35, dashes: [] },
  'dotted': { widthMm: 0.35, dashes: [DOT, GAP] },
};

export const dashesMm = (line: LineType): readonly number[] =>
  strokes[line].dashes.map((widths) => widths * strokes[line].widthMm);

/** Lengths of the elements of a line in line widths, for checks against the standard's table. */
export const lineElements = (of: 'hidden' | 'centre' | 'dotted' | 'wide to narrow'): readonly number[] =>
  of === 'wide to narrow' ? [WIDE_MM / NARROW_MM] : strokes[of].dashes;

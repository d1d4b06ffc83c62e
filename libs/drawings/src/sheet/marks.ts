import type { LineType } from './line-types.js';
import type { Box, Point, Ring } from './shapes.js';
import { rectangle } from './shapes.js';
import { ASCENT_SHARE, CAP_SHARE, DESCENT_SHARE, textWidthMm, type Weight } from './text-size.js';

/** Greys, and a scale of bands whose lightness falls step by step: both survive a black and white printer and mean the same to every eye. */
export type Fill = 'none' | 'paper' | 'light' | 'mid' | 'ink' | 'band-1' | 'band-2' | 'band-3' | 'band-4';

export interface PathMark {
  readonly kind: 'path';
  readonly rings: readonly Ring[];
  readonly closed: boolean;
  readonly line?: LineType;
  readonly fill: Fill;
}

export interface CircleMark {
  readonly kind: 'circle';
  readonly at: Point;
  readonly radiusMm: number;
  readonly line?: LineType;
  readonly fill: Fill;
}

export interface TextMark {
  readonly kind: 'text';
  /** Baseline point that the anchor refers to. */
  readonly at: Point;
  readonly text: string;
  readonly sizeMm: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly weight: Weight;
  /** Reads upwards, from the right-hand side of the sheet. */
  readonly turned: boolean;
  /** Paper-coloured ground below, where lines pass behind. */
  readonly backed: boolean;
}

export type Mark = PathMark | CircleMark | TextMark;

export const line = (type: LineType, ...points: readonly Point[]): PathMark => ({
  kind: 'path',
  rings: [points],
  closed: false,
  line: type,
  fill: 'none',
});

export const shape = (rings: readonly Ring[], type: LineType | undefined, fill: Fill): PathMark => ({
  kind: 'path',
  rings,
  closed: true,
  ...(type === undefined ? {} : { line: type }),
  fill,
});

export const boxMark = (box: Box, type: LineType | undefined, fill: Fill): PathMark =>
  shape([rectangle(box)], type, fill);

export const circle = (at: Point, radiusMm: number, type: LineType | undefined, fill: Fill): CircleMark => ({
  kind: 'circle',
  at,
  radiusMm,
  ...(type === undefined ? {} : { line: type }),
  fill,
});

export interface TextStyle {
  readonly sizeMm: number;
  readonly anchor: TextMark['anchor'];
  readonly weight: Weight;
  readonly turned: boolean;
  readonly backed: boolean;
}

/** Type sizes whose capitals are 1.8, 2.0, 2.5 and 3.5 mm high: the lettering heights of [ISO-3098-1], and one between. */
export const sizes = { fine: 2.62, body: 2.9, strong: 3.63, title: 5.09 } as const;

const plain: TextStyle = {
  sizeMm: sizes.body,
  anchor: 'start',
  weight: 'regular',
  turned: false,
  backed: false,
};

export const text = (at: Point, content: string, style: Partial<TextStyle>): TextMark => ({
  kind: 'text',
  at,
  text: content,
  ...plain,
  ...style,
});

/** Text whose capitals are centred on the point. */
export const centredText = (at: Point, content: string, style: Partial<TextStyle>): TextMark => {
  const lift = ((style.sizeMm ?? plain.sizeMm) * CAP_SHARE) / 2;
  const baseline: Point = style.turned === true ? [at[0] + lift, at[1]] : [at[0], at[1] + lift];
  return text(baseline, content, { anchor: 'middle', ...style });
};

/** The room a text takes on the sheet, with its descenders. */
export function textBox({ at, text: content, sizeMm, anchor, weight, turned }: TextMark): Box {
  const long = textWidthMm(content, sizeMm, weight);
  const before = anchor === 'start' ? 0 : anchor === 'middle' ? long / 2 : long;
  const [up, down] = [sizeMm * ASCENT_SHARE, sizeMm * DESCENT_SHARE];
  return turned
    ? { x: at[0] - up, y: at[1] - (long - before), width: up + down, height: long }
    : { x: at[0] - before, y: at[1] - up, width: long, height: up + down };
}

export const textMarks = (marks: readonly Mark[]): readonly TextMark[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []));

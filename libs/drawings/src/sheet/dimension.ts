import { centredText, line, shape, sizes, text, textBox, type Mark } from './marks.js';
import { spread, type LabelRoom } from './placing.js';
import { grown, type Point } from './shapes.js';
import { CAP_SHARE, textWidthMm } from './text-size.js';

const HEAD_LONG_MM = 2.4;
const HEAD_WIDE_MM = 0.8;

/** A filled arrow head at `tip`, coming from `from`. */
export function arrowHead(tip: Point, from: Point): Mark {
  const long = Math.hypot(tip[0] - from[0], tip[1] - from[1]) || 1;
  const [ux, uy] = [(tip[0] - from[0]) / long, (tip[1] - from[1]) / long];
  const [backX, backY] = [tip[0] - ux * HEAD_LONG_MM, tip[1] - uy * HEAD_LONG_MM];
  return shape(
    [
      [
        tip,
        [backX - (uy * HEAD_WIDE_MM) / 2, backY + (ux * HEAD_WIDE_MM) / 2],
        [backX + (uy * HEAD_WIDE_MM) / 2, backY - (ux * HEAD_WIDE_MM) / 2],
      ],
    ],
    undefined,
    'ink',
  );
}

/** A dimension between two levels on a line of its own, with extension lines from the things measured. */
export interface SpanDimension {
  readonly along: 'x' | 'y';
  readonly from: number;
  readonly to: number;
  /** Where the dimension line runs, and where the extension lines start. */
  readonly level: number;
  readonly startLevel: number;
  readonly content: string;
}

export function spanDimension({
  along,
  from,
  to,
  level,
  startLevel,
  content,
}: SpanDimension): readonly Mark[] {
  const point = (run: number, across: number): Point => (along === 'x' ? [run, across] : [across, run]);
  const beyond = level + Math.sign(level - startLevel) * 1.5;
  const [a, b] = [point(from, level), point(to, level)];
  const width = textWidthMm(content, sizes.body, 'regular');
  const fitsInside = Math.abs(to - from) > width + 2 * HEAD_LONG_MM + 2;
  const middle = point((from + to) / 2, level);
  const outside = point(Math.max(from, to) + 2 + width / 2, level);
  return [
    line('dimension', point(from, startLevel), point(from, beyond)),
    line('dimension', point(to, startLevel), point(to, beyond)),
    line('dimension', a, b),
    arrowHead(a, b),
    arrowHead(b, a),
    centredText(fitsInside ? middle : outside, content, { turned: along === 'y', backed: true }),
  ];
}

/** Running dimensions from one origin: each value stands at the end of its own extension line. */
export interface RunningDimensions {
  readonly along: 'x' | 'y';
  readonly origin: number;
  readonly values: readonly { readonly at: number; readonly from: number; readonly content: string }[];
  /** Where the values stand, and the room along the axis that they may spread over. */
  readonly level: number;
  readonly range: readonly [number, number];
}

const PITCH_MM = 3.6;
const JOG_MM = 4;

/**
 * Values are moved apart along the axis where they would touch, each joined to its place by a bent line.
 * Returns how many found no room, so that the sheet can say where they are listed.
 */
export function runningDimensions(
  request: RunningDimensions,
  room: LabelRoom,
): { readonly marks: readonly Mark[]; readonly left: number } {
  const { along, values, level, range } = request;
  const capacity = Math.max(0, Math.floor((range[1] - range[0]) / PITCH_MM) + 1);
  const sorted = [...values].sort((a, b) => a.at - b.at);
  const kept = thinned(sorted, capacity);
  const spots = spread(
    kept.map(({ at }) => at),
    PITCH_MM,
    range[0],
    range[1],
  );
  const side = Math.sign(level - (kept[0]?.from ?? level - 1)) || 1;
  const point = (run: number, across: number): Point => (along === 'x' ? [run, across] : [across, run]);
  const lift = (sizes.body * CAP_SHARE) / 2;
  const marks = kept.flatMap(({ at, from, content }, index) => {
    const spot = spots[index];
    const anchor = (along === 'x') === side > 0 ? 'end' : 'start';
    const mark = text(along === 'x' ? [spot + lift, level] : [level, spot + lift], content, {
      turned: along === 'x',
      anchor,
    });
    room.block(grown(textBox(mark), 0.5));
    return [
      line(
        'dimension',
        point(at, from + side * 0.8),
        point(at, level - side * JOG_MM),
        point(spot, level - side),
      ),
      mark,
    ];
  });
  return { marks, left: sorted.length - kept.length };
}

/** Keeps the first and the last and as many between as there is room for. */
function thinned<T>(sorted: readonly T[], capacity: number): readonly T[] {
  if (sorted.length <= capacity) return sorted;
  const step = (sorted.length - 1) / Math.max(1, capacity - 1);
  const wanted = new Set(Array.from({ length: capacity }, (_, index) => Math.round(index * step)));
  return sorted.filter((_, index) => wanted.has(index));
}

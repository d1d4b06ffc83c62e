import { centredText, line, text, textBox, type Mark, type TextMark, type TextStyle } from './marks.js';
import { contains, crossesBox, grown, overlaps, type Box, type Point } from './shapes.js';

/** A label that wants to stand at or near a point. */
export interface LabelWish {
  readonly at: Point;
  readonly content: string;
  readonly style: Partial<TextStyle>;
  /** Keep clear of the point by this much; zero means the label may stand on it. */
  readonly clearMm: number;
  /** Draw a thin line back to the point when the label had to move away. */
  readonly leader: boolean;
}

/** The free room of one sheet. Every label is asked for here, so that none lies on another. */
export interface LabelRoom {
  /** Takes room that no label may use. */
  readonly block: (box: Box) => void;
  /** Lines that a label should rather not stand on. */
  readonly avoid: (points: readonly Point[], closed: boolean) => void;
  /** The marks of the label, or none when there is no room; then the caller says so elsewhere. */
  readonly place: (wish: LabelWish) => readonly Mark[];
  /** Takes the room of a text that has its fixed place; false when that place is taken. */
  readonly claim: (mark: TextMark) => boolean;
  /** The same for a symbol. */
  readonly claimBox: (box: Box) => boolean;
}

const AIR_MM = 0.5;

/** Collects what is taken while one drawing is made; nothing of it outlives the drawing. */
export function labelRoom(within: Box): LabelRoom {
  const taken: Box[] = [];
  const segments: (readonly [Point, Point])[] = [];
  const isFree = (box: Box): boolean =>
    contains(within, box) && !taken.some((other) => overlaps(other, grown(box, AIR_MM)));
  const isClear = (box: Box): boolean => !segments.some(([a, b]) => crossesBox(a, b, box));
  const claimBox = (box: Box): boolean => {
    if (!isFree(box)) return false;
    taken.push(grown(box, AIR_MM));
    return true;
  };
  const claim = (mark: TextMark): boolean => claimBox(textBox(mark));
  const place = (wish: LabelWish): readonly Mark[] => {
    const best = firstGood(candidates(wish), isFree, isClear);
    if (best === undefined) return [];
    claim(best);
    return [...leaderTo(best, wish), best];
  };
  return {
    block: (box) => {
      taken.push(box);
    },
    avoid: (points, closed) => {
      points.forEach((point, index) => {
        if (index > 0) segments.push([points[index - 1], point]);
      });
      if (closed && points.length > 2) segments.push([points[points.length - 1], points[0]]);
    },
    place,
    claim,
    claimBox,
  };
}

/** The first free place that no line crosses, else the first free one. */
function firstGood(
  spots: Iterable<TextMark>,
  isFree: (box: Box) => boolean,
  isClear: (box: Box) => boolean,
): TextMark | undefined {
  let fallback: TextMark | undefined;
  for (const spot of spots) {
    const box = textBox(spot);
    if (!isFree(box)) continue;
    if (isClear(grown(box, AIR_MM))) return spot;
    fallback ??= spot;
  }
  return fallback;
}

/** Beside, above and below before the diagonals: in a row of marks a label on the diagonal stands as near to the next one. */
const compass: readonly (readonly [number, number])[] = [
  [1, 0],
  [0, -1],
  [0, 1],
  [-1, 0],
  [0.7, -0.7],
  [0.7, 0.7],
  [-0.7, -0.7],
  [-0.7, 0.7],
];
const reaches = [0, 2, 4, 7, 11, 16, 22, 30, 40];

/** Without a leader a label has to stand so near that nobody takes it for a neighbour's. */
const nearReaches = [0, 0.8];

/** Where the label could stand, nearest first. */
function* candidates({ at, content, style, clearMm, leader }: LabelWish): Generator<TextMark> {
  if (clearMm === 0) yield centredText(at, content, style);
  for (const reach of leader ? reaches : nearReaches) {
    const away = Math.max(clearMm, 0.8) + reach;
    for (const [dx, dy] of compass) {
      const anchor = dx > 0.1 ? 'start' : dx < -0.1 ? 'end' : 'middle';
      yield besidePoint(
        [at[0] + dx * away, at[1] + dy * away],
        content,
        { ...style, anchor, turned: false },
        dy,
      );
    }
  }
}

function besidePoint(spot: Point, content: string, style: Partial<TextStyle>, dy: number): TextMark {
  const centred = centredText(spot, content, style);
  const { height } = textBox(centred);
  return text(
    [centred.at[0], centred.at[1] + (Math.sign(dy) * (Math.abs(dy) > 0.1 ? height : 0)) / 2],
    content,
    style,
  );
}

const LEADER_FROM_MM = 3;

function leaderTo(label: TextMark, { at, leader, clearMm }: LabelWish): readonly Mark[] {
  const box = textBox(label);
  const near: Point = [
    Math.min(Math.max(at[0], box.x - 0.4), box.x + box.width + 0.4),
    Math.min(Math.max(at[1], box.y - 0.4), box.y + box.height + 0.4),
  ];
  const gap = Math.hypot(near[0] - at[0], near[1] - at[1]);
  if (!leader || gap < LEADER_FROM_MM + clearMm) return [];
  const share = clearMm / gap;
  return [line('dimension', [at[0] + (near[0] - at[0]) * share, at[1] + (near[1] - at[1]) * share], near)];
}

/**
 * Moves positions along a line as little as possible so that neighbours keep a distance: runs that are too
 * close are pooled and spread about their mean. The answer keeps the order and stays between the ends where it can.
 */
export function spread(
  positions: readonly number[],
  gap: number,
  from: number,
  to: number,
): readonly number[] {
  const pools: { sum: number; count: number }[] = [];
  const start = (pool: { sum: number; count: number }): number =>
    pool.sum / pool.count - ((pool.count - 1) * gap) / 2;
  for (const position of positions) {
    pools.push({ sum: position, count: 1 });
    while (pools.length > 1 && isTooClose(pools[pools.length - 2], pools[pools.length - 1])) {
      const last = pools.pop() ?? { sum: 0, count: 0 };
      const before = pools[pools.length - 1];
      pools[pools.length - 1] = { sum: before.sum + last.sum, count: before.count + last.count };
    }
  }
  function isTooClose(a: { sum: number; count: number }, b: { sum: number; count: number }): boolean {
    return start(a) + a.count * gap > start(b) - 1e-9;
  }
  const moved = pools.flatMap((pool) =>
    Array.from({ length: pool.count }, (_, index) => start(pool) + index * gap),
  );
  return keptBetween(moved, gap, from, to);
}

function keptBetween(moved: readonly number[], gap: number, from: number, to: number): readonly number[] {
  const forward: number[] = [];
  for (const position of moved)
    forward.push(Math.max(position, forward.length === 0 ? from : forward[forward.length - 1] + gap));
  const back = [...forward];
  for (let index = back.length - 1; index >= 0; index -= 1) {
    back[index] = Math.min(back[index], index === back.length - 1 ? to : back[index + 1] - gap);
  }
  return back;
}

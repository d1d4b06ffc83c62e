import type { Bounds, Point } from '#lib/geometry';

/** A length of timber under, on or over the area that is pressed, and the places along it. */
export interface PressLine {
  /** A board on props, a batten that is screwed down, or a bow that keeps the shape of the deck. */
  readonly what: 'board' | 'batten' | 'bow';
  /** One end of it: along the length of the area and across it, in mm. */
  readonly from: Point;
  /** Its other end. */
  readonly to: Point;
  /** Where a prop stands under a board, or a screw goes through a batten. */
  readonly points: readonly Point[];
}

/** What carries a skin besides the boards: a line under it. */
export interface Support {
  readonly from: Point;
  readonly to: Point;
}

export interface PropCase {
  readonly bounds: Bounds;
  readonly supports: readonly Support[];
  /** The span for which the distance of the boards was worked out. */
  readonly spanMm: number;
  readonly spacingMm: number;
}

/** Along a board its props stand no farther apart, and wider spans are propped whatever the numbers say. From memory. */
export const PROP_ABOVE_MM = 400;
/** A bay that is as wide as the opening is one. */
const ROUNDING = 1e-6;

/** Positions along the longer side of an area and across it, whichever way it lies. */
interface Frame {
  readonly along: readonly [number, number];
  readonly across: readonly [number, number];
  readonly isAhead: boolean;
}

function frameOf({ minX, minY, maxX, maxY }: Bounds): Frame {
  const isAhead = maxX - minX >= maxY - minY;
  return isAhead
    ? { along: [minX, maxX], across: [minY, maxY], isAhead }
    : { along: [minY, maxY], across: [minX, maxX], isAhead };
}

const placed = ({ isAhead }: Frame, along: number, across: number): Point =>
  isAhead ? [along, across] : [across, along];

/**
 * Boards run along the area, evenly between what carries the skin already, and end where a support crosses them: no board
 * goes through a bulkhead.
 */
export function boardLines({ bounds, supports, spanMm, spacingMm }: PropCase): readonly PressLine[] {
  const frame = frameOf(bounds);
  const { beside, crossing } = supportStops(frame, supports);
  return stretches(frame.across, beside).flatMap(([start, end]) =>
    between(start, end, boardsIn(end - start, spanMm, spacingMm)).flatMap((across) =>
      stretches(frame.along, crossing).map(([from, to]) => board(frame, across, [from, to])),
    ),
  );
}

/** None in a strip that its sides hold; at least one in a bay as wide as the one that was found too wide. */
const boardsIn = (widthMm: number, spanMm: number, spacingMm: number): number =>
  Math.max(widthMm >= spanMm - ROUNDING ? 1 : 0, Math.ceil(widthMm / spacingMm - ROUNDING) - 1);

function board(frame: Frame, across: number, [from, to]: readonly [number, number]): PressLine {
  const props = Math.max(1, Math.ceil((to - from) / PROP_ABOVE_MM - ROUNDING));
  return {
    what: 'board',
    from: placed(frame, from, across),
    to: placed(frame, to, across),
    points: Array.from({ length: props }, (_, index) =>
      placed(frame, from + ((index + 0.5) * (to - from)) / props, across),
    ),
  };
}

/** Where supports lie: beside the boards, or across their way. */
function supportStops(
  { along, across, isAhead }: Frame,
  supports: readonly Support[],
): { readonly beside: readonly number[]; readonly crossing: readonly number[] } {
  const turned = supports.map(({ from, to }) => ({
    from: isAhead ? from : ([from[1], from[0]] as const),
    to: isAhead ? to : ([to[1], to[0]] as const),
  }));
  const middle = ([start, end]: readonly [number, number]): number => (start + end) / 2;
  const isLevel = ({ from, to }: Support): boolean => Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]);
  return {
    beside: turned.filter(isLevel).flatMap((one) => crossesAt(one, 0, middle(along))),
    crossing: turned.filter((one) => !isLevel(one)).flatMap((one) => crossesAt(one, 1, middle(across))),
  };
}

/** Where a line passes a level of one axis, on the other axis; nowhere when it ends short of it. */
function crossesAt({ from, to }: Support, axis: 0 | 1, level: number): readonly number[] {
  const [a, b] = [from[axis], to[axis]];
  if (level < Math.min(a, b) || level > Math.max(a, b) || a === b) return [];
  const other = axis === 0 ? 1 : 0;
  return [from[other] + ((level - a) / (b - a)) * (to[other] - from[other])];
}

/** The stretches that stops part a range into. */
function stretches(
  [start, end]: readonly [number, number],
  stops: readonly number[],
): readonly (readonly [number, number])[] {
  const inside = stops.filter((at) => at > start + ROUNDING && at < end - ROUNDING);
  const all = [start, ...[...inside].sort((a, b) => a - b), end];
  return all.slice(1).map((to, index) => [all[index], to] as const);
}

/** So many places between two ends, at equal steps. */
const between = (start: number, end: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, index) => start + ((index + 1) * (end - start)) / (count + 1));

/** Past each end of what they press, battens lie on the sound deck. From memory. */
const BATTEN_ENDS_MM = 100;

export interface BattenCase {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly spacingMm: number;
  readonly screwSpacingMm: number;
}

/** Battens along the area, each in the middle of the strip that it presses, with its screws. */
export function battenLines({
  lengthMm,
  widthMm,
  spacingMm,
  screwSpacingMm,
}: BattenCase): readonly PressLine[] {
  const count = Math.max(1, Math.ceil(widthMm / spacingMm));
  const spaces = Math.ceil(lengthMm / screwSpacingMm);
  return Array.from({ length: count }, (_, index): PressLine => {
    const across = ((index + 0.5) * widthMm) / count;
    return {
      what: 'batten',
      from: [-BATTEN_ENDS_MM, across],
      to: [lengthMm + BATTEN_ENDS_MM, across],
      points: Array.from({ length: spaces + 1 }, (__, at) => [(at * lengthMm) / spaces, across] as const),
    };
  });
}

/** Bows lie across the longer side, the first and the last on its ends. */
export function bowLines({
  lengthMm,
  widthMm,
  count,
}: Readonly<Record<'lengthMm' | 'widthMm' | 'count', number>>): readonly PressLine[] {
  const frame = frameOf({ minX: 0, minY: 0, maxX: lengthMm, maxY: widthMm });
  const [, longMm] = frame.along;
  const [, shortMm] = frame.across;
  return Array.from({ length: count }, (_, index): PressLine => {
    const along = (index * longMm) / (count - 1);
    return {
      what: 'bow',
      from: placed(frame, along, -BATTEN_ENDS_MM),
      to: placed(frame, along, shortMm + BATTEN_ENDS_MM),
      points: [],
    };
  });
}

/** A width and a height, in mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * What can be done about a piece that is larger than the stock in its allowed turns: a quarter turn more where that would
 * do, and the fewest parts that straight cuts along the axes make of it.
 *
 * Worked: libs/nesting/src/offer.spec.ts
 */
export function offerFor(piece: Size, rooms: readonly Size[]): string {
  const crosswise = { width: piece.height, height: piece.width };
  const turn = rooms.some((room) => fewestParts(crosswise, room)?.count === 1)
    ? 'allow a quarter turn more, in which it fits, or '
    : '';
  const splits = rooms.flatMap((room) => fewestParts(piece, room) ?? []).sort((p, q) => p.count - q.count);
  if (splits.length === 0) return `${turn}add larger stock: the trimmed edges leave no room on this`;
  const [{ count, part }] = splits;
  return `${turn}cut it into ${count} parts of at most ${inMm(part.width)} x ${inMm(part.height)} mm, or add larger stock`;
}

interface Split {
  readonly count: number;
  readonly part: Size;
}

function fewestParts({ width, height }: Size, room: Size): Split | undefined {
  if (room.width <= 0 || room.height <= 0) return undefined;
  const [across, up] = [width / room.width, height / room.height].map((times) =>
    Math.max(1, Math.ceil(times)),
  );
  return { count: across * up, part: { width: width / across, height: height / up } };
}

/** Rounded up to a tenth: a part of the size named must hold its share. */
const inMm = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10;

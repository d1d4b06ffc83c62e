import type { Path64, Paths64 } from 'clipper2-ts';

/** What the kernel would answer, where that can be told by looking. */
export type PlainAnswer =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'first' }
  /** The first with the second cut out of its middle. */
  | { readonly kind: 'hollow' };

/**
 * Convex shapes one inside the other, which most of a plan's clipping is: nothing of them need be swept. Undefined where
 * anything is crossed, or comes so near that the kernel's rounding could decide.
 *
 * Valid:  whole micrometres, far below 2^26 of them along either axis.
 */
export function plainAnswer(
  kind: 'union' | 'difference' | 'intersection',
  subject: Paths64,
  other: Paths64,
): PlainAnswer | undefined {
  if (subject.length === 0) return kind === 'union' && other.length > 0 ? undefined : { kind: 'nothing' };
  if (subject.length > 1 || other.length > 1 || !isPlain(subject[0])) return undefined;
  if (other.length === 0) return kind === 'intersection' ? { kind: 'nothing' } : { kind: 'first' };
  if (kind === 'union' || !isPlain(other[0])) return undefined;
  const [one, two] = [subject[0], other[0]];
  if (insideBy(one, two) >= CLEAR) return kind === 'intersection' ? { kind: 'first' } : { kind: 'nothing' };
  return kind === 'difference' && insideBy(two, one) >= CLEAR ? { kind: 'hollow' } : undefined;
}

/** The kernel rounds to one micrometre where an edge passes the height of a corner; at twice that nothing changes sides. */
const CLEAR = 2;

const known = new WeakMap<Path64, boolean>();

function isPlain(path: Path64): boolean {
  const found = known.get(path) ?? isConvex(path);
  known.set(path, found);
  return found;
}

/** Runs once round from x towards y, and every corner stands clear of the lines of the edges beside its own. */
function isConvex(path: Path64): boolean {
  if (path.length < 3) return false;
  let turns = 0;
  for (let index = 0, a = path.length - 2, b = path.length - 1; index < path.length; a = b, b = index++) {
    const [inX, inY] = [path[b].x - path[a].x, path[b].y - path[a].y];
    const [outX, outY] = [path[index].x - path[b].x, path[index].y - path[b].y];
    const longest = Math.sqrt(Math.max(inX * inX + inY * inY, outX * outX + outY * outY));
    if (inX * outY - inY * outX < CLEAR * longest) return false;
    if (inY < 0 !== outY < 0) turns += 1;
  }
  return turns <= 2;
}

/** How far the nearest corner of one convex path lies within the nearest edge of another; below 0 where one lies outside. */
function insideBy(path: Path64, around: Path64): number {
  let least = Number.POSITIVE_INFINITY;
  for (let index = 0, before = around.length - 1; index < around.length; before = index++) {
    const { x, y } = around[before];
    const [alongX, alongY] = [around[index].x - x, around[index].y - y];
    let nearest = Number.POSITIVE_INFINITY;
    for (const corner of path) nearest = Math.min(nearest, alongX * (corner.y - y) - alongY * (corner.x - x));
    if (nearest < 0) return -1;
    least = Math.min(least, nearest / Math.sqrt(alongX * alongX + alongY * alongY));
  }
  return least;
}

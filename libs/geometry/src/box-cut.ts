import type { Path64, Paths64 } from 'clipper2-ts';

type Corner = Path64[number];

/**
 * What an upright box leaves of one outline, cut along one side of the box after another: most of what divides a deck into
 * rows, columns and sheets. Undefined where it is left to the kernel: where the cutter is no box, where the outline has holes,
 * or where it touches a side of the box at one place twice.
 *
 * Valid:  whole micrometres, far below 2^26 of them along either axis; the outline does not cross itself.
 */
export function cutByBox(subject: Paths64, cutter: Paths64): Paths64 | undefined {
  if (subject.length !== 1 || cutter.length !== 1) return undefined;
  const sides = sidesOf(cutter[0]);
  if (sides === undefined || twiceAreaOf(subject[0]) <= 0) return undefined;
  let parts: Paths64 | undefined = [subject[0]];
  for (const side of sides) parts = parts && allWithin(parts, side);
  return parts && cleaned(parts);
}

/** One side of a box: how deep within it a corner lies, and how far along it, with what is kept on the left hand. */
interface Side {
  readonly at: number;
  readonly depth: (corner: Corner) => number;
  readonly along: (corner: Corner) => number;
  readonly crossing: (from: Corner, to: Corner) => Corner;
}

function sidesOf(path: Path64): readonly Side[] | undefined {
  if (path.length !== 4) return undefined;
  const [a, b, c, d] = path;
  const isUpright =
    (a.x === b.x && b.y === c.y && c.x === d.x && d.y === a.y) ||
    (a.y === b.y && b.x === c.x && c.y === d.y && d.x === a.x);
  if (!isUpright || a.x === c.x || a.y === c.y) return undefined;
  return [
    upright(Math.min(a.x, c.x), -1),
    upright(Math.max(a.x, c.x), 1),
    level(Math.min(a.y, c.y), -1),
    level(Math.max(a.y, c.y), 1),
  ];
}

/** The right side of a box (1) or its left one (-1). */
const upright = (at: number, hand: 1 | -1): Side => ({
  at,
  depth: ({ x }) => hand * (at - x),
  along: ({ y }) => hand * y,
  crossing: (from, to) => ({ x: at, y: between(from.y, to.y, (at - from.x) / (to.x - from.x)) }),
});

/** The far side of a box (1) or its near one (-1). */
const level = (at: number, hand: 1 | -1): Side => ({
  at,
  depth: ({ y }) => hand * (at - y),
  along: ({ x }) => -hand * x,
  crossing: (from, to) => ({ x: between(from.x, to.x, (at - from.y) / (to.y - from.y)), y: at }),
});

const between = (from: number, to: number, share: number): number => Math.round(from + share * (to - from));

function allWithin(paths: Paths64, side: Side): Paths64 | undefined {
  const all: Paths64 = [];
  for (const path of paths) {
    const parts = within(path, side);
    if (parts === undefined) return undefined;
    all.push(...parts);
  }
  return all;
}

/** What of a path lies on the kept hand of a side; a corner on the line itself counts as beyond it. */
function within(path: Path64, side: Side): Paths64 | undefined {
  let [deepest, farthest] = [0, 0];
  for (const corner of path) {
    const depth = side.depth(corner);
    deepest = Math.max(deepest, depth);
    farthest = Math.min(farthest, depth);
  }
  if (deepest === 0) return [];
  return farthest === 0 ? [path] : joinedAlong(chainsOf(path, side), side);
}

/** The stretches of a path on the kept hand, each from where it comes over the line to where it leaves again. */
function chainsOf(path: Path64, side: Side): Paths64 {
  const chains: Paths64 = [];
  const start = path.findIndex((corner) => side.depth(corner) <= 0);
  let chain: Path64 | undefined;
  for (let step = 1; step <= path.length; step += 1) {
    const from = path[(start + step - 1) % path.length];
    const to = path[(start + step) % path.length];
    const isIn = side.depth(to) > 0;
    if (isIn && chain === undefined) chains.push((chain = [side.crossing(from, to)]));
    chain?.push(isIn ? to : side.crossing(from, to));
    if (!isIn) chain = undefined;
  }
  return chains;
}

/** Where one stretch leaves, the outline runs along the line to the stretch that comes in next. */
function joinedAlong(chains: Paths64, { along }: Side): Paths64 | undefined {
  const entry = (chain: Path64): number => along(chain[0]);
  const exit = (chain: Path64): number => along(chain[chain.length - 1]);
  const leaving = [...chains].sort((a, b) => exit(a) - exit(b));
  const coming = [...chains].sort((a, b) => entry(a) - entry(b));
  for (const [place, chain] of leaving.entries()) {
    if (exit(chain) >= entry(coming[place])) return undefined;
    if (place > 0 && exit(chain) <= entry(coming[place - 1])) return undefined;
  }
  const next = new Map(leaving.map((chain, place) => [chain, coming[place]]));
  return ringsOfChains(chains, next);
}

function ringsOfChains(chains: Paths64, next: ReadonlyMap<Path64, Path64>): Paths64 {
  const rings: Paths64 = [];
  const used = new Set<Path64>();
  for (const first of chains) {
    const ring: Path64 = [];
    for (let chain: Path64 | undefined = first; chain !== undefined && !used.has(chain);) {
      used.add(chain);
      ring.push(...chain);
      chain = next.get(chain);
    }
    if (ring.length > 0) rings.push(ring);
  }
  return rings;
}

/** Slivers are left to the kernel, which has rules of its own for them. */
const LEAST_TWICE_UM2 = 2e6;

function cleaned(paths: Paths64): Paths64 | undefined {
  const clean = paths.map(withoutStraight);
  return clean.every((path) => path.length > 2 && twiceAreaOf(path) >= LEAST_TWICE_UM2) ? clean : undefined;
}

/** Without corners that stand in a straight line, or twice at one place. */
function withoutStraight(path: Path64): Path64 {
  const rest = path.filter((corner, place) => {
    const before = path[(place + path.length - 1) % path.length];
    const after = path[(place + 1) % path.length];
    return (corner.x - before.x) * (after.y - corner.y) !== (corner.y - before.y) * (after.x - corner.x);
  });
  return rest.length === path.length || rest.length < 3 ? rest : withoutStraight(rest);
}

function twiceAreaOf(path: Path64): number {
  const [{ x: x0, y: y0 }] = path;
  let twice = 0;
  for (let place = 0, before = path.length - 1; place < path.length; before = place++)
    twice += (path[before].x - x0) * (path[place].y - y0) - (path[place].x - x0) * (path[before].y - y0);
  return twice;
}

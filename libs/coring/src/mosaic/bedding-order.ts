import { interiorPoint, type Point, type Region } from '#lib/geometry';
import { entryOf, headingsFor, type Entry, type Heading, type Legs } from './entry.js';
import { edgesFrom, isInside, isUsedUp, type Edges, type Work } from './motion.js';

/** What is to be brought in: pieces of one layer in a cavity of which only the opening is open above. */
export interface BeddingTask {
  readonly opening: Region;
  /** Where core lies; its edge and what is filled solid stand in the way. */
  readonly coreable: Region;
  readonly pieces: readonly Region[];
  /** Pieces of one bay are bedded before those of the next. */
  readonly bayOf: readonly number[];
}

export interface BeddingOrder {
  /** Numbers of pieces, the first to be bedded first. */
  readonly order: readonly number[];
  /** By number of piece; none for one that does not go in. */
  readonly entries: ReadonlyMap<number, Entry>;
  readonly stuck: readonly number[];
}

/**
 * Takes the finished mosaic apart, in thought, and turns the order round: a piece that can be moved out to the opening and
 * lifted can be bedded the same way backwards. Taking one away never closes a way for another, so it does not matter which
 * of those that move is taken first, and what is left at the end cannot be moved in any order by the moves that are tried.
 */
export function beddingOrder(task: BeddingTask, work: Work): BeddingOrder {
  const site = siteOf(task);
  const entries = new Map<number, Entry>();
  const takenOut: number[] = [];
  const bays = [...new Set(task.bayOf)].sort((a, b) => b - a);
  let left = byEase(task, site);
  for (const bay of bays) {
    const own = (piece: number): boolean => task.bayOf[piece] === bay;
    const held = takeOut({ site, entries, takenOut }, { own: left.filter(own), all: left }, work);
    left = left.filter((piece) => !own(piece) || held.includes(piece));
  }
  // What a bay in front of it held may come out now that all the bays behind are gone.
  const stuck = takeOut({ site, entries, takenOut }, { own: left, all: left }, work);
  return {
    order: [...stuck, ...takenOut.reverse()],
    entries,
    stuck,
  };
}

interface Site {
  readonly opening: Edges;
  readonly middle: Point;
  readonly headings: readonly Heading[];
  readonly wall: Edges;
  readonly pieces: readonly Edges[];
  readonly drops: readonly boolean[];
}

function siteOf({ opening, coreable, pieces }: BeddingTask): Site {
  const openingEdges = edgesFrom(opening);
  const edges = pieces.map((piece) => edgesFrom(piece));
  const unlimited = { used: 0, most: Infinity };
  return {
    opening: openingEdges,
    middle: interiorPoint(opening)?.at ?? [0, 0],
    headings: headingsFor(openingEdges),
    wall: edgesFrom(coreable),
    pieces: edges,
    drops: edges.map((piece) => isInside(piece, openingEdges, unlimited)),
  };
}

/** The order of taking out: the field from the far end to the near one, then what reaches under the lip, the nearest to the middle first. */
function byEase({ pieces }: BeddingTask, { pieces: edges, drops, middle: [x, y] }: Site): readonly number[] {
  const box = (piece: number): Edges['box'] => edges[piece].box;
  const away = (piece: number): number =>
    Math.hypot((box(piece).minX + box(piece).maxX) / 2 - x, (box(piece).minY + box(piece).maxY) / 2 - y);
  const all = pieces.map((_, piece) => piece);
  const field = all
    .filter((piece) => drops[piece])
    .sort((a, b) => Math.round(box(b).minX - box(a).minX) || box(b).minY - box(a).minY || a - b);
  const under = all.filter((piece) => !drops[piece]).sort((a, b) => away(a) - away(b) || a - b);
  return [...field, ...under];
}

interface Progress {
  readonly site: Site;
  readonly entries: Map<number, Entry>;
  readonly takenOut: number[];
}

/** Takes out whatever moves until nothing moves any more; ways round a corner are looked for when no straight one is left. */
function takeOut(
  { site, entries, takenOut }: Progress,
  { own, all }: { readonly own: readonly number[]; readonly all: readonly number[] },
  work: Work,
): readonly number[] {
  let [held, standing] = [own, all];
  let legs: Legs = 'straight';
  while (held.length > 0 && !isUsedUp(work)) {
    const before = held.length;
    for (const piece of held) {
      const entry = wayOut(site, { piece, standing, legs }, work);
      if (entry === undefined) continue;
      entries.set(piece, entry);
      takenOut.push(piece);
      [held, standing] = [held, standing].map((list) => list.filter((other) => other !== piece));
      if (legs === 'round-a-corner') break;
    }
    if (held.length < before) legs = 'straight';
    else if (legs === 'straight') legs = 'round-a-corner';
    else return held;
  }
  return held;
}

const DROP: Entry = { way: 'drops', path: [[0, 0]] };

interface Try {
  readonly piece: number;
  readonly standing: readonly number[];
  readonly legs: Legs;
}

function wayOut(site: Site, { piece, standing, legs }: Try, work: Work): Entry | undefined {
  if (site.drops[piece]) return DROP;
  const others = standing.filter((other) => other !== piece).map((other) => site.pieces[other]);
  return entryOf(site.pieces[piece], { ...site, standing: [site.wall, ...others] }, legs, work);
}

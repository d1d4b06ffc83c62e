import type { Group, Member } from './pack-groups.js';
import { unbeaten, type Priced } from './unbeaten.js';

/** One way to buy for a group. */
export interface Option extends Priced {
  /** Packs by the place of their offer. */
  readonly packs: readonly (readonly [offer: number, count: number])[];
}

/** Steps that a search may still take; counted down as they are used. */
export interface Work {
  left: number;
}

export interface Within {
  readonly open: readonly Member[];
  readonly work: Work;
}

/**
 * The cheapest way to cover a group, none when there is none. Depth first over the packs, cut off by what the demands
 * still open must cost at least.
 */
export function leastOption(group: Group, { open, work }: Within): Option | undefined {
  let best: Option | undefined;
  const search = searchOf(group, { open, work }, (option) => {
    best = option;
    search.limit = option.cost - DUST;
  });
  descend(search, { place: 0, left: group.required, resinKg: 0, cost: 0 });
  return best;
}

/** Every way to cover a group within a cost that no other beats in cost and towards the watched suppliers' sums. */
export function optionsOf(
  group: Group,
  { open, work, watched, limit }: Within & { readonly watched: readonly number[]; readonly limit: number },
): readonly Option[] {
  const found: Option[] = [];
  const search = searchOf(group, { open, work }, (option) => found.push(option));
  search.limit = limit;
  search.watched = watched;
  descend(search, { place: 0, left: group.required, resinKg: 0, cost: 0 });
  return unbeaten(found);
}

/** Far below a minor unit, and below what tells orders of one cost apart. */
const DUST = 1e-9;

interface Search {
  readonly open: readonly Member[];
  readonly floors: readonly Floor[];
  readonly counts: number[];
  readonly work: Work;
  readonly onFound: (option: Option) => void;
  watched: readonly number[];
  limit: number;
}

const searchOf = (
  { required }: Group,
  { open, work }: Within,
  onFound: (option: Option) => void,
): Search => ({
  open,
  floors: floorsOf(required.length, open),
  counts: open.map(() => 0),
  work,
  onFound,
  watched: [],
  limit: Number.POSITIVE_INFINITY,
});

interface Node {
  readonly place: number;
  /** Of each demand. */
  readonly left: readonly number[];
  /** Bought and not cured. */
  readonly resinKg: number;
  readonly cost: number;
}

function descend(search: Search, node: Node): void {
  search.work.left -= 1;
  const least = node.cost + leastOfRest(search, node);
  if (search.work.left < 0 || least > search.limit || least === Number.POSITIVE_INFINITY) return;
  if (node.place === search.open.length) return search.onFound(optionOf(search, node.cost));
  const member = search.open[node.place];
  for (const count of countsToTry(member, node)) {
    if (node.cost + member.costs[count] > search.limit) continue;
    search.counts[node.place] = count;
    descend(search, after(member, count, node));
  }
  search.counts[node.place] = 0;
}

function after({ demand, content, resinKg, curesKg, costs }: Member, count: number, node: Node): Node {
  return {
    place: node.place + 1,
    left:
      demand === undefined
        ? node.left
        : node.left.map((quantity, place) => (place === demand ? quantity - count * content : quantity)),
    resinKg: node.resinKg + count * (resinKg - curesKg),
    cost: node.cost + costs[count],
  };
}

/** From the number that covers what is left down to none, so that a good way is found early; then more. */
function countsToTry(
  { demand, content, curesKg, costs }: Member,
  { left, resinKg }: Node,
): readonly number[] {
  const most = costs.length - 1;
  const forDemand = demand === undefined ? 0 : left[demand] / content;
  const forCure = curesKg === 0 ? 0 : (resinKg - SLACK_KG) / curesKg;
  const enough = Math.min(most, Math.max(0, Math.ceil(Math.max(forDemand, forCure))));
  return Array.from({ length: most + 1 }, (_, place) => (place <= enough ? enough - place : place));
}

/** Resin this far from being cured is weighed no finer. */
const SLACK_KG = 1e-9;

const optionOf = ({ open, counts, watched }: Search, cost: number): Option => ({
  cost,
  goods: watched.map((supplier) =>
    open.reduce(
      (sum, member, place) => (member.supplier === supplier ? sum + member.goods[counts[place]] : sum),
      0,
    ),
  ),
  packs: open.flatMap(({ offer }, place) => (counts[place] === 0 ? [] : [[offer, counts[place]] as const])),
});

/** Least cost per unit from a place on: of each demand, and to cure a kilogram. */
interface Floor {
  readonly perUnit: readonly number[];
  readonly isHardener: readonly boolean[];
  readonly perKgCured: number;
}

function floorsOf(demandCount: number, open: readonly Member[]): readonly Floor[] {
  const none: Floor = {
    perUnit: Array.from({ length: demandCount }, () => Number.POSITIVE_INFINITY),
    isHardener: Array.from({ length: demandCount }, () => false),
    perKgCured: Number.POSITIVE_INFINITY,
  };
  const floors = [none];
  for (const member of [...open].reverse()) floors.unshift(lowered(floors[0], member));
  return floors;
}

function lowered(floor: Floor, { demand, content, curesKg, costs }: Member): Floor {
  const perPack = Math.min(...costs.slice(1).map((cost, place) => cost / (place + 1)));
  return {
    perUnit: floor.perUnit.map((least, place) =>
      place === demand ? Math.min(least, perPack / content) : least,
    ),
    isHardener: floor.isHardener.map((is, place) => is || (place === demand && curesKg > 0)),
    perKgCured: curesKg === 0 ? floor.perKgCured : Math.min(floor.perKgCured, perPack / curesKg),
  };
}

/** What is still open costs at least this; hardener that is needed cures resin as well, so only the dearer of both counts. */
function leastOfRest({ floors }: Search, { place, left, resinKg }: Node): number {
  const { perUnit, isHardener, perKgCured } = floors[place];
  const toCure = resinKg > SLACK_KG ? resinKg * perKgCured : 0;
  const sumOf = (hardener: boolean): number =>
    left.reduce(
      (sum, quantity, demand) =>
        quantity > 0 && isHardener[demand] === hardener ? sum + quantity * perUnit[demand] : sum,
      0,
    );
  return sumOf(false) + Math.max(sumOf(true), toCure);
}

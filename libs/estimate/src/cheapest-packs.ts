import type { Pack } from '#lib/catalogue';
import { decimalFrom } from '#lib/money';

/** How many of one pack, and what one of them costs at that number. */
export interface PackChoice {
  readonly pack: Pack;
  readonly count: number;
  /** Exact decimal text: the price break that applies. */
  readonly price: string;
}

interface Best {
  cost: number;
  content: number;
  counts: readonly number[];
}

/** Prices are compared in ten-thousandths, exactly: more digits than any currency has. */
const COMPARED_DIGITS = 4;
const FULL = 1e-9;

/**
 * The cheapest set of packs of one material that covers a quantity; of equally cheap sets the one with the
 * least left over. Exhaustive with bounds, so the answer is optimal for this one material.
 *
 * Freight, minimum orders and matching across materials are the basket's affair.
 */
export function cheapestPacks(required: number, packs: readonly Pack[]): readonly PackChoice[] {
  if (required <= 0 || packs.length === 0) return [];
  const sorted = [...packs].sort((a, b) => leastPerUnit(a) - leastPerUnit(b));
  const best: Best = { cost: Number.POSITIVE_INFINITY, content: 0, counts: [] };
  search(sorted, { required, best, counts: [], cost: 0, content: 0 });
  return sorted.flatMap((pack, index) => {
    const count = best.counts[index] ?? 0;
    return count === 0 ? [] : [{ pack, count, price: breakFor(pack, count) }];
  });
}

interface State {
  readonly required: number;
  readonly best: Best;
  readonly counts: readonly number[];
  readonly cost: number;
  readonly content: number;
}

function search(packs: readonly Pack[], state: State): void {
  const { required, best, counts, cost, content } = state;
  const isCovered = content >= required * (1 - FULL);
  if (isCovered) {
    if (cost < best.cost || (cost === best.cost && content < best.content)) Object.assign(best, { cost, content, counts });
    return;
  }
  const pack = packs.at(counts.length);
  if (pack === undefined || cost + (required - content) * leastPerUnit(pack) > best.cost * (1 + FULL)) return;
  for (const count of countsToTry(pack, required - content)) {
    search(packs, {
      required, best, counts: [...counts, count],
      cost: cost + count * comparable(breakFor(pack, count)), content: content + count * pack.content.quantity,
    });
  }
}

/** From enough down to none, and the larger numbers at which a price break starts: more packs may cost less. */
function countsToTry({ content, prices, stock = Number.POSITIVE_INFINITY }: Pack, missing: number): readonly number[] {
  const enough = Math.ceil((missing / content.quantity) * (1 - FULL));
  const breaks = prices.map(({ fromPacks }) => fromPacks).filter((fromPacks) => fromPacks > enough);
  const counts = [...breaks, ...Array.from({ length: enough + 1 }, (_, index) => enough - index)];
  return counts.filter((count) => count <= stock);
}

/** Never more than the true price per unit, so that it bounds from below. */
const leastPerUnit = ({ prices, content }: Pack): number =>
  Math.min(...prices.map(({ price }) => comparable(price))) / content.quantity;

export const breakFor = ({ prices }: Pack, count: number): string =>
  (prices.filter(({ fromPacks }) => fromPacks <= Math.max(count, 1)).at(-1) ?? prices[0]).price;

function comparable(price: string): number {
  const read = decimalFrom(price);
  return read === undefined ? Number.POSITIVE_INFINITY : Number(read.scaled * 10n ** BigInt(COMPARED_DIGITS)) / Number(10n ** BigInt(read.places));
}

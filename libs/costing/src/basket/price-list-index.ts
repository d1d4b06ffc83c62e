import type { Pack, PriceList } from '#lib/catalogue';
import type { Problem } from '#lib/kernel';
import { moneyFrom, type Currency } from '#lib/money';
import { faultsOfPriceList } from './basket-faults.js';
import type { Tier } from './plan-parts.js';

/*
 * A published price list never changes, and every estimate of an edition is priced from it: what can be known of it is
 * found once and kept as long as the list itself.
 */

const faults = new WeakMap<PriceList, readonly Problem[]>();

/** `faultsOfPriceList`, looked for once in each list. */
export function knownFaultsOf(list: PriceList): readonly Problem[] {
  const found = faults.get(list) ?? faultsOfPriceList(list);
  faults.set(list, found);
  return found;
}

const byMaterial = new WeakMap<PriceList, ReadonlyMap<string, readonly Pack[]>>();

/** Packs of these materials, in the order of the list. */
export function packsOfMaterials(list: PriceList, materials: ReadonlySet<string>): readonly Pack[] {
  const known = byMaterial.get(list) ?? sorted(list);
  byMaterial.set(list, known);
  return [...materials].flatMap((material) => known.get(material) ?? []);
}

function sorted({ packs }: PriceList): ReadonlyMap<string, readonly Pack[]> {
  const sorted = new Map<string, Pack[]>();
  for (const pack of packs) {
    const own = sorted.get(pack.content.material);
    if (own === undefined) sorted.set(pack.content.material, [pack]);
    else own.push(pack);
  }
  return sorted;
}

const tiers = new WeakMap<Pack, readonly Tier[]>();

/** Prices of a pack in the currency of its list, which is the only one it is ever read in. */
export function tiersOf(pack: Pack, currency: Currency): readonly Tier[] {
  const found = tiers.get(pack) ?? readTiers(pack, currency);
  tiers.set(pack, found);
  return found;
}

const readTiers = ({ prices }: Pack, currency: Currency): readonly Tier[] =>
  prices.flatMap(({ fromPacks, price }, index) => {
    const read = moneyFrom(price, currency);
    const upTo = (prices[index + 1]?.fromPacks ?? Number.POSITIVE_INFINITY) - 1;
    return read === undefined ? [] : [{ from: fromPacks, upTo, price: read, minor: Number(read.minor) }];
  });

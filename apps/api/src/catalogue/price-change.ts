import type { Pack, PriceBreak, PriceList } from '#lib/catalogue';
import { Defect, nearest, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import {
  decimal,
  decimalFrom,
  decimalString,
  findCurrency,
  roundedDivision,
  type Currency,
  type Decimal,
} from '#lib/money';

const MOST_NAMED = 10;

/** A rise or fall of the prices of a list, by one percentage. */
export interface PriceChangeAsked {
  /** Signed decimal text: "4.5" is a rise, "-10" a fall. */
  readonly percent: string;
  /** The step that new prices are rounded to, such as "0.05"; the minor unit of the currency when absent. */
  readonly roundTo?: string;
  /** Only packs of these suppliers; of all when absent. */
  readonly suppliers?: readonly string[];
  /** Only packs that hold one of these materials; of all when absent. */
  readonly materials?: readonly string[];
  /** Only these packs; all when absent. */
  readonly skus?: readonly string[];
}

/** A pack whose prices are other ones now. */
export interface ChangedPack {
  /** Pack whose price changed. */
  readonly sku: string;
  /** Name of the pack. */
  readonly name: string;
  /** Prices of one pack at each quantity break, in the order of the breaks, in the currency of the list. */
  readonly before: readonly string[];
  /** The same breaks afterwards. */
  readonly after: readonly string[];
}

/** What a percentage did to a price list of a draft. */
export interface PriceChange {
  /** Code of the price list. */
  readonly priceList: string;
  /** Code of the draft. */
  readonly edition: string;
  /** Currency of the changed prices. */
  readonly currency: string;
  /** By how much they changed, as decimal text. */
  readonly percent: string;
  /** How many packs the choice met. */
  readonly chosenCount: number;
  /** Those of them whose prices differ now; a small percentage can be rounded away. */
  readonly changed: readonly ChangedPack[];
}

/**
 * New prices: price x (100 + percent) / 100, worked exactly and rounded once, half away from zero, to the step.
 * Fees and freight of the suppliers stay. Rounding keeps order, so price breaks that fall go on falling.
 *
 * @returns problems where the choice meets no pack, or a price would be rounded to nothing
 */
export function pricesChanged(list: PriceList, asked: PriceChangeAsked): Outcome<readonly Pack[]> {
  const isChosen = choiceOf(asked);
  const currency = currencyOf(list);
  const faults = [...stepFaults(asked, currency), ...unmetChoices(list, asked)];
  if (faults.length > 0) return refusal(...faults);
  const packs = list.packs.map((pack) =>
    isChosen(pack) ? { ...pack, prices: newPrices(pack, currency, asked) } : pack,
  );
  const lost = packs.filter((pack) => isChosen(pack) && pricesOf(pack).some(isNothing));
  if (lost.length > 0) return refusal(...lost.slice(0, MOST_NAMED).map(({ sku }) => nothingLeft(sku, asked)));
  return success(packs);
}

/** What differs between the packs before and after, by SKU. */
export function changedPacks(before: readonly Pack[], after: readonly Pack[]): readonly ChangedPack[] {
  const earlier = new Map(before.map((pack) => [pack.sku, pricesOf(pack)]));
  return after.flatMap((pack) => {
    const [then, now] = [earlier.get(pack.sku) ?? [], pricesOf(pack)];
    return then.join() === now.join() ? [] : [{ sku: pack.sku, name: pack.name, before: then, after: now }];
  });
}

export const choiceOf =
  ({ suppliers, materials, skus }: PriceChangeAsked) =>
  ({ supplier, content, sku }: Pack): boolean =>
    (suppliers?.includes(supplier) ?? true) &&
    (materials?.includes(content.material) ?? true) &&
    (skus?.includes(sku) ?? true);

const pricesOf = ({ prices }: Pack): readonly string[] => prices.map(({ price }) => price);

function newPrices(
  { prices }: Pack,
  { minorDigits }: Currency,
  { percent, roundTo }: PriceChangeAsked,
): readonly PriceBreak[] {
  const share = exactly(percent);
  const whole = 100n * 10n ** BigInt(share.places);
  const step = roundTo === undefined ? decimal(1n, minorDigits) : exactly(roundTo);
  return prices.map(({ fromPacks, price }) => {
    const old = exactly(price);
    const steps = roundedDivision(
      old.scaled * (whole + share.scaled) * 10n ** BigInt(step.places),
      10n ** BigInt(old.places) * whole * step.scaled,
      'half-away-from-zero',
    );
    return { fromPacks, price: decimalString(decimal(steps * step.scaled, step.places)) };
  });
}

const exactly = (text: string): Decimal => {
  const read = decimalFrom(text);
  if (read === undefined) throw new Defect(`${text} was checked as a decimal and is none`);
  return read;
};

const currencyOf = ({ code, currency }: PriceList): Currency => {
  const known = findCurrency(currency);
  if (known === undefined)
    throw new Defect(`The price list ${code} is in ${currency}, which is not a currency`);
  return known;
};

const isNothing = (price: string): boolean => exactly(price).scaled === 0n;

const nothingLeft = (sku: string, { percent }: PriceChangeAsked): Problem =>
  problem('not-supported', '/percent', {
    why: `${percent} % leaves no price for the pack ${sku} at this step; take a smaller fall or a finer step`,
  });

/** A price cannot be finer than the coins it is paid in. */
function stepFaults({ roundTo }: PriceChangeAsked, { minorDigits, code }: Currency): readonly Problem[] {
  if (roundTo === undefined) return [];
  const { scaled, places } = exactly(roundTo);
  if (scaled > 0n && places <= minorDigits) return [];
  return [
    problem('out-of-range', '/roundTo', {
      value: roundTo,
      range: `above 0, with at most ${minorDigits} decimals in ${code}`,
    }),
  ];
}

/** Names that no pack of the list goes by. */
function unmetChoices({ packs }: PriceList, asked: PriceChangeAsked): readonly Problem[] {
  const choices = [
    {
      field: 'suppliers',
      kind: 'supplier of this price list',
      asked: asked.suppliers,
      known: packs.map(({ supplier }) => supplier),
    },
    {
      field: 'materials',
      kind: 'material packed in this price list',
      asked: asked.materials,
      known: packs.map(({ content }) => content.material),
    },
    { field: 'skus', kind: 'SKU of this price list', asked: asked.skus, known: packs.map(({ sku }) => sku) },
  ];
  return choices.flatMap(({ field, kind, asked: names, known }) =>
    (names ?? []).flatMap((name, index) =>
      known.includes(name) ? [] : [unknownName(pointer('', field, index), name, { kind, known })],
    ),
  );
}

const unknownName = (
  at: string,
  name: string,
  { kind, known }: { readonly kind: string; readonly known: readonly string[] },
): Problem => {
  const distinct = [...new Set(known)];
  const near = nearest(name, distinct);
  return problem('unknown-code', at, {
    value: name,
    kind,
    known: (near.length > 0 ? near : distinct.slice(0, MOST_NAMED)).join(', '),
  });
};

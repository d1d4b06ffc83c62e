import { moneyFrom } from '#lib/money';
import type { BasketPlan, Good, Offer, Tier } from './basket-plan.js';
import { isHardenerOf } from './basket-plan.js';
import type { Column, LinearModel, Row, Term } from './linear-model.js';

/** How much of a demand may stay uncovered, in its unit; for orders that cannot be complete. */
export type Shortfalls = readonly number[];

/** What must differ from an order already found. */
export interface Other {
  /** Nothing from anybody else. */
  readonly onlySuppliers?: ReadonlySet<number>;
  /** Offers used, among those of some goods. */
  readonly offers?: { readonly among: readonly number[]; readonly used: ReadonlySet<number> };
}

export interface ModelChoice {
  readonly aim: 'least-cost' | 'least-shortfall';
  readonly shortfalls?: Shortfalls;
  readonly other?: Other;
}

export const names = {
  packs: (offer: number, tier: number): string => `n${offer}_${tier}`,
  inTier: (offer: number, tier: number): string => `t${offer}_${tier}`,
  isBought: (offer: number): string => `b${offer}`,
  cut: (offer: number): string => `c${offer}`,
  flow: (good: number, demand: number): string => `x${good}_${demand}`,
  short: (demand: number): string => `s${demand}`,
  order: (supplier: number): string => `u${supplier}`,
  freeDelivery: (supplier: number): string => `f${supplier}`,
  hazard: (supplier: number): string => `h${supplier}`,
  oversize: (supplier: number): string => `o${supplier}`,
} as const;

const whole = (name: string, upper: number, cost = 0): Column => ({
  name,
  cost,
  lower: 0,
  upper,
  isWhole: true,
});
const binary = (name: string, cost = 0): Column => whole(name, 1, cost);
const atLeast = (name: string, lower: number, terms: readonly Term[]): Row => ({
  name,
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});
const atMost = (name: string, upper: number, terms: readonly Term[]): Row => ({
  name,
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms,
});
const term = (column: string, factor: number): Term => ({ column, factor });

/**
 * The order as an integer programme.
 *
 * Whole packs n per offer and price tier; coverage of every demand, by flows where a good serves more than one demand
 * or stands in for another; hardener for all the resin bought; per supplier its minimum order, delivery with its free
 * limit, hazard surcharge (to the order or to the box) and oversize freight; cut fees once to a line of cut goods and
 * by the sheet where whole sheets are cut to travel. Costs are whole minor units; leftovers add less than half a minor
 * unit in all, so that they decide between orders that cost the same and nothing else.
 */
export function basketModel(plan: BasketPlan, choice: ModelChoice): LinearModel {
  const ties = tieBreakers(plan);
  const parts = [
    ...plan.offers.map((offer, index) => offerPart(plan, offer, { index, tie: ties[index] })),
    ...plan.suppliers.map((_, supplier) => supplierPart(plan, supplier, choice.other)),
    ...plan.goods.map((good, index) => flowPart(plan, good, index)),
    demandPart(plan, choice),
    matchPart(plan),
    otherPart(plan, choice.other),
  ];
  const columns = parts.flatMap((part) => part.columns);
  return {
    columns:
      choice.aim === 'least-cost'
        ? columns
        : columns.map((column) => ({ ...column, cost: shortCost(column) })),
    rows: parts.flatMap((part) => part.rows),
  };
}

interface Part {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

/** When the aim is to be as complete as possible, being without half of something counts the same whatever it is. */
const shortCost = ({ name, upper }: Column): number => (name.startsWith('s') ? 1000 / upper : 0);

/** A good needs flows when what it is used for is a choice, or has a price in trouble. */
export const needsFlow = ({ arcs }: Good): boolean =>
  arcs.length > 1 || arcs.some(({ penaltyMinor }) => penaltyMinor > 0);

const allPacks = (offer: Offer, index: number, factor: number): readonly Term[] =>
  offer.tiers.map((_, tier) => term(names.packs(index, tier), factor));

const paidMinor = ({ price }: Tier): number => Number(price.minor);

function offerPart(
  plan: BasketPlan,
  offer: Offer,
  { index, tie }: { readonly index: number; readonly tie: number },
): Part {
  const columns = offer.tiers.map((tier, t) =>
    whole(names.packs(index, t), tier.upTo, paidMinor(tier) + tie),
  );
  const parts = [tierPart(offer, index), cutPart(plan, offer, index), surchargePart(plan, offer, index)];
  const order = atMost(`order${index}`, 0, [
    ...allPacks(offer, index, 1),
    term(names.order(offer.supplier), -offer.mostPacks),
  ]);
  return {
    columns: [...columns, ...parts.flatMap((part) => part.columns)],
    rows: [order, ...parts.flatMap((part) => part.rows)],
  };
}

/** Only one tier of an offer holds, and its count decides which. */
function tierPart(offer: Offer, index: number): Part {
  if (offer.tiers.length < 2) return { columns: [], rows: [] };
  const columns = offer.tiers.map((_, t) => binary(names.inTier(index, t)));
  const rows = offer.tiers.flatMap((tier, t) => [
    atMost(`most${index}_${t}`, 0, [
      term(names.packs(index, t), 1),
      term(names.inTier(index, t), -tier.upTo),
    ]),
    atLeast(`least${index}_${t}`, 0, [
      term(names.packs(index, t), 1),
      term(names.inTier(index, t), -tier.from),
    ]),
  ]);
  return {
    columns,
    rows: [
      ...rows,
      atMost(
        `one${index}`,
        1,
        offer.tiers.map((_, t) => term(names.inTier(index, t), 1)),
      ),
    ],
  };
}

const isCutToTravel = ({ options }: BasketPlan, { pack }: Offer): boolean =>
  pack.oversize && options.mayCutSheets === true && pack.cutFee !== undefined;

function cutPart(plan: BasketPlan, offer: Offer, index: number): Part {
  if (offer.cutFee === undefined) return { columns: [], rows: [] };
  const fee = Number(offer.cutFee.minor);
  if (!offer.pack.oversize) {
    const bought = atMost(`cut${index}`, 0, [
      ...allPacks(offer, index, 1),
      term(names.isBought(index), -offer.mostPacks),
    ]);
    return { columns: [binary(names.isBought(index), fee)], rows: [bought] };
  }
  if (!isCutToTravel(plan, offer)) return { columns: [], rows: [] };
  const cut = atMost(`cut${index}`, 0, [term(names.cut(index), 1), ...allPacks(offer, index, -1)]);
  return { columns: [whole(names.cut(index), offer.mostPacks, fee)], rows: [cut] };
}

function surchargePart(plan: BasketPlan, offer: Offer, index: number): Part {
  if (plan.options.transport === 'collect') return { columns: [], rows: [] };
  const cut = isCutToTravel(plan, offer) ? [term(names.cut(index), -1)] : [];
  const oversize = atMost(`oversize${index}`, 0, [
    ...allPacks(offer, index, 1),
    ...cut,
    term(names.oversize(offer.supplier), -offer.mostPacks),
  ]);
  const hazard = atMost(`hazard${index}`, 0, [
    ...allPacks(offer, index, 1),
    term(names.hazard(offer.supplier), -offer.mostPacks),
  ]);
  const byBox = plan.options.hazardBoxKg !== undefined;
  return {
    columns: [],
    rows: [...(offer.pack.oversize ? [oversize] : []), ...(offer.pack.hazardous && !byBox ? [hazard] : [])],
  };
}

const offersFrom = (
  plan: BasketPlan,
  supplier: number,
): readonly { readonly offer: Offer; readonly index: number }[] =>
  plan.offers.map((offer, index) => ({ offer, index })).filter(({ offer }) => offer.supplier === supplier);

const minorOf = (plan: BasketPlan, text: string | undefined): number | undefined => {
  const read = text === undefined ? undefined : moneyFrom(text, plan.currency);
  return read === undefined ? undefined : Number(read.minor);
};

function supplierPart(plan: BasketPlan, supplier: number, other: Other | undefined): Part {
  const offers = offersFrom(plan, supplier);
  if (offers.length === 0) return { columns: [], rows: [] };
  const terms = plan.suppliers[supplier];
  const isCarried = plan.options.transport !== 'collect';
  const delivery = isCarried ? (minorOf(plan, terms.delivery) ?? 0) : 0;
  const goods = offers.flatMap(({ offer, index }) =>
    offer.tiers.map((tier, t) => term(names.packs(index, t), paidMinor(tier))),
  );
  const packs = offers.flatMap(({ offer, index }) => allPacks(offer, index, -1));
  const minimum = minorOf(plan, terms.minimumOrder) ?? 0;
  const used = atMost(`used${supplier}`, 0, [term(names.order(supplier), 1), ...packs]);
  const parts = [
    freeDeliveryPart(plan, supplier, { goods, delivery }),
    ...(isCarried ? [surchargesOf(plan, supplier, offers)] : []),
  ];
  return {
    columns: [
      whole(names.order(supplier), other?.onlySuppliers?.has(supplier) === false ? 0 : 1, delivery),
      ...parts.flatMap((part) => part.columns),
    ],
    rows: [
      used,
      ...(minimum > 0
        ? [
            atLeast(
              `minimum${supplier}`,
              0,
              scaledTerms([...goods, term(names.order(supplier), -minimum)], minimum),
            ),
          ]
        : []),
      ...parts.flatMap((part) => part.rows),
    ],
  };
}

/** Rows of money are divided by their limit, so that the solver's tolerance is a share of it. */
const scaledTerms = (terms: readonly Term[], by: number): readonly Term[] =>
  terms.map(({ column, factor }) => term(column, factor / by));

interface Delivered {
  readonly goods: readonly Term[];
  readonly delivery: number;
}

function freeDeliveryPart(plan: BasketPlan, supplier: number, { goods, delivery }: Delivered): Part {
  const limit = minorOf(plan, plan.suppliers[supplier].freeDeliveryFrom);
  if (limit === undefined || limit === 0 || delivery === 0) return { columns: [], rows: [] };
  const free = names.freeDelivery(supplier);
  return {
    columns: [binary(free, -delivery)],
    rows: [
      atLeast(`free${supplier}`, 0, scaledTerms([...goods, term(free, -limit)], limit)),
      atMost(`freeOrder${supplier}`, 0, [term(free, 1), term(names.order(supplier), -1)]),
    ],
  };
}

function surchargesOf(
  plan: BasketPlan,
  supplier: number,
  offers: readonly { readonly offer: Offer; readonly index: number }[],
): Part {
  const { hazardSurcharge, oversizeFreight } = plan.suppliers[supplier];
  const boxKg = plan.options.hazardBoxKg;
  const hazardCost = minorOf(plan, hazardSurcharge) ?? 0;
  const oversize = binary(names.oversize(supplier), minorOf(plan, oversizeFreight) ?? 0);
  if (boxKg === undefined)
    return { columns: [oversize, binary(names.hazard(supplier), hazardCost)], rows: [] };
  const hazardous = offers.filter(({ offer }) => offer.pack.hazardous);
  const mass = hazardous.flatMap(({ offer, index }) => allPacks(offer, index, offer.pack.massKg / boxKg));
  const boxes = hazardous.reduce((sum, { offer }) => sum + (offer.mostPacks * offer.pack.massKg) / boxKg, 0);
  return {
    columns: [oversize, whole(names.hazard(supplier), Math.ceil(boxes), hazardCost)],
    rows: [atMost(`boxes${supplier}`, 0, [...mass, term(names.hazard(supplier), -1)])],
  };
}

function flowPart(plan: BasketPlan, good: Good, index: number): Part {
  if (!needsFlow(good)) return { columns: [], rows: [] };
  const columns = good.arcs.map(({ demand, penaltyMinor }) => ({
    name: names.flow(index, demand),
    cost: penaltyMinor,
    lower: 0,
    upper: plan.demands[demand].toBuy,
    isWhole: false,
  }));
  const used = good.arcs.map(({ demand, factor }) => term(names.flow(index, demand), 1 / factor));
  return { columns, rows: [atMost(`flow${index}`, 0, [...used, ...boughtOf(plan, index, -1)])] };
}

/** Quantity bought of a good, in its own unit, times a factor. */
const boughtOf = (plan: BasketPlan, good: number, factor: number): readonly Term[] =>
  plan.offersOfGood[good].flatMap((index) =>
    allPacks(plan.offers[index], index, factor * plan.offers[index].pack.content.quantity),
  );

function demandPart(plan: BasketPlan, { shortfalls, aim }: ModelChoice): Part {
  const open = plan.demands.flatMap((demand, index) => (demand.toBuy > 0 ? [{ demand, index }] : []));
  const mayBeShort = (index: number): number =>
    aim === 'least-shortfall' ? plan.demands[index].toBuy : (shortfalls?.[index] ?? 0);
  return {
    columns: open.flatMap(({ index }) =>
      mayBeShort(index) > 0
        ? [{ name: names.short(index), cost: 0, lower: 0, upper: mayBeShort(index), isWhole: false }]
        : [],
    ),
    rows: open.map(({ demand, index }) =>
      atLeast(
        `demand${index}`,
        1,
        [
          ...plan.goodsForDemand[index].flatMap((good) => supplyTerms(plan, good, index)),
          ...(mayBeShort(index) > 0 ? [term(names.short(index), 1)] : []),
        ].map(({ column, factor }) => term(column, factor / demand.toBuy)),
      ),
    ),
  };
}

function supplyTerms(plan: BasketPlan, good: number, demand: number): readonly Term[] {
  if (needsFlow(plan.goods[good])) return [term(names.flow(good, demand), 1)];
  return plan.goods[good].arcs.flatMap(({ factor }) => boughtOf(plan, good, factor));
}

/** For each resin: what is bought of it, no more than its hardeners bought can cure. */
function matchPart(plan: BasketPlan): Part {
  const resins = [...new Set(plan.matches.map(({ resin }) => resin))];
  const goodsWhere = (test: (good: Good) => boolean): readonly number[] =>
    plan.goods.flatMap((good, index) => (test(good) ? [index] : []));
  const rows = resins.flatMap((resin, index) => {
    const bought = goodsWhere(
      ({ variant }) => variant.material === resin && variant.part === undefined,
    ).flatMap((good) => boughtOf(plan, good, -1));
    if (bought.length === 0) return [];
    const cured = plan.matches
      .filter((match) => match.resin === resin)
      .flatMap((match) =>
        goodsWhere(({ variant }) => isHardenerOf(variant, match)).flatMap((good) =>
          boughtOf(plan, good, 1 / match.massRatio),
        ),
      );
    return [atLeast(`match${index}`, 0, [...cured, ...bought])];
  });
  return { columns: [], rows };
}

function otherPart(plan: BasketPlan, other: Other | undefined): Part {
  const columns: Column[] = [];
  const rows: Row[] = [];
  if (other?.offers !== undefined) {
    const { among, used } = other.offers;
    for (const index of among) {
      const offer = plan.offers[index];
      const flag = `d${index}`;
      columns.push(binary(flag));
      rows.push(
        atMost(`differsMost${index}`, 0, [...allPacks(offer, index, 1), term(flag, -offer.mostPacks)]),
      );
      rows.push(atLeast(`differsLeast${index}`, 0, [...allPacks(offer, index, 1), term(flag, -1)]));
    }
    rows.push(
      atLeast(
        'differs',
        1 - used.size,
        among.map((index) => term(`d${index}`, used.has(index) ? -1 : 1)),
      ),
    );
  }
  return { columns, rows };
}

/** Worth of what each pack holds at the least price of its good, as a share of all that could be bought: under half in all. */
function tieBreakers(plan: BasketPlan): readonly number[] {
  const perUnit = ({ tiers, pack }: Offer): number =>
    Math.min(...tiers.map(paidMinor)) / pack.content.quantity;
  const least = plan.offersOfGood.map((places) =>
    Math.min(...places.map((place) => perUnit(plan.offers[place]))),
  );
  const worths = plan.offers.map(({ good, pack }) => least[good] * pack.content.quantity);
  const all = plan.offers.reduce((sum, { mostPacks }, index) => sum + mostPacks * worths[index], 0);
  return worths.map((worth) => (all === 0 ? 0 : (0.5 * worth) / all));
}

import type { Pack, PriceList } from '#lib/catalogue';
import { pointer, problem, refusal, success, type Outcome, type Problem, laidOver } from '#lib/kernel';
import { decimalText, findCurrency } from '#lib/money';
import { derived, type Figure } from '#lib/provenance';
import { boughtAs, type Need } from '#lib/takeoff';
import { fraction } from '#lib/units';
import { planBasket } from './basket/basket-plan.js';
import type { BasketPlan } from './basket/plan-parts.js';
import type { ResinMatch } from './basket/basket-request.js';
import type { BasketOptions } from './basket/questions.js';
import { cheapestPurchase } from './basket/cheapest-purchase.js';
import { knownFaultsOf } from './basket/price-list-index.js';
import { ordersOf } from './basket/read-order.js';
import type { SupplierOrder } from './basket/basket.js';
import type { CauseClass, LineRequest, Section } from './cost-line.js';
import { billedOf, type GoodsBilling, type LeftOver } from './goods-billing.js';

export interface PackLinesRequest {
  readonly needs: readonly Need[];
  readonly priceList: PriceList;
  readonly matches?: readonly ResinMatch[];
  readonly options?: BasketOptions;
  readonly taxGroup: string;
  readonly causeClass: CauseClass;
  /** Section of a need; materials when absent, by the purpose of consumables and safety items otherwise. */
  readonly sections?: Readonly<Record<string, Section>>;
  readonly billing: GoodsBilling;
  /** What becomes of the rest of a material, where goods are charged as used. */
  readonly leftOver: (material: string) => LeftOver;
}

export interface PackLines {
  readonly lines: readonly LineRequest[];
  /** The same needs with what was bought for them. */
  readonly needs: readonly Need[];
  readonly orders: readonly SupplierOrder[];
  /** Needs that nothing on the list covers: they have no line and the estimate must say so. */
  readonly missing: readonly string[];
}

/**
 * Priced lines for needs, without a solver: for every set of suppliers the cheapest packs of each need, then the set
 * whose goods, freight and surcharges together cost least. The order itself may still come out cheaper where a minimum
 * order or free delivery makes it worth buying one need's packs dearer; the basket finds that.
 */
export function packLines(request: PackLinesRequest): Outcome<PackLines> {
  const currency = findCurrency(request.priceList.currency);
  const problems = [...knownFaultsOf(request.priceList), ...repeatedNeeds(request.needs)];
  if (problems.length > 0 || currency === undefined) return refusal(...problems);
  const plan = planBasket(
    {
      currency: currency.code,
      priceList: request.priceList,
      matches: request.matches ?? [],
      options: request.options ?? {},
      needs: request.needs.map((need) => laidOver(need, { requiredQuantity: need.required.value })),
    },
    currency,
  );
  const purchase = cheapestPurchase(plan);
  const orders = ordersOf(plan, purchase);
  const bought = request.needs.map((need) => ({ need, packs: packsFor(plan, purchase.packs, need) }));
  const lines = bought.flatMap(({ need, packs }) =>
    packs.length === 0 ? [] : [needLine(request, need, packs)],
  );
  return success({
    lines: [...lines, ...freightLines(request, orders, billedShare(lines))],
    needs: bought.map(({ need, packs }) =>
      packs.length === 0 ? need : boughtAs(need, purchaseFigure(need, packs)),
    ),
    orders,
    missing: bought
      .filter(({ need, packs }) => packs.length === 0 && need.required.value > 0)
      .map(({ need }) => need.id),
  });
}

const repeatedNeeds = (needs: readonly Need[]): readonly Problem[] => {
  const seen = new Set<string>();
  return needs.flatMap(({ id }, index) => {
    if (seen.has(id)) return [problem('duplicate', pointer('/needs', index, 'id'), { value: id })];
    seen.add(id);
    return [];
  });
};

interface BoughtPack {
  readonly pack: Pack;
  readonly count: number;
  readonly price: string;
  readonly quantity: number;
}

/** Packs of a demand stand on the line of its first need; its other needs are covered by them. */
function packsFor(plan: BasketPlan, packs: readonly number[], need: Need): readonly BoughtPack[] {
  const demand = plan.demands.findIndex(({ needs }) => needs[0].id === need.id);
  if (demand < 0) return [];
  return plan.goodsForDemand[demand].flatMap((good) => {
    const factor = plan.goods[good].arcs.find((arc) => arc.demand === demand)?.factor ?? 0;
    const isFirstUse = Math.min(...plan.goods[good].arcs.map((arc) => arc.demand)) === demand;
    return isFirstUse
      ? plan.offersOfGood[good]
          .filter((offer) => packs[offer] > 0)
          .map((offer) => boughtPack(plan, { offer, count: packs[offer], factor }))
      : [];
  });
}

function boughtPack(
  { offers }: BasketPlan,
  { offer, count, factor }: { readonly offer: number; readonly count: number; readonly factor: number },
): BoughtPack {
  const { pack, tiers } = offers[offer];
  const tier = tiers.find(({ from, upTo }) => from <= count && count <= upTo) ?? tiers[0];
  return { pack, count, price: decimalText(tier.price), quantity: pack.content.quantity * factor };
}

/** Of the money for the packs that part which this job is charged: freight goes with it. */
function billedShare(lines: readonly LineRequest[]): number {
  const worth = lines.map(({ packs = [] }) =>
    packs.reduce((sum, { count, price }) => sum + count * Number(price), 0),
  );
  const charged = lines.map(({ billed, purchaseQuantity }, index) => {
    const bought = typeof purchaseQuantity === 'number' ? purchaseQuantity : (purchaseQuantity?.value ?? 0);
    return billed === undefined || bought === 0
      ? worth[index]
      : (worth[index] * billed.quantity.value) / bought;
  });
  const sum = (amounts: readonly number[]): number => amounts.reduce((total, amount) => total + amount, 0);
  return sum(worth) === 0 ? 1 : sum(charged) / sum(worth);
}

const purchaseFigure = (need: Need, packs: readonly BoughtPack[]): Figure =>
  derived(
    need.unit,
    fraction(packs.reduce((sum, { count, quantity }) => sum + count * quantity, 0)),
    `${need.title}, in whole packs`,
    {
      formula: 'costing.cheapest-packs',
      title: 'Cheapest whole packs that cover what is required',
      symbol: 'B',
      cite: { source: 'ARITHMETIC' },
      inputs: { required: need.required },
    },
  );

const sectionByPurpose: Readonly<Record<string, Section>> = {
  consumable: 'consumables',
  safety: 'safety',
  fastener: 'materials',
};

/** Whole packs need no word of how they are charged. */
function billedFor(
  { billing, leftOver }: PackLinesRequest,
  need: Need,
  packs: readonly BoughtPack[],
): Pick<LineRequest, 'billed'> {
  if (billing === 'as-bought') return {};
  const lives = packs.flatMap(({ pack }) => pack.shelfLifeMonths ?? []);
  const bought = {
    quantity: packs.reduce((sum, { count, quantity }) => sum + count * quantity, 0),
    ...(lives.length === 0 ? {} : { shelfLifeMonths: Math.min(...lives) }),
  };
  return { billed: billedOf(need, bought, leftOver(need.material)) };
}

function needLine(request: PackLinesRequest, need: Need, packs: readonly BoughtPack[]): LineRequest {
  const { sections, taxGroup, causeClass, priceList } = request;
  const likely = need.range.likely;
  return {
    code: `material-${need.id}`,
    section: sections?.[need.id] ?? sectionByPurpose[need.purpose] ?? 'materials',
    title: need.title,
    stage: need.purpose,
    partOrLabour: 'part',
    causeClass,
    netQuantity: need.net,
    wasteFraction: need.wasteFraction,
    purchaseQuantity: purchaseFigure(need, packs),
    ...billedFor(request, need, packs),
    unit: need.unit,
    taxGroup,
    rateIncludesTax: priceList.pricesIncludeTax,
    rateCite: {
      source: 'PRICE-DATA',
      note: `price list ${priceList.code}${priceList.invented ? ', invented' : ''}`,
    },
    spread: {
      low: likely === 0 ? 1 : Math.min(1, need.range.low / likely),
      high: likely === 0 ? 1 : Math.max(1, need.range.high / likely),
    },
    packs: packs.map(({ pack, count, price }) => ({
      sku: pack.sku,
      name: pack.name,
      supplier: pack.supplier,
      count,
      price,
    })),
  };
}

const charges = [
  { key: 'delivery', title: 'Delivery' },
  { key: 'hazardSurcharge', title: 'Surcharge for hazardous goods' },
  { key: 'oversizeFreight', title: 'Oversize freight' },
  { key: 'cutFees', title: 'Cutting' },
] as const;

/** An order is shared by the jobs that use its packs up. */
const freightShare = (share: number): Figure =>
  derived<string>('each', fraction(share), 'share of the order that this job is charged', {
    formula: 'costing.billed-freight',
    title: 'Goods charged over goods bought',
    symbol: 's',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

const freightLines = (
  { taxGroup, causeClass, priceList }: PackLinesRequest,
  orders: readonly SupplierOrder[],
  share: number,
): readonly LineRequest[] =>
  orders.flatMap((order) =>
    charges.flatMap(({ key, title }) =>
      Number(order[key].amount) === 0
        ? []
        : [
            {
              code: `freight-${order.supplier}-${key}`,
              section: 'freight' as const,
              title: `${title}, ${order.name}`,
              partOrLabour: 'part' as const,
              causeClass,
              netQuantity: freightShare(share),
              unit: 'each',
              unitRate: order[key].amount,
              taxGroup,
              rateIncludesTax: priceList.pricesIncludeTax,
              rateCite: { source: 'PRICE-DATA', note: `price list ${priceList.code}` },
            },
          ],
    ),
  );

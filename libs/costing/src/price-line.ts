import { saidOr } from '#lib/asking';
import { lineQuestions } from './questions.js';
import {
  decimal,
  decimalFromNumber,
  decimalString,
  exactDecimal,
  moneyJson,
  powerOfTen,
  priceOf,
  rate,
  roundedDivision,
  subtractMoney,
  type Currency,
  type Decimal,
  type Money,
  type Rounding,
} from '#lib/money';
import { assumed, derived, entered, fromCatalogue, type Cite, type Figure } from '#lib/provenance';
import { pointer } from '#lib/kernel';
import { figureOf, requiredFigure } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { CostLine, LineDepreciation, LinePack, LineQuantity, LineRequest } from './cost-line.js';
import { majorUnits, netOfInclusivePrice, percentOf, timesFactor } from './exact.js';

/** Everything a line needs besides itself; its texts have been read and found right. */
export interface PricingTerms {
  readonly currency: Currency;
  readonly rounding: Rounding;
  readonly taxPercent: Decimal;
  readonly unitRate: Decimal;
  readonly depreciationPercent?: Decimal;
  /** JSON Pointer of the line. */
  readonly at: string;
}

/** A line with its exact amount, which the sums are made of. */
export interface PricedLine {
  readonly line: CostLine;
  readonly amount: Money;
  readonly depreciation: Money;
}

/** Decimals a quantity is fixed to before it is priced: hundredths of an hour, thousandths of everything else. */
export const pricingDecimals = (unit: string): number => (unit === 'h' ? 2 : 3);

export function priceLine(request: LineRequest, terms: PricingTerms): PricedLine {
  const { currency, rounding } = terms;
  const figures = quantityFigures(request, terms.at);
  const places = pricingDecimals(request.unit);
  const charged = decimalFromNumber(figures.charged.value, places, rounding);
  const packsPrice = packsPriceOf(request);
  const of = (quantity: Decimal, unitRate: Decimal): Money =>
    saidOr(lineQuestions.rateIncludesTax, request.rateIncludesTax)
      ? netOfInclusivePrice(quantity, unitRate, terms.taxPercent, { currency, rounding })
      : priceOf(quantity, rate(unitRate, currency, request.unit), rounding);
  const bought = packsPrice === undefined ? undefined : of(once, packsPrice);
  const amount = packsPrice === undefined ? of(charged, terms.unitRate) : of(shareOf(figures), packsPrice);
  const depreciation = depreciationOf(request, amount, terms);
  return {
    amount,
    depreciation: depreciation?.amount ?? { minor: 0n, currency },
    line: {
      // Its first field is written out: after a leading spread every further one would give each line a shape of its own.
      code: request.code,
      ...described(request),
      quantity: quantityOf(figures, decimalString(charged)),
      unitRate: {
        amount: decimalString(
          packsPrice === undefined
            ? terms.unitRate
            : averageRate(packsPrice, decimalFromNumber(boughtOf(figures), places, rounding)),
        ),
        currency: currency.code,
      },
      isAverageRate: packsPrice !== undefined,
      packs: request.packs ?? [],
      ...(bought === undefined
        ? {}
        : { goods: { billedBy: request.billed?.by ?? 'whole-packs', bought: moneyJson(bought) } }),
      amount: moneyJson(amount),
      range: rangeOf(request, amount, rounding),
      ...(depreciation === undefined ? {} : { depreciation: depreciation.shown }),
      get why() {
        return amountFigure(request, { amount, charged, quantity: figures.charged }, terms);
      },
    },
  };
}

const once = decimal(1n, 0);

/** Packs are charged by millionths of what they hold. */
const SHARE_PLACES = 6;

const boughtOf = ({ purchase, charged }: QuantityFigures): number => (purchase ?? charged).value;

function shareOf(figures: QuantityFigures): Decimal {
  const bought = boughtOf(figures);
  const share = bought === 0 ? 1 : figures.charged.value / bought;
  return share === 1 ? once : decimalFromNumber(share, SHARE_PLACES, 'half-away-from-zero');
}

/** What the packs of a line cost together, exactly; undefined where a rate is used. */
function packsPriceOf({ packs }: LineRequest): Decimal | undefined {
  if (packs === undefined) return undefined;
  const places = 12;
  const scaled = packs.reduce((sum, { count, price }) => {
    const read = exactDecimal(price);
    return sum + BigInt(count) * read.scaled * powerOfTen(places - read.places);
  }, 0n);
  return decimal(scaled, places);
}

/** For display: price over content to four decimals. */
const averageRate = (price: Decimal, charged: Decimal): Decimal =>
  charged.scaled === 0n
    ? decimal(0n, 4)
    : decimal(
        roundedDivision(
          price.scaled * powerOfTen(charged.places + 4),
          charged.scaled * powerOfTen(price.places),
          'half-away-from-zero',
        ),
        4,
      );

type Described =
  | 'section'
  | 'title'
  | 'stage'
  | 'partOrLabour'
  | 'causeClass'
  | 'scope'
  | 'unit'
  | 'rateIncludesTax'
  | 'taxGroup'
  | 'spread'
  | 'atExtents'
  | 'note';

const described = (request: LineRequest): Pick<CostLine, Described> => ({
  section: request.section,
  title: request.title,
  ...(request.stage === undefined ? {} : { stage: request.stage }),
  partOrLabour: request.partOrLabour,
  causeClass: request.causeClass,
  scope: saidOr(lineQuestions.scope, request.scope),
  unit: request.unit,
  rateIncludesTax: saidOr(lineQuestions.rateIncludesTax, request.rateIncludesTax),
  taxGroup: request.taxGroup,
  spread: request.spread ?? { low: 1, high: 1 },
  atExtents: request.atExtents ?? [],
  ...(request.note === undefined ? {} : { note: request.note }),
});

interface QuantityFigures {
  readonly net: Figure;
  readonly required: Figure;
  readonly purchase?: Figure;
  readonly charged: Figure;
}

function quantityFigures(request: LineRequest, at: string): QuantityFigures {
  const net = figureOf(
    request.netQuantity,
    request.unit,
    `${request.title}, net`,
    pointer(at, 'netQuantity'),
  );
  const required =
    request.wasteFraction === undefined
      ? net
      : requiredFigure(
          net,
          figureOf(request.wasteFraction, '1', 'waste fraction', pointer(at, 'wasteFraction')),
        );
  if (request.purchaseQuantity === undefined) return { net, required, charged: required };
  const bought = figureOf(
    request.purchaseQuantity,
    request.unit,
    `${request.title}, bought`,
    pointer(at, 'purchaseQuantity'),
  );
  return { net, required, purchase: bought, charged: request.billed?.quantity ?? bought };
}

const quantityOf = ({ net, required, purchase }: QuantityFigures, charged: string): LineQuantity => ({
  net: net.value,
  waste: required.value - net.value,
  required: required.value,
  ...(purchase === undefined ? {} : { purchase: purchase.value }),
  charged,
});

function rangeOf({ spread }: LineRequest, amount: Money, rounding: Rounding): CostLine['range'] {
  const at = (factor: number): Money => timesFactor(amount, factor, rounding);
  return {
    low: moneyJson(at(spread?.low ?? 1)),
    likely: moneyJson(amount),
    high: moneyJson(at(spread?.high ?? 1)),
  };
}

function depreciationOf(
  { depreciation }: LineRequest,
  amount: Money,
  { depreciationPercent, rounding }: PricingTerms,
): { readonly amount: Money; readonly shown: LineDepreciation } | undefined {
  if (depreciation === undefined || depreciationPercent === undefined) return undefined;
  const worn = percentOf(amount, depreciationPercent, rounding);
  return {
    amount: worn,
    shown: {
      ageYears: depreciation.ageYears,
      percent: decimalString(depreciationPercent),
      amount: moneyJson(worn),
      remaining: moneyJson(subtractMoney(amount, worn)),
    },
  };
}

const pricingRule: Cite = {
  source: 'ARITHMETIC',
  note: 'quantity fixed once, multiplied exactly, rounded once to the minor unit',
};

interface Priced {
  readonly amount: Money;
  readonly charged: Decimal;
  readonly quantity: Figure;
}

/** The amount as a figure: the exact text stands on the line, this value is for reading and for graphs. */
function amountFigure(
  request: LineRequest,
  { amount, charged, quantity }: Priced,
  terms: PricingTerms,
): Figure {
  const fixed = derived(
    request.unit,
    fraction(Number(decimalString(charged))),
    'quantity at pricing precision',
    {
      formula: 'costing.pricing-quantity',
      title: `Quantity fixed to ${charged.places} decimals, ${terms.rounding}`,
      symbol: 'q',
      cite: pricingRule,
      inputs: { quantity },
    },
  );
  const inputs = { quantity: fixed, ...priceInputs(request, terms), ...taxInput(request, terms) };
  return derived<string>(
    amount.currency.code,
    fraction(majorUnits(amount)),
    `${request.title}, amount without tax`,
    {
      formula: 'costing.line-amount',
      title: `Quantity times rate, rounded once, ${terms.rounding}`,
      symbol: 'A',
      cite: pricingRule,
      inputs,
    },
  );
}

function priceInputs(request: LineRequest, terms: PricingTerms): Readonly<Record<string, Figure>> {
  if (request.packs === undefined) return { unitRate: rateFigure(request, terms) };
  return Object.fromEntries(request.packs.map((pack) => [pack.sku, packFigure(pack, request, terms)]));
}

const packFigure = (
  { sku, name, count, price }: LinePack,
  { rateCite }: LineRequest,
  { currency }: PricingTerms,
): Figure =>
  derived<string>(currency.code, fraction(count * Number(price)), `${count} x ${name}`, {
    formula: 'costing.packs',
    title: 'Packs times price of a pack',
    symbol: 'P',
    cite: pricingRule,
    inputs: {
      price: fromCatalogue<string>(currency.code, fraction(Number(price)), 'price of a pack', {
        item: sku,
        field: 'price',
        cite: rateCite ?? { source: 'PRICE-DATA' },
      }),
    },
  });

function rateFigure({ unit, unitRate, rateCite, code }: LineRequest, { currency, at }: PricingTerms): Figure {
  const perUnit: string = `${currency.code}/${unit}`;
  const value = fraction(Number(unitRate ?? '0'));
  return rateCite === undefined
    ? entered(perUnit, value, 'unit rate', pointer(at, 'unitRate'))
    : fromCatalogue(perUnit, value, 'unit rate', { item: code, field: 'unitRate', cite: rateCite });
}

const taxInput = (
  { rateIncludesTax, taxGroup }: LineRequest,
  { taxPercent, at }: PricingTerms,
): Readonly<Record<string, Figure>> =>
  saidOr(lineQuestions.rateIncludesTax, rateIncludesTax)
    ? {
        taxInRate: assumed<string>(
          '%',
          fraction(Number(decimalString(taxPercent))),
          'tax taken out of the rate',
          {
            at: pointer(at, 'taxGroup'),
            because: `the rate includes the tax of group ${taxGroup}`,
            cite: { source: 'EN-16931-1', clause: 'BT-146, item net price' },
          },
        ),
      }
    : {};

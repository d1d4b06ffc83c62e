import {
  decimalFromNumber, decimalString, decimalText, moneyJson, priceOf, rate, subtractMoney, type Currency, type Decimal, type Money,
  type Rounding,
} from '#lib/money';
import { assumed, derived, entered, fromCatalogue, type Cite, type Figure } from '#lib/provenance';
import { pointer } from '#lib/kernel';
import { figureOf, requiredFigure } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { CostLine, LineDepreciation, LineQuantity, LineRequest } from './cost-line.js';
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
  const charged = decimalFromNumber(figures.charged.value, pricingDecimals(request.unit), rounding);
  const amount = request.rateIncludesTax === true
    ? netOfInclusivePrice(charged, terms.unitRate, terms.taxPercent, { currency, rounding })
    : priceOf(charged, rate(terms.unitRate, currency, request.unit), rounding);
  const depreciation = depreciationOf(request, amount, terms);
  return {
    amount, depreciation: depreciation?.amount ?? { minor: 0n, currency },
    line: {
      ...described(request),
      quantity: quantityOf(figures, decimalString(charged)),
      unitRate: { amount: decimalString(terms.unitRate), currency: currency.code },
      amount: moneyJson(amount),
      range: rangeOf(request, amount, rounding),
      ...(depreciation === undefined ? {} : { depreciation: depreciation.shown }),
      why: amountFigure(request, { amount, charged, quantity: figures.charged }, terms),
    },
  };
}

type Described = 'code' | 'section' | 'title' | 'stage' | 'partOrLabour' | 'causeClass' | 'scope' | 'unit' | 'rateIncludesTax'
  | 'taxGroup' | 'spread' | 'extentExponent' | 'note';

const described = (request: LineRequest): Pick<CostLine, Described> => ({
  code: request.code, section: request.section, title: request.title,
  ...(request.stage === undefined ? {} : { stage: request.stage }),
  partOrLabour: request.partOrLabour, causeClass: request.causeClass, scope: request.scope ?? 'in', unit: request.unit,
  rateIncludesTax: request.rateIncludesTax ?? false, taxGroup: request.taxGroup,
  spread: request.spread ?? { low: 1, high: 1 }, extentExponent: request.extentExponent ?? 0,
  ...(request.note === undefined ? {} : { note: request.note }),
});

interface QuantityFigures {
  readonly net: Figure;
  readonly required: Figure;
  readonly purchase?: Figure;
  readonly charged: Figure;
}

function quantityFigures(request: LineRequest, at: string): QuantityFigures {
  const net = figureOf(request.netQuantity, request.unit, `${request.title}, net`, pointer(at, 'netQuantity'));
  const required = request.wasteFraction === undefined ? net
    : requiredFigure(net, figureOf(request.wasteFraction, '1', 'waste fraction', pointer(at, 'wasteFraction')));
  if (request.purchaseQuantity === undefined) return { net, required, charged: required };
  const bought = figureOf(request.purchaseQuantity, request.unit, `${request.title}, bought`, pointer(at, 'purchaseQuantity'));
  return { net, required, purchase: bought, charged: bought };
}

const quantityOf = ({ net, required, purchase }: QuantityFigures, charged: string): LineQuantity => ({
  net: net.value, waste: required.value - net.value, required: required.value,
  ...(purchase === undefined ? {} : { purchase: purchase.value }), charged,
});

function rangeOf({ spread }: LineRequest, amount: Money, rounding: Rounding): CostLine['range'] {
  const at = (factor: number): Money => timesFactor(amount, factor, rounding);
  return { low: moneyJson(at(spread?.low ?? 1)), likely: moneyJson(amount), high: moneyJson(at(spread?.high ?? 1)) };
}

function depreciationOf(
  { depreciation }: LineRequest, amount: Money, { depreciationPercent, rounding }: PricingTerms,
): { readonly amount: Money; readonly shown: LineDepreciation } | undefined {
  if (depreciation === undefined || depreciationPercent === undefined) return undefined;
  const worn = percentOf(amount, depreciationPercent, rounding);
  return {
    amount: worn,
    shown: {
      ageYears: depreciation.ageYears, percent: decimalString(depreciationPercent), amount: moneyJson(worn),
      remaining: moneyJson(subtractMoney(amount, worn)),
    },
  };
}

const pricingRule: Cite = { source: 'ARITHMETIC', note: 'quantity fixed once, multiplied exactly, rounded once to the minor unit' };

interface Priced {
  readonly amount: Money;
  readonly charged: Decimal;
  readonly quantity: Figure;
}

/** The amount as a figure: the exact text stands on the line, this value is for reading and for graphs. */
function amountFigure(request: LineRequest, { amount, charged, quantity }: Priced, terms: PricingTerms): Figure {
  const fixed = derived(request.unit, fraction(Number(decimalString(charged))), 'quantity at pricing precision', {
    formula: 'costing.pricing-quantity', title: `Quantity fixed to ${charged.places} decimals, ${terms.rounding}`, symbol: 'q',
    cite: pricingRule, inputs: { quantity },
  });
  const inputs = { quantity: fixed, unitRate: rateFigure(request, terms), ...taxInput(request, terms) };
  return derived<string>(amount.currency.code, fraction(majorUnits(amount)), `${request.title}, amount without tax`, {
    formula: 'costing.line-amount', title: `Quantity times rate, rounded once, ${terms.rounding}`, symbol: 'A', cite: pricingRule, inputs,
  });
}

function rateFigure({ unit, unitRate, rateCite, code }: LineRequest, { currency, at }: PricingTerms): Figure {
  const perUnit: string = `${currency.code}/${unit}`;
  const value = fraction(Number(unitRate));
  return rateCite === undefined
    ? entered(perUnit, value, 'unit rate', pointer(at, 'unitRate'))
    : fromCatalogue(perUnit, value, 'unit rate', { item: code, field: 'unitRate', cite: rateCite });
}

const taxInput = ({ rateIncludesTax, taxGroup }: LineRequest, { taxPercent, at }: PricingTerms): Readonly<Record<string, Figure>> =>
  rateIncludesTax === true
    ? { taxInRate: assumed<string>('%', fraction(Number(decimalString(taxPercent))), 'tax taken out of the rate', {
      at: pointer(at, 'taxGroup'), because: `the rate includes the tax of group ${taxGroup}`, cite: { source: 'EN-16931-1', clause: 'BT-146, item net price' },
    }) }
    : {};

export const exactAmountText = (amount: Money): string => decimalText(amount);

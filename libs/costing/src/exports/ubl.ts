import { create } from 'xmlbuilder2';
import { findCurrency, moneyFrom, moneyJson, noMoney, sumMoney, type Currency, type Money, type MoneyJson } from '#lib/money';
import { Defect } from '#lib/kernel';
import type { BasketLine, BasketOrder, SupplierOrder } from '../basket/basket.js';
import type { CostLine } from '../cost-line.js';
import type { CostRollUp } from '../roll-up.js';
import { unitCodeOf } from './unit-codes.js';

/** Who buys or sells, as far as a document must say. */
export interface Party {
  readonly name: string;
  readonly id?: string;
}

export interface DocumentHead {
  readonly id: string;
  /** ISO 8601 date. */
  readonly issueDate: string;
  readonly buyer: Party;
  readonly note?: string;
}

export interface OrderDocument {
  readonly supplier: string;
  readonly xml: string;
}

const components = {
  'xmlns:cac': 'urn:oasis:names:specification:ubl:schema:xsd:CommonAggregateComponents-2',
  'xmlns:cbc': 'urn:oasis:names:specification:ubl:schema:xsd:CommonBasicComponents-2',
} as const;

type Content = Readonly<Record<string, unknown>>;

/** One UBL 2.1 Order for each supplier of a basket: an Order has one seller. */
export const ublOrders = (basket: BasketOrder, head: DocumentHead): readonly OrderDocument[] =>
  basket.orders.map((order) => ({
    supplier: order.supplier,
    xml: document('Order', orderContent(order, basket.lines.filter(({ supplier }) => supplier === order.supplier), head)),
  }));

const document = (root: 'Order' | 'Quotation', content: Content): string =>
  create({ version: '1.0', encoding: 'UTF-8' }, {
    [root]: { '@xmlns': `urn:oasis:names:specification:ubl:schema:xsd:${root}-2`, ...attributes(components), ...content },
  }).end({ prettyPrint: true });

const attributes = (pairs: Readonly<Record<string, string>>): Content =>
  Object.fromEntries(Object.entries(pairs).map(([name, value]) => [`@${name}`, value]));

/** XML 1.0 has no place for control characters; they are left out. */
const clean = (text: string): string =>
  [...text].filter((character) => /[\t\n\r\u0020-\ud7ff\ue000-\ufffd]/.test(character) || (character.codePointAt(0) ?? 0) > 0xffff).join('');

const amountOf = ({ amount, currency }: MoneyJson): Content => ({ '@currencyID': currency, '#': amount });
const quantityOf = (quantity: string, unit: string): Content => ({ '@unitCode': unitCodeOf(unit).rec20, '#': quantity });

const partyOf = ({ name, id }: Party): Content => ({
  'cac:Party': {
    ...(id === undefined ? {} : { 'cac:PartyIdentification': { 'cbc:ID': clean(id) } }),
    'cac:PartyName': { 'cbc:Name': clean(name) },
  },
});

function orderContent(order: SupplierOrder, lines: readonly BasketLine[], { id, issueDate, buyer, note }: DocumentHead): Content {
  const currency = currencyOf(order.total);
  const charges = [
    charge('Delivery', order.delivery), charge('Cutting', order.cutFees),
    charge('Surcharge for hazardous goods', order.hazardSurcharge), charge('Oversize freight', order.oversizeFreight),
  ].flat();
  const chargeTotal = sumMoney([order.delivery, order.cutFees, order.hazardSurcharge, order.oversizeFreight].map((one) => exact(one, currency)), currency);
  return {
    'cbc:UBLVersionID': '2.1', 'cbc:ID': clean(`${id}-${order.supplier}`), 'cbc:IssueDate': issueDate,
    ...(note === undefined ? {} : { 'cbc:Note': clean(note) }),
    'cbc:DocumentCurrencyCode': currency.code, 'cbc:LineCountNumeric': String(lines.length),
    'cac:BuyerCustomerParty': partyOf(buyer), 'cac:SellerSupplierParty': partyOf({ name: order.name, id: order.supplier }),
    ...(charges.length === 0 ? {} : { 'cac:AllowanceCharge': charges }),
    'cac:AnticipatedMonetaryTotal': {
      'cbc:LineExtensionAmount': amountOf(order.goods), 'cbc:ChargeTotalAmount': amountOf(moneyJson(chargeTotal)), 'cbc:PayableAmount': amountOf(order.total),
    },
    'cac:OrderLine': lines.map((line, index) => ({ 'cac:LineItem': orderItem(line, index + 1) })),
  };
}

const currencyOf = ({ currency }: MoneyJson): Currency => {
  const found = findCurrency(currency);
  if (found === undefined) throw new Defect(`Money in ${currency}`);
  return found;
};

const exact = ({ amount }: MoneyJson, currency: Currency): Money => moneyFrom(amount, currency) ?? noMoney(currency);

const charge = (reason: string, amount: MoneyJson): readonly Content[] =>
  Number(amount.amount) === 0 ? [] : [{ 'cbc:ChargeIndicator': 'true', 'cbc:AllowanceChargeReason': reason, 'cbc:Amount': amountOf(amount) }];

const orderItem = (line: BasketLine, number: number): Content => ({
  'cbc:ID': String(number),
  ...(line.cutCount > 0 ? { 'cbc:Note': `${line.cutCount} to be cut so that they travel as ordinary goods` } : {}),
  'cbc:Quantity': quantityOf(String(line.packCount), 'pack'), 'cbc:LineExtensionAmount': amountOf(line.amount),
  'cac:Price': { 'cbc:PriceAmount': amountOf(line.unitPrice), 'cbc:BaseQuantity': quantityOf('1', 'pack') },
  'cac:Item': {
    'cbc:PackQuantity': quantityOf(plainNumber(line.quantityPerPack), line.unit), 'cbc:Name': clean(line.name),
    'cbc:HazardousRiskIndicator': String(line.hazardous), 'cac:SellersItemIdentification': { 'cbc:ID': clean(line.sku) },
  },
});

/** Never in powers of ten, which XML Schema's decimal does not know. */
const plainNumber = (value: number): string => {
  const text = value.toFixed(6);
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
};

export interface QuotationHead extends DocumentHead {
  readonly seller: Party;
  readonly validUntil?: string;
}

/** The estimate as a UBL 2.1 Quotation: loadings as charges, tax by group on net sums. */
export function ublQuotation(rolled: CostRollUp, head: QuotationHead): string {
  const currency = currencyOf(rolled.net);
  const loadings = [charge('Overhead', rolled.overhead), charge('Profit', rolled.profit), charge('Contingency', rolled.contingency)].flat();
  const chargeTotal = sumMoney([rolled.overhead, rolled.profit, rolled.contingency].map((one) => exact(one, currency)), currency);
  return document('Quotation', {
    'cbc:UBLVersionID': '2.1', 'cbc:ID': clean(head.id), 'cbc:IssueDate': head.issueDate,
    ...(head.note === undefined ? {} : { 'cbc:Note': clean(head.note) }),
    'cbc:PricingCurrencyCode': currency.code, 'cbc:LineCountNumeric': String(rolled.lines.length),
    ...(head.validUntil === undefined ? {} : { 'cac:ValidityPeriod': { 'cbc:EndDate': head.validUntil } }),
    'cac:SellerSupplierParty': partyOf(head.seller), 'cac:OriginatorCustomerParty': partyOf(head.buyer),
    ...(loadings.length === 0 ? {} : { 'cac:AllowanceCharge': loadings }),
    'cac:TaxTotal': taxTotal(rolled),
    'cac:QuotedMonetaryTotal': {
      'cbc:LineExtensionAmount': amountOf(rolled.direct), 'cbc:TaxExclusiveAmount': amountOf(rolled.net), 'cbc:TaxInclusiveAmount': amountOf(rolled.gross),
      'cbc:ChargeTotalAmount': amountOf(moneyJson(chargeTotal)), 'cbc:PayableAmount': amountOf(rolled.gross),
    },
    'cac:QuotationLine': rolled.lines.map((line, index) => ({ 'cbc:ID': String(index + 1), 'cac:LineItem': quotedItem(line, index + 1) })),
  });
}

const taxTotal = ({ tax, taxes }: CostRollUp): Content => ({
  'cbc:TaxAmount': amountOf(tax),
  'cac:TaxSubtotal': taxes.map((group) => ({
    'cbc:TaxableAmount': amountOf(group.taxable), 'cbc:TaxAmount': amountOf(group.tax),
    'cac:TaxCategory': { 'cbc:ID': clean(group.code), 'cbc:Name': clean(group.name), 'cbc:Percent': group.percent, 'cac:TaxScheme': { 'cbc:ID': 'VAT' } },
  })),
});

/** Where packs were priced, the price stands for the whole quantity, so that nothing is rounded twice. */
function quotedItem(line: CostLine, number: number): Content {
  const price = line.isAverageRate || line.rateIncludesTax
    ? { 'cbc:PriceAmount': amountOf(line.amount), 'cbc:BaseQuantity': quantityOf(line.quantity.charged, line.unit) }
    : { 'cbc:PriceAmount': amountOf(line.unitRate), 'cbc:BaseQuantity': quantityOf('1', line.unit) };
  return {
    'cbc:ID': String(number), ...(line.note === undefined ? {} : { 'cbc:Note': clean(line.note) }),
    'cbc:Quantity': quantityOf(line.quantity.charged, line.unit), 'cbc:LineExtensionAmount': amountOf(line.amount),
    'cac:Price': price, 'cac:Item': { 'cbc:Name': clean(line.title), 'cac:SellersItemIdentification': { 'cbc:ID': clean(line.code) } },
  };
}

import { create } from 'xmlbuilder2';
import {
  decimalFrom,
  exactMoney,
  findCurrency,
  moneyJson,
  priceOf,
  rate,
  subtractMoney,
  sumMoney,
  type Currency,
  type MoneyJson,
} from '#lib/money';
import { Defect } from '#lib/kernel';
import type { BasketLine, BasketOrder, SupplierOrder } from '../basket/basket.js';
import { commercialRounding } from '../exact.js';
import type { DocumentLine, PricedDocument } from '../priced-document.js';
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
    xml: document(
      'Order',
      orderContent(
        order,
        basket.lines.filter(({ supplier }) => supplier === order.supplier),
        head,
      ),
    ),
  }));

const document = (root: 'Order' | 'Quotation', content: Content): string =>
  create(
    { version: '1.0', encoding: 'UTF-8' },
    {
      [root]: {
        '@xmlns': `urn:oasis:names:specification:ubl:schema:xsd:${root}-2`,
        ...attributes(components),
        ...content,
      },
    },
  ).end({ prettyPrint: true });

const attributes = (pairs: Readonly<Record<string, string>>): Content =>
  Object.fromEntries(Object.entries(pairs).map(([name, value]) => [`@${name}`, value]));

/** XML 1.0 has no place for control characters; they are left out. */
const clean = (text: string): string =>
  [...text]
    .filter(
      (character) =>
        /[\t\n\r\u0020-\ud7ff\ue000-\ufffd]/.test(character) || (character.codePointAt(0) ?? 0) > 0xffff,
    )
    .join('');

const amountOf = ({ amount, currency }: MoneyJson): Content => ({ '@currencyID': currency, '#': amount });
const quantityOf = (quantity: string, unit: string): Content => ({
  '@unitCode': unitCodeOf(unit).rec20,
  '#': quantity,
});

const partyOf = ({ name, id }: Party): Content => ({
  'cac:Party': {
    ...(id === undefined ? {} : { 'cac:PartyIdentification': { 'cbc:ID': clean(id) } }),
    'cac:PartyName': { 'cbc:Name': clean(name) },
  },
});

function orderContent(
  order: SupplierOrder,
  lines: readonly BasketLine[],
  { id, issueDate, buyer, note }: DocumentHead,
): Content {
  const currency = currencyOf(order.total);
  const charges = [
    charge('Delivery', order.delivery),
    charge('Cutting', order.cutFees),
    charge('Surcharge for hazardous goods', order.hazardSurcharge),
    charge('Oversize freight', order.oversizeFreight),
  ].flat();
  const chargeTotal = sumMoney(
    [order.delivery, order.cutFees, order.hazardSurcharge, order.oversizeFreight].map((one) =>
      exactMoney(one),
    ),
    currency,
  );
  return {
    'cbc:UBLVersionID': '2.1',
    'cbc:ID': clean(`${id}-${order.supplier}`),
    'cbc:IssueDate': issueDate,
    ...(note === undefined ? {} : { 'cbc:Note': clean(note) }),
    'cbc:DocumentCurrencyCode': currency.code,
    'cbc:LineCountNumeric': String(lines.length),
    'cac:BuyerCustomerParty': partyOf(buyer),
    'cac:SellerSupplierParty': partyOf({ name: order.name, id: order.supplier }),
    ...(charges.length === 0 ? {} : { 'cac:AllowanceCharge': charges }),
    'cac:AnticipatedMonetaryTotal': {
      'cbc:LineExtensionAmount': amountOf(order.goods),
      'cbc:ChargeTotalAmount': amountOf(moneyJson(chargeTotal)),
      'cbc:PayableAmount': amountOf(order.total),
    },
    'cac:OrderLine': lines.map((line, index) => ({ 'cac:LineItem': orderItem(line, index + 1) })),
  };
}

const currencyOf = ({ currency }: MoneyJson): Currency => {
  const found = findCurrency(currency);
  if (found === undefined) throw new Defect(`Money in ${currency}`);
  return found;
};

const charge = (reason: string, amount: MoneyJson): readonly Content[] =>
  Number(amount.amount) === 0
    ? []
    : [
        {
          'cbc:ChargeIndicator': 'true',
          'cbc:AllowanceChargeReason': reason,
          'cbc:Amount': amountOf(amount),
        },
      ];

const orderItem = (line: BasketLine, number: number): Content => ({
  'cbc:ID': String(number),
  ...(line.cutCount > 0
    ? { 'cbc:Note': `${line.cutCount} to be cut so that they travel as ordinary goods` }
    : {}),
  'cbc:Quantity': quantityOf(String(line.packCount), 'pack'),
  'cbc:LineExtensionAmount': amountOf(line.amount),
  'cac:Price': { 'cbc:PriceAmount': amountOf(line.unitPrice), 'cbc:BaseQuantity': quantityOf('1', 'pack') },
  'cac:Item': {
    'cbc:PackQuantity': quantityOf(plainNumber(line.quantityPerPack), line.unit),
    'cbc:Name': clean(line.name),
    'cbc:HazardousRiskIndicator': String(line.hazardous),
    'cac:SellersItemIdentification': { 'cbc:ID': clean(line.sku) },
  },
});

/** Never in powers of ten, which XML Schema's decimal does not know. */
const plainNumber = (value: number): string => {
  const text = value.toFixed(6);
  return text.includes('.') ? text.replace(/0+$/, '').replace(/\.$/, '') : text;
};

export interface QuotationHead extends Omit<DocumentHead, 'buyer'> {
  readonly seller: Party;
  readonly buyer?: Party;
  readonly validUntil?: string;
}

/**
 * Priced work as a UBL 2.1 Quotation: loadings as charges, one for each tax group, and tax by group on net sums.
 *
 * Sums keep the rules of EN 16931: lines make the line total, lines and charges of a category make its taxable amount,
 * tax is that amount times the rate, and the total with tax is what is payable.
 *
 * Source: [UBL-2.1] Quotation; [EN-16931-1] BR-CO-10 to BR-CO-16, BR-S-08; [UNCL-5305] tax categories S and Z
 * Worked: libs/costing/src/exports/exports.spec.ts
 */
export function ublQuotation(priced: PricedDocument, head: QuotationHead): string {
  const currency = currencyOf(priced.net);
  const charges = priced.taxes.flatMap((group) => chargeOfGroup(group, priced, currency));
  const chargeTotal = sumMoney(
    [priced.overhead, priced.profit, priced.provisional, priced.contingency].map((one) => exactMoney(one)),
    currency,
  );
  return document('Quotation', {
    'cbc:UBLVersionID': '2.1',
    'cbc:ID': clean(head.id),
    'cbc:IssueDate': head.issueDate,
    'cbc:Note': [...(head.note === undefined ? [] : [clean(head.note)]), loadingsNote(priced)],
    'cbc:PricingCurrencyCode': currency.code,
    'cbc:LineCountNumeric': String(priced.lines.length),
    ...(head.validUntil === undefined ? {} : { 'cac:ValidityPeriod': { 'cbc:EndDate': head.validUntil } }),
    'cac:SellerSupplierParty': partyOf(head.seller),
    ...(head.buyer === undefined ? {} : { 'cac:OriginatorCustomerParty': partyOf(head.buyer) }),
    ...(charges.length === 0 ? {} : { 'cac:AllowanceCharge': charges }),
    'cac:TaxTotal': taxTotal(priced),
    'cac:QuotedMonetaryTotal': {
      'cbc:LineExtensionAmount': amountOf(priced.direct),
      'cbc:TaxExclusiveAmount': amountOf(priced.net),
      'cbc:TaxInclusiveAmount': amountOf(priced.gross),
      'cbc:ChargeTotalAmount': amountOf(moneyJson(chargeTotal)),
      'cbc:PayableAmount': amountOf(priced.gross),
    },
    'cac:QuotationLine': priced.lines.map((line, index) => ({
      'cbc:ID': String(index + 1),
      'cac:LineItem': quotedItem(line, index + 1, { priced, currency }),
    })),
  });
}

type TaxedGroup = PricedDocument['taxes'][number];

/** Charges stand by tax group because each must name the tax it bears; what they are made of is said once. */
const loadingsNote = ({ overhead, profit, provisional, contingency, currency }: PricedDocument): string =>
  `Charges are overhead ${overhead.amount}, profit ${profit.amount}, provisional sums for what is found besides ${provisional.amount} and contingency ${contingency.amount} ${currency}, shared by tax group.`;

/** What the taxable amount of a group holds above the lines of the group. */
function chargeOfGroup(group: TaxedGroup, { lines }: PricedDocument, currency: Currency): readonly Content[] {
  const own = sumMoney(
    lines.filter(({ taxGroup }) => taxGroup === group.code).map(({ amount }) => exactMoney(amount)),
    currency,
  );
  const loadings = moneyJson(subtractMoney(exactMoney(group.taxable), own));
  return charge('Overhead, profit, provisional sums and contingency', loadings).map((one) => ({
    ...one,
    'cac:TaxCategory': taxCategory(group),
  }));
}

/** S is a rate above nothing, Z is taxed at nothing; why something would be exempt is not known here. */
const taxCategory = ({ name, percent }: TaxedGroup): Content => ({
  'cbc:ID': Number(percent) === 0 ? 'Z' : 'S',
  'cbc:Name': clean(name),
  'cbc:Percent': percent,
  'cac:TaxScheme': { 'cbc:ID': 'VAT' },
});

const taxTotal = ({ tax, taxes, lines }: PricedDocument): Content => ({
  'cbc:TaxAmount': amountOf(tax),
  'cac:TaxSubtotal': taxes
    .filter(({ code }) => lines.some(({ taxGroup }) => taxGroup === code))
    .map((group) => ({
      'cbc:TaxableAmount': amountOf(group.taxable),
      'cbc:TaxAmount': amountOf(group.tax),
      'cac:TaxCategory': taxCategory(group),
    })),
});

interface Quoted {
  readonly priced: PricedDocument;
  readonly currency: Currency;
}

function quotedItem(line: DocumentLine, number: number, { priced, currency }: Quoted): Content {
  const group = priced.taxes.find(({ code }) => code === line.taxGroup);
  return {
    'cbc:ID': String(number),
    ...(line.note === undefined ? {} : { 'cbc:Note': clean(line.note) }),
    'cbc:Quantity': quantityOf(line.quantity.charged, line.unit),
    'cbc:LineExtensionAmount': amountOf(line.amount),
    'cac:Price': quotedPrice(line, currency),
    'cac:Item': {
      'cbc:Name': clean(line.title),
      ...(line.packs.length === 0
        ? {}
        : { 'cbc:AdditionalInformation': line.packs.map(({ count, name }) => clean(`${count} x ${name}`)) }),
      'cac:SellersItemIdentification': { 'cbc:ID': clean(line.code) },
      ...(group === undefined ? {} : { 'cac:ClassifiedTaxCategory': taxCategory(group) }),
    },
  };
}

/** Where quantity times rate is not the amount (packs, or tax taken out), the price stands for the whole quantity, so that nothing is rounded twice. */
function quotedPrice({ quantity, unitRate, amount, unit, packs }: DocumentLine, currency: Currency): Content {
  const [charged, price] = [decimalFrom(quantity.charged), decimalFrom(unitRate.amount)];
  const isExact =
    packs.length === 0 &&
    charged !== undefined &&
    price !== undefined &&
    priceOf(charged, rate(price, currency, unit), commercialRounding).minor === exactMoney(amount).minor;
  return isExact
    ? { 'cbc:PriceAmount': amountOf(unitRate), 'cbc:BaseQuantity': quantityOf('1', unit) }
    : { 'cbc:PriceAmount': amountOf(amount), 'cbc:BaseQuantity': quantityOf(quantity.charged, unit) };
}

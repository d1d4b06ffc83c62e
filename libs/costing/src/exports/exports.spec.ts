import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { create } from 'xmlbuilder2';
import type { BasketOrder } from '../basket/basket.js';
import type { LineRequest } from '../cost-line.js';
import { rollUp, type CostRollUp } from '../roll-up.js';
import { basketCsv, csv } from './csv.js';
import { ublOrders, ublQuotation } from './ubl.js';

const line = (changes: Partial<LineRequest> = {}): LineRequest => ({
  code: 'core',
  section: 'materials',
  title: 'Balsa core, 12.7 mm',
  partOrLabour: 'part',
  causeClass: 'sudden',
  netQuantity: 2,
  unit: 'm2',
  unitRate: '38.50',
  taxGroup: 'parts',
  ...changes,
});

function rolled(
  lines: readonly LineRequest[] = [
    line(),
    line({
      code: 'work',
      section: 'labour',
      partOrLabour: 'labour',
      unit: 'h',
      netQuantity: 7.25,
      unitRate: '74',
      taxGroup: 'labour',
    }),
  ],
): CostRollUp {
  const outcome = rollUp({
    currency: 'EUR',
    lines,
    overheadPercent: '6',
    profitPercent: '8',
    contingency: { amount: '100.00' },
    taxGroups: [
      { code: 'parts', name: 'Goods', percent: '20' },
      { code: 'labour', name: 'Services', percent: '10' },
    ],
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const euro = (amount: string) => ({ amount, currency: 'EUR' });

const basket: BasketOrder = {
  total: euro('95.50'),
  substitutions: [],
  leftovers: [],
  coverage: [],
  matched: [],
  lines: [
    {
      sku: 'A-1',
      name: 'Resin <5:1> & "hardener"',
      supplier: 'a',
      content: { material: 'resin' },
      packCount: 2,
      quantityPerPack: 0.2,
      quantity: 0.4,
      unit: 'kg',
      unitPrice: euro('40.00'),
      amount: euro('80.00'),
      cutFee: euro('0.00'),
      cutCount: 0,
      massKg: 2,
      hazardous: true,
      oversize: false,
    },
  ],
  orders: [
    {
      supplier: 'a',
      name: 'Invented chandlery A',
      goods: euro('80.00'),
      cutFees: euro('0.00'),
      delivery: euro('5.50'),
      isDeliveryFree: false,
      hazardSurcharge: euro('10.00'),
      hazardBoxes: 1,
      oversizeFreight: euro('0.00'),
      total: euro('95.50'),
      massKg: 2,
    },
  ],
};

describe('CSV', () => {
  test('is read back as it was written: commas, quotes, line breaks and all', () => {
    const rows = [
      ['a,b', 'say "x"'],
      ['two\nlines', ''],
      [' space ', 'ümläut'],
    ];
    expect(parse(csv(['one', 'two'], rows), { record_delimiter: '\r\n' })).toEqual([['one', 'two'], ...rows]);
  });

  test('gives a spreadsheet no formula to run, and leaves negative numbers as numbers', () => {
    const texts = ['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\t=1', '＝1', '  =1'];
    const read = parse(
      csv(
        ['x'],
        texts.map((text) => [text]),
      ),
      { record_delimiter: '\r\n' },
    )
      .slice(1)
      .flat() as string[];
    for (const text of read) expect(text.startsWith("'")).toBe(true);
    expect(csv(['x'], [['-12.50']])).toBe('x\r\n-12.50\r\n');
  });

  test('of a basket has a row for each line, each charge and the total', () => {
    const packs = parse(basketCsv(basket), { columns: true, record_delimiter: '\r\n' }) as Record<
      string,
      string
    >[];
    expect(packs.at(-1)).toMatchObject({ name: 'total', amount: '95.50' });
  });
});

/** Order of elements in the standard's sequences, as far as we use them; `!` marks what must be there. */
const party = ['PartyIdentification', 'PartyName!'];
const sequences: Readonly<Record<string, readonly string[]>> = {
  Order: [
    'UBLVersionID',
    'ID!',
    'IssueDate!',
    'Note',
    'DocumentCurrencyCode',
    'LineCountNumeric',
    'BuyerCustomerParty!',
    'SellerSupplierParty!',
    'AllowanceCharge',
    'TaxTotal',
    'AnticipatedMonetaryTotal',
    'OrderLine!',
  ],
  Quotation: [
    'UBLVersionID',
    'ID',
    'IssueDate!',
    'Note',
    'PricingCurrencyCode',
    'LineCountNumeric',
    'ValidityPeriod',
    'SellerSupplierParty!',
    'OriginatorCustomerParty',
    'AllowanceCharge',
    'TaxTotal',
    'QuotedMonetaryTotal!',
    'QuotationLine!',
  ],
  BuyerCustomerParty: ['Party'],
  SellerSupplierParty: ['Party'],
  OriginatorCustomerParty: ['Party'],
  Party: party,
  PartyIdentification: ['ID!'],
  PartyName: ['Name!'],
  ValidityPeriod: ['StartDate', 'EndDate'],
  AllowanceCharge: [
    'ID',
    'ChargeIndicator!',
    'AllowanceChargeReasonCode',
    'AllowanceChargeReason',
    'Amount!',
    'TaxCategory',
  ],
  AnticipatedMonetaryTotal: [
    'LineExtensionAmount',
    'TaxExclusiveAmount',
    'TaxInclusiveAmount',
    'AllowanceTotalAmount',
    'ChargeTotalAmount',
    'PrepaidAmount',
    'PayableRoundingAmount',
    'PayableAmount!',
  ],
  QuotedMonetaryTotal: [
    'LineExtensionAmount',
    'TaxExclusiveAmount',
    'TaxInclusiveAmount',
    'AllowanceTotalAmount',
    'ChargeTotalAmount',
    'PrepaidAmount',
    'PayableRoundingAmount',
    'PayableAmount!',
  ],
  OrderLine: ['LineItem!'],
  QuotationLine: ['ID', 'Note', 'Quantity', 'LineExtensionAmount', 'TotalTaxAmount', 'LineItem!'],
  LineItem: [
    'ID!',
    'Note',
    'Quantity',
    'LineExtensionAmount',
    'TotalTaxAmount',
    'AllowanceCharge',
    'Price',
    'Item!',
    'TaxTotal',
  ],
  Price: ['PriceAmount!', 'BaseQuantity'],
  SellersItemIdentification: ['ID!'],
  Item: [
    'Description',
    'PackQuantity',
    'PackSizeNumeric',
    'Name',
    'HazardousRiskIndicator',
    'AdditionalInformation',
    'BuyersItemIdentification',
    'SellersItemIdentification',
    'ClassifiedTaxCategory',
  ],
  TaxTotal: ['TaxAmount!', 'RoundingAmount', 'TaxSubtotal'],
  TaxSubtotal: ['TaxableAmount', 'TaxAmount!', 'TaxCategory!'],
  ClassifiedTaxCategory: ['ID', 'Name', 'Percent', 'TaxScheme!'],
  TaxCategory: ['ID', 'Name', 'Percent', 'TaxScheme!'],
  TaxScheme: ['ID'],
};

interface XmlNode {
  readonly nodeName: string;
  readonly nodeType: number;
  readonly textContent: string | null;
  readonly childNodes: Iterable<XmlNode>;
  getAttribute(name: string): string | null;
}

const bare = ({ nodeName }: XmlNode): string => nodeName.replace(/^.*:/, '');
const childrenOf = (node: XmlNode): readonly XmlNode[] =>
  [...node.childNodes].filter(({ nodeType }) => nodeType === 1);

/** Everything in which a document departs from the sequences. */
function departures(node: XmlNode): readonly string[] {
  const children = childrenOf(node);
  const sequence = sequences[bare(node)];
  if (children.length === 0) return (node.textContent ?? '').trim() === '' ? [`${bare(node)} is empty`] : [];
  if (sequence === undefined) return [`${bare(node)} is not a known aggregate`];
  const known = sequence.map((name) => name.replace('!', ''));
  const places = children.map((child) => known.indexOf(bare(child)));
  return [
    ...children
      .filter((_, index) => places[index] < 0)
      .map((child) => `${bare(child)} does not belong in ${bare(node)}`),
    ...places.flatMap((place, index) =>
      index > 0 && place < places[index - 1]
        ? [`${bare(children[index])} is out of order in ${bare(node)}`]
        : [],
    ),
    ...sequence
      .filter((name) => name.endsWith('!') && !children.some((child) => bare(child) === name.slice(0, -1)))
      .map((name) => `${name} is missing in ${bare(node)}`),
    ...children.flatMap(departures),
  ];
}

const rootOf = (xml: string): XmlNode => create(xml).root().node as unknown as XmlNode;
const all = (node: XmlNode, name: string): readonly XmlNode[] => [
  ...(bare(node) === name ? [node] : []),
  ...childrenOf(node).flatMap((child) => all(child, name)),
];

describe('UBL', () => {
  const head = { id: 'E-1', issueDate: '2026-05-04', buyer: { name: 'Invented owner' } };

  test('an order keeps to the sequences of the standard, with codes for units and currency', () => {
    const [{ xml }] = ublOrders(basket, head);
    const root = rootOf(xml);
    expect(departures(root)).toEqual([]);
    expect(root.getAttribute('xmlns')).toBe('urn:oasis:names:specification:ubl:schema:xsd:Order-2');
    expect(all(root, 'Quantity')[0].getAttribute('unitCode')).toBe('XPK');
    expect(all(root, 'PackQuantity')[0].getAttribute('unitCode')).toBe('KGM');
    expect(all(root, 'PayableAmount')[0].textContent).toBe('95.50');
    expect(all(root, 'Name').map(({ textContent }) => textContent)).toContain('Resin <5:1> & "hardener"');
  });

  test('the check itself finds a wrong order and a missing element', () => {
    const [{ xml }] = ublOrders(basket, head);
    expect(departures(rootOf(xml.replace(/<cbc:IssueDate>.*<\/cbc:IssueDate>/, '')))).toEqual([
      'IssueDate! is missing in Order',
    ]);
    expect(
      departures(
        rootOf(
          xml
            .replace('<cbc:UBLVersionID>2.1</cbc:UBLVersionID>', '')
            .replace(
              '</cac:BuyerCustomerParty>',
              '</cac:BuyerCustomerParty><cbc:UBLVersionID>2.1</cbc:UBLVersionID>',
            ),
        ),
      ),
    ).toEqual(['UBLVersionID is out of order in Order']);
  });

  test('the sums of an order and of a quotation agree with their lines and charges, in cents', () => {
    const cents = (node: XmlNode): number => Math.round(Number(node.textContent) * 100);
    const sumOf = (nodes: readonly XmlNode[]): number => nodes.reduce((sum, node) => sum + cents(node), 0);
    for (const xml of [
      ublOrders(basket, head)[0].xml,
      ublQuotation(rolled(), { ...head, seller: { name: 'Invented yard' } }),
    ]) {
      const root = rootOf(xml);
      const total = all(root, 'AnticipatedMonetaryTotal')[0] ?? all(root, 'QuotedMonetaryTotal')[0];
      const lineSum = sumOf(
        all(root, 'LineItem').map((item) =>
          childrenOf(item).find((child) => bare(child) === 'LineExtensionAmount')!,
        ),
      );
      const charges = sumOf(
        all(root, 'AllowanceCharge').map((one) => childrenOf(one).find((child) => bare(child) === 'Amount')!),
      );
      expect(cents(all(total, 'LineExtensionAmount')[0])).toBe(lineSum);
      expect(cents(all(total, 'ChargeTotalAmount')[0])).toBe(charges);
      const tax = childrenOf(root)
        .filter((child) => bare(child) === 'TaxTotal')
        .map((one) => cents(all(one, 'TaxAmount')[0]));
      expect(cents(all(total, 'PayableAmount')[0])).toBe(lineSum + charges + (tax[0] ?? 0));
    }
  });

  test('a quotation keeps to the sequences and states tax by group', () => {
    const root = rootOf(
      ublQuotation(rolled(), {
        ...head,
        seller: { name: 'Invented yard' },
        validUntil: '2026-06-30',
        note: 'Range P10 to P90 in the report',
      }),
    );
    expect(departures(root)).toEqual([]);
    expect(all(root, 'TaxSubtotal')).toHaveLength(2);
    expect(all(root, 'Note')[1].textContent).toBe(
      'Charges are overhead 36.81, profit 52.02, provisional sums for what is found besides 0.00 and contingency 100.00 EUR, shared by tax group.',
    );
  });

  test('each tax category sums as the rules of electronic invoices ask: lines and charges make its base, base times rate its tax', () => {
    const root = rootOf(ublQuotation(rolled(), { ...head, seller: { name: 'Invented yard' } }));
    const own = (node: XmlNode, name: string): XmlNode =>
      childrenOf(node).find((child) => bare(child) === name)!;
    const cents = (node: XmlNode): number => Math.round(Number(node.textContent) * 100);
    const percentIn = (node: XmlNode, name: string): string | null =>
      own(own(node, name), 'Percent').textContent;
    for (const subtotal of all(root, 'TaxSubtotal')) {
      const percent = percentIn(subtotal, 'TaxCategory');
      const lines = all(root, 'LineItem')
        .filter((item) => percentIn(own(item, 'Item'), 'ClassifiedTaxCategory') === percent)
        .map((item) => cents(own(item, 'LineExtensionAmount')));
      const charges = all(root, 'AllowanceCharge')
        .filter((one) => percentIn(one, 'TaxCategory') === percent)
        .map((one) => cents(own(one, 'Amount')));
      const base = cents(own(subtotal, 'TaxableAmount'));
      expect([...lines, ...charges].reduce((sum, one) => sum + one, 0)).toBe(base);
      expect(cents(own(subtotal, 'TaxAmount'))).toBe(Math.round((base * Number(percent)) / 100));
      expect(own(own(subtotal, 'TaxCategory'), 'ID').textContent).toBe('S');
    }
    const [taxTotal] = childrenOf(root).filter((child) => bare(child) === 'TaxTotal');
    expect(all(taxTotal, 'TaxSubtotal').reduce((sum, one) => sum + cents(own(one, 'TaxAmount')), 0)).toBe(
      cents(own(taxTotal, 'TaxAmount')),
    );
  });

  test('price times quantity over the base quantity is the amount of every line', () => {
    const root = rootOf(
      ublQuotation(
        rolled([
          line(),
          line({ code: 'thirds', netQuantity: 1 / 3, unitRate: '10.01' }),
          line({ code: 'taxed', rateIncludesTax: true }),
        ]),
        { ...head, seller: { name: 'Invented yard' } },
      ),
    );
    for (const item of all(root, 'LineItem')) {
      const value = (name: string): number => Number(all(item, name)[0].textContent);
      expect(Math.round(((value('Quantity') * value('PriceAmount')) / value('BaseQuantity')) * 100)).toBe(
        Math.round(value('LineExtensionAmount') * 100),
      );
    }
  });

  test('nobody need be named as the customer', () => {
    const { buyer, ...unaddressed } = head;
    const root = rootOf(ublQuotation(rolled(), { ...unaddressed, seller: { name: 'Invented yard' } }));
    expect([buyer.name, departures(root), all(root, 'OriginatorCustomerParty')]).toEqual([
      'Invented owner',
      [],
      [],
    ]);
  });

  test('packs of several sizes are quoted as one price for the whole quantity', () => {
    const packed = line({
      unitRate: undefined,
      packs: [{ sku: 'p', name: 'p', supplier: 'a', count: 3, price: '10.01' }],
      purchaseQuantity: 3.7,
      unit: 'kg',
    });
    const root = rootOf(ublQuotation(rolled([packed]), { ...head, seller: { name: 'Invented yard' } }));
    expect(all(root, 'PriceAmount')[0].textContent).toBe('30.03');
    expect(all(root, 'BaseQuantity')[0].textContent).toBe('3.700');
  });

  test('characters that XML has no place for are left out', () => {
    const [{ xml }] = ublOrders(basket, { ...head, buyer: { name: 'Invented\u0000 owner\u0008' } });
    expect(xml).toContain('<cbc:Name>Invented owner</cbc:Name>');
  });
});

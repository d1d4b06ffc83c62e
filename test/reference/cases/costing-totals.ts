import { percentOf, totalsOf, type Contribution, type Totals } from '#lib/costing';
import { decimal, decimalFrom, decimalText, findCurrency, moneyFrom, type Money } from '#lib/money';
import { threePointDeviation, threePointMean } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { PublishedCase } from '../published-case.js';

const euro = findCurrency('EUR')!;
const krone = findCurrency('NOK')!;
const exactly = { absolute: 0, because: 'amounts are exact to the minor unit' } as const;

/** The line amounts and tax groups of the first example invoice that accompanies the standard; the last 6 % line is a return. */
const sixPercent = [
  '19.90',
  '9.85',
  '8.29',
  '14.46',
  '35.00',
  '35.00',
  '10.65',
  '1.55',
  '14.37',
  '8.29',
  '16.58',
  '9.95',
  '3.30',
  '3.90',
  '102.12',
  '-109.98',
];
const twentyOnePercent = ['10.80', '7.60', '9.34', '18.63'];

const contribution =
  (taxGroup: string) =>
  (text: string): Contribution => ({
    amount: moneyFrom(text, euro)!,
    taxGroup,
    causeClass: 'maintenance',
    partOrLabour: 'part',
  });

const exampleOne = (): Totals =>
  totalsOf([...sixPercent.map(contribution('6')), ...twentyOnePercent.map(contribution('21'))], {
    currency: euro,
    rounding: 'half-away-from-zero',
    overheadPercent: decimal(0n, 0),
    profitPercent: decimal(0n, 0),
    contingency: { percent: decimal(0n, 0) },
    taxGroups: [
      { code: '6', percent: decimal(6n, 0) },
      { code: '21', percent: decimal(21n, 0) },
    ],
  });

const major = (amount: Money): number => Number(decimalText(amount));

const inExampleOne = (
  id: string,
  title: string,
  locus: string,
  answer: { readonly printed: string; readonly ours: () => number },
): PublishedCase => ({
  id: `costing-en16931-example1-${id}`,
  room: 'costing',
  title,
  source: 'EN-16931-EXAMPLES',
  locus,
  unit: 'EUR',
  tolerance: exactly,
  ...answer,
});

export const invoiceTotals: readonly PublishedCase[] = [
  inExampleOne('lines', 'Sum of twenty line amounts', 'example 1, BT-106', {
    printed: '229.60',
    ours: () => major(exampleOne().direct),
  }),
  inExampleOne('taxable-6', 'Taxable amount of the group at 6 %', 'example 1, BT-116', {
    printed: '183.23',
    ours: () => major(exampleOne().taxes[0].taxable),
  }),
  inExampleOne('tax-6', 'Tax of the group at 6 %', 'example 1, BT-117', {
    printed: '10.99',
    ours: () => major(exampleOne().taxes[0].tax),
  }),
  inExampleOne('taxable-21', 'Taxable amount of the group at 21 %', 'example 1, BT-116', {
    printed: '46.37',
    ours: () => major(exampleOne().taxes[1].taxable),
  }),
  inExampleOne('tax-21', 'Tax of the group at 21 %', 'example 1, BT-117', {
    printed: '9.74',
    ours: () => major(exampleOne().taxes[1].tax),
  }),
  inExampleOne('tax', 'Tax of the document', 'example 1, BT-110', {
    printed: '20.73',
    ours: () => major(exampleOne().tax),
  }),
  inExampleOne('gross', 'Amount with tax', 'example 1, BT-112', {
    printed: '250.33',
    ours: () => major(exampleOne().gross),
  }),
  {
    id: 'costing-en16931-example2-tie',
    room: 'costing',
    title: 'Tax of 1460.50 at 25 %: 365.125 is rounded away from zero',
    source: 'EN-16931-EXAMPLES',
    locus: 'example 2, BT-117',
    unit: 'NOK',
    printed: '365.13',
    tolerance: exactly,
    ours: () => major(percentOf(moneyFrom('1460.50', krone)!, decimalFrom('25')!, 'half-away-from-zero')),
  },
  {
    id: 'costing-en16931-example2-small',
    room: 'costing',
    title: 'Tax of 1.00 at 15 %',
    source: 'EN-16931-EXAMPLES',
    locus: 'example 2, BT-117',
    unit: 'NOK',
    printed: '0.15',
    tolerance: exactly,
    ours: () => major(percentOf(moneyFrom('1.00', krone)!, decimalFrom('15')!, 'half-away-from-zero')),
  },
];

const points = { low: fraction(2), likely: fraction(5), high: fraction(14) };

export const threePointEstimates: readonly PublishedCase[] = [
  {
    id: 'takeoff-three-point-mean',
    room: 'takeoff',
    title: 'Mean of 2, 5 and 14',
    source: 'MALCOLM-1959',
    locus: 'formula, worked by hand',
    unit: '1',
    printed: '6.000',
    kind: 'by-hand',
    ours: () => threePointMean.evaluate(points),
  },
  {
    id: 'takeoff-three-point-deviation',
    room: 'takeoff',
    title: 'Deviation of 2, 5 and 14',
    source: 'MALCOLM-1959',
    locus: 'formula, worked by hand',
    unit: '1',
    printed: '2.000',
    kind: 'by-hand',
    ours: () => threePointDeviation.evaluate(points),
  },
];

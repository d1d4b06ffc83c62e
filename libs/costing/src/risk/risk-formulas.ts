import { defineFormula } from '#lib/provenance';
import { fraction } from '#lib/units';

/** How the cost of a line follows the repaired area. */
export const extentScaling = defineFormula({
  id: 'costing.extent-scaling',
  title: 'Cost of a line at another extent',
  cite: {
    source: 'ARITHMETIC',
    note: 'shapes that stay alike: areas grow with the factor, edges with its square root, counts not at all',
  },
  inputs: {
    amount: { symbol: 'A', unit: '1', meaning: 'amount at the recorded extent, in major units', from: 0 },
    extentFactor: { symbol: 'E', unit: '1', meaning: 'found area over recorded area', from: 0 },
    exponent: {
      symbol: 'k',
      unit: '1',
      meaning: '1 with the area, 0.5 with its edge, 0 not at all',
      from: 0,
      upTo: 2,
    },
  },
  output: { symbol: "A'", unit: '1', meaning: 'amount at the found extent, in major units' },
  evaluate: ({ amount, extentFactor, exponent }) => fraction(amount * extentFactor ** exponent),
  // By hand: an edge that costs 100 costs 100 x root of 2.25 = 150 when the area is 2.25 times as large.
  worked: [
    { at: 'by hand', given: { amount: 100, extentFactor: 2.25, exponent: 0.5 }, printed: '150.0' },
    { at: 'by hand', given: { amount: 100, extentFactor: 2.25, exponent: 1 }, printed: '225.0' },
  ],
});

/** What is set aside unless the caller says otherwise. */
export const contingencyAtP80 = defineFormula({
  id: 'costing.contingency',
  title: 'Contingency: P80 less the point, none when the point covers it',
  cite: { source: 'COMMON-PRACTICE', note: 'four in five jobs stay within point and contingency together' },
  inputs: {
    p80: {
      symbol: 'P80',
      unit: '1',
      meaning: 'cost that four in five jobs do not exceed, in major units',
      from: 0,
    },
    point: { symbol: 'P', unit: '1', meaning: 'point estimate, in major units', from: 0 },
  },
  output: { symbol: 'C', unit: '1', meaning: 'contingency, in major units' },
  evaluate: ({ p80, point }) => fraction(Math.max(0, p80 - point)),
  // By hand: 6240 - 4800 = 1440; and a point of 4800 above a P80 of 4500 needs none.
  worked: [
    { at: 'by hand', given: { p80: 6240, point: 4800 }, printed: '1440' },
    { at: 'by hand', given: { p80: 4500, point: 4800 }, printed: '0' },
  ],
});

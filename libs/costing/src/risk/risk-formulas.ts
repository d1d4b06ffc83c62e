import { defineFormula } from '#lib/provenance';
import { fraction } from '#lib/units';

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

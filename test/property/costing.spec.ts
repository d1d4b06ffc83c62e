import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  causeClasses,
  partOrLabours,
  rollUp,
  sectionTitles,
  type CostRollUp,
  type LineRequest,
  type RollUpRequest,
  type Section,
} from '#lib/costing';
import type { MoneyJson } from '#lib/money';

const seed = 20261125;
const sections = Object.keys(sectionTitles) as readonly Section[];
const minorDigits = { JPY: 0, EUR: 2, KWD: 3, CLF: 4 } as const;

const decimals = (most: number, places: number): fc.Arbitrary<string> =>
  fc.tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: places })).map(([digits, cut]) => {
    const text = String(digits).padStart(cut + 1, '0');
    return cut === 0 ? text : `${text.slice(0, -cut)}.${text.slice(-cut)}`;
  });

const line: fc.Arbitrary<Omit<LineRequest, 'code'>> = fc.record({
  section: fc.constantFrom(...sections),
  title: fc.constant('line'),
  partOrLabour: fc.constantFrom(...partOrLabours),
  causeClass: fc.constantFrom(...causeClasses),
  unit: fc.constantFrom('h', 'kg', 'each'),
  netQuantity: fc.oneof(
    fc.double({ min: 0, max: 1e4, noNaN: true }),
    fc.integer({ min: 0, max: 2e5 }).map((steps) => steps / 200),
  ),
  unitRate: decimals(9_999_999, 5),
  taxGroup: fc.constantFrom('full', 'reduced', 'none'),
  rateIncludesTax: fc.boolean(),
});

const request: fc.Arbitrary<RollUpRequest> = fc.record({
  currency: fc.constantFrom('JPY', 'EUR', 'KWD', 'CLF'),
  lines: fc
    .array(line, { minLength: 1, maxLength: 12 })
    .map((lines) => lines.map((one, index) => ({ ...one, code: `l${index}` }))),
  overheadPercent: decimals(9999, 2),
  profitPercent: decimals(9999, 2),
  contingency: fc.record({ percent: decimals(9999, 2) }),
  taxGroups: fc.constant([
    { code: 'full', name: 'Full', percent: '21' },
    { code: 'reduced', name: 'Reduced', percent: '5.5' },
    { code: 'none', name: 'None', percent: '0' },
  ]),
});

/** Adds decimal texts as whole numbers, by string, so that the test has an arithmetic of its own. */
const minor = ({ amount, currency }: MoneyJson): bigint => {
  const [whole, part = ''] = amount.replace('-', '').split('.');
  const digits = minorDigits[currency as keyof typeof minorDigits];
  return BigInt(whole + part.padEnd(digits, '0')) * (amount.startsWith('-') ? -1n : 1n);
};
const sum = (amounts: readonly MoneyJson[]): bigint =>
  amounts.map(minor).reduce((total, one) => total + one, 0n);

const rolled = (asked: RollUpRequest): CostRollUp => {
  const outcome = rollUp(asked);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

test('lines, sections, causes, parts and labour, and tax groups all come to the same total', () => {
  fc.assert(
    fc.property(request, (asked) => {
      const total = rolled(asked);
      const direct = minor(total.direct);
      expect(sum(total.lines.map(({ amount }) => amount))).toBe(direct);
      expect(sum(total.sections.map(({ amount }) => amount))).toBe(direct);
      for (const split of [total.byCause, total.byPartOrLabour, total.byCauseAndPart]) {
        expect(sum(split.map((share) => share.direct))).toBe(direct);
        expect(sum(split.map(({ net }) => net))).toBe(minor(total.net));
        expect(sum(split.map(({ tax }) => tax))).toBe(minor(total.tax));
        expect(sum(split.map(({ gross }) => gross))).toBe(minor(total.gross));
        for (const share of split) expect(minor(share.direct) + minor(share.loadings)).toBe(minor(share.net));
      }
      expect(sum(total.taxes.map(({ taxable }) => taxable))).toBe(minor(total.net));
      expect(sum(total.taxes.map(({ tax }) => tax))).toBe(minor(total.tax));
      expect(sum([total.direct, total.overhead, total.profit, total.contingency])).toBe(minor(total.net));
      expect(minor(total.net) + minor(total.tax)).toBe(minor(total.gross));
    }),
    { seed, numRuns: 1500 },
  );
});

test('each line is its charged quantity times its rate, within half a minor unit, whatever the size', () => {
  fc.assert(
    fc.property(request, (asked) => {
      for (const { quantity, unitRate, amount, rateIncludesTax } of rolled(asked).lines.filter(
        (one) => !one.rateIncludesTax,
      )) {
        expect(rateIncludesTax).toBe(false);
        const [rateWhole, ratePart = ''] = unitRate.amount.split('.');
        const [quantityWhole, quantityPart = ''] = quantity.charged.split('.');
        const digits = minorDigits[amount.currency as keyof typeof minorDigits];
        const exact =
          BigInt(rateWhole + ratePart) * BigInt(quantityWhole + quantityPart) * 10n ** BigInt(digits);
        const scale = 10n ** BigInt(ratePart.length + quantityPart.length);
        const twiceError = 2n * (minor(amount) * scale - exact);
        expect(twiceError <= scale && -twiceError < scale).toBe(true);
      }
    }),
    { seed, numRuns: 500 },
  );
});

test('the order of the lines changes no total', () => {
  fc.assert(
    fc.property(request, fc.integer(), (asked, turn) => {
      const cut = Math.abs(turn) % asked.lines.length;
      const turned = [...asked.lines.slice(cut), ...asked.lines.slice(0, cut)].reverse();
      const bare = (one: CostRollUp) => JSON.stringify({ ...one, lines: undefined, assumptions: undefined });
      expect(bare(rolled({ ...asked, lines: turned }))).toBe(bare(rolled(asked)));
    }),
    { seed, numRuns: 500 },
  );
});

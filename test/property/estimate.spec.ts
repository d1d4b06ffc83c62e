import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import { aRecord } from '../samples/a-record.js';

const SEED = 20261125;
const RUNS = { seed: SEED, numRuns: 12 };

const minor = ({ amount }: { readonly amount: string }): bigint => BigInt(amount.replace('.', ''));
const sum = (amounts: readonly { readonly amount: string }[]): bigint => amounts.reduce((total, amount) => total + minor(amount), 0n);

function estimated(record: DefectRecord): Estimate {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.estimate;
}

/** A rectangular zone well inside the panel of `aRecord`, with any of the methods. */
const records = fc.record({
  fromX: fc.integer({ min: 250, max: 900 }), fromY: fc.integer({ min: 200, max: 400 }),
  length: fc.integer({ min: 150, max: 800 }), width: fc.integer({ min: 120, max: 350 }),
  skin: fc.constantFrom('re-bed' as const, 'relay' as const), coreMm: fc.constantFrom(9.5, 12.7, 15.9, 19.1),
}).map(({ fromX, fromY, length, width, skin, coreMm }) => aRecord({
  zones: [{ id: 'Z', outline: [[fromX, fromY], [fromX + length, fromY], [fromX + length, fromY + width], [fromX, fromY + width]] }],
  core: { thicknessMm: coreMm }, method: { skin }, pricing: { samples: 1000 },
}));

describe('what goes in comes out', () => {
  test('opened and retained skin make the panel', () => {
    fc.assert(fc.property(records, (record) => {
      const { scope } = estimated(record);
      expect(scope.openedAreaM2 + scope.retainedAreaM2).toBeCloseTo(scope.panel.areaM2, 6);
      expect(scope.openings.reduce((area, { areaM2 }) => area + areaM2, 0)).toBeCloseTo(scope.openedAreaM2, 6);
    }), RUNS);
  });

  test('lines make sections, sections make the net, and the net with its loadings and tax makes the total, to the cent', () => {
    fc.assert(fc.property(records, (record) => {
      const { lines, sections, totals } = estimated(record);
      expect(sum(lines.map(({ amount }) => amount))).toBe(minor(totals.net));
      expect(sum(sections.map(({ amount }) => amount))).toBe(minor(totals.net));
      expect(minor(totals.net) + minor(totals.overhead) + minor(totals.profit) + minor(totals.contingency) + minor(totals.tax)).toBe(minor(totals.total));
      expect(sum(totals.byCause.map(({ amount }) => amount))).toBe(minor(totals.total));
      expect(minor(totals.parts) + minor(totals.labour)).toBe(minor(totals.total));
      for (const { section, amount } of sections.map(({ code, amount: whole }) => ({ section: code, amount: whole }))) {
        expect(sum(lines.filter((line) => line.section === section).map((line) => line.amount))).toBe(minor(amount));
      }
    }), RUNS);
  });

  test('the resin of the steps is the resin of the bill and the resin in the pots', () => {
    fc.assert(fc.property(records, (record) => {
      const { process, lines } = estimated(record);
      const ofSteps = process.demands.reduce((mass, { totalKg }) => mass + totalKg, 0);
      const ofPots = process.batches.reduce((mass, { resinG, hardenerG, fillerG }) => mass + resinG + hardenerG + fillerG, 0) / 1000;
      const bought = lines.filter(({ code }) => code === 'material-resin' || code === 'material-hardener' || code.startsWith('material-filler-'));
      const ofBill = bought.reduce((mass, { netQuantity, wasteQuantity }) => mass + netQuantity + wasteQuantity, 0);
      expect(ofPots).toBeCloseTo(ofSteps, 6);
      expect(ofBill).toBeCloseTo(ofSteps, 6);
    }), RUNS);
  });

  test('nobody is left short: every part bought covers what is needed', () => {
    fc.assert(fc.property(records, (record) => {
      const short = estimated(record).lines.filter(({ kind, netQuantity, wasteQuantity, purchaseQuantity, packs }) =>
        kind !== 'labour' && packs.length > 0 && purchaseQuantity < (netQuantity + wasteQuantity) * (1 - 1e-6));
      expect(short.map(({ code }) => code)).toEqual([]);
    }), RUNS);
  });
});

describe('the estimate does not depend on how the deck was drawn', () => {
  const drawn = aRecord({ pricing: { samples: 1000 } });
  const outline = drawn.zones?.[0].outline ?? [];
  const totalOf = (changes: Partial<DefectRecord>): string => estimated({ ...drawn, ...changes }).totals.total.amount;
  const plain = totalOf({});

  test('starting at another corner', () => expect(totalOf({ zones: [{ id: 'Z1', outline: [...outline.slice(2), ...outline.slice(0, 2)] }] })).toBe(plain));
  test('going round the other way', () => expect(totalOf({ zones: [{ id: 'Z1', outline: [...outline].reverse() }] })).toBe(plain));
  test('with the origin elsewhere', () => {
    const moved = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => [x + 12_345, y - 6789] as const);
    expect(totalOf({ panel: { outline: moved(drawn.panel.outline) }, zones: [{ id: 'Z1', outline: moved(outline) }] })).toBe(plain);
  });
  test('asked twice', () => expect(JSON.stringify(estimated(drawn))).toBe(JSON.stringify(estimated(drawn))));
});

test('no number in an estimate is NaN or infinite', () => {
  fc.assert(fc.property(records, (record) => {
    const outcome = estimate(record, shippedCatalogue, 'test');
    const numbers: number[] = [];
    JSON.stringify(outcome, (_, value: unknown) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
    expect(numbers.length).toBeGreaterThan(500);
  }), { ...RUNS, numRuns: 4 });
});

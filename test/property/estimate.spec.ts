import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import { aRecord } from '../samples/a-record.js';

const SEED = 20261125;

const minor = ({ amount }: { readonly amount: string }): bigint => BigInt(amount.replace('.', ''));
const sum = (amounts: readonly { readonly amount: string }[]): bigint =>
  amounts.reduce((total, amount) => total + minor(amount), 0n);

function estimated(record: DefectRecord): Estimate {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.estimate;
}

/** A rectangular zone well inside the panel of `aRecord`, with any of the methods. */
const records = fc
  .record({
    fromX: fc.integer({ min: 250, max: 900 }),
    fromY: fc.integer({ min: 200, max: 400 }),
    length: fc.integer({ min: 150, max: 800 }),
    width: fc.integer({ min: 120, max: 350 }),
    skin: fc.constantFrom('re-bed' as const, 'relay' as const),
    coreMm: fc.constantFrom(9.5, 12.7, 15.9, 19.1),
  })
  .map(({ fromX, fromY, length, width, skin, coreMm }) =>
    aRecord({
      zones: [
        {
          id: 'Z',
          outline: [
            [fromX, fromY],
            [fromX + length, fromY],
            [fromX + length, fromY + width],
            [fromX, fromY + width],
          ],
        },
      ],
      core: { thicknessMm: coreMm },
      method: { skin },
      pricing: { samples: 1000 },
    }),
  );

/** An estimate takes a while, so the same few decks serve every invariant. */
const decks = fc
  .sample(records, { seed: SEED, numRuns: 8 })
  .map((record) => [JSON.stringify(record.zones?.[0].outline), estimated(record)] as const);

describe('what goes in comes out', () => {
  test.each(decks)('opened and retained skin make the panel, zone %s', (_, { scope }) => {
    expect(scope.openedAreaM2 + scope.retainedAreaM2).toBeCloseTo(scope.panel.areaM2, 6);
    expect(scope.openings.reduce((area, { areaM2 }) => area + areaM2, 0)).toBeCloseTo(scope.openedAreaM2, 6);
  });

  test.each(decks)(
    'lines make sections, sections the net, and with loadings and tax the total, to the cent, zone %s',
    (_, { lines, sections, totals }) => {
      expect(sum(lines.map(({ amount }) => amount))).toBe(minor(totals.net));
      expect(sum(sections.map(({ amount }) => amount))).toBe(minor(totals.net));
      expect(
        minor(totals.net) +
          minor(totals.overhead) +
          minor(totals.profit) +
          minor(totals.growth.amount) +
          minor(totals.newAreas.amount) +
          minor(totals.tax),
      ).toBe(minor(totals.total));
      expect(sum(totals.byCause.map(({ amount }) => amount))).toBe(minor(totals.total));
      expect(minor(totals.parts) + minor(totals.labour)).toBe(minor(totals.total));
      for (const { code, amount } of sections) {
        expect(sum(lines.filter(({ section }) => section === code).map((line) => line.amount))).toBe(
          minor(amount),
        );
      }
    },
  );

  test.each(decks)(
    'the resin of the steps is the resin of the bill and of the pots, zone %s',
    (_, { process, lines }) => {
      const ofSteps = process.demands.reduce((mass, { totalKg }) => mass + totalKg, 0);
      const ofPots =
        process.batches.reduce(
          (mass, { resinG, hardenerG, fillerG }) => mass + resinG + hardenerG + fillerG,
          0,
        ) / 1000;
      const bought = lines.filter(
        ({ code }) =>
          code === 'material-resin' || code === 'material-hardener' || code.startsWith('material-filler-'),
      );
      const ofBill = bought.reduce(
        (mass, { netQuantity, wasteQuantity }) => mass + netQuantity + wasteQuantity,
        0,
      );
      expect(ofPots).toBeCloseTo(ofSteps, 6);
      expect(ofBill).toBeCloseTo(ofSteps, 6);
    },
  );

  test.each(decks)(
    'nobody is left short: every part bought covers what is needed, zone %s',
    (_, { lines }) => {
      const short = lines.filter(
        ({ kind, netQuantity, wasteQuantity, purchaseQuantity, packs }) =>
          kind !== 'labour' &&
          packs.length > 0 &&
          purchaseQuantity < (netQuantity + wasteQuantity) * (1 - 1e-6),
      );
      expect(short.map(({ code }) => code)).toEqual([]);
    },
  );

  test.each(decks)('no number is NaN or infinite, zone %s', (_, estimate) => {
    const numbers: number[] = [];
    JSON.stringify(estimate, (__, value: unknown) => {
      if (typeof value === 'number') numbers.push(value);
      return value;
    });
    expect(numbers.filter((value) => !Number.isFinite(value))).toEqual([]);
    expect(numbers.length).toBeGreaterThan(500);
  });
});

describe('the estimate does not depend on how the deck was drawn', () => {
  const drawn = aRecord({ pricing: { samples: 1000 } });
  const outline = drawn.zones?.[0].outline ?? [];
  const totalOf = (changes: Partial<DefectRecord>): string =>
    estimated({ ...drawn, ...changes }).totals.total.amount;
  const plain = totalOf({});

  test('starting at another corner', () =>
    expect(totalOf({ zones: [{ id: 'Z1', outline: [...outline.slice(2), ...outline.slice(0, 2)] }] })).toBe(
      plain,
    ));
  test('going round the other way', () =>
    expect(totalOf({ zones: [{ id: 'Z1', outline: [...outline].reverse() }] })).toBe(plain));
  test('with the origin elsewhere', () => {
    const moved = (points: readonly (readonly [number, number])[]) =>
      points.map(([x, y]) => [x + 12_345, y - 6789] as const);
    expect(
      totalOf({
        panel: { outline: moved(drawn.panel.outline) },
        zones: [{ id: 'Z1', outline: moved(outline) }],
      }),
    ).toBe(plain);
  });
  test('asked twice', () => expect(JSON.stringify(estimated(drawn))).toBe(JSON.stringify(estimated(drawn))));
});

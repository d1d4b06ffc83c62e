import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { Estimate } from '../document/estimate-document.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

const answered = (record: DefectRecord): Estimate => {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
};
const hours = ({ lines }: Estimate, code: string): number =>
  lines.find((line) => line.code === `labour-${code}`)?.hours?.mean ?? 0;
const stepsOf = ({ process }: Estimate): readonly string[] => process.demands.map(({ step }) => step);

const box = (x: number, y: number, lengthMm: number, widthMm: number) =>
  [
    [x, y],
    [x + lengthMm, y],
    [x + lengthMm, y + widthMm],
    [x, y + widthMm],
  ] as const;
const quick = { samples: 1000 } as const;
const rotten = { id: 'Z1', outline: box(400, 300, 700, 350), condition: 'wet-rotten' } as const;
const loose = { id: 'Z2', outline: box(1500, 650, 250, 250), condition: 'dry-debonded' } as const;

describe('dry debonding beside a rotten place', () => {
  const alone = answered(aRecord({ zones: [rotten], pricing: quick }));
  const both = answered(
    aRecord({
      zones: [rotten, loose],
      survey: {
        readings: [{ kind: 'plug', at: [1600, 750], condition: 'debonded-dry', moisturePercent: 9 }],
      },
      pricing: quick,
    }),
  );

  test('is injected in hours and resin of its own', () => {
    expect(both.methods.places.map(({ place, rung }) => [place, rung])).toEqual([
      ['Z1', 'above-new-skin'],
      ['Z2', 'inject'],
    ]);
    // By hand: four holes at least; a mean of 0.02, 0.04, 0.08 h for each, and so on for filling them.
    expect(hours(both, 'drill-injection')).toBeGreaterThanOrEqual((4 * 0.14) / 3 - 1e-9);
    expect(hours(both, 'check-injection')).toBeGreaterThan(0);
    expect(stepsOf(both)).toContain('inject');
    expect(Number(both.totals.base.amount)).toBeGreaterThan(Number(alone.totals.base.amount));
  });

  test('shares the set-up: tent, protection and clean-up are those of the opening alone', () => {
    for (const code of ['tent', 'protect', 'clean-up'])
      expect(hours(both, code)).toBeCloseTo(hours(alone, code), 9);
    expect(hours(both, 'protect-spot') + hours(both, 'clean-up-spot')).toBe(0);
  });
});

test('a strip at the rail beside an opening is routed and filled by the metre, and its tapes are bought', () => {
  const both = answered(
    aRecord({
      panel: {
        outline: box(0, 0, 2400, 900),
        supports: [{ kind: 'toe-rail', from: [0, 900], to: [2400, 900] }],
        coreEndsMm: 0,
        accessBelow: 'none',
      },
      zones: [rotten, { id: 'Z3', outline: box(1300, 830, 900, 70), condition: 'wet-rotten' }],
      pricing: quick,
    }),
  );
  expect(both.methods.places.map(({ rung }) => rung)).toEqual(['above-new-skin', 'edge-rout-and-fill']);
  // 0.9 m at a mean of 0.3, 0.6, 1.2 h.
  expect(hours(both, 'strip-fill')).toBeCloseTo(0.9 * 0.7, 6);
  expect(both.lines.filter(({ code }) => code.startsWith('material-fabric-reinforcement-tape'))).toHaveLength(
    2,
  );
});

describe('the leak is stopped by lines of its own where nothing else in the plan stops it:', () => {
  test.each([
    ['hull-deck-joint', ['joint-grind', 'joint-tape']],
    ['crack', ['crack-grind', 'crack-tape']],
    ['chainplate', ['hardware-off', 'slot-fill', 'refit-fittings']],
  ] as const)('%s', (leak, codes) => {
    const made = answered(aRecord({ zones: [rotten], cause: { cause: 'unknown', leak }, pricing: quick }));
    expect(codes.every((code) => hours(made, code) > 0)).toBe(true);
    expect(made.leak.isRemedied).toBe(true);
    expect(made.leak.verify.length).toBeGreaterThan(20);
  });

  test('one that nobody knows is looked for, and the answer says that it is not stopped', () => {
    const made = answered(
      aRecord({ zones: [rotten], cause: { cause: 'unknown', leak: 'not-known' }, pricing: quick }),
    );
    expect(hours(made, 'leak-hunt')).toBeGreaterThan(0);
    expect(made.leak.isRemedied).toBe(false);
  });

  test('a crack that was measured is closed by its length', () => {
    const of = (lengthMm: number): number =>
      hours(
        answered(
          aRecord({ zones: [rotten], cause: { cause: 'unknown', leak: 'crack', lengthMm }, pricing: quick }),
        ),
        'crack-tape',
      );
    expect(of(900) / of(300)).toBeCloseTo(3, 6);
  });
});

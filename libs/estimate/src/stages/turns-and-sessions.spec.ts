import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

function documentOf(change: Partial<DefectRecord>) {
  const outcome = estimate(aRecord({ pricing: { samples: 1000 }, ...change }), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
}

const hoursOf = ({ lines }: ReturnType<typeof documentOf>, code: string): number =>
  lines.find((line) => line.code === code)?.netQuantity ?? 0;

describe('plies that are more than one session lays', () => {
  test('of 3 mm are laid in one, with nothing washed or sanded between them', () => {
    expect(hoursOf(documentOf({}), 'labour-key-plies')).toBe(0);
  });

  test('of 8 mm are laid in two or more, and each pause is washed and sanded in the plan', () => {
    const thick = documentOf({ outerSkin: { thicknessMm: 8 } });
    // Half an hour for each square metre and pause; 0.36 m2 of laminate at the least, one pause at the least.
    expect(hoursOf(thick, 'labour-key-plies')).toBeGreaterThan(0.5 * 0.36);
    expect(hoursOf(thick, 'labour-laminate-top')).toBeGreaterThan(0);
  });
});

describe('a bed that takes more than a crew places at once', () => {
  const roof: readonly (readonly [number, number])[] = [
    [0, 0],
    [4500, 0],
    [4500, 2000],
    [0, 2000],
  ];
  const soft: readonly (readonly [number, number])[] = [
    [200, 200],
    [4100, 200],
    [4100, 1800],
    [200, 1800],
  ];

  test('is pressed in turns with the bags of one turn', () => {
    const press = documentOf({
      panel: { outline: roof, surface: 'smooth-paint' },
      zones: [{ id: 'Z1', outline: soft, condition: 'wet-rotten' }],
    }).process.bondPressure;
    // 7.1 m2 at 1 kPa are 724 kg; 500 kg are placed before the resin gels: two turns of 362 kg, 19 bags of 20 kg.
    expect(press?.recommendation).toContain('bedded in 2 turns');
    const bags = press?.quantities.find(({ code }) => code === 'bags');
    expect(bags?.value).toBe(19);
  });
});

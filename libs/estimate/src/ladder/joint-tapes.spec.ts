import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { Estimate } from '../document/estimate-document.js';
import { estimate } from '../estimate.js';

function strip(coreType: 'marine-plywood' | 'end-grain-balsa'): Estimate {
  const record = aRecord({
    panel: {
      outline: [
        [0, 0],
        [3200, 0],
        [3200, 700],
        [0, 700],
      ],
    },
    core: { thicknessMm: 12.7, coreType },
    zones: [
      {
        id: 'Z1',
        outline: [
          [200, 200],
          [2900, 200],
          [2900, 500],
          [200, 500],
        ],
        condition: 'wet-rotten',
      },
    ],
    conditions: { shelter: 'shed' },
    pricing: { samples: 1000 },
  });
  const made = estimate(record, shippedCatalogue, 'test');
  if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
  return made.value.estimate;
}

const quantityOf = ({ lines }: Estimate, code: string): number =>
  lines.find((line) => line.code === code)?.netQuantity ?? 0;

test('joints of plywood in one layer are taped: hours, cloth and resin', () => {
  const plywood = strip('marine-plywood');
  // Two butts across a strip of 350 mm.
  expect(plywood.core?.pieces).toHaveLength(3);
  expect(quantityOf(plywood, 'material-fabric-reinforcement-tape-biaxial-600-150')).toBeCloseTo(
    0.7 * 0.15,
    4,
  );
  expect(quantityOf(plywood, 'labour-tape-core-joints')).toBeGreaterThan(0.1);
  expect(plywood.process.demands.map(({ title }) => title)).toContain('Tape over the joints of the plywood');
});

test('joints of balsa are only filled', () => {
  expect(quantityOf(strip('end-grain-balsa'), 'labour-tape-core-joints')).toBe(0);
});

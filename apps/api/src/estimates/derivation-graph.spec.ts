import { expect, test } from '@jest/globals';
import { derived, entered, type Figure } from '#lib/provenance';
import { kg, m2 } from '#lib/units';
import { derivationOf, packedDerivations } from './derivation-graph.js';

const area = entered('m2', m2(2), 'opened area', '/panel/outline');
const computed = (formula: string, inputs: Readonly<Record<string, Figure>>): Figure<'kg'> =>
  derived('kg', kg(3), formula, {
    formula,
    title: formula,
    symbol: 'm',
    cite: { source: 'ARITHMETIC' },
    inputs,
  });

test('every derivation comes back as it was, however much it shares with others', () => {
  const glass = computed('glass', { area });
  const derivations = { glass, total: computed('total', { glass, again: glass, area }) };
  const packed = packedDerivations(derivations);
  expect(derivationOf(packed, 'glass')).toEqual(glass);
  expect(derivationOf(packed, 'total')).toEqual(derivations.total);
  expect(derivationOf(packed, 'constructor')).toBeUndefined();
});

test('a chain that shares both inputs twenty times over stays small', () => {
  let figure: Figure = area;
  for (let step = 0; step < 20; step += 1) figure = computed(`step ${step}`, { a: figure, b: figure });
  expect(packedDerivations({ figure }).length).toBeLessThan(2000);
});

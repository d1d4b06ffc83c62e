import { expect, test } from '@jest/globals';
import { materialsOf, shippedCatalogue, type Catalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';

/** The shipped catalogue as if nobody sold these materials. */
const without = (isGone: (material: string) => boolean): Catalogue => ({
  ...shippedCatalogue,
  priceLists: shippedCatalogue.priceLists.map((list) => ({
    ...list,
    packs: list.packs.filter(({ content }) => !isGone(content.material)),
  })),
});

const assumed = (catalogue: Catalogue): readonly (readonly [string, string])[] => {
  const outcome = estimate(aRecord(), catalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.estimate.assumptions
    .filter(({ at }) => at === '/pricing/priceList')
    .map(({ meaning, value }) => [meaning, value]);
};

test('fabrics ranked by cloth alone, or left out because nobody sells them, are said to be', () => {
  const [resin] = materialsOf(shippedCatalogue, 'resin').filter(({ chemistry }) => chemistry === 'epoxy');
  const [mat] = materialsOf(shippedCatalogue, 'reinforcement').filter(
    ({ fabric, suitsResins }) => fabric !== 'tape' && suitsResins.includes('epoxy'),
  );
  const told = assumed(without((material) => material === resin.code || material === mat.code));
  expect(told).toContainEqual(['price that ranks the fabrics', 'cloth without resin']);
  expect(told).toContainEqual(['fabrics left out of the new skin', mat.name]);
}, 60_000);

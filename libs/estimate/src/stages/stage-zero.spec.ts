import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';

test('stage 0 is everything up to the hold and nothing after it, and costs less than the job', () => {
  const outcome = estimate(aRecord({ pricing: { samples: 1000 } }), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const {
    offer: { stageZero },
    net,
  } = outcome.value.estimate.totals;
  expect(stageZero.lines).toEqual(
    expect.arrayContaining([
      'labour-inspect-map',
      'labour-cut-skin',
      'labour-core-out-rotten',
      'labour-hold-remeasure',
    ]),
  );
  expect(stageZero.lines).not.toEqual(expect.arrayContaining(['labour-bed-core']));
  expect(stageZero.lines).not.toEqual(expect.arrayContaining(['labour-topcoat']));
  expect(Number(stageZero.amount.amount)).toBeGreaterThan(0);
  expect(Number(stageZero.amount.amount)).toBeLessThan(Number(net.amount));
  expect(Number(stageZero.contingencyFreed.amount)).toBeGreaterThan(0);
});

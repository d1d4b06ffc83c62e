import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { Estimate } from '../document/estimate-document.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

function estimated(record: DefectRecord): Estimate {
  const made = estimate({ ...record, pricing: { samples: 1000 } }, shippedCatalogue, 'test');
  if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
  return made.value.estimate;
}

const bought = ({ lines }: Estimate): Readonly<Record<string, number>> =>
  Object.fromEntries(
    lines
      .filter(({ code }) => code.startsWith('material-hardware-'))
      .map(({ code, netQuantity }) => [code.replace('material-hardware-', ''), netQuantity]),
  );

const inShed = { conditions: { shelter: 'shed' } } as const;
const ofFittings = /^labour-(hardware-off|refit-.*|spot-(fitting-off|clean-holes|bed|second-person))$/;
const likelyH = ({ lines }: Estimate): Readonly<Record<string, number>> =>
  Object.fromEntries(
    lines
      .filter(({ code }) => ofFittings.test(code))
      .map(({ code, hours }) => [code.replace('labour-', ''), Number(hours?.likely.toFixed(6))]),
  );

describe('fittings that come off are bought for by their cards:', () => {
  const withWindlass = estimated(
    aRecord({
      fittings: [
        { id: 'windlass', kind: 'windlass', at: [1000, 550], baseMm: 260 },
        { id: 'S1', kind: 'stanchion', at: [1000, 200] },
      ],
      ...inShed,
    }),
  );

  test('four bolts M10 long enough for deck and plate, and four M6 for the stanchion', () => {
    const { 'fastener-bolt-m10x60': windlass, 'fastener-bolt-m6x50': stanchion } = bought(withWindlass);
    expect([windlass, stanchion]).toEqual([4, 4]);
  });

  test('board for the plate of 285 mm, 12 mm thick, and for the solid of 360 mm in place of core', () => {
    const { 'board-12': areaM2, 'board-6': stanchionM2 } = bought(withWindlass);
    // 0.285² + 0.36², by hand; the plate of the stanchion has twice the area of its base of 75 mm, rounded up to 107 mm.
    expect(areaM2).toBeCloseTo(0.210825, 6);
    expect(stanchionM2).toBeCloseTo(0.107 ** 2, 6);
  });

  test('sealant by its kind: 125 ml under the windlass and 45 ml under the stanchion', () => {
    expect(bought(withWindlass)['consumable-sealant-butyl-tape']).toBeCloseTo(0.17, 6);
  });

  test('what a card prints is what is potted: nothing through the solid, four pockets of 31 mm', () => {
    const potting = withWindlass.process.demands.filter(({ step }) => step === 'potting');
    expect(potting.map(({ title }) => title)).toEqual(['Pot the holes of S1']);
    // 4 x π/4 x 31.35² x 12.7 mm3
    expect(potting[0].netL).toBeCloseTo(0.0392, 3);
    expect(withWindlass.hardware.map(({ id, insert }) => [id, insert !== undefined])).toEqual([
      ['windlass', true],
      ['S1', false],
    ]);
  });

  test('the lines charge each by its card: 2 and 7 h of the windlass, 0.5 and 1 h of the stanchion', () => {
    expect(likelyH(withWindlass)).toEqual({
      'hardware-off': 2.5,
      'refit-fittings': 8,
      'refit-second-person': 0.3 * 8,
    });
  });

  test('hours that the record states stand in the lines of an opened deck', () => {
    const made = estimated(
      aRecord({ fittings: [{ id: 'W', kind: 'winch', at: [1000, 550], offH: 3, onH: 9 }], ...inShed }),
    );
    expect(likelyH(made)).toEqual({
      'hardware-off': 3,
      'refit-fittings': 9,
      'refit-second-person': 2.7,
    });
  });

  test('and in those of a deck that stays closed, of which three tenths are cleaning before the holes are dug', () => {
    const made = estimated(
      aRecord({
        zones: [],
        fittings: [{ id: 'W', kind: 'winch', at: [1000, 550], wetReachMm: 10, offH: 3, onH: 9 }],
        survey: {
          readings: [{ kind: 'plug', at: [1010, 560], condition: 'wet-bonded', moisturePercent: 22 }],
        },
        ...inShed,
      }),
    );
    expect(likelyH(made)).toEqual({
      'spot-fitting-off': 3,
      'spot-clean-holes': 2.7,
      'spot-bed': 6.3,
      'spot-second-person': 2.7,
    });
  });

  test('a job without fittings buys no fastenings', () => {
    expect(bought(estimated(aRecord({ fittings: [] })))).toEqual({});
  });
});

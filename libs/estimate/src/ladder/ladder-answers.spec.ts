import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import { opened } from '../../../../test/samples/opened.js';
import type { Estimate } from '../document/estimate-document.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

const answered = (record: DefectRecord): Estimate => {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
};
const refused = (record: DefectRecord): readonly (readonly [string, string])[] => {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (outcome.ok) throw new Error(`priced as ${outcome.value.estimate.methods.planned.title}`);
  return outcome.problems.map((found) => [found.at, detailOf(found)] as const);
};
const quick = { samples: 1000 } as const;

const wetStanchion: DefectRecord = aRecord({
  zones: [],
  survey: { readings: [{ kind: 'plug', at: [400, 100], condition: 'wet-bonded' }] },
  fittings: [
    {
      id: 'S1',
      kind: 'stanchion',
      at: [400, 110],
      holes: 4,
      holeDiameterMm: 6.5,
      baseMm: 75,
      isLeaking: true,
      wetReachMm: 18,
    },
  ],
  pricing: quick,
});

describe('one wet plug under a stanchion', () => {
  const stanchion = answered(wetStanchion);

  test('is potted through its holes in 2 to 7 hours, without opening the deck or lifting the boat', () => {
    expect(stanchion.methods.planned.rung).toBe('ream-and-pot');
    expect(stanchion.summary.labourLikelyH).toBeGreaterThanOrEqual(2);
    expect(stanchion.summary.labourLikelyH).toBeLessThanOrEqual(7);
    expect(stanchion.lines.filter(({ code }) => code.startsWith('yard-') || code === 'labour-tent')).toEqual(
      [],
    );
    expect([stanchion.core, stanchion.laminate, stanchion.panel]).toEqual([undefined, undefined, undefined]);
    expect(stanchion.leftOut.map(({ section }) => section)).toEqual([
      'core',
      'laminate',
      'panel',
      'bond-pressure',
    ]);
  });

  test('has its hardware card with a plate of twice the area of the base, and stops the leak', () => {
    const [card] = stanchion.hardware;
    expect([card.id, card.fasteners, card.plate?.lengthMm]).toEqual(['S1', 4, 107]);
    expect(stanchion.leak.isRemedied).toBe(true);
  });

  test('costs less than every rung that opens the deck, and refused rungs have no price', () => {
    const { rungs } = stanchion.methods;
    const price = (code: string): number =>
      Number(rungs.find(({ rung }) => rung === code)?.priceRange?.p50.amount);
    expect(price('ream-and-pot')).toBeLessThan(price('above-new-skin') / 3);
    expect(
      rungs.filter(({ verdict, priceRange }) => verdict === 'unfit' && priceRange !== undefined),
    ).toEqual([]);
  });
});

describe('a method that does not fit is answered with the reason and what would:', () => {
  test('re-bedding a wet stanchion', () => {
    const [[at, said]] = refused({ ...wetStanchion, method: { rung: 'rebed' } });
    expect(at).toBe('/method/rung');
    expect(said).toMatch(/wet.*ream-and-pot/);
  });

  test('from below with a moulded liner', () => {
    const panel = { ...aRecord().panel, accessBelow: 'lined', lining: 'moulded-liner' } as const;
    const [[at, said]] = refused(aRecord({ panel, method: { access: 'from-below' } }));
    expect(at).toBe('/method/access');
    expect(said).toMatch(/liner.*above-new-skin/);
  });

  test.each<[string, Partial<DefectRecord>, string]>([
    [
      'a plate smaller than its base',
      { fittings: [{ id: 'W1', kind: 'windlass', at: [1000, 500], baseMm: 260, plateMm: 150 }] },
      '/fittings/0/plateMm',
    ],
    ['planks that nobody described', { panel: { ...aRecord().panel, surface: 'planked' } }, '/panel/overlay'],
    [
      'core that ends beyond the middle',
      { panel: { ...aRecord().panel, coreEndsMm: 500 } },
      '/panel/coreEndsMm',
    ],
    [
      'a rung and an access that is not its own',
      { method: { rung: 'from-below', access: 'from-above' } },
      '/method/access',
    ],
  ])('%s', (_, changes, at) => expect(refused(aRecord(changes)).map(([place]) => place)).toEqual([at]));
});

describe('from below', () => {
  const below = opened(
    answered(
      aRecord({
        panel: { ...aRecord().panel, accessBelow: 'lined', lining: 'screwed-panels', workingHeightMm: 1100 },
        method: { rung: 'from-below' },
        pricing: quick,
      }),
    ),
  );

  test('core is held up by jacks, and no bag is laid on a skin that is cut away', () => {
    const { bondPressure } = below.process;
    expect(bondPressure.method).toBe('jacks');
    expect(bondPressure.quantities.map(({ code }) => code)).not.toContain('weights');
    expect(below.lines.filter(({ material }) => material === 'consumable-sand-bag')).toEqual([]);
    expect(bondPressure.props.why).toContain('pressed upwards');
  });

  test('the cautions are those of overhead work, not of a deck opened from above', () => {
    const codes = below.cautions.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(['deck-shape', 'overhead-work', 'jacks-slip', 'enclosed-below']),
    );
    expect(codes).not.toEqual(expect.arrayContaining(['open-deck']));
    expect(codes).not.toEqual(expect.arrayContaining(['resin-rain']));
  });

  test('bows and the lining by its kind are in the hours', () => {
    const codes = below.lines.map(({ code }) => code);
    expect(codes).toEqual(
      expect.arrayContaining(['labour-deck-bows', 'labour-lining-out-panel', 'labour-lining-back-panel']),
    );
  });
});

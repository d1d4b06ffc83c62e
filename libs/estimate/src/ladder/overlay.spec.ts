import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { Estimate } from '../document/estimate-document.js';
import { estimate } from '../estimate.js';
import type { OverlayRecord } from '../job/defect-record.js';

function under(overlay: OverlayRecord): Estimate {
  const made = estimate(
    aRecord({
      panel: { ...aRecord().panel, surface: 'planked', overlay },
      cause: { cause: 'construction', leak: 'overlay-screws' },
      pricing: { samples: 1000 },
    }),
    shippedCatalogue,
    'test',
  );
  if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
  return made.value.estimate;
}

const netOf = ({ lines }: Estimate, code: string): number | undefined =>
  lines.find((line) => line.code === code)?.netQuantity;

describe('screwed planks over a soft deck', () => {
  const back = under({ kind: 'screwed-planks', thicknessMm: 12, then: 'back' });
  const paint = under({ kind: 'screwed-planks', thicknessMm: 12, then: 'paint' });
  const others = under({ kind: 'screwed-planks', thicknessMm: 12, then: 'not-included' });

  test('laid again, take caulk, a third of new planks and their screws, and no paint', () => {
    const areaM2 = (netOf(back, 'material-overlay-plank') ?? 0) * 3;
    // A hand of 300 mm past the opening all round, at most the panel of 2 m2; the opening is larger than the zone of 0.18 m2.
    expect(areaM2).toBeGreaterThan((Math.sqrt(0.18) + 0.6) ** 2);
    expect(areaM2).toBeLessThanOrEqual(2);
    expect(netOf(back, 'material-overlay-caulk')).toBeCloseTo(0.5 * areaM2, 6);
    expect(netOf(back, 'material-overlay-screw')).toBeCloseTo(100 * areaM2, 6);
    expect(netOf(back, 'labour-overlay-back')).toBeGreaterThan(0);
    expect(netOf(back, 'labour-prime')).toBeUndefined();
    expect(netOf(back, 'labour-strip-covering')).toBeUndefined();
    expect(back.scope.included.join(' ')).toContain('laid again with one plank in three new');
  });

  test('replaced by paint, come off the whole panel, and no screw hole stays open', () => {
    expect(netOf(paint, 'labour-prime')).toBeGreaterThan(0);
    expect(netOf(paint, 'material-overlay-caulk')).toBeUndefined();
    const filled = paint.process.demands.find(({ title }) => title.startsWith('Fill the screw holes'));
    // 100 holes in each of 2 m2, 10 mm wide through 3 + 12.7 mm: 200 x π/4 x 0.1² x 0.157 l
    expect(filled?.netL).toBeCloseTo(200 * (Math.PI / 4) * 0.1 ** 2 * 0.157, 3);
  });

  test('left to others, are named among what is not included', () => {
    expect(others.scope.excluded.join(' ')).toContain('overlay off, its holes filled');
    expect(netOf(others, 'labour-overlay-off-screwed')).toBeUndefined();
    expect(others.leak.text).toContain('will not last until it is');
  });

  test('widen the range of the price as they do the price: what was recorded lies within it', () => {
    for (const { totals } of [back, paint]) {
      expect(Number(totals.range.p10.amount)).toBeLessThan(Number(totals.total.amount));
      expect(Number(totals.range.p90.amount)).toBeGreaterThan(Number(totals.total.amount));
    }
  });
});

describe('a leak is stopped only by what is done about it:', () => {
  test('a hatch that leaks is not stopped by bedding a stanchion: it gets lines of its own', () => {
    const made = estimate(
      aRecord({
        fittings: [{ id: 'S1', kind: 'stanchion', at: [1000, 500], isLeaking: true }],
        cause: { cause: 'leaking-fitting', leak: 'hatch' },
        pricing: { samples: 1000 },
      }),
      shippedCatalogue,
      'test',
    );
    if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
    const { leak, lines } = made.value.estimate;
    expect(leak.isRemedied).toBe(true);
    expect(lines.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['labour-frame-ring', 'material-leak-consumable-sealant-polyurethane']),
    );
  });
});

import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../test/samples/a-record.js';
import { opened, type Opened } from '../../../test/samples/opened.js';
import type { DefectRecord } from './job/defect-record.js';
import { estimate } from './estimate.js';

/** Bad core out to the deck edge along 1.2 m, so that some lies under the flange. */
const zones = [
  {
    id: 'Z1',
    outline: [
      [200, 0],
      [1400, 0],
      [1400, 500],
      [200, 500],
    ] as const,
  },
];

function estimated(changes: Partial<DefectRecord>): Opened {
  const made = estimate(aRecord({ zones, ...changes }), shippedCatalogue, 'test');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return opened(made.value.estimate);
}

const flangeOf = ({ assumptions }: Opened): string | undefined =>
  assumptions.find(({ at }) => at === '/method/flangeMm')?.value;

const thick = { core: { thicknessMm: 38 }, outerSkin: { thicknessMm: 1.5 } };

test('over thick core under a thin skin the cut moves out to what the taper needs, and the reason names both ways', () => {
  const moved = estimated(thick);
  const kept = estimated({ ...thick, method: { flangeMm: 50 } });
  // 12:1 on 1.5 mm leaves no room for the steps of its plies, so the taper is 20 mm wide; 10 mm more are kept beyond it.
  expect(flangeOf(moved)).toBe('30 mm');
  expect(moved.core.solidVolumeL).toBeLessThan(kept.core.solidVolumeL);
  expect(moved.summary.labourMeanH).toBeLessThan(kept.summary.labourMeanH - 0.1);
  expect(Number(moved.totals.total.amount)).toBeLessThan(Number(kept.totals.total.amount));
  const because = moved.assumptions.find(({ at }) => at === '/method/flangeMm')?.because;
  expect(because).toContain(`${kept.summary.labourMeanH.toFixed(1)} h`);
  expect(because).toContain(`${moved.summary.labourMeanH.toFixed(1)} h`);
});

test('a flange that was stated is kept, and the note says what a wider opening would take', () => {
  const kept = estimated({ ...thick, method: { flangeMm: 50 } });
  expect(flangeOf(kept)).toBeUndefined();
  expect(kept.core.notes.join()).toContain('the flange is kept as it was stated');
});

test('over half-inch core the lip is filled', () => {
  const half = estimated({});
  expect(flangeOf(half)).toBe('50 mm');
  expect(half.core.notes.join()).toContain('so it is filled');
});

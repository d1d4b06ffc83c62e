import { expect, test } from '@jest/globals';
import { lipOrWider, lipWords } from './lip-or-wider.js';

/** A lip of 50 mm along 2 m, as deep as the cavity. */
const lip = (cavityMm: number) => ({ areaM2: 0.1, volumeL: 0.1 * cavityMm, widthMm: 50 });

test('moved out by 20 mm over a lip of 50 mm, half-inch core is better filled and inch core better opened', () => {
  const thin = lipOrWider([lip(14.3)], 20);
  const thick = lipOrWider([lip(27)], 20);
  // By hand: two fifths of 1.43 l at 0.8 x (0.5 + 0.9 + 1.8)/3 h; two fifths of 0.1 m2 at 16 h.
  expect(thin?.fillH).toBeCloseTo((0.4 * 1.43 * 0.8 * 3.2) / 3, 6);
  expect(thin?.widerH).toBeCloseTo(0.4 * 0.1 * 16, 6);
  expect(thin!.widerH).toBeGreaterThan(thin!.fillH);
  expect(thick!.widerH).toBeLessThan(thick!.fillH);
});

test('only where nothing of the lip is left is its routing spared', () => {
  // By hand: the whole litre and a half, and 2 m of lip at 0.8 x (0.15 + 0.3 + 0.6)/3 h.
  expect(lipOrWider([lip(14.3)], 50)?.fillH).toBeCloseTo((1.43 * 0.8 * 3.2) / 3 + (2 * 0.8 * 1.05) / 3, 6);
});

test('nothing under a lip, or no room to move, is nothing to compare', () => {
  expect(lipOrWider([], 20)).toBeUndefined();
  expect(lipOrWider([{ areaM2: 0.001, volumeL: 0.01, widthMm: 20 }], 20)).toBeUndefined();
  expect(lipOrWider([lip(27)], 0)).toBeUndefined();
});

test('a lip that is filled all the same says why', () => {
  const less = { fillH: 2, widerH: 1 };
  expect(lipWords({ fillH: 1, widerH: 2 }, 20, 'usual')).toContain('so it is filled');
  expect(lipWords(less, 20, 'stated')).toContain('as it was stated');
  expect(lipWords(less, 20, 'usual')).toContain('over the whole job it does not take less');
});

import { expect, test } from '@jest/globals';
import { lipOrWider } from './lip-or-wider.js';

/** A lip of 70 mm along 2 m, as deep as the cavity. */
const lip = (cavityMm: number) => ({ areaM2: 0.14, volumeL: 0.14 * cavityMm, widthMm: 70 });

test('in half-inch core the lip is filled, in inch core a wider opening takes fewer hours', () => {
  const thin = lipOrWider([lip(14.3)]);
  const thick = lipOrWider([lip(27)]);
  // Filled: 0.8 x (0.5 + 0.9 + 1.8)/3 h a litre and 0.8 x 0.35 h a metre; opened: 16 h/m2 and 1.45 h for each metre of cut, by hand.
  expect(thin?.fillH).toBeCloseTo((0.8 * 3.2 * 2.002) / 3 + 0.28 * 2, 3);
  expect(thin?.widerH).toBeCloseTo(16 * 0.14 + 1.45 * 0.14, 6);
  expect(thin?.words).toContain('it is filled');
  expect(thick?.words).toContain('a wider opening takes less');
});

test('nothing under a lip is nothing to compare', () => {
  expect(lipOrWider([])).toBeUndefined();
  expect(lipOrWider([{ areaM2: 0.001, volumeL: 0.01, widthMm: 20 }])).toBeUndefined();
});

import { expect, test } from '@jest/globals';
import { partlyLoadedBeam } from './partly-loaded-beam.js';

const beam = { span: 1000, bending: 5e6, shear: 500 };

test('a full uniform load gives 5/384 in bending, 1/8 in shear, and 1/8 for the moment', () => {
  const { w, m, q } = partlyLoadedBeam(beam, { pressure: 0.005, from: 0, to: 1000 }, 500);
  expect(w).toBeCloseTo((5 * 0.005 * 1000 ** 4) / (384 * 5e6) + (0.005 * 1000 ** 2) / (8 * 500), 9);
  expect(m).toBeCloseTo((0.005 * 1000 ** 2) / 8, 9);
  expect(q).toBeCloseTo(0, 12);
});

test('a narrow load at midspan is a point load: 1/48 and 1/4', () => {
  const { w } = partlyLoadedBeam(beam, { pressure: 50, from: 499.99, to: 500.01 }, 500);
  expect(w).toBeCloseTo(1000 ** 3 / (48 * 5e6) + 1000 / (4 * 500), 4);
});

test('the far end does not sink, and the reactions carry the load', () => {
  const load = { pressure: 0.01, from: 100, to: 350 };
  expect(partlyLoadedBeam(beam, load, 1000).w).toBeCloseTo(0, 10);
  expect(partlyLoadedBeam(beam, load, 0).q - partlyLoadedBeam(beam, load, 1000).q).toBeCloseTo(2.5, 12);
});

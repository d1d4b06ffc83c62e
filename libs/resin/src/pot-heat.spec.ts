import { expect, test } from '@jest/globals';
import {
  courseOf,
  GEL_CONVERSION,
  layerLossTimeMin,
  peakOf,
  potLossTimeMin,
  rateForPotLife,
} from './pot-heat.js';

const epoxy = { heatJPerG: 450, specificHeatJPerGK: 1.9, activationEnergyKJPerMol: 55, densityGPerCm3: 1.12 };

test('a layer that loses its heat at once gels in the isothermal time', () => {
  const thin = { matter: epoxy, airC: 20, ratePerMin: 0.01, lossTimeMin: 1e-3 };
  const { gelMin } = courseOf(thin);
  expect(gelMin / (-Math.log(1 - GEL_CONVERSION) / 0.01)).toBeCloseTo(1, 2);
  expect(peakOf(thin)).toBeLessThan(20.01);
});

test('a pot that loses nothing never passes the adiabatic ceiling and comes within a tenth of it', () => {
  const peakC = peakOf({ matter: epoxy, airC: 20, ratePerMin: 0.005, lossTimeMin: 1e9 });
  expect(peakC).toBeLessThanOrEqual(20 + 450 / 1.9);
  expect(peakC).toBeGreaterThan(20 + 0.9 * (450 / 1.9));
});

test('a 100 g pot loses heat with a time constant of about half an hour', () => {
  // V = 100/1.12 = 89.29 cm3; D = (4 x 89.29/pi)^(1/3) = 4.844 cm; S = 1.5 pi 4.844^2 = 110.6 cm2; 190 J/K over 0.1106 W/K is 1718 s.
  expect(potLossTimeMin(epoxy, 100)).toBeCloseTo(28.6, 1);
  expect(layerLossTimeMin(epoxy, 1.5)).toBeCloseTo((1120 * 1.5 * 1.9) / 600, 10);
});

test('a pot calibrated on its printed life gels after it, a larger one sooner, a spread one much later', () => {
  const ratePerMin = rateForPotLife(epoxy, 25, { massG: 100, potLifeMin: 25 });
  const gelOf = (lossTimeMin: number) =>
    courseOf({ matter: epoxy, airC: 25, ratePerMin, lossTimeMin }).gelMin;
  expect(gelOf(potLossTimeMin(epoxy, 100))).toBeCloseTo(25, 1);
  expect(gelOf(potLossTimeMin(epoxy, 500))).toBeLessThan(25);
  expect(gelOf(layerLossTimeMin(epoxy, 1.5))).toBeGreaterThan(35);
});

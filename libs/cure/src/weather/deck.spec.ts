import { describe, expect, test } from '@jest/globals';
import { deckTemperature } from './deck.js';

describe('a shade over the deck', () => {
  // By hand, at noon: 25 + 20 in the sun, 25 + 20 x 0.2 under the cloth; at night there is no sun to keep off.
  test('leaves a fifth of the warmth by the sun, and all of that by a heater', () => {
    expect(deckTemperature(25, 12, { sunK: 20 })).toBeCloseTo(45, 9);
    expect(deckTemperature(25, 12, { sunK: 20, isShaded: true })).toBeCloseTo(29, 9);
    expect(deckTemperature(25, 12, { sunK: 20, heaterK: 5, isShaded: true })).toBeCloseTo(34, 9);
    expect(deckTemperature(25, 0, { sunK: 20, isShaded: true })).toBeCloseTo(25, 9);
  });
});

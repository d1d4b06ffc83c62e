import { describe, expect, test } from '@jest/globals';
import { readQuantity, type Dimension } from './quantity.js';
import { mm } from './brands.js';
import { usLength } from './us-display.js';

describe('a typed quantity is read exactly', () => {
  test.each<[string, Dimension, number]>([
    ['5/8 in', 'length', 15.875],
    ['2 ft 3 in', 'length', 685.8],
    ['2 5/8 in', 'length', 66.675],
    ['12.7mm', 'length', 12.7],
    ['65 degF', 'temperature', 65 * 5 / 9 - 160 / 9],
    ['212 degF', 'temperature', 100],
    ['-40 degF', 'temperature', -40],
    ['22 ft2', 'area', 2.04386688],
    ['1 lb', 'mass', 0.45359237],
    ['1 gal', 'volume', 3.785411784],
    ['12 kn', 'speed', 6.173333333333333],
  ])('%s as %s is %d', (text, dimension, expected) => {
    expect(readQuantity(text, dimension)).toBeCloseTo(expected, 12);
  });

  test('18 oz/yd2 is 610 g/m2 (28.349523125 g over 0.83612736 m2)', () => {
    expect(readQuantity('18 oz/yd2', 'areal mass')).toBeCloseTo((18 * 28.349523125) / 0.83612736, 10);
  });

  test.each(['12', '12,5 mm', 'mm', '', '1/0 in', '5 in junk,', '1e3 mm', '--5 mm', 'NaN mm', '0x10 mm', '5 in '.repeat(20)])(
    'nothing is guessed from %j', (text) => {
      expect(readQuantity(text, 'length')).toEqual(expect.objectContaining({ fault: expect.anything() }));
    });

  test('a unit of another dimension is named', () => {
    expect(readQuantity('5 kg', 'length')).toEqual({ fault: 'wrong-unit', given: 'kg' });
  });

  test.each(['__proto__', 'constructor', 'toString'])('the name %s is not a unit', (name) => {
    expect(readQuantity(`5 ${name}`, 'length')).toEqual({ fault: 'wrong-unit', given: name });
  });
});

test.each([[15.875, '5/8 in'], [685.8, '27 in'], [1000, '3 ft 3 3/8 in'], [0.4, '0 in'], [-12.7, '-1/2 in']])(
  '%d mm shows on a tape as %s', (length, shown) => {
    expect(usLength(mm(length))).toBe(shown);
  });

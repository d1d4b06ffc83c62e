import { describe, expect, test } from '@jest/globals';
import { readQuantity, type Dimension } from './quantity.js';
import { mm } from './brands.js';
import { unitOfField } from './field-unit.js';
import { usLength, usText } from './us-display.js';

describe('a typed quantity is read exactly', () => {
  test.each<[string, Dimension, number]>([
    ['5/8 in', 'length', 15.875],
    ['2 ft 3 in', 'length', 685.8],
    ['2 5/8 in', 'length', 66.675],
    ['12.7mm', 'length', 12.7],
    ['65 degF', 'temperature', (65 * 5) / 9 - 160 / 9],
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

  test.each([
    '12',
    '12,5 mm',
    'mm',
    '',
    '1/0 in',
    '5 in junk,',
    '1e3 mm',
    '--5 mm',
    'NaN mm',
    '0x10 mm',
    '5 in '.repeat(20),
    '1/2',
    '1e400',
    '0x10',
    '1 e400',
    '5 in2in',
  ])('nothing is guessed from %j', (text) => {
    expect(readQuantity(text, 'length')).toEqual({ fault: 'unreadable', why: expect.any(String) });
  });

  test.each([
    ['12,7 mm', 'decimals are written with a point, and thousands without a mark'],
    ['1/2', 'it has no unit'],
    ['12', 'it has no unit'],
    ['2 5/8', 'it has no unit'],
    ['1e400', 'numbers are plain decimals or fractions, without exponents or other bases'],
    ['0x10', 'numbers are plain decimals or fractions, without exponents or other bases'],
    ['1e-3 mm', 'numbers are plain decimals or fractions, without exponents or other bases'],
    ['1/0 in', '1/0 is not a number'],
    ['about 5 mm', 'it is not a number with a unit, or several'],
  ])('%j is refused because %s', (text, why) => {
    expect(readQuantity(text, 'length')).toEqual({ fault: 'unreadable', why });
  });

  test('a unit of another dimension is named', () => {
    expect(readQuantity('5 kg', 'length')).toEqual({ fault: 'wrong-unit', given: 'kg' });
  });

  test.each(['__proto__', 'constructor', 'toString'])('the name %s is not a unit', (name) => {
    expect(readQuantity(`5 ${name}`, 'length')).toEqual({ fault: 'wrong-unit', given: name });
  });
});

test.each([
  [15.875, '5/8 in'],
  [685.8, '27 in'],
  [1000, '3 ft 3 3/8 in'],
  [0.4, '0 in'],
  [-12.7, '-1/2 in'],
])('%d mm shows on a tape as %s', (length, shown) => {
  expect(usLength(mm(length))).toBe(shown);
});

describe('a value in US customary units', () => {
  test.each([
    [12.7, 'mm', '1/2 in'],
    [12, 'mm', '≈ 15/32 in'],
    [0.79375, 'mm', '1/32 in'],
    [0.8, 'mm', '≈ 1/32 in'],
    [3, 'mm', '≈ 0.118 in'],
    [54.76875, 'mm', '2 5/32 in'],
    [0, 'mm', '0 in'],
    [-6.5, 'mm', '≈ -1/4 in'],
    [3.048, 'm', '10 ft 0 in'],
    [1, 'm', '≈ 3 ft 3 3/8 in'],
    [2.04386688, 'm2', '22 ft2'],
    [1, 'kg', '≈ 2.205 lb'],
    [0.2, 'kg', '≈ 7.055 oz'],
    [3.785411784, 'l', '1 gal'],
    [0.5, 'l', '≈ 16.91 floz'],
    [20, 'degC', '68 degF'],
    [300, 'g/m2', '≈ 8.848 oz/yd2'],
    [60, 'kg/m3', '≈ 3.746 lb/ft3'],
  ])('%d %s is %s', (value, unit, shown) => {
    expect(usText(value, unit)).toBe(shown);
  });

  // NIST Special Publication 811 (2008), Appendix B.8: 1 psi = 6.894757 kPa, 1 lbf = 4.448222 N, 1 lbf.in = 0.1129848 N.m (from memory).
  test.each([
    [6.894757, 'kPa', '≈ 1 psi'],
    [4.448222, 'N', '≈ 1 lbf'],
    [112.9848, 'N.mm', '≈ 1 in.lbf'],
    [0.44704, 'm/s', '1 mph'],
    [119.8264, 'kg/m3', '≈ 7.481 lb/ft3'],
  ])('%d %s is %s as the table of conversions has it', (value, unit, shown) => {
    expect(usText(value, unit)).toBe(shown);
  });

  test.each(['h', '1', '%', 'K', 'EUR', 'constructor'])('the unit %s stays as it is', (unit) => {
    expect(usText(5, unit)).toBeUndefined();
  });

  test.each([
    ['thicknessMm', 'mm'],
    ['areaM2', 'm2'],
    ['arealMassGPerM2', 'g/m2'],
    ['greatestMomentXN', 'N'],
    ['bendingXNmm', 'N.mm'],
    ['dNmm', 'N.mm'],
    ['availableKPa', 'kPa'],
    ['coldestC', 'degC'],
    ['kerfMm2', 'mm2'],
    ['densityKgPerM3', 'kg/m3'],
    ['leastWindMPerS', 'm/s'],
  ])('%s is in %s', (name, unit) => {
    expect(unitOfField(name)).toBe(unit);
  });

  test.each(['costPerM2', 'labourH', 'dewMarginK', 'plyCount', 'sku', 'at100GMin', 'name', 'DEM'])(
    '%s has no unit with another in US practice',
    (name) => {
      expect(unitOfField(name)).toBeUndefined();
    },
  );
});

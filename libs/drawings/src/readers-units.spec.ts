import { describe, expect, test } from '@jest/globals';
import { defaultReader, type Reader } from './reader.js';
import { inReadersUnits } from './readers-units.js';

const us: Reader = { ...defaultReader, locale: 'en-US', units: 'us' };
const none = { 'm²': [], 'kg': [], 'l': [] };
const said = (text: string): string => inReadersUnits(us, text, none);

describe('a sentence for a reader of US units', () => {
  test('has as many digits as the engine said, and the value of the document where it holds one', () => {
    expect(said('0.46 m² is opened')).toBe('5 ft² is opened');
    expect(inReadersUnits(us, '0.46 m² is opened', { ...none, 'm²': [0.4573, 1.42] })).toBe(
      '4.92 ft² is opened',
    );
    // Two values that round to the same one are not told apart: neither is taken.
    expect(inReadersUnits(us, '0.46 m²', { ...none, 'm²': [0.4573, 0.4641] })).toBe('5 ft²');
  });

  // By hand: 3/25.4 = 0.118 in, an eighth is 0.125; 2/25.4 = 0.0787 in, five sixty-fourths are 0.0781.
  test.each([
    ['within 3 mm of both', 'within 1/8 in of both'],
    ['2 mm is allowed', '5/64 in is allowed'],
    ['at most 1 mm low', 'at most 0.04 in low'],
    ['a bed of 0.9 mm', 'a bed of 0.035 in'],
    ['100 and 150 mm', '3 15/16 in and 5 7/8 in'],
    ['every 300 mm', 'every 11 13/16 in'],
    ['deck at most 28 °C', 'deck at most 82 °F'],
    ['3 K above the dew point', '5 °F above the dew point'],
    ['120,000 N·mm', '1,060 in·lbf'],
    ['120 N·m', '1,060 in·lbf'],
    ['36.2 kN/m', '207 lbf/in'],
    ['96.62 mm³', '0.006 in³'],
    ['600 g/m²', '17.7 oz/yd²'],
    ['no figure of 40 h', 'no figure of 40 h'],
  ])('%s is %s', (engine, reader) => {
    expect(said(engine)).toBe(reader);
  });

  test('a fraction is never further off than half a sixteenth, which is less than a bond line', () => {
    for (let lengthMm = 2; lengthMm <= 400; lengthMm += 1) {
      const text = said(`${lengthMm} mm`);
      const inches = text
        .replace(' in', '')
        .split(' ')
        .reduce((sum, part) => {
          const [over, under = '1'] = part.split('/');
          return sum + Number(over) / Number(under);
        }, 0);
      expect(Math.abs(inches * 25.4 - lengthMm)).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
    }
  });
});

test('a reader of SI units gets the sentence as it is', () => {
  expect(inReadersUnits(defaultReader, '0.46 m² at 20 °C', none)).toBe('0.46 m² at 20 °C');
});

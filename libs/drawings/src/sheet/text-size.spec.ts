import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from '@jest/globals';
import { boldWidths, coveredRanges, regularWidths, UNITS_PER_EM } from './glyph-metrics.js';
import { withUnitSigns } from './unit-signs.js';
import { CAP_SHARE, printable, shortened, textWidthMm, wrapped } from './text-size.js';

const require = createRequire(import.meta.url);

/** Reads what the layout needs straight from the tables of a TrueType file (head, hhea, hmtx, cmap format 4, OS/2). */
function fontFile(path: string) {
  const bytes = readFileSync(require.resolve(`@expo-google-fonts/arimo/${path}`));
  const at = new Map(
    Array.from({ length: bytes.readUInt16BE(4) }, (_, index) => {
      const entry = 12 + index * 16;
      return [bytes.toString('latin1', entry, entry + 4), bytes.readUInt32BE(entry + 8)];
    }),
  );
  const metricCount = bytes.readUInt16BE(at.get('hhea')! + 34);
  const advance = (glyph: number): number =>
    bytes.readUInt16BE(at.get('hmtx')! + 4 * Math.min(glyph, metricCount - 1));
  const cmap = at.get('cmap')!;
  const subtables = Array.from(
    { length: bytes.readUInt16BE(cmap + 2) },
    (_, index) => cmap + bytes.readUInt32BE(cmap + 8 + index * 8),
  );
  const table = subtables.find((offset) => bytes.readUInt16BE(offset) === 4)!;
  const segments = bytes.readUInt16BE(table + 6) / 2;
  const glyphOf = (code: number): number => {
    for (let index = 0; index < segments; index += 1) {
      if (bytes.readUInt16BE(table + 14 + index * 2) < code) continue;
      const start = bytes.readUInt16BE(table + 16 + segments * 2 + index * 2);
      if (start > code) return 0;
      const delta = bytes.readInt16BE(table + 16 + segments * 4 + index * 2);
      const place = table + 16 + segments * 6 + index * 2;
      const range = bytes.readUInt16BE(place);
      return range === 0 ? (code + delta) & 0xffff : bytes.readUInt16BE(place + range + (code - start) * 2);
    }
    return 0;
  };
  return {
    unitsPerEm: bytes.readUInt16BE(at.get('head')! + 18),
    capHeight: bytes.readInt16BE(at.get('OS/2')! + 88),
    glyphOf,
    widthOf: (code: number) => advance(glyphOf(code)),
  };
}

const faces = [
  ['regular', '400Regular/Arimo_400Regular.ttf', regularWidths],
  ['bold', '700Bold/Arimo_700Bold.ttf', boldWidths],
] as const;

describe.each(faces)('the %s face', (_, path, widths) => {
  const font = fontFile(path);

  test('has the advance widths that its own tables give', () => {
    expect(font.unitsPerEm).toBe(UNITS_PER_EM);
    const differing = widths.flatMap(([first, row]) =>
      row.flatMap((width, index) => {
        const code = first + index;
        return font.glyphOf(code) === 0 || font.widthOf(code) === width ? [] : [code];
      }),
    );
    expect(differing).toEqual([]);
  });

  test('has a glyph for every code point that counts as covered', () => {
    const ranges = coveredRanges
      .flatMap((row) => row.split(' '))
      .map((range) => range.split('-').map((digits) => Number.parseInt(digits, 16)));
    const missing = ranges
      .flatMap(([first, last = first]) =>
        Array.from({ length: last - first + 1 }, (__, index) => first + index),
      )
      .filter((code) => font.glyphOf(code) === 0);
    expect(missing).toEqual([]);
  });

  test('has capitals as high as the layout takes them', () => {
    expect(font.capHeight / font.unitsPerEm).toBeCloseTo(CAP_SHARE, 2);
  });
});

describe('text in a line', () => {
  test('is as wide as its letters', () => {
    expect(textWidthMm('Bow', 10, 'regular')).toBeCloseTo(((1366 + 1139 + 1479) / 2048) * 10, 9);
  });

  test('breaks between words and inside a word that is too long', () => {
    const lines = wrapped('core out from under the lip Donaudampfschifffahrt', 20, 3, 'regular');
    expect(lines.every((line) => textWidthMm(line, 3, 'regular') <= 20)).toBe(true);
    expect(lines.join('').replaceAll(' ', '')).toBe('coreoutfromunderthelipDonaudampfschifffahrt');
  });

  test('that is cut short says so', () => {
    expect(shortened('a very long name of a fitting', 12, 3, 'regular')).toMatch(/^a very.*…$/);
    expect(shortened('short', 50, 3, 'regular')).toBe('short');
  });

  test('cuts no quantity in two: twelve metres are not twelve millimetres', () => {
    const said = 'core edge dug back 12 mm and sealed';
    for (let widthMm = 20; widthMm < textWidthMm(said, 3, 'regular'); widthMm += 0.2)
      expect(shortened(said, widthMm, 3, 'regular')).not.toMatch(/12( m)?…$/);
    expect(shortened(said, textWidthMm(`${said.slice(0, 24)} …`, 3, 'regular'), 3, 'regular')).toMatch(
      /12 mm…$/,
    );
  });

  test('names what the font has no glyph for instead of dropping it', () => {
    expect(printable('plain ±°²äЖא')).toBe('plain ±°²äЖא');
    expect(printable('龍 🛥')).toBe('[U+9F8D] [U+1F6E5]');
    expect(printable('left\u202Eright\u0000end\nnext')).toBe('left[U+202E]right[U+0000]end next');
  });
});

test.each([
  ['Woven roving 600 g/m2', 'Woven roving 600 g/m²'],
  ['150 kg/m3, 0.45 m2.', '150 kg/m³, 0.45 m².'],
  ['56.08 EUR/m2', '56.08 EUR/m²'],
  ['at least 5 degC until', 'at least 5 °C until'],
  ['dearer by 0.80 per m2', 'dearer by 0.80 per m²'],
  ['4.7 ft2', '4.7 ft²'],
  ['fitting m2-port', 'fitting m2-port'],
  ['m2.5 screws', 'm2.5 screws'],
  ['pack RM200', 'pack RM200'],
  ['code am2', 'code am2'],
])('%s is printed as %s', (spelt, printed) => {
  expect(withUnitSigns(spelt)).toBe(printed);
});

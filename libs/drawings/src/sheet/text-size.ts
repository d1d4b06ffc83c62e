import { boldWidths, coveredRanges, regularWidths, UNITS_PER_EM } from './glyph-metrics.js';

export type Weight = 'regular' | 'bold';

/** Height of the capitals, of the tallest letters and depth of the descenders, as shares of the type size. */
export const CAP_SHARE = 0.688;
export const ASCENT_SHARE = 0.74;
export const DESCENT_SHARE = 0.212;

const tableOf = (rows: readonly (readonly [number, readonly number[]])[]): ReadonlyMap<number, number> =>
  new Map(
    rows.flatMap(([first, widths]) => widths.map((width, index): [number, number] => [first + index, width])),
  );

const tables: Readonly<Record<Weight, ReadonlyMap<number, number>>> = {
  regular: tableOf(regularWidths),
  bold: tableOf(boldWidths),
};

/** How wide a run of text is; a code point outside the tables counts as a full em, so that room is never short. */
export function textWidthMm(text: string, sizeMm: number, weight: Weight): number {
  let units = 0;
  for (const letter of text) units += tables[weight].get(letter.codePointAt(0) ?? 0) ?? UNITS_PER_EM;
  return (units / UNITS_PER_EM) * sizeMm;
}

/** Breaks text into lines no wider than asked; a word wider than a line is broken inside. */
export function wrapped(text: string, widthMm: number, sizeMm: number, weight: Weight): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/).flatMap((long) => fitting(long, widthMm, sizeMm, weight))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && textWidthMm(longer, sizeMm, weight) > widthMm) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

function fitting(word: string, widthMm: number, sizeMm: number, weight: Weight): readonly string[] {
  if (textWidthMm(word, sizeMm, weight) <= widthMm) return [word];
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (part !== '' && textWidthMm(part + letter, sizeMm, weight) > widthMm) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
}

/** Shortens text to a width, marking the cut with an ellipsis; a quantity goes whole or stays whole, for half of its unit is another one. */
export function shortened(text: string, widthMm: number, sizeMm: number, weight: Weight): string {
  if (textWidthMm(text, sizeMm, weight) <= widthMm) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidthMm(`${letters.join('')}…`, sizeMm, weight) > widthMm) letters.pop();
  return `${withoutHalfQuantity(letters.join(''), text)}…`;
}

/** What is left of a number and its unit when the cut went through them is taken away too. */
function withoutHalfQuantity(kept: string, text: string): string {
  const isCutInWord = /\S$/u.test(kept) && /^\S/u.test(text.slice(kept.length));
  const half = isCutInWord ? /\s\d[\d.,]*\s?\p{L}*$/u : /\s\d[\d.,]*\s?$/u;
  const whole = kept.replace(half, '');
  return (whole === '' ? kept : whole).trimEnd();
}

const covered: readonly (readonly [number, number])[] = coveredRanges
  .flatMap((row) => row.split(' '))
  .map((range) => {
    const [first, last = first] = range.split('-').map((digits) => Number.parseInt(digits, 16));
    return [first, last];
  });

const isCovered = (code: number): boolean => covered.some(([first, last]) => code >= first && code <= last);

/** Joiners, marks of direction and other signs that change how their neighbours look, or cannot be seen. */
const isInvisibleControl = (code: number): boolean =>
  code < 0x20 ||
  (code >= 0x7f && code < 0xa0) ||
  code === 0xad ||
  code === 0xfeff ||
  (code >= 0x200b && code <= 0x200f) ||
  (code >= 0x2028 && code <= 0x202e) ||
  (code >= 0x2060 && code <= 0x206f);

/**
 * Text as the embedded font can print it: a character without a glyph, or one that would silently reorder or hide
 * its neighbours, is named by its code point instead of being dropped. Line breaks and tabs become spaces.
 */
export const printable = (text: string): string =>
  [...text.replace(/\p{Surrogate}/gu, '\uFFFD').replace(/[\t\n\r\u2028\u2029]+/g, ' ')]
    .map((letter) => {
      const code = letter.codePointAt(0) ?? 0;
      return isCovered(code) && !isInvisibleControl(code) ? letter : codeName(letter);
    })
    .join('');

/** What stands for a character that cannot be shown. */
export const codeName = (letter: string): string =>
  `[U+${(letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;

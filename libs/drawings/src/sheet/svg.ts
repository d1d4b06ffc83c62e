import { strokes, dashesMm, type LineType } from './line-types.js';
import { textBox, type Fill, type Mark, type PathMark, type TextMark } from './marks.js';
import type { Scale } from './scale.js';
import { grown, type Point } from './shapes.js';
import { codeName } from './text-size.js';

/** A drawing ready to be written: marks on a sheet, with the words that stand in for it. */
export interface Drawing {
  /** Stable name, also the prefix of the identifiers inside the SVG. */
  readonly name: string;
  readonly title: string;
  /** What somebody who cannot see the drawing needs to know. */
  readonly description: string;
  readonly language: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** Absent when the drawing is not to scale. */
  readonly scale?: Scale;
  readonly marks: readonly Mark[];
}

export const inks: Readonly<Record<Exclude<Fill, 'none'>, string>> = {
  'paper': '#fff',
  'light': '#ececec',
  'mid': '#bdbdbd',
  'ink': '#111',
  'band-1': '#fdeec2',
  'band-2': '#f8cb7a',
  'band-3': '#e8974a',
  'band-4': '#c05a33',
};

/** Faces with the same advance widths, so that labels fit wherever the file is opened. */
const FAMILY = "Arimo, 'Liberation Sans', Arial, Helvetica, sans-serif";

/**
 * Writes a drawing as SVG: user units are millimetres, presentation attributes only (no style, no script, no link),
 * numbers rounded to a hundredth of a millimetre, the same bytes for the same drawing.
 */
export function svgOf(drawing: Drawing): string {
  const { name, title, description, language, widthMm, heightMm, marks } = drawing;
  const [width, height] = [digits(widthMm), digits(heightMm)];
  const lettering = marks.filter((mark): mark is TextMark => mark.kind === 'text');
  const figures = marks.filter((mark) => mark.kind !== 'text');
  return (
    [
      `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"` +
        ` role="img" aria-labelledby="${name}-title ${name}-desc" lang="${escaped(language)}"` +
        ` font-family="${FAMILY}" fill="none" stroke-linecap="butt" stroke-linejoin="round">`,
      `<title id="${name}-title">${escaped(title)}</title>`,
      `<desc id="${name}-desc">${escaped(description)}</desc>`,
      `<rect width="${width}" height="${height}" fill="#fff"/>`,
      ...figures.map(figureSvg),
      ...lettering.filter(({ backed }) => backed).map(groundSvg),
      '<g fill="#111">',
      ...lettering.map(textSvg),
      '</g>',
      '</svg>',
    ].join('\n') + '\n'
  );
}

/**
 * Text that XML can carry: markup escaped, control characters and marks that turn the direction of what follows named by
 * their code points, other characters that XML 1.0 forbids replaced by the replacement character.
 */
export const escaped = (content: string): string =>
  content
    .replace(/\p{Surrogate}/gu, '\uFFFD')
    .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g, codeName)
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');

/** Hundredths of a millimetre, without a trailing zero or a negative zero. */
export function digits(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return String(rounded === 0 ? 0 : rounded);
}

const pair = ([x, y]: Point): string => `${digits(x)} ${digits(y)}`;

const pathData = ({ rings, closed }: PathMark): string =>
  rings
    .filter((ring) => ring.length > 1)
    .map((ring) => `M${ring.map(pair).join('L')}${closed ? 'Z' : ''}`)
    .join('');

const strokeOf = (type: LineType | undefined): string => {
  if (type === undefined) return '';
  const dashes = dashesMm(type);
  const dash = dashes.length === 0 ? '' : ` stroke-dasharray="${dashes.map(digits).join(' ')}"`;
  return ` stroke="#111" stroke-width="${digits(strokes[type].widthMm)}"${dash}`;
};

const fillOf = (fill: Fill): string => (fill === 'none' ? '' : ` fill="${inks[fill]}" fill-rule="evenodd"`);

function figureSvg(mark: Mark): string {
  switch (mark.kind) {
    case 'path':
      return `<path d="${pathData(mark)}"${fillOf(mark.fill)}${strokeOf(mark.line)}/>`;
    case 'circle':
      return `<circle cx="${digits(mark.at[0])}" cy="${digits(mark.at[1])}" r="${digits(mark.radiusMm)}"${fillOf(mark.fill)}${strokeOf(mark.line)}/>`;
    case 'text':
      return '';
  }
}

function groundSvg(mark: TextMark): string {
  const { x, y, width, height } = grown(textBox(mark), 0.4);
  return `<rect x="${digits(x)}" y="${digits(y)}" width="${digits(width)}" height="${digits(height)}" fill="#fff"/>`;
}

function textSvg({ at, text, sizeMm, anchor, weight, turned }: TextMark): string {
  const place = turned
    ? `transform="translate(${pair(at)}) rotate(-90)"`
    : `x="${digits(at[0])}" y="${digits(at[1])}"`;
  const shift = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  return `<text ${place} font-size="${digits(sizeMm)}"${shift}${bold}>${escaped(text)}</text>`;
}

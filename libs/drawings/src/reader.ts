import {
  mm,
  m2,
  kg,
  l,
  degC,
  usArea,
  usLength,
  usMass,
  usMeasure,
  usTemperature,
  usVolume,
} from '#lib/units';
import { english, type Words } from './words/english.js';
import { printable } from './sheet/text-size.js';
import { withUnitSigns } from './sheet/unit-signs.js';

/** Who reads: the language of the words, the habits of numbers and dates, the units, and what the type can show. */
export interface Reader {
  /** BCP 47, for numbers and dates: `en-GB`, `en-US`, `de-DE`. */
  readonly locale: string;
  readonly units: 'si' | 'us';
  readonly words: Words;
  /** The embedded font covers part of Unicode; a browser finds glyphs for all of it. */
  readonly glyphs: 'embedded-font' | 'any';
}

export const defaultReader: Reader = { locale: 'en-GB', units: 'si', words: english, glyphs: 'any' };

/** Text of the estimate as this reader's drawings show it. */
export const shown = (reader: Reader, text: string): string =>
  withUnitSigns(reader.glyphs === 'embedded-font' ? printable(text) : text);

const formats = new Map<string, Intl.NumberFormat>();

/** Number formats are costly to make and hold no state, so each is made once. */
function numberFormat(locale: string, least: number, most: number, useGrouping = true): Intl.NumberFormat {
  const key = `${locale} ${least} ${most} ${useGrouping}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const made = new Intl.NumberFormat(locale, {
    minimumFractionDigits: least,
    maximumFractionDigits: most,
    useGrouping,
  });
  formats.set(key, made);
  return made;
}

/** A number with a fixed count of decimals, in the reader's digits and separators. */
export const fixed = (reader: Reader, value: number, decimals: number): string =>
  numberFormat(reader.locale, decimals, decimals).format(unsigned(value, decimals));

/** What rounds to nothing has no sign. */
const unsigned = (value: number, decimals: number): number =>
  Number(value.toFixed(decimals)) === 0 ? 0 : value;

/** Millimetres stand in one run on drawings, and so they do everywhere else. */
const ungrouped = (reader: Reader, value: number, decimals: number): string =>
  numberFormat(reader.locale, decimals, decimals, false).format(unsigned(value, decimals));

/** A number with up to so many decimals. */
export const upTo = (reader: Reader, value: number, decimals: number): string =>
  numberFormat(reader.locale, 0, decimals).format(unsigned(value, decimals));

export const percentText = (reader: Reader, share: number, decimals = 0): string =>
  `${fixed(reader, share * 100, decimals)} %`;

/** A dimension on a drawing: whole millimetres without a unit (the sheet states it), or inches and fractions. */
export const dimensionText = (reader: Reader, lengthMm: number): string =>
  reader.units === 'us' ? usLength(mm(lengthMm)) : String(Math.round(lengthMm));

/** A length with its unit; where decimals matter, sixteenths of an inch give way to what is fine enough. */
export function lengthText(reader: Reader, lengthMm: number, decimals = 0): string {
  if (reader.units === 'si') return `${ungrouped(reader, lengthMm, decimals)} mm`;
  return decimals > 0
    ? usMeasure(mm(lengthMm), (inches) => fixed(reader, inches, 3)).text
    : usLength(mm(lengthMm));
}

/** A length that is counted rather than taped, in metres. */
export const metresText = (reader: Reader, lengthM: number, decimals = 2): string =>
  reader.units === 'us' ? lengthText(reader, lengthM * MM_IN_M) : `${fixed(reader, lengthM, decimals)} m`;

const MM_IN_M = 1000;

export const areaText = (reader: Reader, areaM2: number, decimals = 2): string =>
  reader.units === 'us' ? usArea(m2(areaM2)).replace('ft2', 'ft²') : `${fixed(reader, areaM2, decimals)} m²`;

export const massText = (reader: Reader, massKg: number, decimals = 2): string =>
  reader.units === 'us' ? usMass(kg(massKg)) : `${fixed(reader, massKg, decimals)} kg`;

export const volumeText = (reader: Reader, volumeL: number, decimals = 2): string =>
  reader.units === 'us' ? usVolume(l(volumeL)) : `${fixed(reader, volumeL, decimals)} l`;

export const temperatureText = (reader: Reader, temperatureC: number): string =>
  reader.units === 'us'
    ? usTemperature(degC(temperatureC)).replace('deg', '°')
    : `${upTo(reader, temperatureC, 1)} °C`;

import { mm, usMeasure, usText } from '#lib/units';
import { areaText, massText, temperatureText, upTo, volumeText, type Reader } from './reader.js';
import { withUnitSigns } from './sheet/unit-signs.js';

/** A figure in a sentence of the engine, alone or as a span, with the unit behind it. */
const figure =
  /(?<![\w.,/-])(-?\d[\d,]*(?:\.\d+)?)(?: (to|x|×|and) (-?\d[\d,]*(?:\.\d+)?))? ?(N[.·]mm|N·m|N\/mm|kN\/m|mm²|mm³|mm|cm|m²|m|kg|g|l|ml|°C|kPa|kg\/m²|g\/m²|kg\/m³|K)(?![\w²³/·])/g;

/** Values of the document by unit, of which a sentence says the rounded one. */
export type ExactValues = Readonly<Record<'m²' | 'kg' | 'l', readonly number[]>>;

/**
 * Sentences of the engine say their figures in SI units; a reader of US units gets each in his own. One place for all of
 * them: reasons, notes, advice and cautions. A sentence that says 0.46 m² of an area that the document holds as 0.4573 m² is
 * converted from the document's value, so that sentence and table agree; what the document does not hold is said with as many
 * digits as it came with.
 */
export const inReadersUnits = (reader: Reader, text: string, exact: ExactValues): string =>
  reader.units === 'si'
    ? text
    : text.replace(figure, (...found: readonly string[]) => converted(found, { reader, exact }));

interface Said {
  readonly reader: Reader;
  readonly exact: ExactValues;
}

/** The parts of one find, as the pattern has them. */
function converted([, from, between, to, unit]: readonly (string | undefined)[], said: Said): string {
  const one = (digits: string | undefined): string => inUsUnits(digits ?? '', unit ?? '', said);
  return to === undefined ? one(from) : `${one(from)} ${between} ${one(to)}`;
}

const MM_IN: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };
/** As units are written in letters by whoever converts them. */
const letters: Readonly<Record<string, string>> = {
  'N·mm': 'N.mm',
  'kN/m': 'N/mm',
  'mm²': 'mm2',
  'mm³': 'mm3',
  'm²': 'm2',
  'kg/m²': 'kg/m2',
  'g/m²': 'g/m2',
  'kg/m³': 'kg/m3',
};

function inUsUnits(digits: string, unit: string, { reader, exact }: Said): string {
  const value = Number(digits.replaceAll(',', ''));
  if (unit === 'N·m') return roundedText(value * MM_IN.m, 'N·mm', significantOf(digits), reader);
  const lengthMm = MM_IN[unit];
  if (lengthMm !== undefined) return lengthSaid(value * lengthMm, digits, reader);
  // A difference of temperatures has no zero to shift.
  if (unit === 'K') return `${upTo(reader, (value * 9) / 5, 0)} °F`;
  if (unit === '°C') return temperatureText(reader, value);
  const known = knownText(value, decimalsOf(digits), { unit, reader, exact });
  return known ?? roundedText(value, unit, significantOf(digits), reader);
}

/** The document's own value as tables print it, where all of its values that round to this one are printed alike. */
function knownText(
  value: number,
  decimals: number,
  { unit, reader, exact }: Said & { readonly unit: string },
): string | undefined {
  const print = { 'm²': areaText, 'kg': massText, 'l': volumeText };
  if (unit !== 'm²' && unit !== 'kg' && unit !== 'l') return undefined;
  const texts = new Set(
    exact[unit]
      .filter((held) => Math.abs(held - value) <= 10 ** -decimals / 2 + 1e-9)
      .map((held) => print[unit](reader, held)),
  );
  return texts.size === 1 ? [...texts][0] : undefined;
}

const decimalsOf = (digits: string): number => digits.split('.')[1]?.length ?? 0;

/** A figure of one digit is not said with one: 1 m² is no more 11 ft² than 9. */
const LEAST_DIGITS = 2;
const MOST_DIGITS = 3;

const significantOf = (digits: string): number =>
  Math.min(MOST_DIGITS, Math.max(LEAST_DIGITS, digits.replace(/^[-0.]+|[^\d]/g, '').length));

const usFigure = /^(\D*)(-?[\d.]+)(?:e[+-]?\d+)?(.*)$/;

function roundedText(value: number, unit: string, digits: number, reader: Reader): string {
  const said = usText(value, letters[unit] ?? unit);
  const [, , number, name] = usFigure.exec(said ?? '') ?? [];
  if (number === undefined) return `${upTo(reader, value, MOST_DIGITS)} ${unit}`;
  const rounded = Number(Number(number).toPrecision(digits));
  return withUnitSigns(`${upTo(reader, rounded, MOST_DIGITS)}${name}`)
    .replace('floz', 'fl oz')
    .replace('in.lbf', 'in·lbf');
}

const MM_PER_INCH = 25.4;
const FINEST_PARTS = 64;
/** A tape or a drill gauge shows a sixty-fourth; below a sixteenth a reader expects thousandths. */
const LEAST_FRACTION_MM = MM_PER_INCH / 16;
/** A limit that is moved by more than this share is another limit. */
const MOST_SHIFT = 0.06;

/** As a tape reads it, or a drill gauge; what is finer is said in decimals, no more of them than it came with. */
function lengthSaid(lengthMm: number, digits: string, reader: Reader): string {
  const decimal = (inches: number): string => {
    const kept = digits.includes('.') ? significantOf(digits) : digits.replace('-', '').length;
    const places = Math.max(0, kept - 1 - Math.floor(Math.log10(Math.abs(inches) || 1)));
    return upTo(reader, Number(inches.toFixed(Math.min(places, MOST_DIGITS))), MOST_DIGITS);
  };
  const { text, isExact } = usMeasure(mm(lengthMm), decimal);
  const parts = Math.round((lengthMm / MM_PER_INCH) * FINEST_PARTS);
  const shift = Math.abs((parts * MM_PER_INCH) / FINEST_PARTS - lengthMm) / lengthMm;
  const isTold = isExact || /\//.test(text) || lengthMm < LEAST_FRACTION_MM || shift > MOST_SHIFT;
  return isTold
    ? text
    : usMeasure(mm((parts * MM_PER_INCH) / FINEST_PARTS), (inches) => sixtyFourths(inches)).text;
}

const sixtyFourths = (inches: number): string => `${Math.round(inches * FINEST_PARTS)}/${FINEST_PARTS}`;

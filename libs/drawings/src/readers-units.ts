import { mm, usMeasure, usText } from '#lib/units';
import { fixed, upTo, type Reader } from './reader.js';
import { withUnitSigns } from './sheet/unit-signs.js';

/** A figure in a sentence of the engine, alone or as a span, with the unit behind it. */
const figure =
  /(?<![\w.,/-])(-?\d+(?:\.\d+)?)(?: (to|x|×|and) (-?\d+(?:\.\d+)?))? ?(mm|cm|m²|m|kg|g|l|ml|°C|kPa|kg\/m²|g\/m²|kg\/m³|K)(?![\w²³/·])/g;

/**
 * Sentences of the engine say their figures in SI units; a reader of US units gets each in his own. One place for all of
 * them: reasons, notes, advice and cautions.
 */
export const inReadersUnits = (reader: Reader, text: string): string =>
  reader.units === 'si'
    ? text
    : text.replace(figure, (...found: readonly string[]) => converted(found, reader));

/** The parts of one find, as the pattern has them. */
function converted([, from, between, to, unit]: readonly (string | undefined)[], reader: Reader): string {
  const said = (value: string | undefined): string => inUsUnits(Number(value), unit ?? '', reader);
  return to === undefined ? said(from) : `${said(from)} ${between} ${said(to)}`;
}

const MM_IN: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };
/** As units are written in letters by whoever converts them. */
const letters: Readonly<Record<string, string>> = {
  'm²': 'm2',
  '°C': 'degC',
  'kg/m²': 'kg/m2',
  'g/m²': 'g/m2',
  'kg/m³': 'kg/m3',
};

function inUsUnits(value: number, unit: string, reader: Reader): string {
  const lengthMm = MM_IN[unit];
  if (lengthMm !== undefined)
    return usMeasure(mm(value * lengthMm), (inches) => fixed(reader, inches, 3)).text;
  // A difference of temperatures has no zero to shift.
  if (unit === 'K') return `${upTo(reader, (value * 9) / 5, 1)} °F`;
  const said = usText(value, letters[unit] ?? unit);
  return said === undefined
    ? `${value} ${unit}`
    : withUnitSigns(said.replace(/^[^\d-]*/u, '')).replace('floz', 'fl oz');
}

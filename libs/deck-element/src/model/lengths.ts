export type Units = 'si' | 'us';

const MM_PER_INCH = 25.4;
const INCHES_PER_FOOT = 12;
const SIXTEENTHS = 16;

/** Millimetres in one of each word that may stand behind a number. */
const mmPer: Readonly<Record<string, number>> = {
  'mm': 1,
  'cm': 10,
  'm': 1000,
  'in': MM_PER_INCH,
  '"': MM_PER_INCH,
  'ft': MM_PER_INCH * INCHES_PER_FOOT,
  "'": MM_PER_INCH * INCHES_PER_FOOT,
};

const NUMBER = String.raw`(\d+)\s+(\d+)\s*\/\s*(\d+)|(\d+)\s*\/\s*(\d+)|(\d+(?:\.\d+)?)`;
const PART = new RegExp(String.raw`^\s*(?:${NUMBER})\s*(mm|cm|m|in|ft|"|')?`, 'i');

/**
 * A typed length in millimetres: `1652`, `1.2 m`, `5 ft 3 1/2 in`, `5' 3"`. A bare number is millimetres, or inches where
 * the sheet is in US units. Undefined for what is not a length.
 */
export function readLengthMm(text: string, units: Units): number | undefined {
  const isNegative = /^\s*[-−]/.test(text);
  let rest = latinDigits(text).replace(/^\s*[-−]/, '');
  let sum = 0;
  if (rest.trim() === '') return undefined;
  while (rest.trim() !== '') {
    const part = PART.exec(rest);
    if (part === null) return undefined;
    const word = (part[7] ?? (units === 'si' ? 'mm' : 'in')).toLowerCase();
    sum += numberIn(part) * mmPer[word];
    rest = rest.slice(part[0].length);
  }
  return Number.isFinite(sum) ? (isNegative ? -sum : sum) : undefined;
}

function numberIn(part: RegExpExecArray): number {
  if (part[1] !== undefined) return Number(part[1]) + Number(part[2]) / Number(part[3]);
  return part[4] === undefined ? Number(part[6]) : Number(part[4]) / Number(part[5]);
}

/** Digits as a keyboard in Arabic writes them are digits. */
const latinDigits = (text: string): string =>
  text.replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x0660)).replace(/٫/g, '.');

/**
 * What goes into the record for a thickness: the text as it was typed, with the unit that was meant, for the service to
 * read exactly; a bare number on an SI sheet is a number.
 */
export function thicknessFor(text: string, units: Units): number | string {
  const given = latinDigits(text).trim();
  const isBare = /^\d+(\.\d+)?$/.test(given);
  if (units === 'si') return isBare ? Number(given) : given;
  return isBare || /^(\d+\s+)?\d+\s*\/\s*\d+$/.test(given) ? `${given} in` : given;
}

/** A length as it is written on the sheet: whole millimetres, or inches to a sixteenth. */
export function writeLength(mm: number, units: Units): string {
  if (units === 'si') return String(Math.round(mm * 10) / 10);
  const sixteenths = Math.round((Math.abs(mm) / MM_PER_INCH) * SIXTEENTHS);
  const sign = mm < 0 && sixteenths > 0 ? '-' : '';
  return `${sign}${mixed(Math.floor(sixteenths / SIXTEENTHS), sixteenths % SIXTEENTHS)}`;
}

function mixed(whole: number, sixteenths: number): string {
  if (sixteenths === 0) return String(whole);
  let [above, below] = [sixteenths, SIXTEENTHS];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  return whole === 0 ? `${above}/${below}` : `${whole} ${above}/${below}`;
}

/** The unit that stands behind a length on the sheet. */
export const unitOf = (units: Units): string => (units === 'si' ? 'mm' : 'in');

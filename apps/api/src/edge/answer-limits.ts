import { Defect } from '#lib/kernel';
import { isRecord } from './record.js';

/**
 * No text in an answer has more characters, and no list more entries; the contract says so, and it is looked at before
 * an answer goes out. Both lie far above what the limits of requests and of a catalogue let come about.
 */
export const LONGEST_TEXT = 100_000;
export const LONGEST_LIST = 100_000;
/** Bytes of a document, a drawing or a picture. */
export const LONGEST_DOCUMENT = 100_000_000;

/** Characters that no document can show are refused in every request, so that no answer holds them. */
export const SHOWN = '^[^\\x00-\\x08\\x0B\\x0C\\x0E-\\x1F\\x7F-\\x9F]*$';

/** What a text in an answer keeps to. */
export const shownText = { minLength: 0, maxLength: LONGEST_TEXT, pattern: SHOWN } as const;

/** @throws {Defect} when a text or a list is longer than the contract says. */
export function keepToLimits(value: unknown): void {
  if (typeof value === 'string') keepTo(value.length, LONGEST_TEXT, 'characters');
  else if (Array.isArray(value)) {
    keepTo(value.length, LONGEST_LIST, 'entries');
    value.forEach(keepToLimits);
  } else if (isRecord(value) && !ArrayBuffer.isView(value)) Object.values(value).forEach(keepToLimits);
}

/** @throws {Defect} when a document is larger than the contract says. */
export const keepDocumentToLimit = ({ length }: { readonly length: number }): void => {
  keepTo(length, LONGEST_DOCUMENT, 'bytes');
};

function keepTo(count: number, most: number, what: string): void {
  if (count > most)
    throw new Defect(`An answer holds ${count} ${what} in one place; the contract says ${most}`);
}

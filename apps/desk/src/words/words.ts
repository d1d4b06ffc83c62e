import { ar } from './words-ar.js';
import { en, type DeskWords } from './words-en.js';

export type { DeskWord, DeskWords } from './words-en.js';

/** The desk's words by language; `en` is always there. */
export const deskWords: Readonly<Record<string, DeskWords>> & { readonly en: DeskWords } = { en, ar };

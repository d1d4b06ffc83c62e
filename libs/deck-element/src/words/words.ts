import { ar } from './words-ar.js';
import { en, type Word, type Words } from './words-en.js';

/** A language of the sheet: its words, and the side it is read from. */
export interface Language {
  readonly code: string;
  readonly direction: 'ltr' | 'rtl';
  readonly words: Words;
}

export const languages: readonly Language[] = [
  { code: 'en', direction: 'ltr', words: en },
  { code: 'ar', direction: 'rtl', words: ar },
];

/** The language of a tag such as `ar-EG`; English where there are no words for it. */
export const languageOf = (tag: string): Language =>
  languages.find(({ code }) => tag.toLowerCase().split('-')[0] === code) ?? languages[0];

/** The word for a code of the contract; a code that has none yet stands for itself. */
export function wordFor({ words }: Language, code: string): string {
  return isWord(code) ? words[code] : code;
}

const isWord = (code: string): code is Word => code in en;

/** A word with its gaps filled. */
export const filled = (word: string, facts: Readonly<Record<string, string | number>>): string =>
  word.replace(/\{(\w+)\}/g, (gap, name: string) => String(facts[name] ?? gap));

import { didYouMean } from './nearest.js';
import { problemWords } from './problem-words.js';

/** Codes are promises to callers: they are added, never renamed or reused. */
export type ProblemCode = keyof typeof problemWords;

export type Fact = string | number | boolean;

/** Something the caller can put right. Words are made from the code, in `problem-words.ts` only. */
export interface Problem {
  /** Stable code of the problem. */
  readonly code: ProblemCode;
  /** JSON Pointer (RFC 6901) to the offending field; '' is the whole document. */
  readonly at: string;
  /** What the sentence of the problem is made of. */
  readonly facts: Readonly<Record<string, Fact>>;
}

export const problem = (
  code: ProblemCode,
  at: string,
  facts: Readonly<Record<string, Fact>> = {},
): Problem => ({
  code,
  at,
  facts,
});

/** Builds a JSON Pointer below `parent`, escaping `~` and `/` as RFC 6901 §3 asks. */
export const pointer = (parent: string, ...keys: readonly (string | number)[]): string =>
  keys.reduce<string>((path, key) => `${path}/${typeof key === 'number' ? key : escaped(key)}`, parent);

/** Most keys have nothing to escape, and pointers are made for every line that might be wrong. */
const escaped = (key: string): string =>
  key.includes('~') || key.includes('/') ? key.replaceAll('~', '~0').replaceAll('/', '~1') : key;

/** Moves problems found in a part to where that part sits in the whole. */
export const below = (parent: string, problems: readonly Problem[]): readonly Problem[] =>
  problems.map((found) => ({ ...found, at: `${parent}${found.at}` }));

export const titleOf = (found: Problem): string => problemWords[found.code].title;

/** One sentence that says what is wrong and what would be right. */
export const detailOf = (found: Problem): string =>
  problemWords[found.code].detail.replace(/\{(\w+)\}/g, (_, name: string) => {
    if (name === 'field') return fieldName(found.at);
    return name === 'nearest' ? nearestChoice(found.facts) : factInWords(found.facts[name]);
  });

/** Of words that were to choose from, the one that was meant most likely; nothing where none is near. */
function nearestChoice({ value, known, choices }: Problem['facts']): string {
  const listed = known ?? choices;
  if (typeof value !== 'string' || typeof listed !== 'string') return '';
  return didYouMean(value.replace(/^"|"$/g, ''), listed.split(', '));
}

/** A number that was converted from another unit has more digits than anybody gave. */
const factInWords = (fact: Fact | undefined): string =>
  typeof fact === 'number' && !Number.isInteger(fact)
    ? String(Number(fact.toPrecision(6)))
    : String(fact ?? '(not stated)');

const fieldName = (at: string): string => (at === '' ? 'the body' : at.slice(1).replaceAll('/', '.'));

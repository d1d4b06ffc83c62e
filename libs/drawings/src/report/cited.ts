import type { Estimate } from '#lib/estimate';
import type { Reader } from '../reader.js';

/** What stands for no source that could be looked up. */
const practice = 'COMMON-PRACTICE';
const memory = 'FROM-MEMORY';

/** A source as its number in the bibliography; practice and memory are called what they are. */
export function citedIn({ bibliography }: Estimate, key: string, { words }: Reader): string {
  const said = words.assumptionGroups;
  if (key === practice) return said.practice;
  if (isOwnDefault(key)) return said.memory;
  const found = bibliography.find((entry) => entry.key === key);
  return found === undefined ? '' : said.cited(String(found.number));
}

export const isOwnDefault = (key: string): boolean => key === memory;

/** Entries that can be looked up. */
export const sourcesIn = ({ bibliography }: Estimate): Estimate['bibliography'] =>
  bibliography.filter(({ key }) => key !== practice && key !== memory);

import type { Estimate } from '#lib/estimate';
import type { AnnexName, ReportRequest } from './request.js';

/** What stands for no source that could be looked up. */
const practice = 'COMMON-PRACTICE';
const memory = 'FROM-MEMORY';

type Citing = Pick<ReportRequest, 'estimate' | 'annexes' | 'reader'>;

/** A source as its number in the printed list; practice and memory are called what they are. */
export function citedIn(request: Citing, key: string): string {
  const said = request.reader.words.assumptionGroups;
  if (isPractice(key)) return said.practice;
  if (isOwnDefault(key)) return said.memory;
  const found = printedSources(request).find((entry) => entry.key === key);
  return found === undefined ? '' : said.cited(String(found.number));
}

export const isOwnDefault = (key: string): boolean => key === memory;

export const isPractice = (key: string): boolean => key === practice;

/** Annexes that print where a figure or a rule comes from. */
const citedKeys: Partial<Record<AnnexName, (estimate: Estimate) => readonly { readonly source: string }[]>> =
  {
    structure: ({ checks }) => checks,
    assumptions: ({ assumptions }) => assumptions,
    cautions: ({ cautions }) => cautions,
  };

/** Entries that the chosen annexes name and that can be looked up, numbered as they first stand in print. */
export function printedSources({ estimate, annexes }: Citing): Estimate['bibliography'] {
  const keys = [
    ...new Set(annexes.flatMap((annex) => citedKeys[annex]?.(estimate).map(({ source }) => source) ?? [])),
  ];
  return keys
    .flatMap((key) => estimate.bibliography.filter((entry) => entry.key === key))
    .filter(({ key }) => !isPractice(key) && !isOwnDefault(key))
    .map((entry, index) => ({ ...entry, number: index + 1 }));
}

import type { Source } from '#lib/catalogue';
import type { BibliographyEntry, EstimateBody } from '../document/estimate-document.js';

/** Every source that the document names, numbered in the order in which they first stand in it. */
export function bibliographyOf(
  estimate: EstimateBody,
  more: readonly string[],
  sources: readonly Source[],
): readonly BibliographyEntry[] {
  const byKey = new Map(sources.map((source) => [source.key, source]));
  const keys = [...new Set([...keysIn(estimate), ...more])];
  return keys
    .flatMap((key) => {
      const found = byKey.get(key);
      return found === undefined ? [] : [found];
    })
    .map(({ key, title, body, year, readAs, url }, index) => ({
      number: index + 1,
      ...{ key, title, body, year, readAs },
      ...(url === undefined ? {} : { url }),
    }));
}

const keysIn = ({ methods, hardware, checks, cautions, assumptions }: EstimateBody): readonly string[] => [
  ...methods.rungs.flatMap(({ deciding, conditions }) =>
    [deciding, ...conditions].map(({ source }) => source),
  ),
  ...[...hardware, ...checks, ...cautions, ...assumptions].map(({ source }) => source),
];

import type { Problem } from '#lib/kernel';

/** Problems that a room found in its own request, at the field of the record that the value came from; the rest below `otherwise`. */
export const atRecord = (
  problems: readonly Problem[],
  fields: Readonly<Record<string, string>>,
  otherwise: string,
): readonly Problem[] =>
  problems.map((found) => {
    const own = Object.keys(fields)
      .filter((field) => found.at === field || found.at.startsWith(`${field}/`))
      .sort((a, b) => b.length - a.length)
      .at(0);
    return {
      ...found,
      at: own === undefined ? `${otherwise}${found.at}` : `${fields[own]}${found.at.slice(own.length)}`,
    };
  });

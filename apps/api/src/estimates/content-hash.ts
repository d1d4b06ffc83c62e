import { createHash } from 'node:crypto';

/** The same for the same content, in whatever order its members came. */
export const hashOf = (content: unknown): string =>
  createHash('sha256')
    .update(JSON.stringify(ordered(content)))
    .digest('hex');

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, part]) => [key, ordered(part)]),
  );
}

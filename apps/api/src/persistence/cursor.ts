import { HttpProblem, notInForm } from '../edge/problems.js';
import { isId } from './ids.js';

/** Where a page ended, as a caller gives it back. */
export const cursorOf = (id: string): string =>
  Buffer.from(id.replaceAll('-', ''), 'hex').toString('base64url');

/** @throws {HttpProblem} bad-request, for a text that is none of ours */
export function idOfCursor(cursor: string | undefined): string | undefined {
  if (cursor === undefined) return undefined;
  const hex = Buffer.from(cursor, 'base64url').toString('hex');
  const id = hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
  if (isId(id) && cursorOf(id) === cursor) return id;
  throw new HttpProblem('bad-request', {
    detail: 'The cursor is not one that this service gave.',
    problems: [notInForm({ parameter: 'cursor' }, cursor, 'a cursor from the answer before')],
  });
}

interface Identified {
  readonly id: string;
}

/** One row more than the page holds tells whether there is another page. */
export function pageOf<R extends Identified, T>(
  rows: readonly R[],
  limit: number,
  view: (row: R) => T,
): { readonly items: readonly T[]; readonly nextCursor?: string } {
  const shown = rows.slice(0, limit);
  const last = shown.at(-1);
  const items = shown.map(view);
  return rows.length > limit && last !== undefined ? { items, nextCursor: cursorOf(last.id) } : { items };
}

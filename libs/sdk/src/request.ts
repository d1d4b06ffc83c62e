import { MisusedClientError } from './errors.js';
import { path } from './resource.js';
import type { AnswerOf, BodyOf, Method, Path, QueryOf } from './types.js';

/** What a request to a path of the contract carries. */
export interface Request<P extends Path, M extends Method> {
  /** The parts of the path in braces. */
  readonly path?: Readonly<Record<string, string>>;
  readonly query?: QueryOf<P, M>;
  readonly body?: BodyOf<P, M> | string | Uint8Array;
  readonly contentType?: string;
  /** Another form of the answer than JSON, which then is text. */
  readonly accept?: string;
}

/** The answer of an operation: its JSON, or text where another form was asked for. */
export type Asked<P extends Path, M extends Method> = AnswerOf<P, M>;

/** @throws {MisusedClientError} for a part that is missing or unsafe */
export function filledPath(template: string, parts: Readonly<Record<string, string>>): string {
  const filled = template
    .split('/')
    .slice(1)
    .map((part) => (part.startsWith('{') ? partNamed(part.slice(1, -1), parts) : part));
  return path(...filled);
}

function partNamed(name: string, parts: Readonly<Record<string, string>>): string {
  const value = parts[name];
  if (value === undefined) throw new MisusedClientError(`Give \`path.${name}\`.`);
  return value;
}

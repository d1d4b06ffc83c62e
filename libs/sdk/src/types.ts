import type { paths } from './generated/schema.js';

export type Path = keyof paths;
export type Method = 'get' | 'post' | 'put' | 'patch' | 'delete';

/** What a request to this path carries as JSON. */
export type BodyOf<P extends Path, M extends Method> = paths[P][M] extends {
  readonly requestBody: { readonly content: infer C };
}
  ? C extends { readonly 'application/json': infer B }
    ? B
    : C extends { readonly 'application/merge-patch+json': infer B }
      ? B
      : never
  : never;

/** What a successful answer of this path holds as JSON; an answer that comes later (202) is an `Operation` instead. */
export type AnswerOf<P extends Path, M extends Method> = paths[P][M] extends { readonly responses: infer R }
  ? JsonOf<R[Extract<keyof R, 200 | 201>]>
  : never;

type JsonOf<A> = A extends { readonly content: { readonly 'application/json': infer B } } ? B : never;

/** The query parameters that this path takes. */
export type QueryOf<P extends Path, M extends Method> = paths[P][M] extends {
  readonly parameters: { readonly query?: infer Q };
}
  ? NonNullable<Q>
  : Record<string, never>;

/** Something that can change, with the ETag that a change must name. */
export interface Versioned<T> {
  readonly value: T;
  readonly etag: string;
}

import { problem, type Outcome, type Problem } from '#lib/kernel';

/** Every kind of refusal over HTTP: its status, and the words that name it. Slugs are promises to callers. */
export const problemKinds = {
  'bad-request': { status: 400, title: 'The request could not be read' },
  'unauthenticated': { status: 401, title: 'A valid key is needed' },
  'forbidden': { status: 403, title: 'The key may not do this' },
  'not-found': { status: 404, title: 'There is no such thing here' },
  'method-not-allowed': { status: 405, title: 'The method does not fit this resource' },
  'not-acceptable': { status: 406, title: 'No acceptable form of the answer exists' },
  'request-timeout': { status: 408, title: 'The request took too long to arrive' },
  'conflict': { status: 409, title: 'The request conflicts with the present state' },
  'precondition-failed': { status: 412, title: 'The resource was changed in the meantime' },
  'content-too-large': { status: 413, title: 'The request is too large' },
  'unsupported-media-type': { status: 415, title: 'The content type cannot be read' },
  'unprocessable': { status: 422, title: 'The request was understood but cannot be answered' },
  'precondition-required': { status: 428, title: 'State which version is to be changed' },
  'too-many-requests': { status: 429, title: 'Too many requests' },
  'headers-too-large': { status: 431, title: 'The header fields are too large' },
  'internal': { status: 500, title: 'The service failed' },
  'unavailable': { status: 503, title: 'The service cannot answer now' },
} as const satisfies Readonly<Record<string, { readonly status: number; readonly title: string }>>;

export type ProblemKind = keyof typeof problemKinds;

/** Where a problem sits when it is not in the body. */
export interface Place {
  readonly parameter?: string;
  readonly header?: string;
  /** Of a sheet, as a spreadsheet counts them: the headings are row 1. */
  readonly row?: number;
  /** Heading of the column. */
  readonly column?: string;
}

export type LocatedProblem = Problem & Place;

const MOST_SHOWN = 60;

/** A header, a parameter or a field of a path that is not of the form it must have; `form` says the right one. */
export const notInForm = (place: Place, value: string, form: string): LocatedProblem => ({
  ...problem('not-in-form', '', { value: JSON.stringify(value.slice(0, MOST_SHOWN)), form }),
  ...place,
});

interface Particulars {
  readonly detail?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly problems?: readonly LocatedProblem[];
  readonly cause?: unknown;
}

/** A refusal on its way to the one filter that turns it into `application/problem+json`. */
export class HttpProblem extends Error {
  override readonly name = 'HttpProblem';
  readonly kind: ProblemKind;
  readonly headers: Readonly<Record<string, string>>;
  readonly problems: readonly LocatedProblem[];

  constructor(kind: ProblemKind, { detail, headers = {}, problems = [], cause }: Particulars = {}) {
    super(detail ?? problemKinds[kind].title, { cause });
    this.kind = kind;
    this.headers = headers;
    this.problems = problems;
  }
}

export const notFound = (what: string): HttpProblem =>
  new HttpProblem('not-found', { detail: `${what} was not found.` });

/** The world failed, not the caller and not the program: worth trying again. */
export const unavailable = (detail: string, cause?: unknown, retryAfterS = 2): HttpProblem =>
  new HttpProblem('unavailable', { detail, cause, headers: { 'Retry-After': String(retryAfterS) } });

/** There was no room to begin: nothing was tried, and nothing is wrong but the hour. */
export class TooBusy extends HttpProblem {
  constructor(detail: string, retryAfterS: number) {
    super('unavailable', { detail, headers: { 'Retry-After': String(retryAfterS) } });
  }
}

/** The value of a room's outcome; its problems become one 422 that names them all. */
export function answer<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new HttpProblem('unprocessable', { detail: summaryOf(outcome.problems), problems: outcome.problems });
}

export const summaryOf = (problems: readonly Problem[]): string =>
  problems.length === 1
    ? 'One thing must be put right; it is named in errors.'
    : `${problems.length} things must be put right; they are named in errors.`;

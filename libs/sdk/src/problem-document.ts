/** One fault: of a field (`pointer`), of a parameter or of a header. */
export interface ProblemEntry {
  /** JSON Pointer (RFC 6901) to the field of the request body. */
  readonly pointer?: string;
  readonly parameter?: string;
  readonly header?: string;
  /** Of a sheet, as a spreadsheet counts them: the headings are row 1. */
  readonly row?: number;
  /** Heading of the column. */
  readonly column?: string;
  readonly code: string;
  readonly title: string;
  readonly detail: string;
  readonly facts: Readonly<Record<string, string | number | boolean>>;
}

/** What kind of refusal it is: the last part of the problem's `type`. Kinds are stable. */
export type ProblemKind =
  | 'bad-request'
  | 'unauthenticated'
  | 'forbidden'
  | 'not-found'
  | 'method-not-allowed'
  | 'not-acceptable'
  | 'request-timeout'
  | 'conflict'
  | 'precondition-failed'
  | 'content-too-large'
  | 'unsupported-media-type'
  | 'unprocessable'
  | 'precondition-required'
  | 'too-many-requests'
  | 'headers-too-large'
  | 'internal'
  | 'unavailable'
  /** The answer was no problem document: something between here and the service answered instead. */
  | 'not-a-problem-document';

/** RFC 9457 problem details as this service sends them. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail?: string;
  readonly instance?: string;
  readonly requestId?: string;
  readonly errors?: readonly ProblemEntry[];
  readonly errorCount?: number;
}

/** Reads a problem; an answer that is none (a proxy's page) becomes one that says so. */
export async function problemFrom(response: Response): Promise<ProblemDocument> {
  const requestId = response.headers.get('x-request-id') ?? undefined;
  const text = await response.text().catch(() => '');
  const parsed = parsedOrUndefined(text);
  if (isProblem(parsed))
    return { ...parsed, status: response.status, requestId: parsed.requestId ?? requestId };
  return {
    type: '/problems/not-a-problem-document',
    title: response.statusText || `HTTP ${response.status}`,
    status: response.status,
    detail: text.slice(0, 500),
    requestId,
  };
}

export function kindOf({ type, status }: ProblemDocument): ProblemKind {
  const slug = type.slice(type.lastIndexOf('/') + 1);
  return kinds.find((kind) => kind === slug) ?? (status >= 500 ? 'internal' : 'bad-request');
}

const kinds: readonly ProblemKind[] = [
  'bad-request',
  'unauthenticated',
  'forbidden',
  'not-found',
  'method-not-allowed',
  'not-acceptable',
  'request-timeout',
  'conflict',
  'precondition-failed',
  'content-too-large',
  'unsupported-media-type',
  'unprocessable',
  'precondition-required',
  'too-many-requests',
  'headers-too-large',
  'internal',
  'unavailable',
  'not-a-problem-document',
];

function parsedOrUndefined(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isProblem = (value: unknown): value is ProblemDocument =>
  typeof value === 'object' &&
  value !== null &&
  'title' in value &&
  'type' in value &&
  typeof value.type === 'string' &&
  value.type.startsWith('/problems/');

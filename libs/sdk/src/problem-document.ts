/** A fault of one field. */
export interface ProblemEntry {
  /** JSON Pointer (RFC 6901) to the field. */
  readonly pointer: string;
  readonly code: string;
  readonly detail: string;
  readonly facts?: Readonly<Record<string, string | number | boolean>>;
}

export type ProblemCode = string;

/** RFC 9457 problem details as this service sends them. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail?: string;
  readonly code: ProblemCode;
  readonly requestId?: string;
  readonly errors?: readonly ProblemEntry[];
}

/** Reads a problem; an answer that is none (a proxy's page) becomes one that says so. */
export async function problemFrom(response: Response): Promise<ProblemDocument> {
  const requestId = response.headers.get('x-request-id') ?? undefined;
  const text = await response.text().catch(() => '');
  const parsed = parsedOrUndefined(text);
  if (isProblem(parsed)) return { ...parsed, status: response.status, requestId: parsed.requestId ?? requestId };
  return { type: 'about:blank', title: response.statusText || `HTTP ${response.status}`, status: response.status, code: 'not-a-problem-document', detail: text.slice(0, 500), requestId };
}

function parsedOrUndefined(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

const isProblem = (value: unknown): value is ProblemDocument =>
  typeof value === 'object' && value !== null && 'title' in value && 'code' in value && typeof value.code === 'string';

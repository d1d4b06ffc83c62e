import { Answer } from './answer.js';
import { MisusedClientError } from './errors.js';
import type { Settings } from './settings.js';
import type { Call, CallOptions, Reader } from './transport.js';
import type { Versioned } from './types.js';

/** A document to keep: its bytes with type and a name to save it under. */
export interface Download {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly blob: Blob;
  readonly name: string;
  readonly type: string;
}

export const json = <T>(settings: Settings, call: Call, options: CallOptions = {}): Answer<T> =>
  new Answer(settings, call, options, jsonOf<T>);

/** A body that the service says has this shape; the contract tests hold it to that. */
/** JSON where JSON was asked for, otherwise the text; an answer without content is undefined. */
export const contentOf =
  <T>(accept: string | undefined): Reader<T> =>
  async (response) => {
    const content = await response.text();
    if (content === '') return undefined as T;
    const isJson = accept === undefined || /\bjson\b/.test(accept);
    return isJson ? JSON.parse(content) : content;
  };

export const jsonOf = async <T>(response: Response): Promise<T> => (await response.json()) as T;

export const text = (settings: Settings, call: Call, options: CallOptions = {}): Answer<string> =>
  new Answer(settings, call, options, (response) => response.text());

export const nothing = (settings: Settings, call: Call, options: CallOptions = {}): Answer<void> =>
  new Answer(settings, call, options, () => Promise.resolve());

export const versioned = <T>(
  settings: Settings,
  call: Call,
  options: CallOptions = {},
): Answer<Versioned<T>> => new Answer(settings, call, options, versionOf<T>);

const versionOf = async <T>(response: Response): Promise<Versioned<T>> => ({
  value: await jsonOf<T>(response),
  etag: response.headers.get('etag') ?? '',
});

export const download = (settings: Settings, call: Call, options: CallOptions = {}): Answer<Download> =>
  new Answer(settings, call, options, downloadOf);

export const downloadOf: Reader<Download> = async (response) => {
  const bytes = new Uint8Array(await response.arrayBuffer());
  const type = response.headers.get('content-type')?.split(';')[0]?.trim() ?? 'application/octet-stream';
  return {
    bytes,
    blob: new Blob([bytes], { type }),
    name: nameIn(response.headers.get('content-disposition')) ?? 'document',
    type,
  };
};

const nameIn = (disposition: string | null): string | undefined =>
  /filename="?([^";]+)"?/i.exec(disposition ?? '')?.[1];

/**
 * A path with its parts escaped. A part that is empty, or that a server would read as a step up, is refused: `get('')`
 * must not answer with the list.
 *
 * @throws {MisusedClientError}
 */
export const path = (...parts: readonly string[]): string => `/${parts.map(safePart).join('/')}`;

function safePart(part: unknown): string {
  if (typeof part !== 'string' || part === '')
    throw new MisusedClientError('An id or a code is missing: it must be a text that is not empty.');
  if (/^\.{1,2}$/.test(decodedDots(part)))
    throw new MisusedClientError(`${JSON.stringify(part)} is no id or code.`);
  return encodeURIComponent(part);
}

const decodedDots = (part: string): string => part.replace(/%2e/gi, '.');

type CallExtras = Omit<Call, 'method' | 'path'>;

/** A call that reads `parts`, each escaped. */
export const reading = (parts: readonly string[], extras: CallExtras = {}): Call => ({
  method: 'GET',
  path: path(...parts),
  ...extras,
});

/** A call that writes to `parts`, each escaped. */
export const writing = (
  method: Exclude<Call['method'], 'GET'>,
  parts: readonly string[],
  extras: CallExtras = {},
): Call => ({ method, path: path(...parts), ...extras });

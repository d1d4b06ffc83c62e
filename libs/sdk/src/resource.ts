import { send, type Call, type CallOptions, type ClientOptions } from './transport.js';
import type { Versioned } from './types.js';

export async function json<T>(client: ClientOptions, call: Call, options?: CallOptions): Promise<T> {
  return bodyOf(await send(client, call, options));
}

/** A body that the service says has this shape; the contract tests hold it to that. */
export async function bodyOf<T>(response: Response): Promise<T> {
  return (await response.json()) as T;
}

export async function text(client: ClientOptions, call: Call, options?: CallOptions): Promise<string> {
  return await (await send(client, call, options)).text();
}

export async function versioned<T>(
  client: ClientOptions,
  call: Call,
  options?: CallOptions,
): Promise<Versioned<T>> {
  const response = await send(client, call, options);
  return { value: await bodyOf(response), etag: response.headers.get('etag') ?? '' };
}

/** A path with its parts escaped. */
export const path = (...parts: readonly string[]): string => `/${parts.map(encodeURIComponent).join('/')}`;

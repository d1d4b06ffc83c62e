import { errorFor, TimedOutError } from './errors.js';
import { bodyOf, json, path } from './resource.js';
import { pause, waitMs } from './retry.js';
import { DEFAULT_TIMEOUT_MS, send, type Call, type CallOptions, type ClientOptions } from './transport.js';
import type { AnswerOf } from './types.js';

/** Work that goes on after its request was answered. */
export type Operation = AnswerOf<'/v1/operations/{id}', 'get'>;

/** Work that the service answers later: asked after by hand, or waited for. */
export class Operations {
  readonly #client: ClientOptions;

  constructor(client: ClientOptions) {
    this.#client = client;
  }

  get(id: string, options?: CallOptions): Promise<Operation> {
    return json(this.#client, { method: 'GET', path: path('v1', 'operations', id) }, options);
  }

  /** Asks until it is done, as often as the service says, within `timeoutMs` in all; throws the problem of one that failed. */
  async wait(id: string, options: CallOptions = {}): Promise<Operation> {
    const call: Call = { method: 'GET', path: path('v1', 'operations', id) };
    const patience = patienceOf(this.#client, options);
    for (let tries = 0; ; tries += 1) {
      const response = await send(this.#client, call, patience.options());
      const operation = await bodyOf<Operation>(response);
      if (operation.status === 'done') return operation;
      if (operation.status === 'failed')
        throw errorFor(
          operation.problem ?? { type: '/problems/internal', title: 'The operation failed', status: 500 },
        );
      await patience.pause(waitMs(tries, response.headers.get('retry-after'), Date.now(), Math.random));
    }
  }

  /** The result of one that is done. */
  result(id: string, accept: string, options?: CallOptions): Promise<Response> {
    return send(
      this.#client,
      { method: 'GET', path: path('v1', 'operations', id, 'result'), accept },
      options,
    );
  }
}

/** A document of the service, waited for when it comes later. */
export async function awaited(
  client: ClientOptions,
  call: Call,
  options: CallOptions = {},
): Promise<Response> {
  const patience = patienceOf(client, options);
  const response = await send(client, call, options);
  if (response.status !== 202) return response;
  const operations = new Operations(client);
  const accepted = await bodyOf<Operation>(response);
  const { id } = await operations.wait(accepted.id, patience.options());
  return operations.result(id, call.accept ?? 'application/json', patience.options());
}

export async function awaitedBytes(
  client: ClientOptions,
  call: Call,
  options?: CallOptions,
): Promise<Uint8Array> {
  const response = await awaited(client, call, options);
  return new Uint8Array(await response.arrayBuffer());
}

interface Patience {
  /** The caller's options with what is left of the time. */
  readonly options: () => CallOptions;
  readonly pause: (ms: number) => Promise<void>;
}

/** One time limit over several calls. */
function patienceOf(client: ClientOptions, options: CallOptions): Patience {
  const timeoutMs = options.timeoutMs ?? client.timeoutMs ?? DEFAULT_TIMEOUT_MS;
  const until = Date.now() + timeoutMs;
  const left = (): number => {
    if (Date.now() >= until) throw new TimedOutError(timeoutMs);
    return until - Date.now();
  };
  return {
    options: () => ({ ...options, timeoutMs: left() }),
    pause: (ms) => pause(Math.min(ms, left()), options.signal ?? new AbortController().signal),
  };
}

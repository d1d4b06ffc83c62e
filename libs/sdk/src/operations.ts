import { Answer } from './answer.js';
import { errorFor, TimedOutError } from './errors.js';
import { download, downloadOf, json, jsonOf, reading, type Download } from './resource.js';
import { pause, waitMs } from './retry.js';
import type { Settings } from './settings.js';
import { exchange, type Call, type CallOptions, type Reader } from './transport.js';
import type { AnswerOf } from './types.js';

/** Work that goes on after its request was answered. */
export type Operation = AnswerOf<'/v1/operations/{id}', 'get'>;

/** Work that the service answers later: asked after by hand, or waited for. */
export class Operations {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * How far it is.
   *
   * @example
   * const { status } = await kingplank.operations.get(id);
   */
  get(id: string, options?: CallOptions): Answer<Operation> {
    return json(this.#settings, reading(['v1', 'operations', id]), options);
  }

  /**
   * Asks until it is done, as often as the service says, within `timeoutMs` in all; throws the problem of one that failed.
   *
   * @example
   * const done = await kingplank.operations.wait(id, { timeoutMs: 120_000 });
   */
  async wait(id: string, options: CallOptions = {}): Promise<Operation> {
    const call = reading(['v1', 'operations', id]);
    const patience = patienceOf(this.#settings, options);
    for (let tries = 0; ; tries += 1) {
      const { value: operation, response } = await exchange(
        this.#settings,
        call,
        patience.options(),
        jsonOf<Operation>,
      );
      if (operation.status === 'done') return operation;
      if (operation.status === 'failed') throw errorFor(operation.problem ?? silentFailure, response.headers);
      await patience.pause(waitMs(tries, response.headers.get('retry-after'), Date.now(), Math.random));
    }
  }

  /**
   * The result of one that is done.
   *
   * @example
   * const { blob } = await kingplank.operations.result(id, 'application/pdf');
   */
  result(id: string, accept: string, options?: CallOptions): Answer<Download> {
    return download(this.#settings, reading(['v1', 'operations', id, 'result'], { accept }), options);
  }
}

const silentFailure = { type: '/problems/internal', title: 'The operation failed', status: 500 } as const;

export const awaitedDownload = (settings: Settings, call: Call, options?: CallOptions): Promise<Download> =>
  awaited(settings, call, options ?? {}, downloadOf);

export const awaitedText = (settings: Settings, call: Call, options?: CallOptions): Promise<string> =>
  awaited(settings, call, options ?? {}, (response) => response.text());

/** Something that a call makes; waited for at its own place when it is made later. */
export function awaitedJson<T>(settings: Settings, call: Call, options: CallOptions = {}): Answer<T> {
  const patience = patienceOf(settings, options);
  return new Answer(settings, call, options, async (response) => {
    if (response.status !== 202) return jsonOf<T>(response);
    const { id } = await jsonOf<Operation>(response);
    const { result } = await new Operations(settings).wait(id, patience.options());
    const made: Call = { method: 'GET', path: result?.href ?? `/v1/operations/${id}/result` };
    return (await exchange(settings, made, patience.options(), jsonOf<T>)).value;
  });
}

/** A document of the service, waited for when it comes later. */
async function awaited<T>(settings: Settings, call: Call, options: CallOptions, read: Reader<T>): Promise<T> {
  const patience = patienceOf(settings, options);
  const { value: first } = await exchange(settings, call, options, nowOrLater(read));
  if ('now' in first) return first.now;
  const { id } = await new Operations(settings).wait(first.later.id, patience.options());
  const accept = call.accept ?? 'application/json';
  const result = reading(['v1', 'operations', id, 'result'], { accept });
  return (await exchange(settings, result, patience.options(), read)).value;
}

type NowOrLater<T> = { readonly now: T } | { readonly later: Operation };

const nowOrLater =
  <T>(read: Reader<T>): Reader<NowOrLater<T>> =>
  async (response) =>
    response.status === 202 ? { later: await jsonOf<Operation>(response) } : { now: await read(response) };

interface Patience {
  /** The caller's options with what is left of the time. */
  readonly options: () => CallOptions;
  readonly pause: (ms: number) => Promise<void>;
}

/** One time limit over several calls. */
function patienceOf(settings: Settings, options: CallOptions): Patience {
  const timeoutMs = options.timeoutMs ?? settings.timeoutMs;
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

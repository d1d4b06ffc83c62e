import { MisusedClientError } from './errors.js';
import { exchange, type Call, type CallOptions, type Exchanged, type Reader } from './transport.js';
import type { Settings } from './settings.js';

/** What was answered, with the response it came in: status, headers, `x-request-id`. */
export interface AnswerWithResponse<T> {
  readonly data: T;
  readonly response: Response;
  readonly requestId: string | undefined;
}

/**
 * The answer of a call. Awaited it is the value; `withResponse()` gives the response beside it, and `asResponse()`
 * the bare response with its body unread (call it at once, before anything is awaited).
 */
export class Answer<T> implements Promise<T> {
  readonly [Symbol.toStringTag] = 'Answer';
  readonly #whole: Promise<Exchanged<() => T>>;
  #isLeftUnread = false;

  constructor(settings: Settings, call: Call, options: CallOptions, read: Reader<T>) {
    const readUnlessLeft: Reader<() => T> = async (response) => {
      if (this.#isLeftUnread) return leftUnread;
      const value = await read(response);
      return () => value;
    };
    // Begun in the next turn, so that `asResponse()` can still say that the body is to be left alone.
    this.#whole = Promise.resolve().then(() => exchange(settings, call, options, readUnlessLeft));
  }

  async withResponse(): Promise<AnswerWithResponse<T>> {
    const { value, response } = await this.#whole;
    const requestId = response.headers.get('x-request-id') ?? undefined;
    return { data: value(), response, requestId };
  }

  async asResponse(): Promise<Response> {
    this.#isLeftUnread = true;
    return (await this.#whole).response;
  }

  then<R = T, E = never>(
    onFulfilled?: ((value: T) => R | PromiseLike<R>) | null,
    onRejected?: ((reason: unknown) => E | PromiseLike<E>) | null,
  ): Promise<R | E> {
    return this.#whole.then(({ value }) => value()).then(onFulfilled, onRejected);
  }

  catch<E = never>(onRejected?: ((reason: unknown) => E | PromiseLike<E>) | null): Promise<T | E> {
    return this.then(null, onRejected);
  }

  finally(onFinally?: (() => void) | null): Promise<T> {
    return this.then((value) => value).finally(onFinally);
  }
}

function leftUnread(): never {
  throw new MisusedClientError('The body was left to the reader of `asResponse()`.');
}

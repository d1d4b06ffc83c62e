import {
  ConflictError,
  ProblemError,
  RateLimitedError,
  ServiceFailedError,
  type Kingplank,
  type StoredEstimate,
} from 'kingplank-sdk';
import type { Outbox, Waiting } from '../model/outbox.js';
import type { SendingState } from '../view/sheet.js';
import { isConnection } from './previewing.js';

export interface SendingEvents {
  readonly show: (state: SendingState) => void;
  readonly made: (stored: StoredEstimate, sent: Waiting) => void;
}

/**
 * Sends what waits, oldest first, each under the key it was put away with: however often it is tried, and from however
 * many pages, one estimate comes of it. What the service refuses is handed back with its faults; what nobody answered
 * keeps waiting.
 */
export class Sending {
  readonly #events: SendingEvents;
  #isSending = false;

  constructor(events: SendingEvents) {
    this.#events = events;
  }

  async sendAll(client: Kingplank, outbox: Outbox): Promise<void> {
    if (this.#isSending) return;
    this.#isSending = true;
    try {
      await onePageAtATime(() => this.#drain(client, outbox));
    } finally {
      this.#isSending = false;
    }
  }

  async #drain(client: Kingplank, outbox: Outbox): Promise<void> {
    for (let next = outbox.waiting()[0]; next !== undefined; next = outbox.waiting()[0]) {
      this.#events.show({ kind: 'sending' });
      const isGone = await this.#send(client, outbox, next);
      if (!isGone) return;
    }
  }

  /** Whether it waits no longer. */
  async #send(client: Kingplank, outbox: Outbox, waiting: Waiting): Promise<boolean> {
    try {
      const stored = await ask(client, waiting);
      outbox.take(waiting.key);
      this.#events.show({ kind: 'nothing' });
      this.#events.made(stored, waiting);
      return true;
    } catch (error) {
      if (mayWait(error)) {
        this.#events.show({ kind: 'nothing' });
        return false;
      }
      outbox.take(waiting.key);
      this.#events.show(refusal(error));
      return true;
    }
  }
}

const PATIENCE_MS = 60_000;

function ask(client: Kingplank, { key, record, revises }: Waiting): Promise<StoredEstimate> {
  const options = { idempotencyKey: key, timeoutMs: PATIENCE_MS };
  if (revises === undefined) return client.estimates.create(record, options);
  return client.estimates.revise(revises.id, { reason: revises.reason, record }, options);
}

/** Nobody answered, or the service could not just now; a running twin of the same request is answered next time. */
const mayWait = (error: unknown): boolean =>
  isConnection(error) ||
  error instanceof ServiceFailedError ||
  error instanceof RateLimitedError ||
  error instanceof ConflictError;

const refusal = (error: unknown): SendingState =>
  error instanceof ProblemError
    ? { kind: 'refused', faults: error.errors, detail: error.message }
    : { kind: 'refused', faults: [], detail: String(error) };

/** Two pages that keep the same sheet do not send it side by side, where the browser can hold one of them back. */
async function onePageAtATime(work: () => Promise<void>): Promise<void> {
  if ('locks' in navigator) await navigator.locks.request('kingplank-deck:sending', work);
  else await work();
}

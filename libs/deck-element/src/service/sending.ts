import { ProblemError, type Kingplank, type StoredEstimate } from 'kingplank-sdk';
import type { Outbox, Waiting } from '../model/outbox.js';
import type { SendingState } from '../view/sheet.js';
import type { Album } from './album.js';
import { sendPhotographs } from './photographing.js';
import { mayWait } from './waiting.js';

/** Where what is to be sent is kept, and who it is sent by. */
export interface SendingFrom {
  readonly client: Kingplank;
  readonly outbox: Outbox;
  readonly album: Album;
}

export interface SendingEvents {
  readonly show: (state: SendingState) => void;
  readonly made: (stored: StoredEstimate, sent: Waiting) => void;
  /** To an estimate that was made before. */
  readonly photographsSent: (stored: StoredEstimate) => void;
}

/**
 * Sends what waits, oldest first, each under the key it was put away with: however often it is tried, and from however
 * many pages, one estimate comes of it, and its photographs go after it. What the service refuses is handed back with its faults; what nobody answered
 * keeps waiting.
 */
export class Sending {
  readonly #events: SendingEvents;
  #isSending = false;

  constructor(events: SendingEvents) {
    this.#events = events;
  }

  async sendAll(from: SendingFrom): Promise<void> {
    if (this.#isSending) return;
    this.#isSending = true;
    try {
      await onePageAtATime(() => this.#drain(from));
    } finally {
      this.#isSending = false;
    }
  }

  async #drain(from: SendingFrom): Promise<void> {
    const { outbox } = from;
    for (let next = outbox.waiting()[0]; next !== undefined; next = outbox.waiting()[0]) {
      this.#events.show({ kind: 'sending' });
      const isGone = await this.#send(from, next);
      if (!isGone) return;
    }
  }

  /** Whether it waits no longer. */
  async #send(from: SendingFrom, waiting: Waiting): Promise<boolean> {
    const { client, outbox } = from;
    try {
      const stored = await ask(client, waiting);
      return await this.#follow(from, waiting, stored);
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

  /** The estimate is made, now or at an earlier try, and its photographs go to it. */
  async #follow(
    { client, outbox, album }: SendingFrom,
    waiting: Waiting,
    stored: StoredEstimate,
  ): Promise<boolean> {
    const opened = { client: openedBy(stored, client), id: stored.id };
    const areSent = await sendPhotographs(waiting.photographs ?? [], album, opened);
    if (areSent) outbox.sent(waiting);
    else outbox.made(waiting);
    this.#events.show({ kind: 'nothing' });
    if (waiting.isMade !== true) this.#events.made(stored, waiting);
    else this.#events.photographsSent(stored);
    return areSent;
  }
}

/** A page that has no right to all estimates was handed a secret that opens this one. */
export const openedBy = ({ clientSecret }: StoredEstimate, client: Kingplank): Kingplank =>
  clientSecret === undefined ? client : client.withOptions({ apiKey: clientSecret });

const PATIENCE_MS = 60_000;

function ask(client: Kingplank, { key, record, revises }: Waiting): Promise<StoredEstimate> {
  const options = { idempotencyKey: key, timeoutMs: PATIENCE_MS };
  if (revises === undefined) return client.estimates.create(record, options);
  return client.estimates.revise(revises.id, { reason: revises.reason, record }, options);
}

const refusal = (error: unknown): SendingState =>
  error instanceof ProblemError
    ? { kind: 'refused', faults: error.errors, detail: error.message }
    : { kind: 'refused', faults: [], detail: String(error) };

/** Two pages that keep the same sheet do not send it side by side, where the browser can hold one of them back. */
async function onePageAtATime(work: () => Promise<void>): Promise<void> {
  if ('locks' in navigator) await navigator.locks.request('kingplank-deck:sending', work);
  else await work();
}

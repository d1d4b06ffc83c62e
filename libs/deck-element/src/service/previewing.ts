import {
  ForbiddenError,
  ProblemError,
  type DefectRecord,
  type EstimatePreview,
  type Kingplank,
} from 'kingplank-sdk';
import type { Units } from '../model/lengths.js';
import { freshKey } from '../model/outbox.js';
import { isReadyToPrice } from '../model/record.js';
import type { PreviewState } from '../view/sheet.js';
import { isConnection } from './waiting.js';

/**
 * Keeps the price beside the drawing: asks at once, one question at a time, and when the drawing has moved on
 * meanwhile asks again for what it is then. The last answer stays until the next one is there.
 */
export class Previewing {
  readonly #show: (state: PreviewState) => void;
  #wanted: { readonly client: Kingplank; readonly record: DefectRecord; readonly units: Units } | undefined;
  #isAsking = false;
  #last: EstimatePreview | undefined;

  constructor(show: (state: PreviewState) => void) {
    this.#show = show;
  }

  ask(client: Kingplank | undefined, record: DefectRecord, units: Units): void {
    if (client === undefined || !isReadyToPrice(record)) {
      this.#wanted = undefined;
      this.#last = undefined;
      this.#show({ kind: 'nothing' });
      return;
    }
    this.#wanted = { client, record, units };
    if (!this.#isAsking) void this.#answerAll();
  }

  async #answerAll(): Promise<void> {
    this.#isAsking = true;
    while (this.#wanted !== undefined) {
      const { client, record, units } = this.#wanted;
      this.#wanted = undefined;
      this.#show({ kind: 'asking', last: this.#last });
      const answered = await this.#answer(client, record, units);
      if (this.#wanted === undefined) this.#show(answered);
    }
    this.#isAsking = false;
  }

  async #answer(client: Kingplank, record: DefectRecord, units: Units): Promise<PreviewState> {
    const options = { idempotencyKey: freshKey(), maxRetries: 0, timeoutMs: 10_000, units };
    try {
      this.#last = await client.estimating.ask('preview', record, options);
      return { kind: 'answered', last: this.#last };
    } catch (error) {
      if (error instanceof ProblemError) this.#last = undefined;
      return stateAfter(error, this.#last);
    }
  }
}

function stateAfter(error: unknown, last: EstimatePreview | undefined): PreviewState {
  if (error instanceof ForbiddenError) return { kind: 'not-offered' };
  if (error instanceof ProblemError) return { kind: 'faults', faults: error.errors, detail: error.message };
  if (isConnection(error)) return { kind: 'offline', last };
  return { kind: 'faults', faults: [], detail: String(error) };
}

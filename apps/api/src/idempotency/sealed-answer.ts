import { hkdfSync } from 'node:crypto';
import { isRecord } from '../edge/record.js';
import { opened as openedBytes, sealed as sealedBytes, type Seal } from '../persistence/seal.js';

/** What was answered: enough to answer it again. */
export interface GivenAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: unknown;
}

const KEY_BYTES = 32;

/**
 * An answer that only the caller's own key opens. Answers may hold what is shown once, such as the text of a new key;
 * the database keeps no key, so that whoever reads it can open none of them.
 */
export const sealed = (answer: GivenAnswer, callersKey: string): Uint8Array =>
  sealedBytes(JSON.stringify(answer), sealFrom(callersKey));

/** Undefined when another key sealed it, or it was changed. */
export function opened(bytes: Uint8Array, callersKey: string): GivenAnswer | undefined {
  const text = openedBytes(bytes, sealFrom(callersKey));
  const answer: unknown = text === undefined ? undefined : JSON.parse(text);
  return isAnswer(answer) ? answer : undefined;
}

const PURPOSE = 'answers under an idempotency key';

/** The answer belongs to nothing but the key, so its place is nowhere. */
const sealFrom = (callersKey: string): Seal => ({
  key: new Uint8Array(hkdfSync('sha256', callersKey, 'kingplank', PURPOSE, KEY_BYTES)),
  place: '',
});

const isAnswer = (value: unknown): value is GivenAnswer =>
  isRecord(value) && typeof value.status === 'number' && isRecord(value.headers);

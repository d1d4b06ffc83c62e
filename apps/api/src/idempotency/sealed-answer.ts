import { createCipheriv, createDecipheriv, hkdfSync, randomBytes } from 'node:crypto';
import { isRecord } from '../edge/record.js';

/** What was answered: enough to answer it again. */
export interface GivenAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: unknown;
}

const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const KEY_BYTES = 32;

/**
 * An answer that only the caller's own key opens. Answers may hold what is shown once, such as the text of a new key;
 * the database keeps no key, so that whoever reads it can open none of them.
 */
export function sealed(answer: GivenAnswer, callersKey: string): Uint8Array {
  const nonce = randomBytes(NONCE_BYTES);
  const cipher = createCipheriv('aes-256-gcm', sealFrom(callersKey), nonce);
  const content = Buffer.concat([cipher.update(JSON.stringify(answer), 'utf8'), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), content]);
}

/** Undefined when another key sealed it, or it was changed. */
export function opened(bytes: Uint8Array, callersKey: string): GivenAnswer | undefined {
  const decipher = createDecipheriv('aes-256-gcm', sealFrom(callersKey), bytes.subarray(0, NONCE_BYTES));
  decipher.setAuthTag(bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES));
  try {
    const content = Buffer.concat([
      decipher.update(bytes.subarray(NONCE_BYTES + TAG_BYTES)),
      decipher.final(),
    ]);
    const answer: unknown = JSON.parse(content.toString('utf8'));
    return isAnswer(answer) ? answer : undefined;
  } catch {
    return undefined;
  }
}

const sealFrom = (callersKey: string): Uint8Array =>
  new Uint8Array(hkdfSync('sha256', callersKey, 'kingplank', 'answers under an idempotency key', KEY_BYTES));

const isAnswer = (value: unknown): value is GivenAnswer =>
  isRecord(value) && typeof value.status === 'number' && isRecord(value.headers);

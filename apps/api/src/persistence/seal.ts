import { createCipheriv, createDecipheriv, randomBytes } from 'node:crypto';

const NONCE_BYTES = 12;
const TAG_BYTES = 16;
const CIPHER = 'aes-256-gcm';

/** What is needed to open what was sealed. */
export interface Seal {
  /** 32 bytes. */
  readonly key: Uint8Array;
  /** Where the content belongs: it opens nowhere else. */
  readonly place: string;
}

/** AES-256-GCM (NIST SP 800-38D) under a nonce of its own: nonce, tag, content. */
export function sealed(content: string, { key, place }: Seal): Buffer {
  const nonce = randomBytes(NONCE_BYTES);
  const cipher = createCipheriv(CIPHER, key, nonce).setAAD(Buffer.from(place));
  const hidden = Buffer.concat([cipher.update(content, 'utf8'), cipher.final()]);
  return Buffer.concat([nonce, cipher.getAuthTag(), hidden]);
}

/** Undefined when it was sealed by another key or for another place, or was changed. */
export function opened(bytes: Uint8Array, { key, place }: Seal): string | undefined {
  if (bytes.length < NONCE_BYTES + TAG_BYTES) return undefined;
  const decipher = createDecipheriv(CIPHER, key, bytes.subarray(0, NONCE_BYTES)).setAAD(Buffer.from(place));
  decipher.setAuthTag(bytes.subarray(NONCE_BYTES, NONCE_BYTES + TAG_BYTES));
  try {
    const hidden = bytes.subarray(NONCE_BYTES + TAG_BYTES);
    return Buffer.concat([decipher.update(hidden), decipher.final()]).toString('utf8');
  } catch {
    return undefined;
  }
}

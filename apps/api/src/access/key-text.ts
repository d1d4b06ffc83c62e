import { createHash, randomBytes } from 'node:crypto';

/** What is kept of a key, and what is shown once. */
export interface MadeKey {
  readonly text: string;
  readonly hash: string;
  readonly prefix: string;
}

const PREFIX_LENGTH = 9;

export const newKey = (text = `kp_${randomBytes(32).toString('base64url')}`): MadeKey => ({
  text,
  hash: hashOfKey(text),
  prefix: text.slice(0, PREFIX_LENGTH),
});

export const hashOfKey = (text: string): string => createHash('sha256').update(text).digest('hex');

/** The key of an Authorization header (RFC 6750); undefined when there is none that could be ours. */
export function keyFromHeader(header: string | undefined): string | undefined {
  const match = /^bearer +(kp_[A-Za-z0-9_-]{32,100}) *$/i.exec(header ?? '');
  return match?.[1];
}

import { createHash, randomBytes } from 'node:crypto';

/** What is kept of a key, and what is shown once. */
export interface MadeKey {
  readonly text: string;
  readonly hash: string;
  readonly prefix: string;
}

const KEY_BYTES = 32;
/** So many characters of chance are shown, by which a person recognises a key. */
const SHOWN = 6;

/** Marks of keys by which a person, a browser client and a scanner for leaked secrets tell them apart. */
const marks = { secret: 'kp_', publishable: 'kp_pub_', holder: 'kp_es_' } as const;

export const newKey = (kind: keyof typeof marks = 'secret'): MadeKey =>
  keyOf(`${marks[kind]}${randomBytes(KEY_BYTES).toString('base64url')}`);

export const keyOf = (text: string): MadeKey => ({
  text,
  hash: hashOfKey(text),
  prefix: text.slice(0, markOf(text).length + SHOWN),
});

const markOf = (text: string): string => /^kp_(?:pub_|es_)?/.exec(text)?.[0] ?? '';

export const hashOfKey = (text: string): string => createHash('sha256').update(text).digest('hex');

export const isHoldersSecret = (text: string): boolean => text.startsWith(marks.holder);

/** The key of an Authorization header (RFC 6750); undefined when there is none that could be ours. */
export function keyFromHeader(header: string | undefined): string | undefined {
  const match = /^bearer +(kp_[A-Za-z0-9_-]{32,100}) *$/i.exec(header ?? '');
  return match?.[1];
}

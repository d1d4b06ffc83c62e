import type { IncomingMessage } from 'node:http';

/** Whether the caller would rather have 202 and an operation than wait: `Prefer: respond-async` (RFC 7240 §4.1). */
export function prefersAsync({ headers }: IncomingMessage): boolean {
  const given = headers['prefer'];
  const preferences = (Array.isArray(given) ? given.join(',') : (given ?? '')).split(',');
  return preferences.some(
    (preference) => preference.split(/[;=]/)[0].trim().toLowerCase() === 'respond-async',
  );
}

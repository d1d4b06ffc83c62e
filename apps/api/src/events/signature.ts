import { createHmac, randomBytes } from 'node:crypto';

const PREFIX = 'whsec_';

/** `whsec_` and base64 of 32 random bytes (Standard Webhooks asks for 24 to 64). */
export const newSecret = (): string => `${PREFIX}${randomBytes(32).toString('base64')}`;

export interface Signed {
  readonly id: string;
  readonly atS: number;
  readonly body: string;
}

/**
 * `webhook-signature`: for each secret `v1,` and base64 of HMAC-SHA256 over `id.timestamp.body`, with spaces between.
 * Source: Standard Webhooks, specification, "Signature scheme". Proven with another implementation in test/e2e/events.spec.ts.
 */
export const signatureOf = ({ id, atS, body }: Signed, secrets: readonly string[]): string =>
  secrets
    .map((secret) => {
      const key = Buffer.from(secret.slice(PREFIX.length), 'base64');
      return `v1,${createHmac('sha256', key).update(`${id}.${atS}.${body}`).digest('base64')}`;
    })
    .join(' ');

import { MisusedClientError, UntrustedEventError } from './errors.js';
import type { EventPage } from './generated/names.js';
import type { Settings } from './settings.js';

/** An event as it is delivered: thin, so fetch what it names. Types may be added: leave those alone that you do not know. */
export type DeliveredEvent = EventPage['items'][number];

export type HeadersLike = Headers | Readonly<Record<string, string | readonly string[] | undefined>>;

export interface UnwrapOptions {
  /** Secrets (`whsec_…`) of the endpoint; several while one is being replaced. Default: those of the client. */
  readonly secrets?: readonly string[];
  /** How old or how early a delivery may be. Default 300. */
  readonly toleranceS?: number;
}

/** Events as Standard Webhooks delivers them: signed over `id.timestamp.body` with HMAC-SHA256. */
export class Webhooks {
  readonly #settings: Settings;

  constructor(settings: Settings) {
    this.#settings = settings;
  }

  /**
   * Proves that a delivery comes from the service and is fresh, and reads it. Hand in the body as it arrived: read as
   * JSON and written again it has another signature.
   *
   * @throws {UntrustedEventError} unsigned, signed with another secret, changed, too old or from the future
   * @example
   * const event = await kingplank.webhooks.unwrap(await request.text(), request.headers);
   * if (event.type === 'estimate.created') console.log(event.data.id);
   */
  async unwrap(
    body: string,
    headers: HeadersLike,
    { secrets = this.#settings.webhookSecrets, toleranceS = 300 }: UnwrapOptions = {},
  ): Promise<DeliveredEvent> {
    if (secrets.length === 0)
      throw new MisusedClientError('Give `secrets`, `webhookSecrets`, or set KINGPLANK_WEBHOOK_SECRET.');
    const signed = signedPartsOf(headers);
    refuseStale(signed.timestamp, toleranceS);
    const offered = signed.signature
      .split(' ')
      .flatMap((one) => (one.startsWith('v1,') ? [one.slice(3)] : []));
    const isTrusted = await anyVerifies(secrets, offered, `${signed.id}.${signed.timestamp}.${body}`);
    if (!isTrusted) throw new UntrustedEventError('The event is not signed with a secret of this endpoint.');
    const event: DeliveredEvent = JSON.parse(body);
    return event;
  }

  /**
   * The headers of a delivery, to test a handler with.
   *
   * @example
   * const headers = await kingplank.webhooks.sign(body, { secret, id: 'evt_1', at: new Date() });
   */
  async sign(
    body: string,
    { secret, id, at }: { readonly secret: string; readonly id: string; readonly at: Date },
  ): Promise<Readonly<Record<string, string>>> {
    const timestamp = String(Math.floor(at.getTime() / 1000));
    const key = await keyOf(secret, 'sign');
    const signature = await crypto.subtle.sign('HMAC', key, bytesOf(`${id}.${timestamp}.${body}`));
    return {
      'webhook-id': id,
      'webhook-timestamp': timestamp,
      'webhook-signature': `v1,${btoa(String.fromCharCode(...new Uint8Array(signature)))}`,
    };
  }
}

function signedPartsOf(headers: HeadersLike) {
  const part = (name: string): string => {
    const value = headers instanceof Headers ? headers.get(name) : headers[name];
    if (typeof value === 'string' && value !== '') return value;
    throw new UntrustedEventError(`The header ${name} is missing.`);
  };
  return {
    id: part('webhook-id'),
    timestamp: part('webhook-timestamp'),
    signature: part('webhook-signature'),
  };
}

function refuseStale(timestamp: string, toleranceS: number): void {
  const awayS = Math.abs(Date.now() / 1000 - Number(timestamp));
  if (!(awayS <= toleranceS))
    throw new UntrustedEventError('The event was signed too long ago or too early.');
}

async function anyVerifies(
  secrets: readonly string[],
  signatures: readonly string[],
  content: string,
): Promise<boolean> {
  const keys = await Promise.all(secrets.map((secret) => keyOf(secret, 'verify')));
  const verdicts = await Promise.all(
    keys.flatMap((key) =>
      signatures.map((signature) =>
        crypto.subtle.verify('HMAC', key, bytesFromBase64(signature), bytesOf(content)),
      ),
    ),
  );
  return verdicts.includes(true);
}

type Key = Awaited<ReturnType<typeof crypto.subtle.importKey>>;

async function keyOf(secret: string, use: 'sign' | 'verify'): Promise<Key> {
  const bytes = bytesFromBase64(secret.replace(/^whsec_/, ''));
  if (bytes.length === 0) throw new MisusedClientError('A webhook secret is `whsec_` and base64.');
  return await crypto.subtle.importKey('raw', bytes, { name: 'HMAC', hash: 'SHA-256' }, false, [use]);
}

const bytesOf = (content: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(content);

/** Bytes of a base64 text; none for a text that is not base64, which then verifies nothing. */
function bytesFromBase64(given: string): Uint8Array<ArrayBuffer> {
  try {
    return Uint8Array.from(atob(given), (character) => character.charCodeAt(0));
  } catch {
    return new Uint8Array(0);
  }
}

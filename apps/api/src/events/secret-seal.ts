import { opened, sealed } from '../persistence/seal.js';

const PREFIX = 'sealed:';

/** How secrets of endpoints stand in the database: sealed by the first of the service's keys, or as they are without one. */
export class SecretSeal {
  constructor(private readonly keys: readonly Uint8Array[]) {}

  /** For the endpoint alone: put beside another one it opens nothing. */
  seal(secret: string, endpointId: string): string {
    if (this.keys.length === 0) return secret;
    return PREFIX + sealed(secret, { key: this.keys[0], place: endpointId }).toString('base64');
  }

  /** Undefined where none of the keys opens it. Secrets from before there was a key are open already. */
  open(kept: string, endpointId: string): string | undefined {
    if (!kept.startsWith(PREFIX)) return kept;
    const bytes = Buffer.from(kept.slice(PREFIX.length), 'base64');
    for (const key of this.keys) {
      const secret = opened(bytes, { key, place: endpointId });
      if (secret !== undefined) return secret;
    }
    return undefined;
  }
}

import { Injectable } from '@nestjs/common';
import { Database } from '../persistence/database.js';
import { AccessRepository } from './access.repository.js';
import { hashOfKey } from './key-text.js';
import type { Caller } from './roles.js';

interface Remembered {
  readonly caller: Caller | undefined;
  readonly until: number;
}

/** How long a key is believed without asking the database again; a revoked key may work this long in other copies. */
const REMEMBERED_MS = 900;
const MOST_REMEMBERED = 10_000;

/** Who holds which key. */
@Injectable()
export class KeyRing {
  private readonly remembered = new Map<string, Remembered>();

  constructor(private readonly database: Database) {}

  async findCaller(key: string): Promise<Caller | undefined> {
    const hash = hashOfKey(key);
    const known = this.remembered.get(hash);
    if (known !== undefined && known.until > Date.now()) return known.caller;
    const caller = await this.lookUp(hash);
    if (this.remembered.size >= MOST_REMEMBERED) this.remembered.clear();
    this.remembered.set(hash, { caller, until: Date.now() + REMEMBERED_MS });
    return caller;
  }

  /** After a key was made or revoked here, nothing remembered may stand against it. */
  forget(): void {
    this.remembered.clear();
  }

  private async lookUp(hash: string): Promise<Caller | undefined> {
    const row = await this.database.withKeyHash(hash, (tx) => AccessRepository.in(tx).findLivingKey(hash));
    return row === null
      ? undefined
      : { organisationId: row.organisationId, keyId: row.id, keyName: row.name, roles: row.roles };
  }
}

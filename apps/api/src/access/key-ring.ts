import { Injectable } from '@nestjs/common';
import { Database, type Transaction } from '../persistence/database.js';
import { AccessRepository } from './access.repository.js';
import { hashOfKey, isHoldersSecret } from './key-text.js';
import type { Caller } from './roles.js';
import { SecretsRepository } from './secrets.repository.js';

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
    const caller = await this.database.withKeyHash(hash, (tx) =>
      isHoldersSecret(key) ? holder(tx, hash) : keyHolder(tx, hash),
    );
    if (this.remembered.size >= MOST_REMEMBERED) this.remembered.clear();
    this.remembered.set(hash, { caller, until: Date.now() + REMEMBERED_MS });
    return caller;
  }

  /** After a key was made or revoked here, nothing remembered may stand against it. */
  forget(): void {
    this.remembered.clear();
  }
}

async function keyHolder(tx: Transaction, hash: string): Promise<Caller | undefined> {
  const keys = AccessRepository.in(tx);
  const row = await keys.findLivingKey(hash);
  if (row === null) return undefined;
  await keys.noteUse(row);
  const { organisationId, id, name, roles, scopes, kind, page } = row;
  return {
    organisationId,
    keyId: id,
    keyName: name,
    roles,
    scopes,
    kind,
    ...(page === null ? {} : { page }),
  };
}

/** The secret of an estimate is worth what the key is worth that it was made with: revoked with it, held to its pages. */
async function holder(tx: Transaction, hash: string): Promise<Caller | undefined> {
  const secret = await SecretsRepository.in(tx).findLiving(hash);
  if (secret === null) return undefined;
  const key = await AccessRepository.in(tx).livingKeyIn(secret.organisationId, secret.keyId);
  if (key === null) return undefined;
  return {
    organisationId: secret.organisationId,
    keyId: key.id,
    keyName: key.name,
    roles: [],
    scopes: [],
    kind: 'holder',
    secretHash: hash,
    ...(key.page === null ? {} : { page: key.page }),
  };
}

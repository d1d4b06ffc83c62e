import { HttpProblem } from '../edge/problems.js';
import { Defect, problem } from '#lib/kernel';
import type { Database, Transaction } from '../persistence/database.js';
import { newKey } from './key-text.js';
import type { Caller, PageLimits } from './roles.js';
import { SecretsRepository } from './secrets.repository.js';

/** A customer comes back the next day at most; longer, and a secret in a browser's memory is worth stealing. */
const OPEN_H = 24;
const HOUR_MS = 3_600_000;
const MOST_REVISIONS = 20;

/** Shown once: opens the estimate it came with. */
export interface ClientSecret {
  /** Bearer of this text may read the one estimate; shown once. */
  readonly clientSecret: string;
  /** Until when the secret counts (RFC 3339). */
  readonly clientSecretExpiresAt: string;
}

const openUntil = (): Date => new Date(Date.now() + OPEN_H * HOUR_MS);

/** A secret for an estimate that is about to be written, or was; the transaction sees that estimate from here on. */
export async function openedFor(
  tx: Transaction,
  { organisationId, keyId }: Caller,
  rootId: string,
): Promise<ClientSecret> {
  const { text, hash } = newKey('holder');
  const expiresAt = openUntil();
  const secrets = SecretsRepository.in(tx);
  await secrets.add({
    hash,
    organisationId,
    keyId,
    rootId,
    reference: null,
    revisionsLeft: MOST_REVISIONS,
    expiresAt,
  });
  await secrets.confineTo(hash);
  return { clientSecret: text, clientSecretExpiresAt: expiresAt.toISOString() };
}

/** A secret under which one estimate may be made within `minutes`, called as the shop says. */
export async function sessionIn(
  tx: Transaction,
  { organisationId, keyId }: Caller,
  { reference, minutes }: { readonly reference?: string; readonly minutes: number },
): Promise<ClientSecret> {
  const { text, hash } = newKey('holder');
  const expiresAt = new Date(Date.now() + minutes * 60_000);
  await SecretsRepository.in(tx).add({
    hash,
    organisationId,
    keyId,
    rootId: null,
    reference: reference ?? null,
    revisionsLeft: MOST_REVISIONS,
    expiresAt,
  });
  return { clientSecret: text, clientSecretExpiresAt: expiresAt.toISOString() };
}

/**
 * Lets a page's estimate be written: counts it against the day of a publishable key, or binds it to the session it was
 * asked under. Undefined for callers who need neither.
 *
 * @throws {HttpProblem} too-many-requests, conflict
 */
export async function admitted(
  tx: Transaction,
  caller: Caller,
  estimateId: string,
): Promise<ClientSecret | undefined> {
  if (caller.kind === 'secret') return undefined;
  const secrets = SecretsRepository.in(tx);
  if (caller.kind === 'publishable') {
    if (!(await secrets.countUse(caller.keyId, caller.organisationId, limitsOf(caller).perDay)))
      throw dayUsedUp();
    return openedFor(tx, caller, estimateId);
  }
  if (!(await secrets.bind(caller.secretHash ?? '', estimateId, openUntil())))
    throw new HttpProblem('conflict', {
      detail: 'The estimate of this secret is made; revise it, or ask the shop for another secret.',
    });
  return undefined;
}

/** @throws {HttpProblem} conflict, when the secret has had all its revisions */
export async function admittedRevision(tx: Transaction, { kind, secretHash }: Caller): Promise<void> {
  if (kind === 'secret' || (await SecretsRepository.in(tx).takeRevision(secretHash ?? ''))) return;
  throw new HttpProblem('conflict', {
    detail: `An estimate is revised ${MOST_REVISIONS} times with one secret; those are used up.`,
  });
}

/**
 * The reference that an estimate made under a session must carry.
 *
 * @throws {HttpProblem} unprocessable, when the record names another
 */
export async function referenceFor(
  database: Database,
  { kind, secretHash, organisationId }: Caller,
  given: string | undefined,
): Promise<string | undefined> {
  if (kind !== 'holder') return given;
  const secret = await database.inOrganisation(organisationId, (tx) =>
    SecretsRepository.in(tx).findLiving(secretHash ?? ''),
  );
  const fixed = secret?.reference ?? undefined;
  if (fixed === undefined || given === undefined || given === fixed) return fixed ?? given;
  throw new HttpProblem('unprocessable', {
    detail: 'The reference is fixed by the shop.',
    problems: [
      problem('contradiction', '/reference', {
        other: 'the session',
        why: 'the shop fixed another reference; leave it out',
      }),
    ],
  });
}

const limitsOf = ({ page, keyId }: Caller): PageLimits => {
  if (page === undefined) throw new Defect(`The publishable key ${keyId} has no limits`);
  return page;
};

function dayUsedUp(): HttpProblem {
  const now = Date.now();
  const dayMs = 24 * HOUR_MS;
  return new HttpProblem('too-many-requests', {
    detail: 'This key has made as many estimates today as it may; the count begins anew at midnight UTC.',
    headers: { 'Retry-After': String(Math.ceil((dayMs - (now % dayMs)) / 1000)) },
  });
}

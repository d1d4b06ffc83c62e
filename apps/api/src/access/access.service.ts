import { Injectable } from '@nestjs/common';
import { problem, type Problem } from '#lib/kernel';
import { AuditTrail } from '../audit/audit-trail.js';
import { historyOf, type History } from '../audit/history.js';
import { mergePatched } from '../edge/merge-patch.js';
import { staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isId, newId } from '../persistence/ids.js';
import type { ApiKeyRow, OrganisationRow } from './access.entities.js';
import { NewOrganisationDto, type NewKeyDto, type NewPublishableKeyDto } from './access.dto.js';
import { AccessRepository, type Page } from './access.repository.js';
import { sessionIn, type ClientSecret } from './holders.js';
import { KeyRing } from './key-ring.js';
import { newKey } from './key-text.js';
import { organisationIn } from './organisation.js';
import { may, type Caller, type KeyKind } from './roles.js';

export interface MadeKey {
  readonly row: ApiKeyRow;
  readonly text: string;
}

export interface MadeOrganisation {
  readonly row: OrganisationRow;
  readonly adminKey: MadeKey;
}

type VersionCheck = (version: number) => void;
type StoredKind = Exclude<KeyKind, 'holder'>;

const HOUR_MS = 3_600_000;

/** Organisations and their keys. */
@Injectable()
export class AccessService {
  constructor(
    private readonly database: Database,
    private readonly keyRing: KeyRing,
  ) {}

  organisations(page: Page): Promise<OrganisationRow[]> {
    return this.database.asOperator((tx) => AccessRepository.in(tx).organisations(page));
  }

  organisation(caller: Caller, id: string): Promise<OrganisationRow> {
    return this.amongOrganisations(caller, (tx) => organisationIn(tx, id));
  }

  /** With the first key of its admin: whoever makes an organisation has no way into it afterwards. */
  addOrganisation(caller: Caller, { name }: NewOrganisationDto): Promise<MadeOrganisation> {
    return this.database.asOperator(async (tx) => {
      const access = AccessRepository.in(tx);
      const row = await access.addOrganisation({ id: newId(), name });
      const { text, hash, prefix } = newKey();
      const adminKey = await access.addKey({
        id: newId(),
        organisationId: row.id,
        name: 'First key',
        keyHash: hash,
        prefix,
        roles: ['organisation-admin'],
        scopes: [],
      });
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: null },
        { action: 'created', subject: 'organisation', code: row.id, after: { name } },
      );
      return { row, adminKey: { row: adminKey, text } };
    });
  }

  patchOrganisation(
    caller: Caller,
    id: string,
    patch: unknown,
    check: VersionCheck,
  ): Promise<OrganisationRow> {
    return this.onOrganisation(caller, id, async (tx) => {
      const before = await organisationIn(tx, id);
      check(before.version);
      const { name } = checkedAs(NewOrganisationDto, mergePatched({ name: before.name }, patch));
      if (!(await AccessRepository.in(tx).renameOrganisation(id, before.version, name))) throw staleVersion();
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: caller.organisationId === id ? id : null },
        {
          action: 'changed',
          subject: 'organisation',
          code: id,
          before: { name: before.name },
          after: { name },
        },
      );
      return organisationIn(tx, id);
    });
  }

  keys({ organisationId }: Caller, kind: StoredKind, page: Page): Promise<ApiKeyRow[]> {
    return this.database.inOrganisation(organisationId, (tx) => AccessRepository.in(tx).keys(kind, page));
  }

  key({ organisationId }: Caller, kind: StoredKind, id: string): Promise<ApiKeyRow> {
    return this.database.inOrganisation(organisationId, (tx) => keyIn(tx, kind, id));
  }

  history({ organisationId }: Caller, id: string): Promise<History> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      await keyIn(tx, 'secret', id);
      return historyOf(await AuditTrail.in(tx).about('key', id));
    });
  }

  async addKey(caller: Caller, { name, roles, scopes = [], expiresAt }: NewKeyDto): Promise<MadeKey> {
    refuseIf([
      ...scopeFaults(roles, scopes),
      ...expiryFaults(expiresAt),
      ...(roles.includes('platform-operator') && !caller.roles.includes('platform-operator')
        ? [
            contradiction(
              '/roles',
              'your own roles',
              'only a platform-operator gives the role platform-operator',
            ),
          ]
        : []),
    ]);
    return this.made(caller, { name, roles, scopes, expiresAt: instantOf(expiresAt) });
  }

  /** A new key in the place of an old one, which goes on for a while. */
  renewKey(caller: Caller, id: string, overlapHours: number): Promise<MadeKey> {
    return this.afterwardsForgetting(caller, async (tx) => {
      const old = await keyIn(tx, 'secret', id);
      if (isOver(old)) throw new HttpProblem('conflict', { detail: 'The key has ended; make another.' });
      const made = await addedKey(tx, caller, {
        name: old.name,
        roles: old.roles,
        scopes: old.scopes,
        expiresAt: null,
        renewsId: id,
      });
      const end = new Date(Date.now() + overlapHours * HOUR_MS);
      const endsAt = old.expiresAt !== null && old.expiresAt < end ? old.expiresAt : end;
      if (!(await AccessRepository.in(tx).endKey(id, old.version, endsAt))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'changed',
        subject: 'key',
        code: id,
        after: { renewedBy: made.row.id, expiresAt: endsAt.toISOString() },
      });
      return made;
    });
  }

  addPublishableKey(caller: Caller, wanted: NewPublishableKeyDto): Promise<ApiKeyRow> {
    refuseIf(expiryFaults(wanted.expiresAt));
    const { name, expiresAt, origins, perMinute, perMinutePerVisitor, perDay, edition } = wanted;
    const { text, hash, prefix } = newKey('publishable');
    return this.afterwardsForgetting(caller, async (tx) => {
      if (edition !== undefined && !(await AccessRepository.in(tx).hasPublishedEdition(edition)))
        refuseIf([
          problem('not-in-form', '/edition', {
            value: JSON.stringify(edition),
            form: 'the code of a published edition of your organisation',
          }),
        ]);
      const row = await AccessRepository.in(tx).addKey({
        id: newId(),
        organisationId: caller.organisationId,
        name,
        keyHash: hash,
        prefix,
        roles: [],
        scopes: [],
        kind: 'publishable',
        shownText: text,
        expiresAt: instantOf(expiresAt),
        page: {
          origins,
          perMinute,
          perMinutePerVisitor,
          perDay,
          ...(edition === undefined ? {} : { edition }),
        },
      });
      await AuditTrail.in(tx).add(caller, {
        action: 'created',
        subject: 'publishable-key',
        code: row.id,
        after: { ...wanted },
      });
      return row;
    });
  }

  openSession(
    caller: Caller,
    { reference, minutes }: { readonly reference?: string; readonly minutes: number },
  ): Promise<ClientSecret> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const session = await sessionIn(tx, caller, { reference, minutes });
      await AuditTrail.in(tx).add(caller, {
        action: 'created',
        subject: 'client-session',
        code: reference ?? 'without a reference',
        after: { minutes },
      });
      return session;
    });
  }

  async revokeKey(caller: Caller, kind: StoredKind, id: string, check: VersionCheck): Promise<void> {
    await this.afterwardsForgetting(caller, async (tx) => {
      const before = await keyIn(tx, kind, id);
      check(before.version);
      if (before.revokedAt !== null) return;
      if (
        before.roles.includes('organisation-admin') &&
        (await AccessRepository.in(tx).lockAdminKeys()).every((key) => key === id)
      )
        throw lastAdmin();
      if (!(await AccessRepository.in(tx).revokeKey(id, before.version))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'revoked',
        subject: kind === 'secret' ? 'key' : 'publishable-key',
        code: id,
      });
    });
  }

  private made(caller: Caller, wanted: WantedKey): Promise<MadeKey> {
    return this.afterwardsForgetting(caller, (tx) => addedKey(tx, caller, wanted));
  }

  private async afterwardsForgetting<T>(
    { organisationId }: Caller,
    work: (tx: Transaction) => Promise<T>,
  ): Promise<T> {
    const result = await this.database.inOrganisation(organisationId, work);
    this.keyRing.forget();
    return result;
  }

  /** A platform-operator sees all organisations, and everybody else their own. */
  /** Of the own one also an operator writes as its member: the deed stands in the history of that organisation. */
  private onOrganisation<T>(caller: Caller, id: string, work: (tx: Transaction) => Promise<T>): Promise<T> {
    return caller.organisationId === id
      ? this.database.inOrganisation(id, work)
      : this.amongOrganisations(caller, work);
  }

  private amongOrganisations<T>(caller: Caller, work: (tx: Transaction) => Promise<T>): Promise<T> {
    return may(caller, 'organisations:make')
      ? this.database.asOperator(work)
      : this.database.inOrganisation(caller.organisationId, work);
  }
}

interface WantedKey extends Pick<ApiKeyRow, 'name' | 'roles' | 'scopes' | 'expiresAt'> {
  readonly renewsId?: string;
}

async function addedKey(tx: Transaction, caller: Caller, wanted: WantedKey): Promise<MadeKey> {
  const { text, hash, prefix } = newKey();
  const row = await AccessRepository.in(tx).addKey({
    ...wanted,
    id: newId(),
    organisationId: caller.organisationId,
    keyHash: hash,
    prefix,
  });
  const { name, roles, scopes, expiresAt } = wanted;
  await AuditTrail.in(tx).add(caller, {
    action: 'created',
    subject: 'key',
    code: row.id,
    after: { name, roles, scopes, expiresAt: expiresAt?.toISOString() },
  });
  return { row, text };
}

const isOver = ({ revokedAt, expiresAt }: ApiKeyRow): boolean =>
  revokedAt !== null || (expiresAt !== null && expiresAt.getTime() <= Date.now());

const instantOf = (text: string | undefined): Date | null => (text === undefined ? null : new Date(text));

const expiryFaults = (expiresAt: string | undefined): readonly Problem[] =>
  expiresAt === undefined || Date.parse(expiresAt) > Date.now()
    ? []
    : [
        problem('out-of-range', '/expiresAt', {
          value: expiresAt,
          range: 'an instant that is still to come',
        }),
      ];

const contradiction = (at: string, other: string, why: string): Problem =>
  problem('contradiction', at, { other, why });

function scopeFaults(roles: NewKeyDto['roles'], scopes: readonly string[]): readonly Problem[] {
  const isIntegrator = roles.includes('integrator');
  if (isIntegrator && scopes.length === 0)
    return [
      problem('missing', '/scopes', { expected: 'what the integrator may do, such as estimates:read' }),
    ];
  return !isIntegrator && scopes.length > 0
    ? [
        contradiction(
          '/scopes',
          '/roles',
          'only an integrator has scopes; other roles say themselves what they may',
        ),
      ]
    : [];
}

function refuseIf(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
}

const lastAdmin = (): HttpProblem =>
  new HttpProblem('conflict', {
    detail:
      'This is the last key of an organisation-admin that does not end by itself; without it nobody could make another. Make one first.',
  });

async function keyIn(tx: Transaction, kind: StoredKind, id: string): Promise<ApiKeyRow> {
  const row = isId(id) ? await AccessRepository.in(tx).findKey(id) : null;
  if (row === null || row.kind !== kind) throw notFound(`Key ${JSON.stringify(id.slice(0, 60))}`);
  return row;
}

import { Injectable } from '@nestjs/common';
import { problem } from '#lib/kernel';
import { AuditTrail } from '../audit/audit-trail.js';
import { mergePatched } from '../edge/merge-patch.js';
import { staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound } from '../edge/problems.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isId, newId } from '../persistence/ids.js';
import type { ApiKeyRow, OrganisationRow } from './access.entities.js';
import { NewOrganisationDto, type NewKeyDto } from './access.dto.js';
import { AccessRepository } from './access.repository.js';
import { KeyRing } from './key-ring.js';
import { newKey } from './key-text.js';
import { organisationIn } from './organisation.js';
import type { Caller } from './roles.js';

export interface MadeKey {
  readonly row: ApiKeyRow;
  readonly text: string;
}

type VersionCheck = (version: number) => void;

/** Organisations and keys, for operators. */
@Injectable()
export class AccessService {
  constructor(
    private readonly database: Database,
    private readonly keys: KeyRing,
  ) {}

  organisations(): Promise<OrganisationRow[]> {
    return this.database.asOperator((tx) => AccessRepository.in(tx).organisations());
  }

  organisation(id: string): Promise<OrganisationRow> {
    return this.database.asOperator((tx) => organisationIn(tx, id));
  }

  addOrganisation(caller: Caller, { name }: NewOrganisationDto): Promise<OrganisationRow> {
    return this.database.asOperator(async (tx) => {
      const row = await AccessRepository.in(tx).addOrganisation({ id: newId(), name });
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: null },
        { action: 'created', subject: 'organisation', code: row.id, after: { name } },
      );
      return row;
    });
  }

  patchOrganisation(
    caller: Caller,
    id: string,
    patch: unknown,
    check: VersionCheck,
  ): Promise<OrganisationRow> {
    return this.database.asOperator(async (tx) => {
      const before = await organisationIn(tx, id);
      check(before.version);
      const { name } = checkedAs(NewOrganisationDto, mergePatched({ name: before.name }, patch));
      if (!(await AccessRepository.in(tx).renameOrganisation(id, before.version, name))) throw staleVersion();
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: null },
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

  keysOf(organisationId: string): Promise<ApiKeyRow[]> {
    return this.database.asOperator(async (tx) =>
      AccessRepository.in(tx).keysOf((await organisationIn(tx, organisationId)).id),
    );
  }

  key(id: string): Promise<ApiKeyRow> {
    return this.database.asOperator((tx) => keyIn(tx, id));
  }

  async addKey(
    caller: Caller,
    { name, roles, organisationId = caller.organisationId }: NewKeyDto,
  ): Promise<MadeKey> {
    const made = newKey();
    const row = await this.database.asOperator(async (tx) => {
      if ((await AccessRepository.in(tx).findOrganisation(organisationId)) === null)
        throw unknownOrganisation(organisationId);
      const added = await AccessRepository.in(tx).addKey({
        id: newId(),
        organisationId,
        name,
        keyHash: made.hash,
        prefix: made.prefix,
        roles,
      });
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: null },
        { action: 'created', subject: 'key', code: added.id, after: { name, roles, organisationId } },
      );
      return added;
    });
    this.keys.forget();
    return { row, text: made.text };
  }

  async revokeKey(caller: Caller, id: string, check: VersionCheck): Promise<void> {
    await this.database.asOperator(async (tx) => {
      const before = await keyIn(tx, id);
      check(before.version);
      if (before.revokedAt !== null) return;
      if (
        before.roles.includes('operator') &&
        (await AccessRepository.in(tx).lockOperatorKeys()).every((key) => key === id)
      )
        throw lastOperator();
      if (!(await AccessRepository.in(tx).revokeKey(id, before.version))) throw staleVersion();
      await AuditTrail.in(tx).add(
        { ...caller, organisationId: null },
        { action: 'revoked', subject: 'key', code: id },
      );
    });
    this.keys.forget();
  }
}

const lastOperator = (): HttpProblem =>
  new HttpProblem('conflict', {
    detail: 'This is the last key of an operator; without it nobody could make another. Make one first.',
  });

async function keyIn(tx: Transaction, id: string): Promise<ApiKeyRow> {
  const row = isId(id) ? await AccessRepository.in(tx).findKey(id) : null;
  if (row === null) throw notFound(`Key ${JSON.stringify(id.slice(0, 60))}`);
  return row;
}

const unknownOrganisation = (id: string): HttpProblem =>
  new HttpProblem('unprocessable', {
    detail: 'The organisation is not known.',
    problems: [
      problem('not-in-form', '/organisationId', {
        value: JSON.stringify(id),
        form: 'the id of an organisation that exists',
      }),
    ],
  });

import { createHash } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { organisationIn } from '../access/organisation.js';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { staleVersion } from '../edge/preconditions.js';
import { answer, notFound } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { Workbench } from '../workbench/workbench.js';
import { logoFrom } from './logo.js';
import type { LetterheadDto } from './letterhead.dto.js';
import {
  LetterheadRepository,
  type LetterheadContent,
  type LetterheadState,
} from './letterhead.repository.js';

export interface NamedLetterhead {
  readonly name: string;
  readonly state: LetterheadState;
}

type VersionCheck = (version: number) => void;

/** The letterhead of the caller's organisation. */
@Injectable()
export class LetterheadService {
  constructor(
    private readonly database: Database,
    private readonly workbench: Workbench,
  ) {}

  letterhead({ organisationId }: Caller): Promise<NamedLetterhead> {
    return this.database.inOrganisation(organisationId, (tx) => namedIn(tx, organisationId));
  }

  async logo(caller: Caller): Promise<{ readonly logo: Uint8Array; readonly version: number }> {
    const {
      state: { logo, version },
    } = await this.letterhead(caller);
    if (logo === null) throw notFound('A logo of the organisation');
    return { logo, version };
  }

  setText(
    caller: Caller,
    { lines, logoDescription }: LetterheadDto,
    check: VersionCheck,
  ): Promise<NamedLetterhead> {
    return this.change(caller, check, ({ logo }) => ({
      lines,
      logoDescription: logoDescription ?? null,
      logo,
    }));
  }

  /** The picture is judged and drawn anew before any transaction begins. */
  async setLogo(caller: Caller, uploaded: Uint8Array, check: VersionCheck): Promise<NamedLetterhead> {
    check((await this.letterhead(caller)).state.version);
    const logo = answer(await logoFrom(uploaded, this.workbench, caller));
    return this.change(caller, check, (before) => ({ ...before, logo }));
  }

  async removeLogo(caller: Caller, check: VersionCheck): Promise<void> {
    await this.change(caller, check, (before) => {
      if (before.logo === null) throw notFound('A logo of the organisation');
      return { ...before, logo: null };
    });
  }

  private change(
    caller: Caller,
    check: VersionCheck,
    next: (before: LetterheadState) => LetterheadContent,
  ): Promise<NamedLetterhead> {
    const { organisationId } = caller;
    return this.database.inOrganisation(organisationId, async (tx) => {
      const letterheads = LetterheadRepository.in(tx);
      const before = await letterheads.get(organisationId);
      check(before.version);
      const after = next(before);
      if (!(await letterheads.write(organisationId, before.version, after))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'changed',
        subject: 'letterhead',
        code: organisationId,
        before: recorded(before),
        after: recorded(after),
      });
      return namedIn(tx, organisationId);
    });
  }
}

async function namedIn(tx: Transaction, organisationId: string): Promise<NamedLetterhead> {
  const { name } = await organisationIn(tx, organisationId);
  return { name, state: await LetterheadRepository.in(tx).get(organisationId) };
}

/** The audit trail keeps what a picture was by its hash. */
const recorded = ({
  lines,
  logoDescription,
  logo,
}: LetterheadContent): Readonly<Record<string, unknown>> => ({
  lines,
  logoDescription,
  logoSha256: logo === null ? null : createHash('sha256').update(logo).digest('hex'),
});

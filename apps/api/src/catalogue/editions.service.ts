import { Injectable } from '@nestjs/common';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { historyOf, type History } from '../audit/history.js';
import { staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isUniqueViolation } from '../persistence/failures.js';
import { newId } from '../persistence/ids.js';
import { catalogueFrom, hashOfContent } from './catalogue-document.js';
import type { EditionRow } from './catalogue.entities.js';
import { inconsistencies } from './consistency.js';
import { CurrentCatalogue } from './current-catalogue.js';
import { EditionsRepository } from './editions.repository.js';

export interface NewDraft {
  readonly code: string;
  readonly note?: string;
  /** The current edition when absent. */
  readonly basedOn?: string;
}

type VersionCheck = (version: number) => void;

/** Drafts are copied from an edition, changed, and published whole; what is published never changes. */
@Injectable()
export class EditionsService {
  constructor(
    private readonly database: Database,
    private readonly current: CurrentCatalogue,
  ) {}

  list({
    organisationId,
  }: Caller): Promise<{ readonly current: EditionRow; readonly editions: readonly EditionRow[] }> {
    return this.database.inOrganisation(organisationId, async (tx) => ({
      current: await editionOf(tx, undefined),
      editions: await EditionsRepository.in(tx).list(),
    }));
  }

  get({ organisationId }: Caller, code: string): Promise<EditionRow> {
    return this.database.inOrganisation(organisationId, (tx) => editionOf(tx, code));
  }

  history({ organisationId }: Caller, code: string): Promise<History> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      const entries = await AuditTrail.in(tx).about('edition', code);
      if (entries.length === 0) await editionOf(tx, code);
      return historyOf(entries);
    });
  }

  async addDraft(caller: Caller, { code, note, basedOn }: NewDraft): Promise<EditionRow> {
    try {
      return await this.database.inOrganisation(caller.organisationId, async (tx) => {
        const base = await editionOf(tx, basedOn);
        const id = newId();
        await EditionsRepository.in(tx).addDraft(
          { id, organisationId: caller.organisationId, code, note: note ?? '' },
          base,
        );
        await AuditTrail.in(tx).add(caller, {
          action: 'created',
          subject: 'edition',
          code,
          editionId: id,
          after: { code, note, basedOn: base.code },
        });
        return editionOf(tx, code);
      });
    } catch (failure) {
      if (isUniqueViolation(failure, 'edition_code_unique'))
        throw new HttpProblem('conflict', { detail: `An edition ${code} exists already.` });
      throw failure;
    }
  }

  async publish(caller: Caller, code: string, check: VersionCheck): Promise<EditionRow> {
    const published = await this.database.inOrganisation(caller.organisationId, async (tx) => {
      const draft = await draftOf(tx, code);
      check(draft.version);
      const editions = EditionsRepository.in(tx);
      const content = await editions.contentOf(draft.id);
      const problems = inconsistencies(catalogueFrom(draft, content));
      if (problems.length > 0)
        throw new HttpProblem('unprocessable', {
          detail: `The edition does not hold together. ${summaryOf(problems)}`,
          problems,
        });
      if (!(await editions.publish(draft.id, draft.version, hashOfContent(content)))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'published',
        subject: 'edition',
        code,
        editionId: draft.id,
      });
      return editionOf(tx, code);
    });
    this.current.forget(caller.organisationId);
    return published;
  }

  removeDraft(caller: Caller, code: string, check: VersionCheck): Promise<void> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const draft = await draftOf(tx, code);
      check(draft.version);
      if (!(await EditionsRepository.in(tx).removeDraft(draft.id, draft.version))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'removed',
        subject: 'edition',
        code,
        before: { code, note: draft.note },
      });
    });
  }
}

/** The edition of a code, or the current one. @throws {HttpProblem} not-found */
export async function editionOf(tx: Transaction, code: string | undefined): Promise<EditionRow> {
  const editions = EditionsRepository.in(tx);
  const edition = code === undefined ? await editions.findCurrent() : await editions.find(code);
  if (edition === null)
    throw notFound(
      code === undefined ? 'A published edition' : `The edition ${JSON.stringify(code.slice(0, 80))}`,
    );
  return edition;
}

/** A draft of the caller's organisation. @throws {HttpProblem} conflict, when it is published or shared */
export async function draftOf(tx: Transaction, code: string): Promise<EditionRow> {
  const edition = await editionOf(tx, code);
  if (edition.state === 'draft' && edition.organisationId !== null) return edition;
  throw new HttpProblem('conflict', {
    detail: `The edition ${code} is published and never changed; make a draft based on it.`,
  });
}

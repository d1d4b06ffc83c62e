import { Injectable } from '@nestjs/common';
import { problem } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { historyOf, type History } from '../audit/history.js';
import { StaleVersion, staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { tell } from '../events/outbox.js';
import { isUniqueViolation } from '../persistence/failures.js';
import { newId } from '../persistence/ids.js';
import { Clock } from '../settings/clock.js';
import { catalogueFrom, hashOfContent } from './catalogue-document.js';
import type { EditionRow } from './catalogue.entities.js';
import { changesBetween, type EditionComparison } from './edition-comparison.js';
import { refuseUnlessWhole } from './consistency.js';
import { CurrentCatalogue } from './current-catalogue.js';
import { isScheduled } from './edition-view.js';
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
    private readonly clock: Clock,
  ) {}

  list({
    organisationId,
  }: Caller): Promise<{ readonly current: EditionRow; readonly editions: readonly EditionRow[] }> {
    return this.database.inOrganisation(organisationId, async (tx) => ({
      current: await editionOf(tx, this.clock.now()),
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

  addDraft(caller: Caller, draft: NewDraft): Promise<EditionRow> {
    return unlessTaken(draft.code, () =>
      this.database.inOrganisation(caller.organisationId, async (tx) =>
        draftIn(tx, caller, draft, await editionOf(tx, draft.basedOn ?? this.clock.now())),
      ),
    );
  }

  /** Makes what an earlier edition held current again: a copy under a new code, checked and published at once. */
  async restore(
    caller: Caller,
    basedOn: string,
    { code, note }: Omit<NewDraft, 'basedOn'>,
  ): Promise<EditionRow> {
    const restored = await unlessTaken(code, () =>
      this.database.inOrganisation(caller.organisationId, async (tx) => {
        const base = await editionOf(tx, basedOn);
        if (base.state !== 'published')
          throw new HttpProblem('conflict', {
            detail: `The edition ${basedOn} was never published; publish it instead of restoring it.`,
          });
        return publishedIn(tx, caller, await draftIn(tx, caller, { code, note }, base), undefined);
      }),
    );
    this.current.forget(caller.organisationId);
    return restored;
  }

  compare({ organisationId }: Caller, code: string, other: string): Promise<EditionComparison> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      const [before, after] = [await editionOf(tx, other), await editionOf(tx, code)];
      const editions = EditionsRepository.in(tx);
      const changes = changesBetween(await editions.contentOf(before.id), await editions.contentOf(after.id));
      return { before: other, after: code, isSame: changes.length === 0, changes };
    });
  }

  /** @param effectiveAt RFC 3339 instant still to come from which it counts; at once when undefined */
  async publish(
    caller: Caller,
    code: string,
    { effectiveAt, check }: { readonly effectiveAt: string | undefined; readonly check: VersionCheck },
  ): Promise<EditionRow> {
    const from = effectiveAt === undefined ? undefined : stillToCome(effectiveAt, this.clock.now());
    const published = await this.database.inOrganisation(caller.organisationId, async (tx) => {
      const draft = await draftOf(tx, code);
      await checkWhole(tx, draft, check);
      return publishedIn(tx, caller, draft, from);
    });
    this.current.forget(caller.organisationId);
    return published;
  }

  /** Takes back a publication before it counts: the edition is a draft again. */
  withdraw(caller: Caller, code: string, check: VersionCheck): Promise<EditionRow> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const edition = await editionOf(tx, code);
      const now = this.clock.now();
      if (!isScheduled(edition, now) || edition.organisationId === null) throw notScheduled(edition);
      check(edition.version);
      if (!(await EditionsRepository.in(tx).withdraw(edition, now))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'withdrawn',
        subject: 'edition',
        code,
        editionId: edition.id,
        before: { effectiveAt: edition.effectiveAt?.toISOString() },
      });
      await tell(tx, {
        organisationId: caller.organisationId,
        type: 'edition.withdrawn',
        data: { code, href: pathOf(code) },
      });
      return editionOf(tx, code);
    });
  }

  removeDraft(caller: Caller, code: string, check: VersionCheck): Promise<void> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const draft = await draftOf(tx, code);
      await checkWhole(tx, draft, check);
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

async function unlessTaken<T>(code: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (failure) {
    if (isUniqueViolation(failure, 'edition_code_unique'))
      throw new HttpProblem('conflict', { detail: `An edition ${code} exists already.` });
    throw failure;
  }
}

async function draftIn(
  tx: Transaction,
  caller: Caller,
  { code, note }: Pick<NewDraft, 'code' | 'note'>,
  base: EditionRow,
): Promise<EditionRow> {
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
}

/** @throws {HttpProblem} unprocessable, with everything that does not hold together */
async function publishedIn(
  tx: Transaction,
  caller: Caller,
  draft: EditionRow,
  effectiveAt: Date | undefined,
): Promise<EditionRow> {
  const editions = EditionsRepository.in(tx);
  const content = await editions.contentOf(draft.id);
  refuseUnlessWhole(catalogueFrom(draft, content));
  if (!(await editions.publish(draft, { contentHash: hashOfContent(content), effectiveAt })))
    throw staleVersion();
  const from = effectiveAt === undefined ? {} : { effectiveAt: effectiveAt.toISOString() };
  await AuditTrail.in(tx).add(caller, {
    action: 'published',
    subject: 'edition',
    code: draft.code,
    editionId: draft.id,
    ...(effectiveAt === undefined ? {} : { after: from }),
  });
  await tell(tx, {
    organisationId: caller.organisationId,
    type: 'edition.published',
    data: { code: draft.code, href: pathOf(draft.code), ...from },
  });
  return editionOf(tx, draft.code);
}

const pathOf = (code: string): string => `/v1/editions/${encodeURIComponent(code)}`;

/** @throws {HttpProblem} unprocessable */
function stillToCome(effectiveAt: string, now: Date): Date {
  const from = new Date(effectiveAt);
  if (from > now && from.getTime() - now.getTime() <= FURTHEST_MS) return from;
  const problems = [
    problem('out-of-range', '/effectiveAt', {
      value: effectiveAt,
      range: 'an instant that is still to come, within two years',
    }),
  ];
  throw new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
}

const FURTHEST_MS = 731 * 86_400_000;

const notScheduled = ({ code, state }: EditionRow): HttpProblem =>
  new HttpProblem('conflict', {
    detail:
      state === 'draft'
        ? `The edition ${code} is a draft; there is no publication to take back.`
        : `The edition ${code} counts already and is never changed; make what counted before current again with POST /v1/editions/{code}/restoration.`,
  });

const MOST_TOLD = 10;

/** Whoever decided on an older state is told who changed what since. */
async function checkWhole(tx: Transaction, draft: EditionRow, check: VersionCheck): Promise<void> {
  try {
    check(draft.version);
  } catch (failure) {
    if (!(failure instanceof StaleVersion) || failure.seen === undefined) throw failure;
    const since = Math.min(MOST_TOLD, Math.max(0, draft.version - failure.seen));
    const entries = await AuditTrail.in(tx).inEdition(draft.id, since);
    const told = entries.map(
      ({ keyName, action, subject, subjectCode, at }) =>
        `${keyName ?? 'an unknown key'} ${action} ${subject.replace('_', ' ')} ${subjectCode} at ${at.toISOString()}`,
    );
    throw new StaleVersion(failure.seen, told.length === 0 ? '' : ` (${told.join('; ')})`);
  }
}

/** Every change to what a draft holds is one to the draft. */
export async function countedChange(tx: Transaction, code: string): Promise<void> {
  if (!(await EditionsRepository.in(tx).countChange((await draftOf(tx, code)).id))) throw staleVersion();
}

/** The edition of a code, or the one that is current at an instant. @throws {HttpProblem} not-found */
export async function editionOf(tx: Transaction, wanted: string | Date): Promise<EditionRow> {
  const editions = EditionsRepository.in(tx);
  const edition =
    typeof wanted === 'string' ? await editions.find(wanted) : await editions.findCurrent(wanted);
  if (edition === null)
    throw notFound(
      typeof wanted === 'string'
        ? `The edition ${JSON.stringify(wanted.slice(0, 80))}`
        : 'A published edition',
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

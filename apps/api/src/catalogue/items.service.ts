import { Injectable } from '@nestjs/common';
import { pointer, problem } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { historyOf, type History } from '../audit/history.js';
import { mergePatched } from '../edge/merge-patch.js';
import { staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { Clock } from '../settings/clock.js';
import type { EditionRow } from './catalogue.entities.js';
import type { CatalogueTable } from './catalogue-rows.js';
import { documentsFrom } from './csv-documents.js';
import { checkedDocument, classOf, documentFaults, type CheckedDocument } from './dto/documents.js';
import { countedChange, draftOf, editionOf } from './editions.service.js';
import { ItemsRepository, type ItemRow } from './items.repository.js';

/** Which rows: a table, in an edition; the current edition when none is named. */
export interface Shelf {
  readonly caller: Caller;
  readonly table: CatalogueTable;
  readonly edition?: string;
}

export interface Listed {
  readonly edition: EditionRow;
  readonly items: readonly ItemRow[];
}

/** An entry as it was and as it is. */
export interface Changed {
  readonly before: ItemRow;
  readonly after: ItemRow;
}

/** Compares the caller's If-Match with the version; throws when they differ. */
export type VersionCheck = (version: number) => void;

/** Reading and changing what an edition holds; a change goes into a draft, with its audit entry. */
@Injectable()
export class ItemsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  list({ caller, table, edition }: Shelf, kind: string | undefined): Promise<Listed> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const found = await editionOf(tx, edition ?? this.clock.now());
      return { edition: found, items: await ItemsRepository.in(tx, table).list(found.id, kind) };
    });
  }

  get({ caller, table, edition }: Shelf, code: string): Promise<ItemRow> {
    return this.database.inOrganisation(caller.organisationId, async (tx) =>
      itemOf(tx, table, (await editionOf(tx, edition ?? this.clock.now())).id, code),
    );
  }

  history({ caller, table }: Shelf, code: string): Promise<History> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const entries = await AuditTrail.in(tx).about(table, code);
      // What was never changed has no history; what never was is not found.
      if (entries.length === 0) await itemOf(tx, table, (await editionOf(tx, this.clock.now())).id, code);
      return historyOf(entries);
    });
  }

  add(shelf: Shelf, raw: unknown): Promise<ItemRow> {
    draftNamed(shelf);
    const document = checkedDocument(shelf.table, raw);
    return this.inDraft(shelf, async (tx, { id, organisationId }) => {
      const items = ItemsRepository.in(tx, shelf.table);
      if (!(await items.add({ editionId: id, organisationId }, document)))
        throw new HttpProblem('conflict', {
          detail: `${document.code} exists in this edition already; change it with PATCH.`,
        });
      await AuditTrail.in(tx).add(shelf.caller, {
        action: 'created',
        subject: shelf.table,
        code: document.code,
        editionId: id,
        after: document.body,
      });
      return itemOf(tx, shelf.table, id, document.code);
    });
  }

  async patch(shelf: Shelf, code: string, patch: unknown, check: VersionCheck): Promise<ItemRow> {
    return (await this.change(shelf, code, (body) => mergePatched(body, patch), check)).after;
  }

  /** Puts what `update` makes of an entry in its place; what it makes is checked as if it had been sent. */
  change(
    shelf: Shelf,
    code: string,
    update: (body: unknown) => unknown,
    check: VersionCheck,
  ): Promise<Changed> {
    return this.inDraft(shelf, async (tx, { id }) => {
      const before = await itemOf(tx, shelf.table, id, code);
      check(before.version);
      const document = checkedDocument(shelf.table, update(before.body));
      if (document.code !== code) throw codeIsKept(code);
      if (!(await ItemsRepository.in(tx, shelf.table).replace(id, before.version, document)))
        throw staleVersion();
      await AuditTrail.in(tx).add(shelf.caller, {
        action: 'changed',
        subject: shelf.table,
        code,
        editionId: id,
        before: before.body,
        after: document.body,
      });
      return { before, after: await itemOf(tx, shelf.table, id, code) };
    });
  }

  remove(shelf: Shelf, code: string, check: VersionCheck): Promise<void> {
    return this.inDraft(shelf, async (tx, { id }) => {
      const before = await itemOf(tx, shelf.table, id, code);
      check(before.version);
      if (!(await ItemsRepository.in(tx, shelf.table).remove(id, code, before.version))) throw staleVersion();
      await AuditTrail.in(tx).add(shelf.caller, {
        action: 'removed',
        subject: shelf.table,
        code,
        editionId: id,
        before: before.body,
      });
    });
  }

  /** Adds or replaces every document of a table; nothing is changed when one of them is wrong. */
  import(shelf: Shelf, csv: string): Promise<number> {
    draftNamed(shelf);
    const documents = checkedAll(
      shelf.table,
      documentsFrom(csv, (raw) => classOf(shelf.table, raw)),
    );
    return this.inDraft(shelf, async (tx, { id, organisationId }) => {
      await ItemsRepository.in(tx, shelf.table).merge({ editionId: id, organisationId }, documents);
      await AuditTrail.in(tx).add(shelf.caller, {
        action: 'imported',
        subject: shelf.table,
        code: '*',
        editionId: id,
        after: documents.map(({ code }) => code),
      });
      return documents.length;
    });
  }

  private inDraft<T>(shelf: Shelf, work: (tx: Transaction, draft: EditionRow) => Promise<T>): Promise<T> {
    const edition = draftNamed(shelf);
    return this.database.inOrganisation(shelf.caller.organisationId, async (tx) => {
      const result = await work(tx, await draftOf(tx, edition));
      await countedChange(tx, edition);
      return result;
    });
  }
}

/** Asked before a body is looked at, which would be for nothing without it. @throws {HttpProblem} bad-request */
function draftNamed({ edition }: Shelf): string {
  if (edition !== undefined) return edition;
  throw new HttpProblem('bad-request', {
    detail: 'Name the draft edition that is to be changed, as ?edition=<code>; POST /v1/editions makes one.',
    problems: [
      {
        ...problem('missing', '/edition', { expected: 'the code of a draft edition' }),
        parameter: 'edition',
      },
    ],
  });
}

async function itemOf(
  tx: Transaction,
  table: CatalogueTable,
  editionId: string,
  code: string,
): Promise<ItemRow> {
  const item = await ItemsRepository.in(tx, table).find(editionId, code);
  if (item === undefined) throw notFound(`${JSON.stringify(code.slice(0, 80))} in this edition`);
  return item;
}

const codeIsKept = (code: string): HttpProblem =>
  new HttpProblem('unprocessable', {
    detail: 'A code is never changed; add a new entry and remove the old one.',
    problems: [problem('contradiction', '/code', { other: 'the address', why: `the entry is ${code}` })],
  });

/** @throws {HttpProblem} unprocessable; pointers begin with the number of the document, from 0 */
function checkedAll(table: CatalogueTable, raw: readonly unknown[]): readonly CheckedDocument[] {
  const faults = raw.flatMap((document, index) =>
    documentFaults(table, document).map((fault) => ({ ...fault, at: `${pointer('', index)}${fault.at}` })),
  );
  if (faults.length > 0)
    throw new HttpProblem('unprocessable', { detail: summaryOf(faults), problems: faults });
  const documents = raw.map((document) => checkedDocument(table, document));
  const repeated = documents.flatMap(({ code }, index) =>
    documents.findIndex((other) => other.code === code) === index
      ? []
      : [problem('duplicate', pointer('', index, 'code'), { value: code })],
  );
  if (repeated.length > 0)
    throw new HttpProblem('unprocessable', { detail: summaryOf(repeated), problems: repeated });
  return documents;
}

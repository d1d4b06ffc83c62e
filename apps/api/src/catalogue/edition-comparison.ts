import { pointer } from '#lib/kernel';
import { isRecord } from '../edge/record.js';
import { catalogueTables, type CatalogueTable } from './catalogue-rows.js';

export interface EntryField {
  /** JSON pointer below the entry; packs of a price list by their SKU. */
  readonly at: string;
  /** Value before the change; absent where there was nothing. */
  readonly before?: unknown;
  /** Value after the change; absent where nothing is left. */
  readonly after?: unknown;
}

export interface EntryChange {
  /** What kind of entry differs. */
  readonly subject: 'material' | 'price_list' | 'labour_rates' | 'source';
  /** Code of the entry. */
  readonly code: string;
  /** Whether the entry was added, removed or changed. */
  readonly change: 'added' | 'removed' | 'changed';
  /** The first 200 fields that differ, of an entry that is in both. */
  readonly fields: readonly EntryField[];
  /** How many of its fields differ; `fields` may list fewer. */
  readonly fieldCount: number;
}

/** What one edition holds otherwise than another. */
export interface EditionComparison {
  /** Code of the edition compared with. */
  readonly before: string;
  /** Code of the edition that was asked about. */
  readonly after: string;
  /** Whether the two hold the same. */
  readonly isSame: boolean;
  /** Entries that differ. */
  readonly changes: readonly EntryChange[];
}

type Content = Readonly<Record<CatalogueTable, readonly unknown[]>>;

const MOST_FIELDS = 200;

/** Entries are matched by their code and packs by their SKU, so that a changed order is no change. */
export const changesBetween = (before: Content, after: Content): readonly EntryChange[] =>
  catalogueTables.flatMap((table) => {
    const [then, now] = [byName(before[table]), byName(after[table])];
    return [...new Set([...then.keys(), ...now.keys()])].flatMap((code) =>
      changeOf(table, code, then.get(code), now.get(code)),
    );
  });

function changeOf(
  subject: CatalogueTable,
  code: string,
  before: unknown,
  after: unknown,
): readonly EntryChange[] {
  if (before === undefined) return [{ subject, code, change: 'added', fields: [], fieldCount: 0 }];
  if (after === undefined) return [{ subject, code, change: 'removed', fields: [], fieldCount: 0 }];
  const fields = differences(before, after, '');
  return fields.length === 0
    ? []
    : [{ subject, code, change: 'changed', fields: fields.slice(0, MOST_FIELDS), fieldCount: fields.length }];
}

function differences(before: unknown, after: unknown, at: string): readonly EntryField[] {
  if (JSON.stringify(before) === JSON.stringify(after)) return [];
  const [then, now] = [membersOf(before), membersOf(after)];
  if (then === undefined || now === undefined)
    return [
      {
        at,
        ...(before === undefined ? {} : { before }),
        ...(after === undefined ? {} : { after }),
      },
    ];
  return [...new Set([...then.keys(), ...now.keys()])].flatMap((key) =>
    differences(then.get(key), now.get(key), pointer(at, key)),
  );
}

/** The parts of an object, and of a list whose entries have names of their own; anything else is one value. */
function membersOf(value: unknown): ReadonlyMap<string, unknown> | undefined {
  if (isRecord(value)) return new Map(Object.entries(value));
  if (!Array.isArray(value)) return undefined;
  const named = byName(value);
  return named.size === value.length && value.length > 0 ? named : undefined;
}

const byName = (entries: readonly unknown[]): ReadonlyMap<string, unknown> =>
  new Map(
    entries.flatMap((entry) => {
      const name = nameOf(entry);
      return name === undefined ? [] : [[name, entry] as const];
    }),
  );

const nameOf = (entry: unknown): string | undefined => {
  if (!isRecord(entry)) return undefined;
  const name = entry.sku ?? entry.code ?? entry.key;
  return typeof name === 'string' ? name : undefined;
};

import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';
import { runsInSpreadsheet } from '#lib/costing';
import { pointer, problem, type Problem } from '#lib/kernel';
import { isRecord, ruleOf, type DtoClass } from '../edge/dto/field.js';
import { HttpProblem } from '../edge/problems.js';

/**
 * Documents as a table, one a row: a column for each value, named by its path (`densityKgPerM3.cite.source`,
 * `prices.0.price`), in the order in which the documents bring them. An empty cell is an absent value, `[]` an empty list.
 */
export function csvOf(documents: readonly unknown[]): string {
  const rows = documents.map((document) => new Map(cellsOf(document, '')));
  const columns = [...new Set(rows.flatMap((row) => [...row.keys()]))];
  return stringify(
    rows.map((row) => columns.map((column) => row.get(column) ?? '')),
    { header: true, columns, record_delimiter: 'windows' },
  );
}

const EMPTY_LIST = '[]';

function cellsOf(value: unknown, path: string): readonly (readonly [string, string])[] {
  const below = (key: string | number): string => (path === '' ? String(key) : `${path}.${key}`);
  if (Array.isArray(value) && value.length === 0) return [[path, EMPTY_LIST]];
  if (Array.isArray(value)) return value.flatMap((item, index) => cellsOf(item, below(index)));
  if (isRecord(value)) return Object.entries(value).flatMap(([key, part]) => cellsOf(part, below(key)));
  return [[path, inert(value)]];
}

/** Text that a spreadsheet would run as a formula is marked by a leading apostrophe, which reading takes off again. */
const inert = (value: unknown): string =>
  typeof value === 'string' && (value.startsWith("'") || runsInSpreadsheet(value))
    ? `'${value}`
    : String(value);

const MOST_ROWS = 5000;
const LONGEST_PATH = 8;

/**
 * Documents read back from such a table. Whether a cell is a number, true or false, or text is decided by the class the
 * document is checked by, so that a price "12.50" stays text and a thickness 12.50 becomes a number.
 *
 * @throws {HttpProblem} bad-request, unprocessable
 */
export function documentsFrom(
  csv: string,
  classFor: (raw: unknown) => DtoClass | undefined,
): readonly unknown[] {
  const [header = [], ...rows] = table(csv);
  const problems = [
    ...headerFaults(header),
    // A table without rows would replace what there is by nothing, which nobody means by sending one.
    ...(rows.length === 0 ? [problem('too-few', '', { count: 0, least: 1 })] : []),
    ...(rows.length > MOST_ROWS ? [problem('too-many', '', { count: rows.length, most: MOST_ROWS })] : []),
  ];
  if (problems.length > 0)
    throw new HttpProblem('unprocessable', { detail: 'The table cannot be read as documents.', problems });
  return rows.map((cells) => documentOf(header, cells, classFor));
}

function table(csv: string): readonly (readonly string[])[] {
  const [header] = csv.split('\n', 1);
  if (/[;\t]/.test(header) && !header.includes(',')) {
    throw new HttpProblem('bad-request', {
      detail: 'The cells are parted by semicolons or tabs; CSV (RFC 4180) has commas between them.',
    });
  }
  try {
    return parse(csv, { bom: true, skip_empty_lines: true, relax_column_count: false });
  } catch (failure) {
    throw new HttpProblem('bad-request', {
      detail: `The text is not CSV (RFC 4180): ${failure instanceof Error ? failure.message : 'it cannot be read'}`,
    });
  }
}

const namePattern = /^[A-Za-z][A-Za-z0-9]*(?:\.(?:[A-Za-z][A-Za-z0-9]*|\d{1,4}))*$/;

function headerFaults(header: readonly string[]): readonly Problem[] {
  const firstAt = new Map(header.map((name, index) => [name, index] as const).reverse());
  return header.flatMap((name, index) => nameFaults(name, index, firstAt.get(name) === index));
}

const nameFaults = (name: string, index: number, isFirst: boolean): readonly Problem[] => [
  ...(namePattern.test(name) &&
  name.split('.').length <= LONGEST_PATH &&
  !/(?:^|\.)(?:constructor|prototype)(?:\.|$)/.test(name)
    ? []
    : [
        problem('not-in-form', pointer('', 'header', index), {
          value: JSON.stringify(name.slice(0, 60)),
          form: 'a path such as densityKgPerM3.value',
        }),
      ]),
  ...(isFirst ? [] : [problem('duplicate', pointer('', 'header', index), { value: name.slice(0, 60) })]),
];

function documentOf(
  header: readonly string[],
  cells: readonly string[],
  classFor: (raw: unknown) => DtoClass | undefined,
): unknown {
  const texts = header.flatMap((name, index) =>
    cells[index] === '' ? [] : [[name, cells[index].replace(/^'/, '')] as const],
  );
  const type = classFor(Object.fromEntries(texts.filter(([name]) => !name.includes('.'))));
  return listed(
    grown(
      texts.map(
        ([name, text]) =>
          [name.split('.'), type === undefined ? text : typedCell(type, name.split('.'), text)] as const,
      ),
    ),
  );
}

type Leaf = readonly [path: readonly string[], value: unknown];

function grown(leaves: readonly Leaf[]): unknown {
  const byKey = new Map<string, Leaf[]>();
  for (const [[key, ...rest], value] of leaves) {
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, [[rest, value]]);
    else known.push([rest, value]);
  }
  return Object.fromEntries(
    [...byKey].map(([key, below]) => [
      key,
      below.every(([rest]) => rest.length === 0) ? below[0][1] : grown(below),
    ]),
  );
}

/** Objects whose keys are 0, 1, 2 ... become lists; gaps close. */
function listed(value: unknown): unknown {
  if (!isRecord(value)) return value;
  const entries = Object.entries(value).map(([key, part]) => [key, listed(part)] as const);
  const isList = entries.length > 0 && entries.every(([key]) => /^\d+$/.test(key));
  if (!isList) return Object.fromEntries(entries);
  return [...entries].sort(([a], [b]) => Number(a) - Number(b)).map(([, part]) => part);
}

function typedCell(type: DtoClass, [key, ...rest]: readonly string[], text: string): unknown {
  const rule = ruleOf(type, key);
  if (rule === undefined) return text;
  if (text === EMPTY_LIST && isListRule(rule.schema)) return [];
  const names = rest.filter((name) => !/^\d+$/.test(name));
  if (rule.part !== undefined && names.length > 0) return typedCell(rule.part(), names, text);
  return valueOf(kindOfSchema(rule.schema), text);
}

const isListRule = (schema: object): boolean =>
  kindOfList(schema) || ('isArray' in schema && schema.isArray === true);

const kindOfList = (schema: object): boolean => 'type' in schema && schema.type === 'array';

function kindOfSchema(schema: object): string {
  if ('items' in schema && isRecord(schema.items)) return String(schema.items.type);
  return 'type' in schema ? String(schema.type) : 'string';
}

/** A cell that is not of its kind stays text, and the check of the document says what is wrong with it. */
function valueOf(kind: string, text: string): unknown {
  if (kind === 'boolean' && (text === 'true' || text === 'false')) return text === 'true';
  if ((kind === 'number' || kind === 'integer') && /^-?\d+(\.\d+)?([eE][+-]?\d{1,3})?$/.test(text))
    return Number(text);
  return text;
}

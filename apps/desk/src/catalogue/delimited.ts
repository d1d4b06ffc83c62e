/** A table as it was pasted or read from a file: rows are counted as a spreadsheet counts them, from 1. */
export interface Delimited {
  readonly rows: readonly (readonly string[])[];
  /** The first row whose quotation marks do not pair; nothing below it was read. */
  readonly unreadableRow?: number;
}

/** Cells parted by tabs, semicolons or commas, whichever the first line has most of; quoted as RFC 4180 says. */
export function readDelimited(text: string): Delimited {
  const plain = text.replace(/^\uFEFF/, '');
  const cell = cellOf(delimiterOf(plain));
  const rows: string[][] = [[]];
  while (cell.lastIndex < plain.length) {
    const found = cell.exec(plain);
    if (found === null) return { rows: rows.slice(0, -1), unreadableRow: rows.length };
    const [, quoted, bare = '', end] = found;
    rows[rows.length - 1].push(quoted === undefined ? bare : quoted.replaceAll('""', '"'));
    if (/[\r\n]/.test(end)) rows.push([]);
    else if (end !== '' && cell.lastIndex === plain.length) rows[rows.length - 1].push('');
  }
  return { rows: rows[rows.length - 1].length === 0 ? rows.slice(0, -1) : rows };
}

const delimiters = ['\t', ';', ','] as const;
type Delimiter = (typeof delimiters)[number];

function delimiterOf(text: string): Delimiter {
  const [first] = text.split(/\r?\n/, 1);
  const counts = delimiters.map((mark) => first.split(mark).length);
  return delimiters[counts.indexOf(Math.max(...counts))];
}

/** One cell and what ends it: quoted, or anything that does not begin with a quotation mark. */
const cellOf = (mark: Delimiter): RegExp =>
  new RegExp(`(?:"((?:[^"]|"")*)"|([^"${mark}\\r\\n][^${mark}\\r\\n]*)?)(${mark}|\\r\\n|\\n|\\r|$)`, 'gy');

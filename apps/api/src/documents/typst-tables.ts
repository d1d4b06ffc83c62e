import {
  noteColumn,
  PAGE_SIDE_MM,
  papers,
  textWidthMm,
  type Column,
  type ReportDocument,
  type Row,
  type Section,
  type Table,
} from '#lib/drawings';

/** What a table's sizes depend on besides the table. */
export interface TablePage extends Pick<ReportDocument, 'kind' | 'paper'> {
  readonly layout: Section['layout'];
}

/** Sizes that the setter would find by laying every cell out once more before it sets it. */
export interface TableSizes {
  readonly sizePt: number;
  readonly columns: readonly SizedColumn[];
  /** Of the text in each row, where it is sure how often it breaks: heights as shares of the type size. */
  readonly rowsEm: readonly (number | null)[];
}

/** Of a table whose texts are as the paper shows them. */
export function tableSizes(table: Table, page: TablePage): TableSizes {
  const sizePt = typePt(table, page);
  const columns = sizedColumns(table);
  const set: SetRows = {
    roomsEm: roomsOf(columns, textWidthOf(page) / (sizePt * MM_PER_PT)),
    noteAt: noteColumn(table.columns),
    leadingEm: page.layout === 'body' ? LEADING_EM.close : LEADING_EM.wide,
  };
  return {
    sizePt,
    columns,
    rowsEm: table.rows.map((row) => (isSpanning(row, columns) ? null : rowEm(row, set))),
  };
}

const isSpanning = ({ cells }: Row, columns: readonly Column[]): boolean => cells.length < columns.length;

/** A point is the 72nd part of an inch, as PDF counts. */
const MM_PER_PT = 0.352_778;

const textWidthOf = ({ paper }: TablePage): number => papers[paper].widthMm - 2 * PAGE_SIDE_MM;

/** A pack is read at arm's length, a report at a desk; many columns need smaller type. */
function typePt({ columns, isDense }: Table, { kind }: TablePage): number {
  if (isDense === true) return 9;
  if (kind === 'job-pack') return columns.length > 5 ? 10.5 : 12.5;
  return columns.length > 6 ? 7.6 : 8.2;
}

/** Left and right of the text in a cell; the template adds as much to a width. */
const INSETS_EM = 0.8;
const SPARE_EM = 0.05;

/** What each column has for its text. */
function roomsOf(columns: readonly SizedColumn[], widthEm: number): readonly number[] {
  const taken = columns.reduce(
    (sum, column) => sum + (column.widthEm === undefined ? 0 : column.widthEm + INSETS_EM + SPARE_EM),
    0,
  );
  const shares = columns.reduce((sum, { share }) => sum + (share ?? 0), 0);
  return columns.map((column) =>
    column.widthEm === undefined
      ? ((widthEm - taken) * (column.share ?? 0)) / shares - INSETS_EM
      : column.widthEm + SPARE_EM,
  );
}

/** As the template sets them: a line is as high as its capitals. */
const LINE_EM = 0.688;
const LEADING_EM = { wide: 0.62, close: 0.52 } as const;
const NOTE_SHARE = 0.86;

interface SetRows {
  readonly roomsEm: readonly number[];
  readonly noteAt: number;
  readonly leadingEm: number;
}

/** Kerned pairs make a line a little shorter than its letters; where so much decides, the setter is asked. */
const NARROWER = 0.995;
const WIDER = 1.015;

/** Null where a word more or less on a line decides. */
function rowEm({ cells, note, emphasis }: Row, { roomsEm, noteAt, leadingEm }: SetRows): number | null {
  const weight = emphasis === undefined ? 'regular' : 'bold';
  const said = cells.map((cell) => wordsOf(cell, weight));
  const noted = wordsOf(note ?? '', 'regular');
  const heightAt = (share: number): number =>
    Math.max(
      ...said.map((words, at) => {
        const roomEm = roomsEm[at] * share;
        const ownEm = lineCount(words, roomEm) * (LINE_EM + leadingEm) - leadingEm;
        if (at !== noteAt || note === undefined || note === '') return ownEm;
        return ownEm + lineCount(noted, roomEm / NOTE_SHARE) * (NOTE_SHARE * LINE_EM + leadingEm);
      }),
    );
  const heightEm = heightAt(NARROWER);
  return Number.isFinite(heightEm) && heightEm === heightAt(WIDER) ? heightEm : null;
}

interface Word {
  readonly widthEm: number;
  /** With the space behind it. */
  readonly stepEm: number;
}

/** Where the setter may end a line, the space staying with the word before it. */
const ends = /(?<= )|(?<=-)(?=\p{L})/u;
/** Of a text of other signs and scripts only one thing is known: whether all of it stands on one line. */
const plain = /^[\p{Script=Latin}\d\u00a0\u202f .,;:()'%°×²³·=-]*$/u;

const wordsOf = (text: string, weight: 'regular' | 'bold'): readonly Word[] =>
  (plain.test(text) ? text.split(ends) : [text]).map((word) => ({
    widthEm: textWidthMm(word.trimEnd(), 1, weight),
    stepEm: textWidthMm(word, 1, weight),
  }));

/** Lines filled one after the other; without end where a word is wider than the column. */
function lineCount(words: readonly Word[], roomEm: number): number {
  let [lines, filledEm] = [1, 0];
  for (const { widthEm, stepEm } of words) {
    if (widthEm > roomEm) return Infinity;
    if (filledEm + widthEm > roomEm) [lines, filledEm] = [lines + 1, 0];
    filledEm += stepEm;
  }
  return lines;
}

/** A column that needs more than this shares what the others leave. */
const WIDEST_EM = 16;
/** More than this leaves too little of a page for the columns that share the rest. */
const MOST_TAKEN_EM = 38;
const LEAST_WRAPPED_EM = 7;
/** Where the setter may end a line: at a space, and behind a hyphen before a letter. */
const breaks = / |(?<=-)(?=\p{L})/u;

/** Columns as narrow as their content get their width from the font's own measures. */
function sizedColumns({ columns, rows }: Table): readonly SizedColumn[] {
  const sized = columns.map((column, index): SizedColumn => {
    if (column.share !== undefined) return column;
    const bold = rows.some(({ emphasis }) => emphasis !== undefined) ? 'bold' : 'regular';
    const cells = rows.flatMap((row) =>
      isSpanning(row, columns) && index >= row.cells.length - 1 ? [] : [row.cells[index]],
    );
    const widthOf = (wanted: (text: string) => readonly string[]): number =>
      Math.max(
        ...wanted(column.title).map((part) => textWidthMm(part, 1, 'bold')),
        ...cells.flatMap(wanted).map((part) => textWidthMm(part, 1, bold)),
      );
    const widthEm = widthOf((text) => [text]);
    return widthEm > WIDEST_EM
      ? { ...column, share: 1 }
      : { ...column, widthEm, wrappedEm: widthOf((text) => text.split(breaks)) };
  });
  const taken = sized.reduce((sum, { widthEm }) => sum + (widthEm ?? 0), 0);
  return taken <= MOST_TAKEN_EM ? sized : sized.map((column) => wrapping(column));
}

interface SizedColumn extends Column {
  readonly widthEm?: number;
  /** What its longest word needs. */
  readonly wrappedEm?: number;
}

/** A column of words gives way before the columns of numbers do. */
function wrapping({ widthEm, wrappedEm, ...column }: SizedColumn): SizedColumn {
  if (widthEm === undefined || wrappedEm === undefined) return column;
  return column.align === 'start'
    ? { ...column, widthEm: Math.min(widthEm, Math.max(wrappedEm, LEAST_WRAPPED_EM)) }
    : { ...column, widthEm };
}

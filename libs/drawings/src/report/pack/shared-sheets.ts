import { textWidthMm } from '../../sheet/text-size.js';
import { papers, type PaperName } from '../../sheet/formats.js';
import { PAGE_SIDE_MM } from '../figures.js';
import type { Block, Column, Section, Table } from '../document.js';

/** Margins above and below, as the setter of the pages keeps them. */
const ABOVE_AND_BELOW_MM = 35;
/** A guess that is a little long leaves a sheet half a line short; one that is short would part a table. */
const SAFETY = 1.01;

/**
 * Short tasks of one stretch of the work stand on one sheet, in their order: a sheet with four lines on it is turned over
 * unread. The heights are guessed from the text's own widths; a guess that is wrong costs a sheet, never a line.
 */
export const sharingSheets = (tasks: readonly MeasuredTask[], paper: PaperName): readonly Section[] =>
  laidOut(tasks, paper).sections;

/** How many sheets the tasks are guessed to take. */
export const sheetCount = (tasks: readonly MeasuredTask[], paper: PaperName): number =>
  laidOut(tasks, paper).sheets;

/** A task with the heights of its blocks, which do not depend on where it stands. */
export interface MeasuredTask {
  readonly section: Section;
  readonly blocksMm: readonly number[];
}

/** Measured by its text as it will be printed. */
export const measuredTask = (section: Section, printed: Section, paper: PaperName): MeasuredTask => {
  const widthMm = papers[paper].widthMm - 2 * PAGE_SIDE_MM;
  return { section, blocksMm: printed.blocks.map((block) => blockMm(block, widthMm) * SAFETY) };
};

interface Laid {
  readonly sections: readonly Section[];
  readonly sheets: number;
  /** Of the last sheet. */
  readonly filledMm: number;
}

function laidOut(tasks: readonly MeasuredTask[], paper: PaperName): Laid {
  const roomMm = papers[paper].heightMm - ABOVE_AND_BELOW_MM;
  return tasks.reduce((laid: Laid, task, index) => withTask(laid, task, index > 1, roomMm), {
    sections: [],
    sheets: 0,
    filledMm: roomMm,
  });
}

/** Below the task before it, where all of it finds room there; nothing stands below the cover. */
function withTask(laid: Laid, task: MeasuredTask, mayShare: boolean, roomMm: number): Laid {
  const below = filledBy(task, laid.filledMm, roomMm);
  const isShared = mayShare && below.sheets === 0;
  const { sheets, filledMm } = isShared ? below : filledBy(task, 0, roomMm);
  const { section } = task;
  return {
    sections: [...laid.sections, isShared ? { ...section, sharesSheet: true } : section],
    sheets: laid.sheets + sheets + (isShared ? 0 : 1),
    filledMm,
  };
}

/** A heading, at the top of a sheet and below another task. */
const HEADING_MM = { first: 10.5, below: 18.5 } as const;

/** How many sheets a task goes on to from the height where it begins, and how far it fills the last. */
function filledBy(
  { section, blocksMm }: MeasuredTask,
  fromMm: number,
  roomMm: number,
): { readonly sheets: number; readonly filledMm: number } {
  let [sheets, filledMm] = [0, fromMm + (fromMm === 0 ? HEADING_MM.first : HEADING_MM.below)];
  section.blocks.forEach((block, at) => {
    const overMm = filledMm + blocksMm[at] - roomMm;
    if (overMm <= 0) filledMm += blocksMm[at];
    else [sheets, filledMm] = [sheets + 1, isWhole(block) ? Math.min(blocksMm[at], roomMm) : overMm];
  });
  return { sheets, filledMm };
}

/** Text and long tables go on over the page; what is one thing to the eye does not. */
const isWhole = (block: Block): boolean =>
  block.kind !== 'paragraph' &&
  block.kind !== 'list' &&
  !(block.kind === 'table' && (block.isDense === true || block.rows.length > LEAST_BROKEN_ROWS));

const LEAST_BROKEN_ROWS = 9;

/** Type as the pack is set: height of the capitals and of a line, room between two items, and below all of it, in mm. */
const LARGE = { sizeMm: 4.23, capMm: 2.9, lineMm: 5.55, itemGapMm: 3, gapMm: 3.8 } as const;
const DENSE = { sizeMm: 3.18, capMm: 2.2, lineMm: 3.8, itemGapMm: 1.6, gapMm: 2.9 } as const;

const CAPTION_MM = 5;
const ROUND_FIGURE_MM = 5;

function blockMm(block: Block, widthMm: number): number {
  const type = 'isDense' in block && block.isDense === true ? DENSE : LARGE;
  const linesMm = (text: string): number =>
    (Math.max(1, linesOf(text, widthMm, type.sizeMm)) - 1) * type.lineMm + type.capMm;
  switch (block.kind) {
    case 'paragraph':
      return linesMm(block.text) + type.gapMm;
    case 'list':
      return block.items.reduce(
        (sum, item) => sum + linesMm(`– ${item}`) + type.itemGapMm,
        Number(type.gapMm),
      );
    case 'facts':
      return (
        block.rows.reduce(
          (sum, { value }) =>
            sum + rowMm(linesOf(value, widthMm * FACT_SHARE, type.sizeMm), type.sizeMm, type),
          Number(type.gapMm),
        ) / (block.across ?? 1)
      );
    case 'table':
      return tableMm(block, widthMm);
    case 'figure':
      return block.heightMm + ROUND_FIGURE_MM + (block.caption === '' ? 0 : CAPTION_MM);
    case 'photograph':
      return block.heightMm + ROUND_FIGURE_MM + CAPTION_MM;
    case 'cards':
      return block.figures.reduce(
        (sum, { heightMm }, at) =>
          at % 2 === 0 ? sum + Math.max(heightMm, block.figures[at + 1]?.heightMm ?? 0) + 6 : sum,
        0,
      );
    case 'callout':
      return linesOf(block.text, widthMm, LARGE.sizeMm) * 5 + 6;
    case 'signature':
      return 24;
  }
}

/** The second column of names and values. */
const FACT_SHARE = 0.58;

const linesOf = (text: string, widthMm: number, sizeMm: number): number =>
  Math.ceil(textWidthMm(text, sizeMm, 'regular') / widthMm);

type Type = typeof LARGE | typeof DENSE;

/** Capitals, leading and what a cell keeps above and below, as shares of the type. */
const ROW_EM = { cap: 0.688, leading: 0.62, large: 0.95, dense: 0.62 } as const;

const rowMm = (lines: number, sizeMm: number, type: Type): number =>
  (Math.max(1, lines) * (ROW_EM.cap + ROW_EM.leading) -
    ROW_EM.leading +
    (type === DENSE ? ROW_EM.dense : ROW_EM.large)) *
  sizeMm;

/** Caption and header, then each row as high as its fullest cell. */
function tableMm({ caption, columns, rows, isDense }: Table, widthMm: number): number {
  const type = isDense === true ? DENSE : LARGE;
  const sizeMm = isDense === true ? DENSE.sizeMm : columns.length > MANY_COLUMNS ? 3.7 : 4.4;
  const shares = sharesMm(columns, rows, widthMm, sizeMm);
  const roundMm = LARGE.gapMm + (caption === '' ? 0 : CAPTION_MM) + rowMm(1, sizeMm, type);
  return rows.reduce((sum, { cells, note }) => {
    const lines = cells.map((cell, at) => {
      const isSpanning = at === cells.length - 1 && at < columns.length - 1;
      const width = isSpanning ? widthMm - BEFORE_SPAN_MM : shares[at];
      return width === undefined ? 1 : linesOf(cell, width, sizeMm);
    });
    return sum + rowMm(Math.max(...lines) + (note === undefined ? 0 : 1), sizeMm, type);
  }, roundMm);
}

const MANY_COLUMNS = 5;
/** What a day takes before what it needs. */
const BEFORE_SPAN_MM = 24;

/** The width of each column that shares what the narrow ones leave; undefined for a narrow one. */
function sharesMm(
  columns: readonly Column[],
  rows: Table['rows'],
  widthMm: number,
  sizeMm: number,
): readonly (number | undefined)[] {
  const narrowMm = columns.map(({ share, title }, at) =>
    share === undefined
      ? Math.max(
          textWidthMm(title, sizeMm, 'bold'),
          ...rows.flatMap(({ cells }) =>
            cells.length < columns.length ? [] : [textWidthMm(cells[at], sizeMm, 'regular')],
          ),
        )
      : 0,
  );
  const leftMm = widthMm - narrowMm.reduce((sum, width) => sum + width, 0) - columns.length * 3;
  const all = columns.reduce((sum, { share }) => sum + (share ?? 0), 0);
  return columns.map(({ share }) => (share === undefined ? undefined : Math.max(12, (leftMm * share) / all)));
}

import { textWidthMm } from '../../sheet/text-size.js';
import { papers, type PaperName } from '../../sheet/formats.js';
import { PAGE_SIDE_MM } from '../figures.js';
import type { Block, Column, Section, Table } from '../document.js';

/** Margins above and below, as the setter of the pages keeps them. */
const ABOVE_AND_BELOW_MM = 35;
/** A guess that is a little long leaves a sheet half a line short; one that is short would part a table. */
const SAFETY = 1.02;

/**
 * Short tasks of one stretch of the work stand on one sheet, in their order: a sheet with four lines on it is turned over
 * unread. The heights are guessed from the text's own widths; a guess that is wrong costs a sheet, never a line.
 */
export function sharingSheets(sections: readonly Section[], paper: PaperName): readonly Section[] {
  const roomMm = papers[paper].heightMm - ABOVE_AND_BELOW_MM;
  const widthMm = papers[paper].widthMm - 2 * PAGE_SIDE_MM;
  let filledMm = roomMm;
  return sections.map((section, index) => {
    if (section.layout !== 'task') return section;
    const heightMm = heightOf(section, widthMm) * SAFETY;
    const isShared = index > 1 && filledMm + heightMm <= roomMm;
    filledMm = isShared ? filledMm + heightMm : Math.min(heightMm, roomMm);
    return isShared ? { ...section, sharesSheet: true } : section;
  });
}

const HEADING_MM = 15;

const heightOf = ({ blocks }: Section, widthMm: number): number =>
  HEADING_MM + blocks.reduce((sum, block) => sum + blockMm(block, widthMm), 0);

/** Sizes of type and leading as the pack is set, in mm. */
const LARGE = { sizeMm: 4.24, lineMm: 6.2, gapMm: 4 } as const;
const DENSE = { sizeMm: 3.18, lineMm: 3.9, gapMm: 2.5 } as const;

function blockMm(block: Block, widthMm: number): number {
  const type = 'isDense' in block && block.isDense === true ? DENSE : LARGE;
  const linesOf = (text: string): number => Math.ceil(textWidthMm(text, type.sizeMm, 'regular') / widthMm);
  switch (block.kind) {
    case 'paragraph':
      return linesOf(block.text) * type.lineMm + type.gapMm;
    case 'list':
      return block.items.reduce(
        (sum, item) => sum + linesOf(`– ${item}`) * type.lineMm + 0.3,
        Number(type.gapMm),
      );
    case 'facts':
      return block.rows.reduce(
        (sum, { value }) =>
          sum +
          Math.max(1, Math.ceil(textWidthMm(value, type.sizeMm, 'bold') / (widthMm * 0.6))) * type.lineMm +
          1.3,
        4,
      );
    case 'table':
      return tableMm(block, widthMm);
    case 'figure':
    case 'photograph':
      return block.heightMm + 10;
    case 'cards':
      return Math.ceil(block.figures.length / 2) * ((block.figures[0]?.heightMm ?? 0) + 5);
    case 'callout':
      return linesOf(block.text) * 5 + 6;
    case 'signature':
      return 26;
  }
}

/** Caption and header, then each row as high as its fullest cell. */
function tableMm({ columns, rows, isDense }: Table, widthMm: number): number {
  const type = isDense === true ? DENSE : LARGE;
  const shares = sharesMm(columns, rows, widthMm, type.sizeMm);
  return rows.reduce((sum, { cells, note }) => {
    const lines = cells.map((cell, at) => {
      const width = shares[at];
      return width === undefined ? 1 : Math.ceil(textWidthMm(cell, type.sizeMm, 'regular') / width);
    });
    return (
      sum +
      (Math.max(1, ...lines) + (note === undefined ? 0 : 2)) * type.lineMm +
      (isDense === true ? 0.6 : 3)
    );
  }, 16);
}

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
          ...rows.map(({ cells }) => textWidthMm(cells[at], sizeMm, 'regular')),
        )
      : 0,
  );
  const leftMm = widthMm - narrowMm.reduce((sum, width) => sum + width, 0) - columns.length * 3;
  const all = columns.reduce((sum, { share }) => sum + (share ?? 0), 0);
  return columns.map(({ share }) => (share === undefined ? undefined : Math.max(12, (leftMm * share) / all)));
}

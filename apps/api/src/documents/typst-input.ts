import {
  isSaidByHeading,
  noteColumn,
  printable,
  textWidthMm,
  type Block,
  type Column,
  type PhotographBlock,
  type ReportDocument,
  type Section,
  type Table,
} from '#lib/drawings';

/** Longest run of letters that a narrow table column can hold; longer ones get places to break. */
const LONGEST_RUN = 18;
const BREAK = '\u200B';

/** Text as the embedded font shows it, with invisible places to break in long runs. */
export const paperText = (text: string): string =>
  printable(text).replace(/[^\s\u200B-]{19,}/gu, (run) => broken(run));

function broken(run: string): string {
  const letters = [...run];
  return letters
    .map((letter, index) => (index > 0 && index % LONGEST_RUN === 0 ? `${BREAK}${letter}` : letter))
    .join('');
}

/** Where the template finds a photograph. */
export const photographPath = ({ number }: PhotographBlock): string => `/photograph-${number}.jpg`;

/** The report as the template's JSON input; pictures travel as files of their own. */
export function typstInput(report: ReportDocument, logoPath: string): string {
  const { title, subtitle, language, paper, letterhead, runningFoot, words, sections, kind, madeAt } = report;
  const [lang, region] = language.split('-');
  return JSON.stringify({
    kind,
    paper,
    words,
    lang,
    region: region ?? null,
    made: dateParts(madeAt),
    logo: logoPath,
    title: paperText(title),
    subtitle: paperText(subtitle),
    author: paperText(letterhead.name),
    foot: paperText(runningFoot),
    letterhead: {
      name: paperText(letterhead.name),
      lines: letterhead.lines.map(paperText),
      logo: paperText(letterhead.logo?.description ?? ''),
    },
    sections: sections.map((section) => ({
      ...section,
      title: paperText(section.title),
      blocks: section.blocks.map((block) => typstBlock(block, section)),
    })),
  });
}

function typstBlock(block: Block, section: Section): unknown {
  switch (block.kind) {
    case 'table':
      return {
        kind: block.kind,
        noteAt: noteColumn(block.columns),
        isDense: block.isDense ?? false,
        ...texts({
          caption: isSaidByHeading(block, section) ? '' : block.caption,
          columns: sizedColumns(block),
          rows: block.rows,
        }),
      };
    case 'figure':
      return {
        kind: block.kind,
        svg: block.svg,
        widthMm: block.widthMm,
        heightMm: block.heightMm,
        alt: paperText(block.alt),
        caption: paperText(block.caption),
      };
    case 'cards':
      return { kind: block.kind, figures: block.figures.map((card) => typstBlock(card, section)) };
    case 'photograph':
      return {
        kind: block.kind,
        file: photographPath(block),
        widthMm: block.widthMm,
        heightMm: block.heightMm,
        caption: paperText(block.caption),
      };
    default:
      return mapped(block);
  }
}

/** A column that needs more than this shares what the others leave. */
const WIDEST_EM = 16;
/** More than this leaves too little of a page for the columns that share the rest. */
const MOST_TAKEN_EM = 38;
const LEAST_WRAPPED_EM = 7;
/** Where the setter may end a line: at a space, and behind a hyphen before a letter. */
const breaks = / |(?<=-)(?=\p{L})/u;

/**
 * Columns as narrow as their content get their width from the font's own measures. The setter could find it too, but
 * would have to lay every cell out twice.
 */
function sizedColumns({ columns, rows }: Table): readonly SizedColumn[] {
  const sized = columns.map((column, index): SizedColumn => {
    if (column.share !== undefined) return column;
    const bold = rows.some(({ emphasis }) => emphasis !== undefined) ? 'bold' : 'regular';
    const cells = rows.map(({ cells: texts }) => paperText(texts[index]));
    const widthOf = (wanted: (text: string) => readonly string[]): number =>
      Math.max(
        ...wanted(paperText(column.title)).map((part) => textWidthMm(part, 1, 'bold')),
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

const texts = <T extends object>(block: T): object =>
  Object.fromEntries(Object.entries(block).map(([key, part]) => [key, mapped(part)]));

/** The same structure with every text as the paper shows it; kinds and alignments are plain words and pass through. */
function mapped(value: unknown): unknown {
  if (typeof value === 'string') return paperText(value);
  if (Array.isArray(value)) return value.map(mapped);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, mapped(part)]));
  return value;
}

const dateParts = (iso: string): readonly number[] => {
  const instant = new Date(iso);
  return [
    instant.getUTCFullYear(),
    instant.getUTCMonth() + 1,
    instant.getUTCDate(),
    instant.getUTCHours(),
    instant.getUTCMinutes(),
    instant.getUTCSeconds(),
  ];
};

import {
  isSaidByHeading,
  noteColumn,
  type Block,
  type PhotographBlock,
  type ReportDocument,
  type Section,
  type Table,
} from '#lib/drawings';
import { paperText } from './paper-text.js';
import { tableSizes, type TablePage } from './typst-tables.js';

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
      blocks: section.blocks.map((block) =>
        typstBlock(block, section, { kind, paper, layout: section.layout }),
      ),
    })),
  });
}

function typstBlock(block: Block, section: Section, page: TablePage): unknown {
  switch (block.kind) {
    case 'table':
      return typstTable(isSaidByHeading(block, section) ? { ...block, caption: '' } : block, page);
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
      return { kind: block.kind, figures: block.figures.map((card) => typstBlock(card, section, page)) };
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

function typstTable(table: Table, page: TablePage): unknown {
  const said: Table = {
    ...table,
    caption: paperText(table.caption),
    columns: table.columns.map((column) => ({ ...column, title: paperText(column.title) })),
    rows: table.rows.map(({ cells, note, ...row }) => ({
      ...row,
      cells: cells.map(paperText),
      ...(note === undefined ? {} : { note: paperText(note) }),
    })),
  };
  return {
    ...said,
    ...tableSizes(said, page),
    noteAt: noteColumn(table.columns),
    isDense: table.isDense ?? false,
  };
}

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

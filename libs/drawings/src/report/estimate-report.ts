import { withUnitSigns } from '../sheet/unit-signs.js';
import type { Block, ReportDocument, Section } from './document.js';
import { assumptionSection, cautionSection, closingSections, costSections } from './cost-sections.js';
import {
  basisSections,
  identitySection,
  readingSections,
  scopeSections,
  summarySection,
} from './opening-sections.js';
import { methodSection } from './method-section.js';
import { openedOf, type ReportRequest } from './request.js';
import { dateText } from './said.js';
import { checkSection, coreSection, laminateSection, processSections } from './work-sections.js';

/** The report a surveyor attaches: the same structure becomes the PDF and the page on a screen. */
export function reportOf(request: ReportRequest): ReportDocument {
  const opened = openedOf(request);
  return documentOf(request, 'estimate-report', request.reader.words.report.kind, [
    identitySection(request),
    summarySection(request),
    methodSection(request),
    ...basisSections(request),
    ...scopeSections(request),
    ...(opened === undefined ? [] : [coreSection(opened), laminateSection(opened), checkSection(opened)]),
    ...processSections(request),
    ...costSections(request),
    cautionSection(request),
    assumptionSection(request),
    ...readingSections(request),
    ...closingSections(request),
  ]);
}

/** The frame that report and job pack share. */
export function documentOf(
  request: ReportRequest,
  kind: ReportDocument['kind'],
  title: string,
  sections: readonly Section[],
): ReportDocument {
  const { estimate, issue, reader, paper } = request;
  const { report, identity } = reader.words;
  return {
    kind,
    title: `${title}: ${estimate.title}`,
    subtitle: report.subtitle(estimate.scope.panel.name),
    language: reader.words.language,
    paper,
    madeAt: issue.madeAt,
    letterhead: issue.letterhead,
    runningFoot: `${identity.estimate} ${issue.id} · ${identity.revision} ${issue.revision} · ${dateText(reader, issue.madeAt)}`,
    words: { contents: report.contents, page: report.pageWord, of: report.pageOf, table: report.table },
    sections: sections.map((section) => (section.id === 'identity' ? section : withSigns(section))),
  };
}

/** The engine spells units in letters; a document prints their signs. Names that people gave stand as they were given. */
const withSigns = (section: Section): Section => ({ ...section, blocks: section.blocks.map(signed) });

function signed(block: Block): Block {
  const text = withUnitSigns;
  switch (block.kind) {
    case 'paragraph':
      return { ...block, text: text(block.text) };
    case 'list':
      return { ...block, items: block.items.map(text) };
    case 'facts':
      return {
        ...block,
        rows: block.rows.map(({ name, value }) => ({ name: text(name), value: text(value) })),
      };
    case 'table':
      return {
        ...block,
        columns: block.columns.map((column) => ({ ...column, title: text(column.title) })),
        rows: block.rows.map((row) => ({
          ...row,
          cells: row.cells.map(text),
          ...(row.note === undefined ? {} : { note: text(row.note) }),
        })),
      };
    case 'callout':
      return { ...block, text: text(block.text), small: text(block.small) };
    case 'ticks':
      return { ...block, items: block.items.map((item) => ({ ...item, text: text(item.text) })) };
    case 'figure':
    case 'signature':
      return block;
  }
}

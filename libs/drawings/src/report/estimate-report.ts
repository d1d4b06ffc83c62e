import { exactValues } from '../exact-values.js';
import { inReadersUnits } from '../readers-units.js';
import { withUnitSigns } from '../sheet/unit-signs.js';
import { bodyOf } from './body/body.js';
import { flow, type Block, type ReportDocument, type Section } from './document.js';
import { assumptionSections, bibliographySections } from './assumption-sections.js';
import { cautionSection, costSections, reproductionSections } from './cost-sections.js';
import { basisSections, nextSections, readingSections, scopeSections } from './opening-sections.js';
import { photographSections } from './photograph-section.js';
import { methodSection } from './method-section.js';
import { openedOf, type AnnexName, type OpenedRequest, type ReportRequest } from './request.js';
import { dateText } from './said.js';
import { checkSection, coreSection, laminateSection, processSections } from './work-sections.js';

/** What a surveyor signs, and behind it the annexes that were asked for: the same structure becomes PDF and page. */
export function reportOf(request: ReportRequest): ReportDocument {
  return documentOf(request, 'estimate-report', request.reader.words.purposes[request.purpose], [
    ...bodyOf(request),
    ...photographSections(request),
    ...annexesOf(request),
    ...bibliographySections(request),
  ]);
}

/** Annexes lettered in order; one that this estimate has nothing for is left out and takes no letter. */
const annexesOf = (request: ReportRequest): readonly Section[] =>
  request.annexes
    .map((name) => ({ name, sections: annexSections[name](request) }))
    .filter(({ sections }) => sections.length > 0)
    .flatMap(({ name, sections }, index) => annexOf(name, sections, { index, request }));

function annexOf(
  name: AnnexName,
  sections: readonly Section[],
  { index, request }: { readonly index: number; readonly request: ReportRequest },
): readonly Section[] {
  const { annexes } = request.reader.words;
  const letter = String.fromCharCode('A'.charCodeAt(0) + index);
  return [
    flow(`annex-${name}`, 1, annexes.annex(letter, annexes.titles[name]), []),
    ...sections.map((section): Section => ({ ...section, level: 2 })),
  ];
}

const openedOnly =
  (sections: (opened: OpenedRequest) => readonly Section[]) =>
  (request: ReportRequest): readonly Section[] => {
    const opened = openedOf(request);
    return opened === undefined ? [] : sections(opened);
  };

const annexSections: Readonly<Record<AnnexName, (request: ReportRequest) => readonly Section[]>> = {
  scope: (request) => [
    methodSection(request),
    ...basisSections(request),
    ...nextSections(request),
    ...scopeSections(request),
    ...readingSections(request),
  ],
  core: openedOnly((opened) => [coreSection(opened), laminateSection(opened)]),
  structure: openedOnly((opened) => [checkSection(opened)]),
  process: processSections,
  prices: costSections,
  assumptions: assumptionSections,
  cautions: (request) => [cautionSection(request)],
  reproduction: reproductionSections,
};

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
    words: {
      contents: report.contents,
      annexes: reader.words.annexes.lead,
      page: report.pageWord,
      of: report.pageOf,
      table: report.table,
    },
    sections: sections.map(printedFor(request)),
  };
}

/** The engine spells units in letters; a document prints their signs. Names that people gave stand as they were given. */
export function printedFor({ estimate, reader }: ReportRequest): (section: Section) => Section {
  const exact = exactValues(reader, estimate);
  const inUnits = (said: string): string => inReadersUnits(reader, withUnitSigns(said), exact);
  return (section) => (section.id === 'identity' ? section : withSigns(section, inUnits));
}

const withSigns = (section: Section, inUnits: (said: string) => string): Section => ({
  ...section,
  blocks: section.blocks.map((block) => signed(block, inUnits)),
});

function signed(block: Block, text: (said: string) => string): Block {
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
    case 'photograph':
      return { ...block, caption: text(block.caption) };
    case 'figure':
    case 'cards':
    case 'signature':
      return block;
  }
}

import { escaped } from '../sheet/svg.js';
import {
  isSaidByHeading,
  type Block,
  type Callout,
  type Column,
  type FigureBlock,
  type PhotographBlock,
  type ReportDocument,
  type Row,
  type Section,
  type Table,
} from './document.js';
import { stylesheet } from './stylesheet.js';

/** What the page may do: show its own text, its own style and, when it carries pictures, those. Nothing else. */
export const contentSecurityPolicy = (styleHash: string, hasPictures: boolean): string =>
  `default-src 'none'; style-src 'sha256-${styleHash}'; ${hasPictures ? 'img-src data:; ' : ''}base-uri 'none'; form-action 'none'`;

const hasPictures = ({ letterhead, sections }: ReportDocument): boolean =>
  letterhead.logo !== undefined ||
  sections.some(({ blocks }) => blocks.some(({ kind }) => kind === 'photograph'));

export interface HtmlOptions {
  /** Base64 SHA-256 of `stylesheet`, worked out by the caller: rooms do no cryptography. */
  readonly styleHash: string;
}

/** The report as one self-contained page for a browser: no script, no font, no file beside it. */
export function htmlOf(report: ReportDocument, { styleHash }: HtmlOptions): string {
  return (
    [
      '<!doctype html>',
      `<html lang="${escaped(report.language)}">`,
      '<head>',
      '<meta charset="utf-8">',
      `<meta http-equiv="Content-Security-Policy" content="${escaped(contentSecurityPolicy(styleHash, hasPictures(report)))}">`,
      '<meta name="viewport" content="width=device-width, initial-scale=1">',
      '<meta name="referrer" content="no-referrer">',
      `<title>${escaped(report.title)}</title>`,
      `<style>${stylesheet}</style>`,
      '</head>',
      `<body class="${report.kind} ${report.paper}">`,
      headerHtml(report),
      '<main id="report">',
      ...nested(report),
      '</main>',
      `<footer><p>${escaped(report.runningFoot)}</p></footer>`,
      '</body>',
      '</html>',
    ].join('\n') + '\n'
  );
}

function headerHtml({ letterhead, title, subtitle }: ReportDocument): string {
  const logo =
    letterhead.logo === undefined
      ? ''
      : `<img alt="${escaped(letterhead.logo.description)}" src="data:${letterhead.logo.type};base64,${escaped(letterhead.logo.base64)}">`;
  const lines = [letterhead.name, ...letterhead.lines]
    .filter((line) => line !== '')
    .map((line) => `<span>${bdi(line)}</span>`)
    .join('');
  const head = logo === '' && lines === '' ? '' : `<p class="letterhead">${logo}${lines}</p>`;
  return `<header>${head}<h1>${bdi(title)}</h1><p class="subtitle">${bdi(subtitle)}</p></header>`;
}

/** Where the chapters are: in a report only the annexes, because the body is short and stands before them. */
function navHtml({ sections, words, kind }: ReportDocument): string {
  const items = sections
    .filter(({ level, layout }) => level === 1 && layout !== 'template' && layout !== 'body')
    .map(({ id, title }) => `<li><a href="#${escaped(id)}">${bdi(title)}</a></li>`);
  const title = kind === 'estimate-report' ? words.annexes : words.contents;
  return items.length === 0
    ? ''
    : `<nav aria-labelledby="contents"><h2 id="contents">${escaped(title)}</h2><ol>${items.join('')}</ol></nav>`;
}

/** Text that might run from right to left must not turn round what stands beside it. */
const bdi = (text: string): string =>
  /[\u0590-\u08FF\u200E\u200F\u202A-\u202E\u2066-\u2069\uFB1D-\uFEFC]/.test(text)
    ? `<bdi>${escaped(text)}</bdi>`
    : escaped(text);

/** Second-level sections lie inside the first-level one before them; the contents stand before the first that is no body. */
function nested(report: ReportDocument): readonly string[] {
  const { sections, words } = report;
  const tables = sections.flatMap(({ blocks }) => blocks).filter((block) => block.kind === 'table');
  const names: Names = new Map(tables.map((block, index) => [block, `${words.table} ${index + 1}`]));
  const groups: Section[][] = [];
  for (const section of sections) {
    if (section.level === 1 || groups.length === 0) groups.push([section]);
    else groups[groups.length - 1].push(section);
  }
  const firstBehind = groups.findIndex(([{ layout }]) => layout !== 'body');
  return groups.flatMap((group, index) => [
    ...(index === firstBehind ? [navHtml(report)] : []),
    groupHtml(group, report, names),
  ]);
}

/** What is read first stands open, and can be folded; annexes are folded, and can be opened. */
function groupHtml([first, ...rest]: readonly Section[], { kind }: ReportDocument, names: Names): string {
  const inner = [
    blocksHtml(first, names),
    ...rest.map(
      (section) => `<section>${headingHtml(section, 'h3')}\n${blocksHtml(section, names)}</section>`,
    ),
  ].join('\n');
  if (kind !== 'estimate-report' || first.id === 'summary')
    return `<section class="${first.layout}">${headingHtml(first, 'h2')}\n${inner}</section>`;
  const open = first.layout === 'body' ? ' open' : '';
  return `<details class="${first.layout === 'body' ? 'body' : 'annex'}"${open}><summary>${headingHtml(first, 'h2')}</summary>\n${inner}</details>`;
}

const headingHtml = ({ id, title }: Section, tag: 'h2' | 'h3'): string =>
  `<${tag} id="${escaped(id)}">${bdi(title)}</${tag}>`;

const blocksHtml = (section: Section, names: Names): string =>
  section.blocks
    .map((block, index) => blockHtml(block, `${section.id}-${index}`, { section, names }))
    .join('\n');

/** Tables are numbered through the page, so that a screen reader can tell two with the same caption apart. */
type Names = ReadonlyMap<Block, string>;

interface Surroundings {
  readonly section: Section;
  readonly names: Names;
}

function blockHtml(block: Block, id: string, around: Surroundings): string {
  switch (block.kind) {
    case 'paragraph':
      return `<p>${bdi(block.text)}</p>`;
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${bdi(item)}</li>`).join('')}</ul>`;
    case 'facts':
      return `<dl>${block.rows.map(({ name, value }) => `<div><dt>${bdi(name)}</dt><dd>${bdi(value)}</dd></div>`).join('')}</dl>`;
    case 'table':
      return tableHtml(block, id, around);
    case 'figure':
      return figureHtml(block, id);
    case 'cards':
      return `<div class="cards">${block.figures.map((card, index) => figureHtml(card, `${id}-${index}`)).join('')}</div>`;
    case 'photograph':
      return photographHtml(block);
    case 'callout':
      return calloutHtml(block);
    case 'signature':
      return `<dl class="signature">${block.fields.map((field) => `<div><dt>${bdi(field)}</dt><dd></dd></div>`).join('')}</dl>`;
  }
}

/** Wide tables scroll inside a region that the keyboard can reach. */
function tableHtml(block: Table, id: string, { section, names }: Surroundings): string {
  const { caption, columns, rows } = block;
  const isSilent = isSaidByHeading(block, section);
  const region = `${names.get(block) ?? ''}, ${caption}`;
  const heads = columns
    .map((column) => `<th scope="col"${endClass(column)}>${bdi(column.title)}</th>`)
    .join('');
  return (
    `<div class="scroll" role="region" aria-label="${escaped(region)}" tabindex="0"><table><caption id="${escaped(id)}"${isSilent ? ' class="silent"' : ''}>${bdi(caption)}</caption>` +
    `<thead><tr>${heads}</tr></thead><tbody>${rows.map((one) => rowHtml(one, columns)).join('')}</tbody></table></div>`
  );
}

const endClass = ({ align, share }: Column): string =>
  align === 'end' ? ' class="end"' : share === undefined ? '' : ' class="wide"';

function rowHtml({ cells, note, emphasis }: Row, columns: readonly Column[]): string {
  const noteAt = noteColumn(columns);
  const cellHtml = cells
    .map((cell, index) => {
      const small = note !== undefined && index === noteAt ? `<small>${bdi(note)}</small>` : '';
      const rest = index === cells.length - 1 ? columns.length - index : 1;
      const span = rest === 1 ? '' : ` colspan="${rest}"`;
      return `<td${endClass(columns[index])}${span} data-of="${escaped(columns[index].title)}">${bdi(cell)}${small}</td>`;
    })
    .join('');
  return `<tr${emphasis === undefined ? '' : ` class="${emphasis}"`}>${cellHtml}</tr>`;
}

/** A note stands under the widest column. */
export const noteColumn = (columns: readonly Column[]): number => {
  const shares = columns.map(({ share }) => share ?? 0);
  return Math.max(0, shares.indexOf(Math.max(...shares)));
};

function figureHtml({ svg, narrowSvg, caption, name }: FigureBlock, id: string): string {
  const own = (drawing: string, suffix: string): string =>
    drawing
      .replaceAll(`${name}${suffix}-title`, `${id}${suffix}-title`)
      .replaceAll(`${name}${suffix}-desc`, `${id}${suffix}-desc`);
  const narrow = narrowSvg === undefined ? '' : `<div class="narrow">${own(narrowSvg, '-narrow')}</div>`;
  const caption2 = caption === '' ? '' : `<figcaption>${bdi(caption)}</figcaption>`;
  return `<figure><div class="${narrow === '' ? 'only' : 'broad'}">${own(svg, '')}</div>${narrow}${caption2}</figure>`;
}

/** Its caption says what it shows, and stands below it for everybody. */
const photographHtml = ({ caption, type, base64 }: PhotographBlock): string =>
  `<figure class="photograph"><img alt="${escaped(caption)}" src="data:${type};base64,${escaped(base64)}"><figcaption>${bdi(caption)}</figcaption></figure>`;

const calloutHtml = ({ severity, label, text, small }: Callout): string =>
  `<div class="callout ${severity}"><p><strong>${bdi(label)}.</strong> ${bdi(text)}</p>${small === '' ? '' : `<p class="small">${bdi(small)}</p>`}</div>`;

import type { PaperName } from '../sheet/formats.js';

/** A report as structure: what is said and in which order, before anybody decides how it looks. */
export interface ReportDocument {
  readonly kind: 'estimate-report' | 'job-pack' | 'change-order' | 'sheets';
  readonly title: string;
  readonly subtitle: string;
  /** BCP 47 language of the words. */
  readonly language: string;
  readonly paper: PaperName;
  /** ISO 8601 instant; also the date inside the PDF, so that equal input gives equal bytes. */
  readonly madeAt: string;
  readonly letterhead: Letterhead;
  /** Stands at the foot of each page. */
  readonly runningFoot: string;
  readonly words: {
    readonly contents: string;
    readonly annexes: string;
    readonly page: string;
    readonly of: string;
    readonly table: string;
  };
  readonly sections: readonly Section[];
}

export interface Letterhead {
  readonly name: string;
  readonly lines: readonly string[];
  readonly logo?: Logo;
}

/** A picture that was drawn anew from what was uploaded. */
export interface Logo {
  readonly type: 'image/png';
  readonly base64: string;
  /** For those who cannot see it. */
  readonly description: string;
}

/** `body` sections are the pages that are read first, set close; `task` sections start a page and are set large; `template` and `sheet` pages carry one drawing at full size. */
export interface Section {
  readonly id: string;
  readonly level: 1 | 2;
  readonly title: string;
  readonly layout: 'body' | 'flow' | 'task' | 'template' | 'sheet';
  readonly blocks: readonly Block[];
  /** A task that stands below the one before instead of on a sheet of its own. */
  readonly sharesSheet?: true;
}

export type Block =
  Paragraph | List | Facts | Table | FigureBlock | Cards | PhotographBlock | Callout | SignatureBlock;

export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: string;
  readonly isDense?: true;
}

export interface List {
  readonly kind: 'list';
  readonly items: readonly string[];
  readonly isDense?: true;
}

/** Names and values, two columns without a header row. */
export interface Facts {
  readonly kind: 'facts';
  readonly caption: string;
  /** How many pairs stand beside each other where there is room; one when absent. */
  readonly across?: 2;
  /** Read before anything else. */
  readonly isStrong?: boolean;
  readonly isDense?: true;
  readonly rows: readonly { readonly name: string; readonly value: string }[];
}

export interface Column {
  readonly title: string;
  readonly align: 'start' | 'end';
  /** Share of the width that is left after narrow columns; absent means as narrow as its content. */
  readonly share?: number;
}

export interface Table {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  readonly isDense?: true;
}

export interface Row {
  /** One for each column; of fewer, the last takes the rest of the line. */
  readonly cells: readonly string[];
  /** A second line below the first cell's text. */
  readonly note?: string;
  readonly emphasis?: 'total' | 'fails' | 'hold';
}

export interface FigureBlock {
  readonly kind: 'figure';
  readonly name: string;
  readonly caption: string;
  readonly alt: string;
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The same drawing laid out for a narrow screen; only in documents made for one. */
  readonly narrowSvg?: string;
  /** Of a drawing to scale: millimetres on paper for one of the deck. */
  readonly scaleFactor?: number;
}

/** Drawings of half a page's width, two beside each other and four to a sheet. */
export interface Cards {
  readonly kind: 'cards';
  readonly figures: readonly FigureBlock[];
}

/** A picture of the deck, `widthMm` wide on paper. */
export interface PhotographBlock {
  readonly kind: 'photograph';
  readonly number: number;
  readonly caption: string;
  readonly type: 'image/jpeg';
  readonly base64: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Callout {
  readonly kind: 'callout';
  readonly severity: 'danger' | 'warning' | 'caution' | 'note';
  readonly label: string;
  readonly text: string;
  readonly small: string;
}

export interface SignatureBlock {
  readonly kind: 'signature';
  readonly fields: readonly string[];
}

export const paragraph = (text: string): Paragraph => ({ kind: 'paragraph', text });
export const list = (items: readonly string[]): List => ({ kind: 'list', items });
export const facts = (caption: string, rows: readonly (readonly [string, string])[]): Facts => ({
  kind: 'facts',
  caption,
  rows: rows.map(([name, value]) => ({ name, value })),
});
export const table = (caption: string, columns: readonly Column[], rows: readonly Row[]): Table => ({
  kind: 'table',
  caption,
  columns,
  rows,
});
/** Set small, where a list is to stay on one sheet with what it belongs to. */
export const dense = <B extends Paragraph | List | Table | Facts>(
  given: B,
): B & { readonly isDense: true } => ({
  ...given,
  isDense: true,
});
export const wide = (title: string, share = 1): Column => ({ title, align: 'start', share });
export const narrow = (title: string): Column => ({ title, align: 'start' });
export const numeric = (title: string): Column => ({ title, align: 'end' });
export const row = (...cells: readonly string[]): Row => ({ cells });

/** The only drawing under a heading needs no title of its own, which would read as the heading of what follows. */
export const untitled = (drawing: FigureBlock): FigureBlock => ({ ...drawing, caption: '' });

/** A section of the pages that are read first. */
export const bodySection = (id: string, title: string, blocks: readonly Block[]): Section => ({
  id,
  level: 1,
  title,
  layout: 'body',
  blocks,
});

export const flow = (id: string, level: 1 | 2, title: string, blocks: readonly Block[]): Section => ({
  id,
  level,
  title,
  layout: 'flow',
  blocks,
});

/** What a table that says the same as its heading is called: the heading is enough for the eye, but not for a screen reader. */
export const isSaidByHeading = (block: Table, { title }: Section): boolean => block.caption === title;
export const task = (id: string, title: string, blocks: readonly Block[]): Section => ({
  id,
  level: 1,
  title,
  layout: 'task',
  blocks,
});

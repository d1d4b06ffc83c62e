/** What a drawing is made for: a sheet of its own with a title block, a figure inside a page, or a narrow screen. */
export interface SheetFormat {
  readonly kind: 'sheet' | 'figure' | 'phone';
  readonly widthMm: number;
  readonly heightMm: number;
}

export type PaperName = 'a4' | 'letter';

/** Portrait width and height in mm. Source: [ISO-216] A4; letter is 8 1/2 in by 11 in by definition. */
export const papers: Readonly<Record<PaperName, { readonly widthMm: number; readonly heightMm: number }>> = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
};

export const landscape = (paper: PaperName): SheetFormat => ({
  kind: 'sheet',
  widthMm: papers[paper].heightMm,
  heightMm: papers[paper].widthMm,
});

export const portrait = (paper: PaperName): SheetFormat => ({ kind: 'sheet', ...papers[paper] });

export const figure = (widthMm: number, heightMm: number): SheetFormat => ({
  kind: 'figure',
  widthMm,
  heightMm,
});

/** Narrow enough that 2.5 mm lettering is read on a phone held upright. */
export const phone: SheetFormat = { kind: 'phone', widthMm: 90, heightMm: 140 };

import type { SheetFormat } from '#lib/catalogue';
import type { Figure } from '#lib/provenance';
import type { CoreSection } from './estimate.js';

/** Sheets to buy of one thickness, form and format. */
export interface SheetsWanted {
  readonly thicknessMm: number;
  readonly form: 'plain' | 'scored';
  readonly sheet: SheetFormat;
  readonly count: Figure<'1'>;
  /** Core that ends up in the deck, of these sheets. */
  readonly netM2: Figure<'m2'>;
}

export interface CoreWork {
  readonly sheets: readonly SheetsWanted[];
  readonly netM2: Figure<'m2'>;
  readonly pieces: readonly { readonly label: string; readonly areaM2: number }[];
  readonly scores?: { readonly spacingMm: number; readonly widthMm: number; readonly depthMm: number };
  readonly layers: number;
  readonly section: CoreSection;
}

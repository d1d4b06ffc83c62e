import type { ChangeOrder } from '#lib/costing';
import type { CoreSection, DefectRecord, Estimate, LaminateSection, PanelSection } from '#lib/estimate';
import type { MoneyJson } from '#lib/money';
import type { Place } from '../deck/place.js';
import type { Reader } from '../reader.js';
import type { PaperName } from '../sheet/formats.js';
import type { Letterhead } from './document.js';

/** What the estimate itself does not know: who issues it, when, and what came before. */
export interface Issue {
  readonly id: string;
  /** ISO 8601 instant. */
  readonly madeAt: string;
  readonly madeBy?: string;
  readonly purpose?: string;
  readonly letterhead: Letterhead;
  readonly revision: number;
  readonly history: readonly Revision[];
  /** Against the revision before; empty for a first issue. */
  readonly changes: readonly Change[];
  /** Of the deck, by number. */
  readonly photographs: readonly Photograph[];
  /** What is to be signed; only where a change order is printed. */
  readonly changeOrder?: ChangeOrder;
}

/** A photograph that was drawn anew from what was uploaded. */
export interface Photograph {
  readonly number: number;
  readonly caption: string;
  /** Where it was taken, in the deck plane. */
  readonly at?: Place;
  /** 0 towards the bow, 90 to starboard. */
  readonly directionDeg?: number;
  /** Only reports show it; for a drawing its place is enough. */
  readonly picture?: Picture;
}

export interface Picture {
  readonly type: 'image/jpeg';
  readonly base64: string;
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface Revision {
  readonly number: number;
  readonly madeAt: string;
  /** Absent for the first issue, which needs none. */
  readonly reason?: string;
  readonly total: MoneyJson;
}

/** A figure or a sum against the revision before; numbers, so that each reader reads them in his own way. */
export type Change =
  | {
      readonly kind: 'figure';
      readonly what: string;
      readonly unit: string;
      readonly before: number;
      readonly after: number;
    }
  | { readonly kind: 'sum'; readonly what: string; readonly before: MoneyJson; readonly after: MoneyJson };

/** An estimate of a deck that is opened: it has core, laminate and panel. */
export type OpenedEstimate = Estimate & {
  readonly core: CoreSection;
  readonly laminate: LaminateSection;
  readonly panel: PanelSection;
};

export interface OpenedRequest extends ReportRequest {
  readonly estimate: OpenedEstimate;
}

/** The same request where the deck is opened; nothing where the method leaves it closed. */
export function openedOf(request: ReportRequest): OpenedRequest | undefined {
  const { core, laminate, panel } = request.estimate;
  return core === undefined || laminate === undefined || panel === undefined
    ? undefined
    : { ...request, estimate: { ...request.estimate, core, laminate, panel } };
}

/** Parts behind the body that can be asked for by name. */
export const annexNames = [
  'scope',
  'core',
  'structure',
  'process',
  'prices',
  'assumptions',
  'cautions',
  'reproduction',
] as const;
export type AnnexName = (typeof annexNames)[number];

/** What a report is for; it decides its title and, where nobody names them, its annexes. */
export const purposes = ['condition', 'damage', 'quotation', 'works'] as const;
export type Purpose = (typeof purposes)[number];

export interface ReportRequest {
  readonly purpose: Purpose;
  /** In the order of `annexNames`. */
  readonly annexes: readonly AnnexName[];
  readonly estimate: Estimate;
  readonly record: DefectRecord;
  readonly issue: Issue;
  readonly reader: Reader;
  readonly paper: PaperName;
  /** A page needs drawings of one width; a screen also needs narrow ones. */
  readonly medium: 'page' | 'screen';
}

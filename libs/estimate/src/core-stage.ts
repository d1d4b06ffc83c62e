import { success, type Outcome } from '#lib/kernel';
import type { SheetFormat } from '#lib/catalogue';
import { derived, sumOf, type Figure } from '#lib/provenance';
import { fraction } from '#lib/units';
import type { CoreSection } from './estimate.js';
import type { Job } from './job.js';
import type { ScopeWork } from './scope-stage.js';

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
  /** Total thickness of the new core. */
  readonly coreMm: number;
  readonly section: CoreSection;
}

export function coreFor(job: Job, { plan }: ScopeWork): Outcome<CoreWork> {
  const netM2 = sumOf('m2', 'new core', { opened: plan.figures.openedArea, undercut: plan.figures.undercutArea });
  const thicknessMm = job.core.thicknessesMm.filter((mm) => mm <= job.numbers.coreMm.value).at(-1) ?? job.core.thicknessesMm[0];
  const [sheet] = job.core.sheets;
  const sheetM2 = sheet.lengthMm * sheet.widthMm / (1000 * 1000);
  const count = Math.ceil(netM2.value * 1.15 / sheetM2);
  return success({
    sheets: [{ thicknessMm, form: 'plain', sheet, netM2, count: derived('1', fraction(count), 'sheets', { formula: 'x', title: 'x', symbol: 'n', cite: { source: 'ARITHMETIC' }, inputs: {} }) }],
    netM2, pieces: [], layers: 1, coreMm: thicknessMm,
    section: {
      material: job.core.code, materialName: job.core.name, stack: [], cavityMm: job.numbers.coreMm.value, stackMm: thicknessMm, flushMm: 0,
      netAreaM2: netM2.value, wasteAreaM2: 0, purchaseAreaM2: count * sheetM2, pieces: [], sheets: [], utilisation: 0, massChangeKg: 0, notes: [],
    },
  });
}

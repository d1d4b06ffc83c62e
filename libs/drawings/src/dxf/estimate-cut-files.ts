import type { Estimate } from '#lib/estimate';
import { piecesDxf, sheetsDxf, type PieceToCut, type SheetToCut } from './cut-files.js';

/** Drawings of an estimate that are also to be had as files for a cutting machine, by the names they have as drawings. */
export const cutFileNames = ['piece-plan', 'sheet-layout'] as const;

/** The pieces or the sheets at 1:1 as an open drawing exchange file; undefined where the estimate has none, or for another name. */
export function cutFile(name: string, { core }: Pick<Estimate, 'core'>): string | undefined {
  if (core === undefined) return undefined;
  if (name === 'piece-plan' && core.pieces.length > 0)
    return piecesDxf(core.pieces.map(pieceToCut), howToCut(core));
  if (name === 'sheet-layout' && core.sheets.length > 0)
    return sheetsDxf(core.sheets.map((sheet) => sheetToCut(sheet, core)));
  return undefined;
}

/** An outline is the finished edge, so a blade that ran on it would make every piece half a kerf too small. */
const howToCut = ({ kerfMm }: Pick<Core, 'kerfMm'>): string => `${kerfMm} mm kerf, saw outside the outlines`;

type Core = NonNullable<Estimate['core']>;

const pieceToCut = ({ label, outline, holes, bleedHoles, grainDeg }: Core['pieces'][number]): PieceToCut => ({
  label,
  outline,
  holes,
  bleedHoles,
  ...(grainDeg === undefined ? {} : { grainDeg }),
});

const sheetToCut = (
  { label, lengthMm, widthMm, thicknessMm, placed, offcutsKept }: Core['sheets'][number],
  { pieces, kerfMm }: Core,
): SheetToCut => ({
  label: `${label}: ${lengthMm} x ${widthMm} x ${thicknessMm} mm, ${howToCut({ kerfMm })}`,
  outline: [
    [0, 0],
    [lengthMm, 0],
    [lengthMm, widthMm],
    [0, widthMm],
  ],
  placed,
  offcutsKept,
  hasGrain: pieces.some(({ grainDeg }) => grainDeg !== undefined),
});

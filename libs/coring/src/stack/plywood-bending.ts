import { defineFormula } from '#lib/provenance';
import { mm } from '#lib/units';

/** Thickness and radius in millimetres, bent across the face grain. */
const PRINTED: readonly (readonly [number, number])[] = [
  [6, 610],
  [8, 610],
  [9.5, 910],
  [12.7, 1830],
  [16, 2440],
  [19, 3660],
];

/**
 * Tightest radius to which a sheet of plywood is bent dry across its face grain, which therefore runs square to the camber.
 *
 * Between printed thicknesses in a straight line; thinner and thicker than any in proportion to the nearest.
 *
 * Source: [METHODS-PLY-BENDING] practical radii across the grain
 */
export const plywoodRadius = defineFormula({
  id: 'coring.plywood-radius',
  title: 'Tightest radius of plywood, bent across its face grain',
  cite: { source: 'METHODS-PLY-BENDING' },
  inputs: { thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the sheet', above: 0 } },
  output: { symbol: 'R', unit: 'mm', meaning: 'tightest radius' },
  evaluate: ({ thicknessMm }) => mm(radiusAt(thicknessMm)),
  // 9 mm lies two thirds of the way from 8 to 9.5: 610 + 2/3 x 300 = 810 mm.
  worked: [
    { at: 'the table, 12.7 mm', given: { thicknessMm: 12.7 }, printed: '1830' },
    { at: 'the table, 19 mm', given: { thicknessMm: 19 }, printed: '3660' },
    { at: 'by hand, between 8 and 9.5 mm', given: { thicknessMm: 9 }, printed: '810' },
  ],
});

function radiusAt(thicknessMm: number): number {
  const [thinnest] = PRINTED;
  const thickest = PRINTED[PRINTED.length - 1];
  if (thicknessMm <= thinnest[0]) return (thinnest[1] * thicknessMm) / thinnest[0];
  const next = PRINTED.findIndex(([printedMm]) => printedMm >= thicknessMm);
  if (next < 0) return (thickest[1] * thicknessMm) / thickest[0];
  const [[thinMm, tightMm], [thickMm, wideMm]] = [PRINTED[next - 1], PRINTED[next]];
  return tightMm + ((wideMm - tightMm) * (thicknessMm - thinMm)) / (thickMm - thinMm);
}

import { figure, type SheetFormat } from './formats.js';
import type { Drawing } from './svg.js';

const HEIGHTS_MM = [85, 115, 145, 175];

/**
 * The lowest figure of this width that still shows the subject at the largest scale any height allows.
 * More height never makes the scale smaller, so the heights are searched by halves.
 */
export function snugFigure(
  make: (format: SheetFormat) => Drawing,
  widthMm: number,
  tallestMm: number,
): Drawing {
  const heights = HEIGHTS_MM.filter((height) => height < tallestMm);
  let best = make(figure(widthMm, tallestMm));
  let [low, high] = [0, heights.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const drawing = make(figure(widthMm, heights[middle]));
    const isAsLarge = (drawing.scale?.factor ?? 0) >= (best.scale?.factor ?? 0);
    if (isAsLarge) [best, high] = [drawing, middle];
    else low = middle + 1;
  }
  return best;
}

import { figure, type SheetFormat } from './formats.js';
import { textMarks } from './marks.js';
import type { Drawing } from './svg.js';

const LOWEST_MM = 45;
const STEP_MM = 5;

/**
 * The lowest figure of this width that still shows the subject at the largest scale any height allows, with every label that
 * finds room in the tallest one. More height never makes the scale smaller, so the heights are searched by halves.
 */
export function snugFigure(
  make: (format: SheetFormat) => Drawing,
  widthMm: number,
  tallestMm: number,
): Drawing {
  const count = Math.max(0, Math.ceil((tallestMm - LOWEST_MM) / STEP_MM));
  const heights = Array.from({ length: count }, (_, step) => LOWEST_MM + step * STEP_MM);
  const tallest = make(figure(widthMm, tallestMm));
  const labels = textMarks(tallest.marks).length;
  let best = tallest;
  let [low, high] = [0, heights.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const drawing = make(figure(widthMm, heights[middle]));
    const isAsLarge = (drawing.scale?.factor ?? 0) >= (tallest.scale?.factor ?? 0);
    if (isAsLarge && textMarks(drawing.marks).length >= labels) [best, high] = [drawing, middle];
    else low = middle + 1;
  }
  return best;
}

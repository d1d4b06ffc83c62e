import { figure, type SheetFormat } from './formats.js';
import type { Drawing } from './svg.js';

const HEIGHTS_MM = [80, 95, 110, 125, 140, 155, 170, 185, 200, 215];

/** The lowest figure of this width that still shows the subject at the largest scale any height allows. */
export function snugFigure(make: (format: SheetFormat) => Drawing, widthMm: number, tallestMm: number): Drawing {
  const drawn = [...HEIGHTS_MM.filter((height) => height < tallestMm), tallestMm].map((height) => make(figure(widthMm, height)));
  const factorOf = ({ scale }: Drawing): number => scale?.factor ?? 0;
  const best = Math.max(...drawn.map(factorOf));
  return drawn.find((drawing) => factorOf(drawing) === best) ?? drawn[drawn.length - 1];
}

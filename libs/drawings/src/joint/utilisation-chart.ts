import type { DrawingRequest } from '../drawing-request.js';
import { percentText, shown } from '../reader.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import { boxMark, line, sizes, text, type Mark } from '../sheet/marks.js';
import { rectangle } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { shortened, textWidthMm } from '../sheet/text-size.js';

export interface UtilisationBar {
  readonly title: string;
  /** Demand over capacity. */
  readonly utilisation: number;
  readonly passes: boolean;
}

const ROW_MM = 5.2;
const HEAD_MM = 6;
/** Bars end here; the number beside says how far they would go. */
const MOST_SHOWN = 1.5;

/** How high the chart has to be for all its bars. */
export const chartHeightMm = (bars: number): number => bars * ROW_MM + HEAD_MM + 5;

/** One bar for each check against the limit; a bar over the limit is hatched and its number bold. */
export function utilisationChart(bars: readonly UtilisationBar[], request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.checks;
  const worst = Math.max(0, ...bars.map(({ utilisation }) => utilisation));
  const sheet = openSheet({
    name: 'panel-checks',
    title: said.chart,
    ...request,
    legend: [],
    notes: [],
    isToScale: false,
    description: said.chartDescription(said.checksCount(bars.length), percentText(reader, worst)),
  });
  return closeSheet(sheet, barMarks(bars, sheet), undefined);
}

function barMarks(
  bars: readonly UtilisationBar[],
  { area, request: { reader } }: OpenSheet,
): readonly Mark[] {
  const widest = Math.max(
    ...bars.map(({ title }) => textWidthMm(shown(reader, title), sizes.fine, 'regular')),
    10,
  );
  const column = Math.min(widest + 2, area.width * 0.52);
  const plot = { x: area.x + column, y: area.y + HEAD_MM, width: area.width - column - 16 };
  const across = (share: number): number => plot.x + (Math.min(share, MOST_SHOWN) / MOST_SHOWN) * plot.width;
  const bottom = plot.y + bars.length * ROW_MM + 1;
  return [
    ...bars.flatMap(({ title, utilisation, passes }, index) => {
      const y = plot.y + index * ROW_MM;
      const box = {
        x: plot.x,
        y: y + 0.9,
        width: Math.max(0.2, across(utilisation) - plot.x),
        height: ROW_MM - 1.8,
      };
      return [
        text([area.x, y + 3.5], shortened(shown(reader, title), column - 2, sizes.fine, 'regular'), {
          sizeMm: sizes.fine,
        }),
        ...(passes ? [] : hatched([rectangle(box)], 'crossed')),
        boxMark(box, 'fine', passes ? 'mid' : 'none'),
        text([plot.x + plot.width + 15, y + 3.5], percentText(reader, utilisation), {
          sizeMm: sizes.fine,
          anchor: 'end',
          weight: passes ? 'regular' : 'bold',
        }),
      ];
    }),
    line('visible', [across(1), plot.y - 1], [across(1), bottom]),
    line('fine', [plot.x, plot.y - 1], [plot.x, bottom]),
    text([across(1), plot.y - 2.2], `${reader.words.checks.limit} ${percentText(reader, 1)}`, {
      sizeMm: sizes.fine,
      anchor: 'middle',
    }),
  ];
}

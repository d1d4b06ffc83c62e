import { circle, shape, sizes, type Mark } from '../sheet/marks.js';
import type { LegendEntry, OpenSheet } from '../sheet/furniture.js';
import type { Point } from '../sheet/shapes.js';
import type { Reader } from '../reader.js';
import type { DeckView } from './deck-view.js';
import { middleOf } from './panel-marks.js';
import type { Place } from './place.js';

/** Where a photograph was taken, and which way it looks: 0 towards the bow, 90 to starboard. */
export interface PhotographPlace {
  readonly number: number;
  readonly at: Place;
  readonly directionDeg?: number;
}

const ARROW_MM = 4;
const HALF_WIDTH_MM = 1.3;

/** A dart from where the camera stood, or a dot where nobody said which way it looked; the number beside it. */
export function photographMarks(
  places: readonly PhotographPlace[],
  view: DeckView,
  sheet: OpenSheet,
): { readonly marks: readonly Mark[]; readonly left: number } {
  const symbols = places.map((place) => dart(view.at(place.at), tipOf(place, view)));
  const labels = places.map(({ number, at }) =>
    sheet.room.place({
      at: view.at(at),
      content: sheet.request.reader.words.defectMap.photographNumber(String(number)),
      style: { sizeMm: sizes.fine, weight: 'bold', backed: true },
      clearMm: 2,
      leader: true,
    }),
  );
  return { marks: [...symbols, ...labels.flat()], left: labels.filter((marks) => marks.length === 0).length };
}

/** The direction is turned with the deck, so it is taken from the view and not from the sheet. */
function tipOf({ at: [x, y], directionDeg }: PhotographPlace, view: DeckView): Point | undefined {
  if (directionDeg === undefined) return undefined;
  const angle = (directionDeg * Math.PI) / 180;
  const [fromX, fromY] = view.at([x, y]);
  const [toX, toY] = view.at([x + Math.cos(angle), y + Math.sin(angle)]);
  const long = Math.hypot(toX - fromX, toY - fromY);
  return [fromX + ((toX - fromX) / long) * ARROW_MM, fromY + ((toY - fromY) / long) * ARROW_MM];
}

function dart(from: Point, tip: Point | undefined): Mark {
  if (tip === undefined) return circle(from, HALF_WIDTH_MM, 'fine', 'mid');
  const [acrossX, acrossY] = [
    ((tip[1] - from[1]) / ARROW_MM) * HALF_WIDTH_MM,
    ((from[0] - tip[0]) / ARROW_MM) * HALF_WIDTH_MM,
  ];
  return shape(
    [[tip, [from[0] + acrossX, from[1] + acrossY], [from[0] - acrossX, from[1] - acrossY]]],
    'fine',
    'mid',
  );
}

export const photographLegend = (
  places: readonly PhotographPlace[],
  words: Reader['words']['defectMap'],
): readonly LegendEntry[] =>
  places.length === 0
    ? []
    : [
        {
          room: 'symbol',
          sample: (box) => {
            const [x, y] = middleOf(box);
            return [dart([x - ARROW_MM / 2, y], [x + ARROW_MM / 2, y])];
          },
          meaning: words.photograph,
        },
      ];

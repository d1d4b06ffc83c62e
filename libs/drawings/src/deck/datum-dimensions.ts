import { dimensionText, type Reader } from '../reader.js';
import { runningDimensions } from '../sheet/dimension.js';
import type { OpenSheet } from '../sheet/furniture.js';
import { circle, line, sizes, text, type Mark } from '../sheet/marks.js';
import { textWidthMm } from '../sheet/text-size.js';
import type { DeckView } from './deck-view.js';
import { blockTexts } from './panel-marks.js';
import type { Outline, Place } from './place.js';
import { setCorner, settingOut, type SettingOut } from './setting-out.js';

/** How far forward, and how far to which side, as it is written. */
export function saidCorner(corner: Place, out: SettingOut, reader: Reader): readonly [string, string] {
  const { alongMm, offsetMm } = setCorner(corner, out);
  return [dimensionText(reader, alongMm), offsetText(offsetMm, out, reader)];
}

/** From an edge everything lies to one side; from a line in the deck the side is said. */
function offsetText(offsetMm: number, { way }: SettingOut, reader: Reader): string {
  if (way === 'edges') return dimensionText(reader, offsetMm);
  const said = reader.words.openingPlan;
  const offset = dimensionText(reader, Math.abs(offsetMm));
  return offsetMm < 0 ? said.toPort(offset) : said.toStarboard(offset);
}

interface Level {
  readonly at: number;
  readonly from: number;
  readonly content: string;
}

/** Running dimensions of places from where the tapes are hooked; how many found no room. */
export function datumDimensions(
  { panel, places }: { readonly panel: Outline; readonly places: readonly Place[] },
  view: DeckView,
  sheet: OpenSheet,
): { readonly marks: readonly Mark[]; readonly left: number } {
  const { reader } = sheet.request;
  const out = settingOut(panel);
  const origin = view.at(out.zero);
  const { x, y, width, height } = view.box;
  const [across, down] = view.bow === 'up' ? ([1, 0] as const) : ([0, 1] as const);
  const levels = (axis: 0 | 1, sheetAxis: 0 | 1): readonly Level[] =>
    merged(
      places.map((place) => {
        const spot = view.at(place);
        return {
          at: spot[sheetAxis],
          from: spot[1 - sheetAxis],
          content: saidCorner(place, out, reader)[axis],
        };
      }),
      sheetAxis === 0 ? 'largest' : 'smallest',
    );
  const below = runningDimensions(
    {
      along: 'x',
      origin: origin[0],
      values: withOrigin(levels(across, 0), origin[0], y + height, reader),
      level: y + height + 6,
      range: [x - 6, x + width + 4],
    },
    sheet.room,
  );
  const left = runningDimensions(
    {
      along: 'y',
      origin: origin[1],
      values: withOrigin(levels(down, 1), origin[1], x, reader),
      level: x - 6,
      range: [y - 4, y + height + 4],
    },
    sheet.room,
  );
  const datum = datumMarks(out, view, reader);
  blockTexts(datum, sheet);
  return { marks: [...below.marks, ...left.marks, ...datum], left: below.left + left.left };
}

const withOrigin = (levels: readonly Level[], at: number, from: number, reader: Reader): readonly Level[] => [
  { at, from, content: dimensionText(reader, 0) },
  ...levels,
];

/** One value for all corners on one level, drawn from the corner nearest to the value. */
function merged(levels: readonly Level[], nearest: 'largest' | 'smallest'): readonly Level[] {
  const byContent = new Map<string, Level>();
  for (const level of levels) {
    const known = byContent.get(level.content);
    const from =
      known === undefined
        ? level.from
        : nearest === 'largest'
          ? Math.max(known.from, level.from)
          : Math.min(known.from, level.from);
    byContent.set(level.content, { ...level, from });
  }
  return [...byContent.values()];
}

/** The two lines that tapes are laid along, where they start, and the two places that corners are checked from. */
function datumMarks({ zero, checks }: SettingOut, view: DeckView, reader: Reader): readonly Mark[] {
  const origin = view.at(zero);
  const { x, y, width, height } = view.box;
  return [
    line('centre', [x - 4, origin[1]], [x + width + 2, origin[1]]),
    line('centre', [origin[0], y - 3], [origin[0], y + height + 4]),
    ...checks.map((place) => circle(view.at(place), 0.9, 'visible', 'ink')),
    circle(origin, 1.2, 'visible', 'paper'),
    text([origin[0] + 2, origin[1] - 1.2], reader.words.openingPlan.datum, {
      sizeMm: sizes.fine,
      weight: 'bold',
      backed: true,
    }),
  ];
}

/** The room that the longest value takes; inches and fractions are longer than millimetres. */
export function longestValueMm(panel: Outline, places: readonly Place[], reader: Reader): number {
  const out = settingOut(panel);
  const values = places.flatMap((place) => saidCorner(place, out, reader));
  return Math.max(8, ...values.map((value) => textWidthMm(value, sizes.body, 'regular')));
}

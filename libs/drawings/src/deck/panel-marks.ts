import polylabel from 'polylabel';
import { dimensionText, shown, type Reader } from '../reader.js';
import { spanDimension } from '../sheet/dimension.js';
import type { LegendEntry, OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import type { LineType } from '../sheet/line-types.js';
import { boxMark, circle, line, shape, sizes, textBox, textMarks, type Mark } from '../sheet/marks.js';
import { clippedLine, clippedRing } from '../sheet/clip.js';
import { boxOf, contains, grown, inset, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { DeckView, SeenFrom } from './deck-view.js';
import { ringsOf, type Area, type Outline, type Place } from './place.js';

export interface Panel extends Area {
  readonly name: string;
  readonly supports: readonly Support[];
}

/** A line of the deck that holds it up or bounds it. */
export interface Support {
  readonly kind: SupportKind;
  readonly from: Place;
  readonly to: Place;
}

export type SupportKind = 'hull-joint' | 'coaming' | 'hatch' | 'toe-rail' | 'bulkhead' | 'beam' | 'other';

/** What lies below is dashed, a bulkhead wider than a beam; edges that are seen from above are wide and whole. */
const supportLines: Readonly<Record<SupportKind, LineType>> = {
  'hull-joint': 'edge',
  'coaming': 'edge',
  'hatch': 'edge',
  'toe-rail': 'edge',
  'bulkhead': 'hidden-wide',
  'beam': 'hidden',
  'other': 'hidden',
};

/** Along the deck and across it. */
interface Rectangle {
  readonly lengthMm: number;
  readonly widthMm: number;
}

export interface Fitting {
  readonly id: string;
  readonly at: Place;
  /** Solid between the skins, and the plate below, by the card of the fitting. */
  readonly solid?: Rectangle;
  readonly plate?: Rectangle;
}

/** Said on every plan that is mirrored. */
export const seenNotes = (seenFrom: SeenFrom, reader: Reader): readonly string[] =>
  seenFrom === 'below' ? [reader.words.drawing.seenFromBelow] : [];

/** Room for the overall dimensions below and left of the deck. */
export const roomInside = (area: Box, left: number, bottom: number): Box =>
  inset(area, left, 2, { right: 2, bottom });

/** The outline of the panel, its holes and what it rests on. */
export function panelMarks(panel: Panel, view: DeckView, sheet: OpenSheet): readonly Mark[] {
  const rings = ringsOf(panel).map(view.ring);
  for (const ring of rings) sheet.room.avoid(ring, true);
  const supports = panel.supports.flatMap(({ kind, from, to }) =>
    clippedLine(view.at(from), view.at(to), sheet.area).map(([a, b]) => line(supportLines[kind], a, b)),
  );
  return [
    ...(isWhole(rings, sheet.area)
      ? [shape(rings, 'visible', 'none')]
      : rings.flatMap((ring) => clippedRing(ring, sheet.area)).map((part) => line('visible', ...part))),
    ...supports,
  ];
}

const isWhole = (rings: readonly Ring[], area: Box): boolean =>
  rings.every((ring) => contains(area, boxOf(ring)));

/** Overall length and width of what the view shows. */
export function overallDimensions(measured: Outline, view: DeckView, sheet: OpenSheet): readonly Mark[] {
  const { reader } = sheet.request;
  const real = boxOf(measured);
  const isUp = view.bow === 'up';
  const [across, down] = isUp ? [real.height, real.width] : [real.width, real.height];
  const { x, y, width, height } = view.box;
  const marks = [
    ...spanDimension({
      along: 'x',
      from: x,
      to: x + width,
      level: y + height + 6,
      startLevel: y + height + 1,
      content: dimensionText(reader, across),
    }),
    ...spanDimension({
      along: 'y',
      from: y,
      to: y + height,
      level: x - 6,
      startLevel: x - 1,
      content: dimensionText(reader, down),
    }),
  ];
  blockTexts(marks, sheet);
  return marks;
}

/** Takes the room of texts that already stand. */
export const blockTexts = (marks: readonly Mark[], sheet: OpenSheet): void => {
  for (const mark of textMarks(marks)) sheet.room.block(grown(textBox(mark), 0.5));
};

/** Keeps the symbols of fittings clear of labels; called before any label is placed. */
export const blockFittings = (fittings: readonly Fitting[], view: DeckView, sheet: OpenSheet): void => {
  for (const { at } of fittings) sheet.room.block(around(view.at(at), 1.9));
};

/** What lies under fittings: solid hatched, plates in hidden line, both with their long side along the deck. */
export const underFittings = (fittings: readonly Fitting[], view: DeckView): readonly Mark[] =>
  fittings.flatMap(({ at, solid, plate }) => [
    ...(solid === undefined ? [] : solidMarks(view.ring(cornersOf(at, solid)))),
    ...(plate === undefined ? [] : [shape([view.ring(cornersOf(at, plate))], 'hidden', 'none')]),
  ]);

const solidMarks = (ring: Ring): readonly Mark[] => [
  shape([ring], undefined, 'paper'),
  ...hatched([ring], 'crossed'),
  shape([ring], 'contour', 'none'),
];

const cornersOf = ([x, y]: Place, { lengthMm, widthMm }: Rectangle): Outline => [
  [x - lengthMm / 2, y - widthMm / 2],
  [x + lengthMm / 2, y - widthMm / 2],
  [x + lengthMm / 2, y + widthMm / 2],
  [x - lengthMm / 2, y + widthMm / 2],
];

export const underLegend = (fittings: readonly Fitting[], reader: Reader): readonly LegendEntry[] => [
  ...(fittings.some(({ solid }) => solid !== undefined)
    ? [{ sample: (box: Box) => solidMarks(boxRing(box)), meaning: reader.words.drawing.solid }]
    : []),
  ...(fittings.some(({ plate }) => plate !== undefined)
    ? [{ sample: (box: Box) => [boxMark(box, 'hidden', 'none')], meaning: reader.words.drawing.plate }]
    : []),
];

/** A fitting: a small ringed cross with its name beside it. */
export function fittingMarks(
  fittings: readonly Fitting[],
  view: DeckView,
  sheet: OpenSheet,
): { readonly marks: readonly Mark[]; readonly left: number } {
  const symbols = fittings.flatMap(({ at }) => fittingSymbol(view.at(at)));
  const labels = fittings.map(({ id, at, solid }) =>
    sheet.room.place({
      at: view.at(at),
      content: namedWithSolid(sheet.request.reader, id, solid),
      style: { sizeMm: sizes.fine, backed: true },
      clearMm: 2,
      leader: true,
    }),
  );
  return { marks: [...symbols, ...labels.flat()], left: labels.filter((marks) => marks.length === 0).length };
}

const namedWithSolid = (reader: Reader, id: string, solid: Rectangle | undefined): string =>
  solid === undefined
    ? shown(reader, id)
    : `${shown(reader, id)}  ${dimensionText(reader, solid.lengthMm)} × ${dimensionText(reader, solid.widthMm)}`;

export const fittingSymbol = ([x, y]: Point): readonly Mark[] => [
  circle([x, y], 1.3, 'fine', 'paper'),
  line('fine', [x - 1.9, y], [x + 1.9, y]),
  line('fine', [x, y - 1.9], [x, y + 1.9]),
];

export const around = ([x, y]: Point, reach: number): Box => ({
  x: x - reach,
  y: y - reach,
  width: 2 * reach,
  height: 2 * reach,
});

/** The point of a shape that is farthest from its edges: where its label reads best. */
export function inside(rings: readonly Ring[]): Point {
  const found = polylabel(
    rings.map((ring) => ring.map(([x, y]) => [x, y])),
    0.2,
  );
  return [found[0], found[1]];
}

export const boxRing = ({ x, y, width, height }: Box): Ring => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

export const middleOf = ({ x, y, width, height }: Box): Point => [x + width / 2, y + height / 2];

export const lineSample =
  (type: Parameters<typeof line>[0]) =>
  (box: Box): readonly Mark[] => [
    line(type, [box.x, box.y + box.height / 2], [box.x + box.width, box.y + box.height / 2]),
  ];

export const panelLegend = (panel: Panel, reader: Reader): readonly LegendEntry[] => [
  { sample: lineSample('visible'), meaning: reader.words.drawing.panelEdge },
  ...supportLegend(panel, reader),
];

/** Each line that is drawn, with the kinds that it stands for on this deck. */
const supportLegend = ({ supports }: Panel, { words }: Reader): readonly LegendEntry[] =>
  [...new Set(supports.map(({ kind }) => supportLines[kind]))].map((type) => {
    const kinds = new Set(supports.map(({ kind }) => kind).filter((kind) => supportLines[kind] === type));
    return {
      sample: lineSample(type),
      meaning: [...kinds].map((kind) => words.drawing.supports[kind]).join(', '),
    };
  });

export const fittingLegend = (fittings: readonly Fitting[], reader: Reader): readonly LegendEntry[] =>
  fittings.length === 0
    ? []
    : [
        {
          room: 'symbol',
          sample: (box: Box) => fittingSymbol(middleOf(box)),
          meaning: reader.words.drawing.fitting,
        },
      ];

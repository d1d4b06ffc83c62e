import type { DrawingRequest } from '../drawing-request.js';
import { dimensionText, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import type { LineType } from '../sheet/line-types.js';
import { arrowHead } from '../sheet/dimension.js';
import { centredText, line, shape, sizes, type Mark } from '../sheet/marks.js';
import type { Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { deckView, type DeckView, type SeenFrom } from './deck-view.js';
import {
  blockTexts,
  inside,
  lineSample,
  overallDimensions,
  panelMarks,
  roomInside,
  seenNotes,
  type Panel,
} from './panel-marks.js';
import { ringsOf, type Area } from './place.js';

export interface PlannedPly {
  readonly order: number;
  readonly materialName: string;
  readonly outline: readonly Area[];
}

export interface PlyPlanInput {
  readonly panel: Panel;
  readonly openings: readonly { readonly label: string; readonly area: Area }[];
  readonly plies: readonly PlannedPly[];
  readonly taperRatio: number;
  readonly seenFrom: SeenFrom;
}

const lines: readonly LineType[] = ['contour', 'hidden', 'adjacent', 'centre', 'fine'];
const lineOf = (index: number): LineType => lines[index % lines.length];

/** The outline of every ply over the openings, each with a line of its own and its order. */
export function plyPlan(input: PlyPlanInput, request: DrawingRequest): Drawing {
  const drawing = plyDrawing(input, input.plies, request);
  const stepMm = leastStepMm(input.plies) * (drawing.scale?.factor ?? 1);
  const [first, last] = [input.plies[0], input.plies[input.plies.length - 1]];
  return input.plies.length > 2 && stepMm < LEAST_GAP_MM
    ? plyDrawing(input, [first, last], request)
    : drawing;
}

/** Nearer than this on paper, outlines run into each other. */
const LEAST_GAP_MM = 0.9;

/** How far a ply reaches past the one below on the side where that is least, of all of them. */
const leastStepMm = (plies: readonly PlannedPly[]): number =>
  Math.min(...plies.slice(1).map((ply, index) => (spanMm(ply) - spanMm(plies[index])) / 2));

const spanMm = ({ outline }: PlannedPly): number => {
  const xs = outline.slice(0, 1).flatMap(({ outer }) => outer.map(([x]) => x));
  return Math.max(...xs) - Math.min(...xs);
};

/** With the plies that can be told apart at this scale; what is not drawn is said. */
function plyDrawing(input: PlyPlanInput, plies: readonly PlannedPly[], request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.plyPlan;
  const { openings } = input;
  /** Beams say nothing to whoever lays cloth, and their dashes would be taken for a ply. */
  const panel = { ...input.panel, supports: [] };
  const sheet = openSheet({
    name: 'ply-plan',
    title: said.title,
    ...request,
    isToScale: true,
    notes: [
      said.note,
      ...(plies.length < input.plies.length
        ? [said.between(dimensionText(reader, leastStepMm(input.plies)))]
        : []),
      ...seenNotes(input.seenFrom, reader),
    ],
    description: said.describe(said.plies(input.plies.length), `${upTo(reader, input.taperRatio, 1)}:1`),
    legend: legendOf(plies, reader),
  });
  const shownPart = [
    ...openings.flatMap(({ area }) => area.outer),
    ...plies.flatMap(({ outline }) => outline.flatMap(({ outer }) => outer)),
  ];
  const view = deckView(shownPart, roomInside(sheet.area, 12, 11), {
    seenFrom: input.seenFrom,
    sheet: request.format.kind,
  });
  const dimensions = overallDimensions(shownPart, view, sheet);
  const edges = panelMarks(panel, view, sheet);
  const cuts = openings.map(({ area }) => shape(ringsOf(area).map(view.ring), 'visible', 'light'));
  const outlines = plies.flatMap(({ outline }, index) =>
    outline.map((area) => shape(ringsOf(area).map(view.ring), lineOf(index), 'none')),
  );
  const arrows = openings.flatMap(({ area }) => alongArrow(view.ring(area.outer), view, reader));
  blockTexts(arrows, sheet);
  const labels = plies.flatMap((ply, index) =>
    ply.outline.slice(0, 12).flatMap((area) => plyLabel(ply, view.ring(area.outer), sheet, index)),
  );
  return closeSheet(sheet, [...cuts, ...outlines, ...edges, ...dimensions, ...arrows, ...labels], view);
}

const ARROW_MM = 16;

/** Which way 0 degrees runs: fore and aft. */
function alongArrow(ring: readonly Point[], view: DeckView, { words }: Reader): readonly Mark[] {
  const [x, y] = inside([ring]);
  const half = ARROW_MM / 2;
  const [from, to]: readonly Point[] =
    view.bow === 'up'
      ? [
          [x, y + half],
          [x, y - half],
        ]
      : [
          [x - half, y],
          [x + half, y],
        ];
  return [
    line('fine', from, to),
    arrowHead(to, from),
    centredText([x + (view.bow === 'up' ? 5 : 0), y - (view.bow === 'up' ? 0 : 3)], words.plyPlan.along, {
      weight: 'bold',
    }),
  ];
}

/** On the outline itself, each ply at another corner, so that the numbers of nested outlines do not meet. */
function plyLabel(
  { order }: PlannedPly,
  ring: readonly Point[],
  sheet: OpenSheet,
  index: number,
): readonly Mark[] {
  const content = sheet.request.reader.words.plyPlan.ply(String(order));
  const start = Math.floor((index * ring.length) / 5) % ring.length;
  const midpoints = ring.map((_, step): Point => {
    const [a, b] = [ring[(start + step) % ring.length], ring[(start + step + 1) % ring.length]];
    return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  });
  return sheet.room.place({
    at: midpoints[0],
    content,
    style: { sizeMm: sizes.fine, backed: true },
    clearMm: 0,
    leader: true,
  });
}

const legendOf = (plies: readonly PlannedPly[], reader: Reader): readonly LegendEntry[] => [
  { sample: lineSample('visible'), meaning: reader.words.drawing.panelEdge },
  ...plies.map(({ order, materialName }, index) => ({
    sample: lineSample(lineOf(index)),
    meaning: reader.words.plyPlan.plyOf(String(order), shown(reader, materialName)),
  })),
];

import type { DrawingRequest } from '../drawing-request.js';
import { shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import type { LineType } from '../sheet/line-types.js';
import { shape, sizes, type Mark } from '../sheet/marks.js';
import type { Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { deckView, type SeenFrom } from './deck-view.js';
import {
  lineSample,
  overallDimensions,
  panelLegend,
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
  const { reader } = request;
  const said = reader.words.plyPlan;
  const { panel, plies, openings } = input;
  const sheet = openSheet({
    name: 'ply-plan',
    title: said.title,
    ...request,
    isToScale: true,
    notes: seenNotes(input.seenFrom, reader),
    description: said.describe(said.plies(plies.length), `${upTo(reader, input.taperRatio, 1)}:1`),
    legend: legendOf(input, reader),
  });
  const shownPart = [
    ...openings.flatMap(({ area }) => area.outer),
    ...plies.flatMap(({ outline }) => outline.flatMap(({ outer }) => outer)),
  ];
  const view = deckView(shownPart, roomInside(sheet.area, 12, 11), input.seenFrom);
  const dimensions = overallDimensions(shownPart, view, sheet);
  const edges = panelMarks(panel, view, sheet);
  const cuts = openings.map(({ area }) => shape(ringsOf(area).map(view.ring), 'visible', 'light'));
  const outlines = plies.flatMap(({ outline }, index) =>
    outline.map((area) => shape(ringsOf(area).map(view.ring), lineOf(index), 'none')),
  );
  const labels = plies.flatMap((ply, index) =>
    ply.outline.slice(0, 12).flatMap((area) => plyLabel(ply, view.ring(area.outer), sheet, index)),
  );
  return closeSheet(sheet, [...cuts, ...outlines, ...edges, ...dimensions, ...labels], view);
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

const legendOf = ({ panel, plies }: PlyPlanInput, reader: Reader): readonly LegendEntry[] => [
  ...panelLegend(panel, reader),
  ...plies.map(({ order, materialName }, index) => ({
    sample: lineSample(lineOf(index)),
    meaning: reader.words.plyPlan.plyOf(String(order), shown(reader, materialName)),
  })),
];

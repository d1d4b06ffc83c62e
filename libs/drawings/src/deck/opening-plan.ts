import type { DrawingRequest } from '../drawing-request.js';
import { areaText, lengthText, shown, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched } from '../sheet/hatch.js';
import { boxMark, circle, shape, sizes, type Mark } from '../sheet/marks.js';
import { inset, signedArea, type Box, type Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { datumDimensions, longestValueMm } from './datum-dimensions.js';
import { deckView, type DeckView, type SeenFrom } from './deck-view.js';
import {
  blockFittings,
  seenNotes,
  boxRing,
  fittingLegend,
  fittingMarks,
  inside,
  lineSample,
  panelLegend,
  panelMarks,
  underFittings,
  underLegend,
  type Fitting,
  type Panel,
} from './panel-marks.js';
import { settingOut } from './setting-out.js';
import { ringsOf, type Area, type Outline } from './place.js';

export interface PlannedOpening {
  readonly label: string;
  readonly area: Area;
  /** Corners of the saw line before rounding, in deck coordinates. */
  readonly sawLine: Outline;
  readonly areaM2: number;
  /** Absent when no depth is safe. */
  readonly cutDepthMm?: number;
  readonly undercut: readonly Area[];
  /** Sound core that is left where it is. */
  readonly coreStays: readonly Area[];
  readonly taperBand: readonly Area[];
}

export interface OpeningPlanInput {
  readonly panel: Panel;
  readonly openings: readonly PlannedOpening[];
  readonly fittings: readonly Fitting[];
  readonly cutLengthM: number;
  readonly seenFrom: SeenFrom;
  /** Whether the part that is cut out goes back: then as little of it as can be is sawn away. */
  readonly isSkinKept: boolean;
}

/** What to mark and saw: saw lines with running dimensions from where the tapes are hooked, undercut, taper, fittings. */
export function openingPlan(input: OpeningPlanInput, request: DrawingRequest): Drawing {
  const draft = drawn(input, request, []);
  return draft.left === 0
    ? draft.drawing
    : drawn(input, request, [request.reader.words.openingPlan.notListed(draft.left)]).drawing;
}

function drawn(
  input: OpeningPlanInput,
  request: DrawingRequest,
  notes: readonly string[],
): { readonly drawing: Drawing; readonly left: number } {
  const { reader } = request;
  const { openings, panel } = input;
  const { openingPlan: said } = reader.words;
  const depths = openings.flatMap(({ cutDepthMm }) => (cutDepthMm === undefined ? [] : [cutDepthMm]));
  const sheet = openSheet({
    name: 'opening-plan',
    title: said.title,
    ...request,
    isToScale: true,
    notes: [
      ...(depths.length === openings.length && depths.length > 0
        ? [said.note(said.setOut[settingOut(panel.outer).way], lengthText(reader, Math.min(...depths), 1))]
        : [said.noDepth(said.setOut[settingOut(panel.outer).way])]),
      input.isSkinKept ? said.sawOn : said.sawInside,
      ...seenNotes(input.seenFrom, reader),
      ...notes,
    ],
    description: said.describe(
      said.openings(openings.length),
      areaText(reader, sum(openings.map(({ areaM2 }) => areaM2))),
      lengthText(reader, input.cutLengthM * 1000),
    ),
    legend: legendOf(input, reader),
  });
  const corners = openings.flatMap(listedCorners);
  const margin = longestValueMm(panel.outer, corners, reader) + 8;
  const view = deckView(panel.outer, inset(sheet.area, margin, 5, { right: 3, bottom: margin }), {
    seenFrom: input.seenFrom,
    sheet: request.format.kind,
  });
  const dimensions = datumDimensions({ panel: panel.outer, places: corners }, view, sheet);
  blockFittings(input.fittings, view, sheet);
  const grounds = openings.flatMap((opening) => openingGround(opening, view));
  const edges = panelMarks(panel, view, sheet);
  for (const { area } of openings) for (const ring of ringsOf(area)) sheet.room.avoid(view.ring(ring), true);
  const names = openings.flatMap((opening) => openingName(opening, view, sheet));
  const fittings = fittingMarks(input.fittings, view, sheet);
  const numbers = openings.flatMap((opening) => cornerNumbers(opening, view, sheet));
  const under = underFittings(input.fittings, view);
  const marks = [
    ...grounds,
    ...under,
    ...edges,
    ...dimensions.marks,
    ...names,
    ...fittings.marks,
    ...numbers,
  ];
  return { drawing: closeSheet(sheet, marks, view), left: dimensions.left };
}

const openingName = (
  { label, area, areaM2 }: PlannedOpening,
  view: DeckView,
  sheet: OpenSheet,
): readonly Mark[] =>
  sheet.room.place({
    at: inside(ringsOf(area).map(view.ring)),
    content: `${shown(sheet.request.reader, label)}  ${areaText(sheet.request.reader, areaM2)}`,
    style: { weight: 'bold', sizeMm: sizes.strong, backed: true },
    clearMm: 0,
    leader: true,
  });

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const openingGround = (
  { area, undercut, coreStays, taperBand }: PlannedOpening,
  view: DeckView,
): readonly Mark[] => [
  ...taperBand.map(({ outer }) => shape([view.ring(outer)], 'adjacent', 'none')),
  ...undercut.flatMap((part) => [
    ...hatched(ringsOf(part).map(view.ring), 'sparse'),
    ...ringsOf(part).map((ring) => shape([view.ring(ring)], 'hidden', 'none')),
  ]),
  shape(ringsOf(area).map(view.ring), 'saw', 'light'),
  ...coreStays.flatMap((part) => hatched(ringsOf(part).map(view.ring), 'back-diagonal')),
];

const MOST_CORNERS = 16;

/** Corners that the table of corners lists: those of the saw line, or none when it is too fine a curve. */
export const listedCorners = ({ sawLine }: PlannedOpening): Outline =>
  sawLine.length > MOST_CORNERS ? [] : sawLine;

function cornerNumbers(opening: PlannedOpening, view: DeckView, sheet: OpenSheet): readonly Mark[] {
  const ring = view.ring(listedCorners(opening));
  const turn = Math.sign(signedArea(ring)) || 1;
  return ring.flatMap((corner, index) =>
    sheet.room.place({
      at: nudged(
        corner,
        ring[(index + ring.length - 1) % ring.length],
        ring[(index + 1) % ring.length],
        turn,
      ),
      content: String(index + 1),
      style: { sizeMm: sizes.fine },
      clearMm: 0,
      leader: false,
    }),
  );
}

/** A little into the opening, where the number lies on plain ground. */
function nudged(corner: Point, before: Point, after: Point, turn: number): Point {
  const unit = ([x, y]: Point): Point => {
    const long = Math.hypot(x - corner[0], y - corner[1]) || 1;
    return [(x - corner[0]) / long, (y - corner[1]) / long];
  };
  const [a, b] = [unit(before), unit(after)];
  const cross = (a[0] * b[1] - a[1] * b[0]) * turn;
  const [dx, dy] = [a[0] + b[0], a[1] + b[1]];
  const long = Math.hypot(dx, dy) || 1;
  const way = cross > 0 ? -2.6 : 2.6;
  return [corner[0] + (dx / long) * way, corner[1] + (dy / long) * way];
}

function legendOf({ panel, openings, fittings }: OpeningPlanInput, reader: Reader): readonly LegendEntry[] {
  const said = reader.words.openingPlan;
  const undercut = (box: Box): readonly Mark[] => [
    ...hatched([boxRing(box)], 'sparse'),
    boxMark(box, 'hidden', 'none'),
  ];
  return [
    ...panelLegend(panel, reader),
    { sample: (box) => [boxMark(box, 'saw', 'light')], meaning: said.sawLine },
    {
      room: 'symbol',
      sample: (box) => [circle([box.x + 2, box.y + box.height / 2], 0.9, 'visible', 'ink')],
      meaning: said.checkPoint,
    },
    ...(openings.some((opening) => opening.taperBand.length > 0)
      ? [{ sample: lineSample('adjacent'), meaning: said.taper }]
      : []),
    ...(openings.some((opening) => opening.undercut.length > 0)
      ? [{ sample: undercut, meaning: said.undercut }]
      : []),
    ...(openings.some((opening) => opening.coreStays.length > 0)
      ? [
          {
            sample: (box: Box): readonly Mark[] => [
              ...hatched([boxRing(box)], 'back-diagonal'),
              boxMark(box, 'adjacent', 'none'),
            ],
            meaning: said.coreStays,
          },
        ]
      : []),
    ...fittingLegend(fittings, reader),
    ...underLegend(fittings, reader),
  ];
}

import type { DrawingRequest } from '../drawing-request.js';
import { areaText, shown, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched, lined } from '../sheet/hatch.js';
import { boxMark, circle, shape, sizes, type Mark } from '../sheet/marks.js';
import type { Box, Ring } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { deckView, sheetAngleDeg, type DeckView, type SeenFrom } from './deck-view.js';
import {
  boxRing,
  inside,
  lineSample,
  middleOf,
  panelLegend,
  panelMarks,
  roomInside,
  seenNotes,
  overallDimensions,
  underFittings,
  underLegend,
  type Fitting,
  type Panel,
} from './panel-marks.js';
import { ringsOf, type Area, type Outline, type Place } from './place.js';

export interface PlannedPiece {
  readonly label: string;
  readonly beddingOrder: number;
  readonly outline: Outline;
  readonly areaM2: number;
  readonly grainDeg?: number;
  readonly bleedHoles: readonly Place[];
}

export interface PiecePlanInput {
  readonly panel: Panel;
  readonly openings: readonly { readonly label: string; readonly area: Area }[];
  readonly pieces: readonly PlannedPiece[];
  /** Filled solid before any piece goes in. */
  readonly solidFills: readonly Area[];
  /** Those that stand on solid: core is left out where it goes. */
  readonly fittings: readonly Fitting[];
  readonly seenFrom: SeenFrom;
}

/** Each piece of new core where it lies, labelled in the order of bedding. */
export function piecePlan(input: PiecePlanInput, request: DrawingRequest): Drawing {
  const draft = drawn(input, request, 0);
  return draft.left === 0 ? draft.drawing : drawn(input, request, draft.left).drawing;
}

function drawn(
  input: PiecePlanInput,
  request: DrawingRequest,
  leftOut: number,
): { readonly drawing: Drawing; readonly left: number } {
  const { reader } = request;
  const said = reader.words.piecePlan;
  const { panel, pieces, openings } = input;
  const sheet = openSheet({
    name: 'piece-plan',
    title: said.title,
    ...request,
    isToScale: true,
    notes: [
      said.note,
      ...seenNotes(input.seenFrom, reader),
      ...(leftOut === 0 ? [] : [said.leftOut(leftOut)]),
    ],
    description: said.describe(
      said.pieces(pieces.length),
      areaText(
        reader,
        pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0),
      ),
    ),
    legend: legendOf(input, reader),
  });
  const shownPart = [
    ...openings.flatMap(({ area }) => area.outer),
    ...pieces.flatMap(({ outline }) => outline),
    ...input.solidFills.flatMap(({ outer }) => outer),
  ];
  const view = deckView(shownPart, roomInside(sheet.area, 12, 11), {
    seenFrom: input.seenFrom,
    sheet: request.format.kind,
  });
  const dimensions = overallDimensions(shownPart, view, sheet);
  const grounds = pieces.flatMap((piece) => pieceMarks(piece, view));
  const under = underFittings(input.fittings, view);
  const edges = panelMarks(panel, view, sheet);
  const solid = input.solidFills.flatMap((fill) => solidMarks(ringsOf(fill).map(view.ring)));
  const cuts = openings.map(({ area }) => shape(ringsOf(area).map(view.ring), 'saw', 'none'));
  for (const { outline } of pieces) sheet.room.avoid(view.ring(outline), true);
  const labels = pieces.map((piece) => labelOf(piece, view, sheet));
  return {
    drawing: closeSheet(
      sheet,
      [...grounds, ...solid, ...under, ...edges, ...cuts, ...dimensions, ...labels.flat()],
      view,
    ),
    left: labels.filter((marks) => marks.length === 0).length,
  };
}

const pieceMarks = ({ outline, grainDeg, bleedHoles }: PlannedPiece, view: DeckView): readonly Mark[] => {
  const ring = view.ring(outline);
  return [
    shape([ring], undefined, 'paper'),
    ...(grainDeg === undefined ? [] : lined([ring], sheetAngleDeg(view, grainDeg), 1.5)),
    ...bleedHoles.map((hole) => circle(view.at(hole), 0.25, undefined, 'ink')),
    shape([ring], 'contour', 'none'),
  ];
};

const solidMarks = (rings: readonly Ring[]): readonly Mark[] => [
  shape(rings, undefined, 'paper'),
  ...hatched(rings, 'crossed'),
  shape(rings, 'contour', 'none'),
];

const labelOf = ({ label, outline }: PlannedPiece, view: DeckView, sheet: OpenSheet): readonly Mark[] =>
  sheet.room.place({
    at: inside([view.ring(outline)]),
    content: shown(sheet.request.reader, label),
    style: { weight: 'bold', backed: true, sizeMm: sizes.body },
    clearMm: 0,
    leader: true,
  });

function legendOf(
  { panel, pieces, solidFills, fittings }: PiecePlanInput,
  reader: Reader,
): readonly LegendEntry[] {
  const said = reader.words.piecePlan;
  const hasGrain = pieces.some(({ grainDeg }) => grainDeg !== undefined);
  return [
    ...panelLegend(panel, reader),
    { sample: lineSample('saw'), meaning: said.cut },
    {
      sample: (box) => [...(hasGrain ? lined([boxRing(box)], 0, 1.2) : []), boxMark(box, 'contour', 'none')],
      meaning: hasGrain ? said.grained : said.piece,
    },
    ...(pieces.some(({ bleedHoles }) => bleedHoles.length > 0)
      ? [
          {
            room: 'symbol' as const,
            sample: (box: Parameters<typeof middleOf>[0]) => [circle(middleOf(box), 0.4, undefined, 'ink')],
            meaning: said.bleed,
          },
        ]
      : []),
    ...(solidFills.length === 0
      ? []
      : [{ sample: (box: Box) => solidMarks([boxRing(box)]), meaning: said.solid }]),
    ...underLegend(fittings, reader),
  ];
}

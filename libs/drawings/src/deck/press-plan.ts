import type { DrawingRequest } from '../drawing-request.js';
import { massText, shown, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import type { LineType } from '../sheet/line-types.js';
import { boxMark, circle, line, shape, sizes, type Mark } from '../sheet/marks.js';
import { inset, type Box, type Point, type Ring } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { datumDimensions, longestValueMm } from './datum-dimensions.js';
import { deckView, type DeckView, type SeenFrom } from './deck-view.js';
import {
  inside,
  lineSample,
  middleOf,
  panelLegend,
  panelMarks,
  seenNotes,
  type Panel,
} from './panel-marks.js';
import { ringsOf, type Area, type Outline, type Place } from './place.js';
import { settingOut } from './setting-out.js';

export interface PressPlanInput {
  readonly panel: Panel;
  readonly openings: readonly Area[];
  /** Boards on props, battens and bows, in deck coordinates. */
  readonly lines: readonly PlannedLine[];
  readonly pieces: readonly PressedPiece[];
  /** Where a bag presses: the line of its tape, and what would let air in through the skin below. */
  readonly bag?: { readonly seal: readonly Area[]; readonly breaches: readonly Place[] };
  readonly seenFrom: SeenFrom;
}

interface PlannedLine {
  readonly what: LineKind;
  readonly from: Place;
  readonly to: Place;
  readonly points: readonly Place[];
}

type LineKind = 'board' | 'batten' | 'bow';

interface PressedPiece {
  readonly label: string;
  readonly outline: Outline;
  readonly massKg?: number;
  readonly jacks: readonly Place[];
}

/** Timber has two edges: a board below is dashed, a batten above is not, a bow lies on the far side of what is worked on. */
const edgeTypes: Readonly<Record<LineKind, LineType>> = {
  board: 'hidden',
  batten: 'fine',
  bow: 'adjacent',
};

/** How broad timber is drawn; what it measures stands in the pick list. */
const TIMBER_MM = 1.8;

/** Where boards, props, battens, bows and jacks go, from where the tapes are hooked, and what is laid on each piece. */
export function pressPlan(input: PressPlanInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.pressPlan;
  const { panel, pieces, lines } = input;
  const sheet = openSheet({
    name: 'press-plan',
    title: said.title,
    ...request,
    isToScale: true,
    notes: [
      said.setOut[settingOut(panel.outer).way],
      ...(lines.some(({ what }) => what === 'board') ? [said.boardsBelow] : []),
      ...(input.bag === undefined ? [] : [said.sealed]),
      ...seenNotes(input.seenFrom, reader),
    ],
    description: said.describe(said.lines(lines.length), reader.words.piecePlan.pieces(pieces.length)),
    legend: legendOf(input, reader),
  });
  return closeSheet(sheet, ...drawn(input, sheet));
}

function drawn(input: PressPlanInput, sheet: OpenSheet): readonly [readonly Mark[], DeckView] {
  const { panel, openings, lines, pieces } = input;
  const { reader, format } = sheet.request;
  const places = lines.flatMap((one) => (one.points.length > 0 ? one.points : [one.from, one.to]));
  const margin = longestValueMm(panel.outer, places, reader) + 8;
  const ends = lines.flatMap(({ from, to }) => [from, to]);
  const view = deckView(
    [...panel.outer, ...ends],
    inset(sheet.area, margin, 5, { right: 3, bottom: margin }),
    {
      seenFrom: input.seenFrom,
      sheet: format.kind,
    },
  );
  const dimensions = datumDimensions({ panel: panel.outer, places }, view, sheet);
  const grounds = pieces.map(({ outline }) => shape([view.ring(outline)], 'fine', 'light'));
  const edges = panelMarks(panel, view, sheet);
  const cuts = openings.map((area) => shape(ringsOf(area).map(view.ring), 'contour', 'none'));
  const timber = lines.flatMap((one) => lineMarks(one, view));
  const jacks = pieces.flatMap((piece) => piece.jacks.flatMap((jack) => jackMarks(view.at(jack))));
  for (const at of input.bag?.breaches ?? []) sheet.room.block(breachBox(view.at(at)));
  const labels = pieces.flatMap((piece) => labelOf(piece, view, sheet));
  const bag = bagMarks(input, view);
  return [[...grounds, ...edges, ...cuts, ...dimensions.marks, ...timber, ...jacks, ...bag, ...labels], view];
}

const bagMarks = ({ bag }: PressPlanInput, view: DeckView): readonly Mark[] =>
  bag === undefined
    ? []
    : [
        ...bag.seal.map((area) => shape(ringsOf(area).map(view.ring), SEAL, 'none')),
        ...bag.breaches.flatMap((at) => breachMarks(view.at(at))),
      ];

/** Wide and dashed: no other line of this plan is both. */
const SEAL: LineType = 'hidden-wide';

/** An open diamond, so that it is neither prop nor jack nor screw. */
function breachMarks([x, y]: Point): readonly Mark[] {
  const ring: Ring = [
    [x - BREACH_MM, y],
    [x, y - BREACH_MM],
    [x + BREACH_MM, y],
    [x, y + BREACH_MM],
  ];
  return [shape([ring], 'contour', 'paper')];
}

const breachBox = ([x, y]: Point): Box => ({
  x: x - BREACH_MM,
  y: y - BREACH_MM,
  width: 2 * BREACH_MM,
  height: 2 * BREACH_MM,
});

const BREACH_MM = 1.5;

const lineMarks = ({ what, from, to, points }: PlannedLine, view: DeckView): readonly Mark[] => [
  timberMark(what, view.at(from), view.at(to)),
  ...points.flatMap((point) => pointMarks(what, view.at(point))),
];

function timberMark(what: LineKind, [x, y]: Point, [toX, toY]: Point): Mark {
  const long = Math.hypot(toX - x, toY - y) || 1;
  const [aside, up] = [(-(toY - y) / long) * (TIMBER_MM / 2), ((toX - x) / long) * (TIMBER_MM / 2)];
  const ring: Ring = [
    [x + aside, y + up],
    [toX + aside, toY + up],
    [toX - aside, toY - up],
    [x - aside, y - up],
  ];
  return shape([ring], edgeTypes[what], 'none');
}

/** A prop is a full ring, a screw a cross. */
const pointMarks = (what: LineKind, at: Point): readonly Mark[] =>
  what === 'board' ? [circle(at, PROP_MM, 'fine', 'ink')] : crossMarks(at, PROP_MM);

const PROP_MM = 0.9;

const crossMarks = ([x, y]: Point, reach: number): readonly Mark[] => [
  line('fine', [x - reach, y - reach], [x + reach, y + reach]),
  line('fine', [x - reach, y + reach], [x + reach, y - reach]),
];

const jackMarks = (at: Point): readonly Mark[] => [circle(at, 1.4, 'fine', 'paper'), ...crossMarks(at, 1)];

/** The piece, and below its name what lies on it. */
function labelOf(
  { label, outline, massKg }: PressedPiece,
  view: DeckView,
  sheet: OpenSheet,
): readonly Mark[] {
  const { reader } = sheet.request;
  const name = shown(reader, label);
  return sheet.room.place({
    at: inside([view.ring(outline)]),
    content: massKg === undefined ? name : `${name}  ${massText(reader, massKg, 0)}`,
    style: { weight: 'bold', backed: true, sizeMm: sizes.body },
    clearMm: 0,
    leader: true,
  });
}

function legendOf({ panel, lines, pieces, bag }: PressPlanInput, reader: Reader): readonly LegendEntry[] {
  const said = reader.words.pressPlan;
  const kinds = [...new Set(lines.map(({ what }) => what))];
  const hasMass = pieces.some(({ massKg }) => massKg !== undefined);
  return [
    ...panelLegend(panel, reader),
    { sample: lineSample('contour'), meaning: reader.words.piecePlan.cut },
    ...(pieces.length === 0
      ? []
      : [
          {
            sample: (box: Box) => [boxMark(box, 'fine', 'light')],
            meaning: hasMass
              ? said.loaded[pieces.some(({ jacks }) => jacks.length > 0) ? 'below' : 'above']
              : reader.words.piecePlan.piece,
          },
        ]),
    ...kinds.flatMap((what) => lineEntries(what, reader)),
    ...(pieces.some(({ jacks }) => jacks.length > 0)
      ? [{ room: 'symbol' as const, sample: (box: Box) => jackMarks(middleOf(box)), meaning: said.jack }]
      : []),
    ...(bag === undefined ? [] : [{ sample: lineSample(SEAL), meaning: said.seal }]),
    ...(bag === undefined || bag.breaches.length === 0
      ? []
      : [
          { room: 'symbol' as const, sample: (box: Box) => breachMarks(middleOf(box)), meaning: said.breach },
        ]),
  ];
}

const lineEntries = (what: LineKind, reader: Reader): readonly LegendEntry[] => {
  const said = reader.words.pressPlan;
  const pointOf = { board: said.prop, batten: said.screw, bow: '' }[what];
  return [
    {
      sample: (box: Box) => [
        timberMark(what, [box.x, middleOf(box)[1]], [box.x + box.width, middleOf(box)[1]]),
      ],
      meaning: said.timber[what],
    },
    ...(pointOf === ''
      ? []
      : [
          {
            room: 'symbol' as const,
            sample: (box: Box) => pointMarks(what, middleOf(box)),
            meaning: pointOf,
          },
        ]),
  ];
};

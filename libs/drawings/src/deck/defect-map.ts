import type { Reading } from '#lib/extent';
import type { DrawingRequest } from '../drawing-request.js';
import { areaText, percentText, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched, type Hatch } from '../sheet/hatch.js';
import type { LineType } from '../sheet/line-types.js';
import { centredText, circle, line, shape, sizes, type Mark } from '../sheet/marks.js';
import type { Box, Point } from '../sheet/shapes.js';
import { rectangle } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { deckView, type DeckView } from './deck-view.js';
import {
  around,
  blockFittings,
  fittingLegend,
  fittingMarks,
  inside,
  lineSample,
  middleOf,
  overallDimensions,
  panelLegend,
  panelMarks,
  roomInside,
  type Fitting,
  type Panel,
} from './panel-marks.js';
import { ringsOf, type Area, type Outline } from './place.js';

export interface DefectMapInput {
  readonly panel: Panel;
  readonly zones: readonly {
    readonly id: string;
    readonly outline: Outline;
    readonly areaM2: number;
    readonly condition: string;
  }[];
  readonly contours: readonly {
    readonly probability: number;
    readonly areas: readonly Area[];
    readonly areaM2: number;
  }[];
  readonly readings: readonly Reading[];
  readonly fittings: readonly Fitting[];
  readonly damagedAreaM2: number;
  /** What is cut, where the map shows it. */
  readonly openings?: readonly { readonly label: string; readonly area: Area }[];
}

/** The panel with what was found: zones or probability contours, and every reading by its kind and result. */
export function defectMap(input: DefectMapInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const { words } = reader;
  const draft = drawn(input, request, []);
  const finished =
    draft.left === 0 ? draft : drawn(input, request, [words.defectMap.notLabelled(draft.left)]);
  return finished.drawing;
}

function drawn(
  input: DefectMapInput,
  request: DrawingRequest,
  notes: readonly string[],
): { readonly drawing: Drawing; readonly left: number } {
  const { reader } = request;
  const { words } = reader;
  const sheet = openSheet({
    name: 'defect-map',
    title: words.defectMap.title,
    ...request,
    notes,
    isToScale: true,
    description: words.defectMap.describe(
      words.defectMap.zones(input.zones.length),
      words.defectMap.readings(input.readings.length),
      areaText(reader, input.damagedAreaM2),
    ),
    legend: legendOf(input, reader),
  });
  const view = deckView(input.panel.outer, roomInside(sheet.area, 12, 11));
  const dimensions = overallDimensions(input.panel.outer, view, sheet);
  blockFittings(input.fittings, view, sheet);
  const grounds = [...zoneGrounds(input, view), ...contourMarks(input, view)];
  for (const { at } of input.readings) sheet.room.block(around(view.at(at), 1.1));
  const panel = panelMarks(input.panel, view, sheet);
  for (const { outline } of input.zones) sheet.room.avoid(view.ring(outline), true);
  const zoneNames = namesOfZones(input, view, sheet);
  const chances = contourLabels(input, view, sheet);
  const fittings = fittingMarks(input.fittings, view, sheet);
  const cuts = (input.openings ?? []).map(({ area }) => shape(ringsOf(area).map(view.ring), 'saw', 'none'));
  const readings = input.readings.flatMap((reading) => readingSymbol(reading, view.at(reading.at)));
  const values = meterValues(input.readings, view, sheet);
  const marks = [
    ...grounds,
    ...panel,
    ...cuts,
    ...readings,
    ...dimensions,
    ...zoneNames.marks,
    ...chances,
    ...fittings.marks,
    ...values.marks,
  ];
  return { drawing: closeSheet(sheet, marks, view), left: zoneNames.left + fittings.left + values.left };
}

const hatchOf: Readonly<Record<string, Hatch>> = {
  'wet-rotten': 'crossed',
  'wet-bonded': 'diagonal',
  'dry-debonded': 'sparse',
};
const hatchFor = (condition: string): Hatch => hatchOf[condition] ?? 'level';

const zoneGrounds = ({ zones }: DefectMapInput, view: DeckView): readonly Mark[] =>
  zones.flatMap(({ outline, condition }) => {
    const ring = view.ring(outline);
    return [...hatched([ring], hatchFor(condition)), shape([ring], 'contour', 'none')];
  });

/** Lines that differ from each other and from those of the deck, the surer the fuller; contours within one class are told apart by their labels. */
function contourLine(probability: number): LineType {
  if (probability < 0.25) return 'dotted';
  if (probability < 0.45) return 'contour';
  return probability < 0.7 ? 'centre' : 'adjacent';
}

/** Ends of a contour that may bear its label; each contour begins with another, so that labels stand apart. */
const ends: readonly Point[] = [
  [1, 0],
  [0, -1],
  [-1, 0],
  [0, 1],
];

/** The chance of each contour, on its own line or not at all: beside it, it might be read for its neighbour. The legend says it in any case. */
const contourLabels = ({ contours }: DefectMapInput, view: DeckView, sheet: OpenSheet): readonly Mark[] =>
  contours.flatMap(({ probability, areas }, turn) =>
    areas.slice(0, 1).flatMap(({ outer }) => {
      const ring = view.ring(outer);
      const spots = ends
        .map((_, index) => farthest(ring, ends[(index + turn) % ends.length]))
        .map((spot) =>
          centredText(spot, percentText(sheet.request.reader, probability), {
            sizeMm: sizes.fine,
            backed: true,
          }),
        );
      const free = spots.find((spot) => sheet.room.claim(spot));
      return free === undefined ? [] : [free];
    }),
  );

const farthest = (ring: readonly Point[], [dx, dy]: Point): Point =>
  ring.reduce(
    (best, point) => (point[0] * dx + point[1] * dy > best[0] * dx + best[1] * dy ? point : best),
    ring[0],
  );

function contourMarks({ contours, zones }: DefectMapInput, view: DeckView): readonly Mark[] {
  const middle = [...contours].sort(
    (a, b) => Math.abs(a.probability - 0.5) - Math.abs(b.probability - 0.5),
  )[0];
  return [...contours]
    .sort((a, b) => a.probability - b.probability)
    .flatMap((contour) =>
      contour.areas.map((area) =>
        shape(
          ringsOf(area).map(view.ring),
          contourLine(contour.probability),
          contour === middle && zones.length === 0 ? 'light' : 'none',
        ),
      ),
    );
}

interface Labelled {
  readonly marks: readonly Mark[];
  readonly left: number;
}

const counted = (labels: readonly (readonly Mark[])[]): Labelled => ({
  marks: labels.flat(),
  left: labels.filter((marks) => marks.length === 0).length,
});

const namesOfZones = ({ zones }: DefectMapInput, view: DeckView, sheet: OpenSheet): Labelled =>
  counted(
    zones.map(({ id, outline, areaM2 }) =>
      sheet.room.place({
        at: inside([view.ring(outline)]),
        content: `${shown(sheet.request.reader, id)}  ${areaText(sheet.request.reader, areaM2)}`,
        style: { weight: 'bold', backed: true },
        clearMm: 0,
        leader: true,
      }),
    ),
  );

const meterValues = (readings: readonly Reading[], view: DeckView, sheet: OpenSheet): Labelled =>
  counted(
    readings.flatMap((reading) =>
      reading.kind !== 'moisture'
        ? []
        : [
            sheet.room.place({
              at: view.at(reading.at),
              content: upTo(sheet.request.reader, reading.value, 1),
              style: { sizeMm: sizes.fine, backed: true },
              clearMm: 1.3,
              leader: false,
            }),
          ],
    ),
  );

const isBadPlug = (condition: string): boolean => condition !== 'dry-sound' && condition !== 'damp-sound';

/** Circles for the hammer, squares for the meter, diamonds for plugs; the worse, the darker. */
function readingSymbol(reading: Reading, [x, y]: Point): readonly Mark[] {
  const doubt = reading.isUnreliable === true ? [line('fine', [x - 1.6, y + 1.6], [x + 1.6, y - 1.6])] : [];
  return [...plainSymbol(reading, [x, y]), ...doubt];
}

function plainSymbol(reading: Reading, [x, y]: Point): readonly Mark[] {
  switch (reading.kind) {
    case 'sounding':
      return hammerSymbol(reading.sound, [x, y]);
    case 'moisture':
      return [shape([rectangle({ x: x - 0.8, y: y - 0.8, width: 1.6, height: 1.6 })], 'fine', 'paper')];
    case 'plug':
      return [
        shape(
          [
            [
              [x, y - 1.5],
              [x + 1.5, y],
              [x, y + 1.5],
              [x - 1.5, y],
            ],
          ],
          'fine',
          isBadPlug(reading.condition) ? 'ink' : 'paper',
        ),
      ];
  }
}

function hammerSymbol(sound: 'sharp' | 'dull' | 'void', at: Point): readonly Mark[] {
  const [x, y] = at;
  switch (sound) {
    case 'sharp':
      return [circle(at, 0.9, 'fine', 'paper')];
    case 'dull':
      return [
        circle(at, 0.9, 'fine', 'paper'),
        shape(
          [
            [
              [x, y - 0.9],
              [x + 0.65, y - 0.65],
              [x + 0.9, y],
              [x + 0.65, y + 0.65],
              [x, y + 0.9],
            ],
          ],
          undefined,
          'ink',
        ),
      ];
    case 'void':
      return [circle(at, 0.9, 'fine', 'ink')];
  }
}

const at = { at: [0, 0] as const };

function legendOf(
  { panel, zones, contours, readings, fittings, openings = [] }: DefectMapInput,
  reader: Reader,
): readonly LegendEntry[] {
  const { words } = reader;
  return [
    ...panelLegend(panel, reader),
    ...(openings.length === 0 ? [] : [{ sample: lineSample('saw'), meaning: words.openingPlan.sawLine }]),
    ...[...new Set(zones.map(({ condition }) => condition))].map((condition) => zoneEntry(condition, reader)),
    ...contours.map(({ probability }) => ({
      sample: lineSample(contourLine(probability)),
      meaning: words.defectMap.contour(percentText(reader, probability)),
    })),
    ...readingLegend(readings, words.defectMap),
    ...fittingLegend(fittings, reader),
  ];
}

/** One entry for each kind of reading that is there. */
function readingLegend(
  readings: readonly Reading[],
  words: Reader['words']['defectMap'],
): readonly LegendEntry[] {
  const entry = (
    like: Reading,
    meaning: string,
    isThere: (one: Reading) => boolean,
  ): readonly LegendEntry[] =>
    readings.some(isThere)
      ? [{ room: 'symbol', sample: (box: Box) => readingSymbol(like, middleOf(box)), meaning }]
      : [];
  const heard = (sound: 'sharp' | 'dull' | 'void') =>
    entry(
      { kind: 'sounding', sound, ...at },
      words[sound],
      (one) => one.kind === 'sounding' && one.sound === sound,
    );
  const plugs = (condition: 'rotten' | 'dry-sound', isBad: boolean) =>
    entry(
      { kind: 'plug', condition, ...at },
      isBad ? words.plugBad : words.plugSound,
      (one) => one.kind === 'plug' && isBadPlug(one.condition) === isBad,
    );
  return [
    ...heard('sharp'),
    ...heard('dull'),
    ...heard('void'),
    ...entry({ kind: 'moisture', value: 0, ...at }, words.moisture, ({ kind }) => kind === 'moisture'),
    ...plugs('dry-sound', false),
    ...plugs('rotten', true),
    ...entry(
      { kind: 'sounding', sound: 'sharp', isUnreliable: true, ...at },
      words.unreliable,
      ({ isUnreliable }) => isUnreliable === true,
    ),
  ];
}

const zoneEntry = (condition: string, reader: Reader): LegendEntry => ({
  sample: (box) => [
    ...hatched([rectangle(box)], hatchFor(condition)),
    shape([rectangle(box)], 'contour', 'none'),
  ],
  meaning: conditionText(condition, reader),
});

export function conditionText(condition: string, { words }: Reader): string {
  const known = Object.entries(words.conditions).find(([name]) => name === condition);
  return known === undefined ? condition : known[1];
}

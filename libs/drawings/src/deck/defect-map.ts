import type { Reading } from '#lib/extent';
import type { DrawingRequest } from '../drawing-request.js';
import { areaText, shown, upTo, type Reader } from '../reader.js';
import { closeSheet, openSheet, type LegendEntry, type OpenSheet } from '../sheet/furniture.js';
import { hatched, type Hatch } from '../sheet/hatch.js';
import { shape, sizes, type Mark } from '../sheet/marks.js';
import { rectangle } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { bandLegend, bandMarks, type Contour } from './chance-bands.js';
import { deckView, type DeckView } from './deck-view.js';
import {
  around,
  blockFittings,
  fittingLegend,
  fittingMarks,
  inside,
  lineSample,
  overallDimensions,
  panelLegend,
  panelMarks,
  roomInside,
  type Fitting,
  type Panel,
} from './panel-marks.js';
import { photographLegend, photographMarks, type PhotographPlace } from './photograph-marks.js';
import { ringsOf, type Area, type Outline } from './place.js';
import { nextLegend, nextMarks, readingLegend, readingSymbol, type NextPlace } from './reading-marks.js';

export interface DefectMapInput {
  readonly panel: Panel;
  readonly zones: readonly {
    readonly id: string;
    readonly outline: Outline;
    readonly areaM2: number;
    readonly condition: string;
  }[];
  readonly contours: readonly Contour[];
  readonly readings: readonly Reading[];
  /** Where to read next. */
  readonly next: readonly NextPlace[];
  readonly fittings: readonly Fitting[];
  readonly photographs: readonly PhotographPlace[];
  readonly damagedAreaM2: number;
  /** What is cut. */
  readonly openings: readonly { readonly label: string; readonly area: Area }[];
}

/** The panel with what was found and what is done: zones or bands of chance, readings by kind and result, the cut, and where to read next. */
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
  const view = deckView(input.panel.outer, roomInside(sheet.area, 12, 11), {
    seenFrom: 'above',
    sheet: request.format.kind,
  });
  const dimensions = overallDimensions(input.panel.outer, view, sheet);
  blockFittings(input.fittings, view, sheet);
  const grounds = [...bandMarks(input.contours, view), ...zoneGrounds(input, view)];
  const next = nextMarks(input.next, view, sheet);
  for (const { at } of input.readings) sheet.room.block(around(view.at(at), 1.1));
  const panel = panelMarks(input.panel, view, sheet);
  for (const { outline } of input.zones) sheet.room.avoid(view.ring(outline), true);
  const zoneNames = namesOfZones(input, view, sheet);
  const fittings = fittingMarks(input.fittings, view, sheet);
  const cuts = input.openings.map(({ area }) => shape(ringsOf(area).map(view.ring), 'saw', 'none'));
  const photographs = photographMarks(input.photographs, view, sheet);
  const readings = input.readings.flatMap((reading) => readingSymbol(reading, view.at(reading.at)));
  const values = meterValues(input.readings, view, sheet);
  const marks = [
    ...grounds,
    ...panel,
    ...cuts,
    ...readings,
    ...next.marks,
    ...dimensions,
    ...zoneNames.marks,
    ...fittings.marks,
    ...photographs.marks,
    ...values.marks,
  ];
  return {
    drawing: closeSheet(sheet, marks, view),
    left: zoneNames.left + fittings.left + photographs.left + values.left + next.left,
  };
}

const hatchOf: Readonly<Record<string, Hatch>> = {
  'wet-rotten': 'crossed',
  'wet-bonded': 'diagonal',
  'dry-debonded': 'sparse',
};
const hatchFor = (condition: string): Hatch => hatchOf[condition] ?? 'level';

/** Bands of chance say more than the hatch of a zone that was taken from them. */
const zoneGrounds = ({ zones, contours }: DefectMapInput, view: DeckView): readonly Mark[] =>
  contours.length > 0
    ? []
    : zones.flatMap(({ outline, condition }) => {
        const ring = view.ring(outline);
        return [...hatched([ring], hatchFor(condition)), shape([ring], 'contour', 'none')];
      });

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

function legendOf(
  { panel, zones, contours, readings, next, fittings, openings, photographs }: DefectMapInput,
  reader: Reader,
): readonly LegendEntry[] {
  const { words } = reader;
  return [
    ...panelLegend(panel, reader),
    ...(openings.length === 0 ? [] : [{ sample: lineSample('saw'), meaning: words.openingPlan.sawLine }]),
    ...(contours.length > 0 ? bandLegend(contours, reader) : zoneLegend(zones, reader)),
    ...readingLegend(readings, words.defectMap),
    ...nextLegend(next, words.defectMap),
    ...fittingLegend(fittings, reader),
    ...photographLegend(photographs, words.defectMap),
  ];
}

const zoneLegend = (zones: DefectMapInput['zones'], reader: Reader): readonly LegendEntry[] =>
  [...new Set(zones.map(({ condition }) => condition))].map((condition) => zoneEntry(condition, reader));

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

import { intersection, isInsideRing, leastRectangle, offset, regionOf, union } from '#lib/geometry';
import { measuredRecord, type BatchCard, type Estimate, type Opening } from '#lib/estimate';
import type { DefectMapInput } from '../deck/defect-map.js';
import type { SeenFrom } from '../deck/deck-view.js';
import type { OpeningPlanInput } from '../deck/opening-plan.js';
import type { Fitting, Panel } from '../deck/panel-marks.js';
import type { PiecePlanInput } from '../deck/piece-plan.js';
import type { Area } from '../deck/place.js';
import type { PressPlanInput } from '../deck/press-plan.js';
import type { PlyPlanInput } from '../deck/ply-plan.js';
import type { SheetLayoutInput } from '../deck/sheet-layout.js';
import type { SlotSectionInput } from '../joint/slot-section.js';
import type { FittingSectionInput } from '../joint/fitting-section.js';
import type { SectionInput } from '../joint/section.js';
import type { UtilisationBar } from '../joint/utilisation-chart.js';
import { boxOf, overlaps } from '../sheet/shapes.js';
import type { BatchCardInput } from '../job/batch-card.js';
import type { PotRun } from '../job/pot-runs.js';
import type { GanttInput } from '../job/gantt.js';
import type { OpenedRequest, Photograph, ReportRequest } from './request.js';
import type { PhotographPlace } from '../deck/photograph-marks.js';
import type { Reader } from '../reader.js';
import { inReadersUnits } from '../readers-units.js';
import { withUnitSigns } from '../sheet/unit-signs.js';
import { codeText, word } from './said.js';

type Given = Pick<ReportRequest, 'estimate' | 'record' | 'reader'>;
type GivenOpened = Pick<OpenedRequest, 'estimate' | 'record' | 'reader'>;

export const panelOf = ({ estimate: { scope }, record }: Given): Panel => ({
  name: scope.panel.name,
  outer: scope.panel.outline,
  holes: scope.panel.holes,
  supports: record.panel.supports ?? [],
});

/** The inner skin is cut by somebody who looks up at it. */
const seenFrom = ({ scope }: Estimate): SeenFrom =>
  scope.method.some(({ value }) => value === 'from-below') ? 'below' : 'above';

/** Every fitting of the record; the estimate's scope holds only those that the openings touch. */
const fittingsOf = ({ estimate, record }: Given): readonly Fitting[] => {
  const known = record.fittings ?? [];
  return known.length > 0 ? known : estimate.scope.fittings;
};

/** The same with what their cards put under them; in a plan of pieces the solid alone. */
const fittingsWithCards = (given: Given): readonly Fitting[] => {
  const cards = new Map(given.estimate.hardware.map((card) => [card.id, card]));
  return fittingsOf(given).map(({ id, at }) => {
    const { insert, plate } = cards.get(id) ?? {};
    return {
      id,
      at,
      ...(insert === undefined ? {} : { solid: insert }),
      ...(plate === undefined ? {} : { plate }),
    };
  });
};

const onSolid = (given: Given): readonly Fitting[] =>
  fittingsWithCards(given).flatMap(({ id, at, solid }) => (solid === undefined ? [] : [{ id, at, solid }]));

export const defectMapInput = (given: Given & Pick<ReportRequest, 'issue'>): DefectMapInput => ({
  panel: panelOf(given),
  zones: given.estimate.scope.zones,
  contours: given.estimate.scope.contours,
  readings: given.record.survey?.readings ?? [],
  next: given.estimate.scope.nextReadings?.readings ?? [],
  openings: given.estimate.scope.openings,
  fittings: fittingsOf(given),
  photographs: placedOf(given.issue.photographs),
  damagedAreaM2: given.estimate.scope.damagedAreaM2.p50,
});

export const openingPlanInput = (given: Given): OpeningPlanInput => ({
  panel: panelOf(given),
  openings: given.estimate.scope.openings,
  fittings: fittingsWithCards(given),
  cutLengthM: given.estimate.scope.cutLengthM,
  seenFrom: seenFrom(given.estimate),
  isSkinKept: given.estimate.laminate?.method === 're-bed',
});

const placedOf = (photographs: readonly Photograph[]): readonly PhotographPlace[] =>
  photographs.flatMap(({ number, at, directionDeg }) =>
    at === undefined ? [] : [{ number, at, ...(directionDeg === undefined ? {} : { directionDeg }) }],
  );

const openingsNamed = ({ scope }: Estimate, label: string | undefined): readonly Opening[] =>
  scope.openings.filter((opening) => label === undefined || opening.label === label);

export const piecePlanInput = (given: GivenOpened, opening: string | undefined): PiecePlanInput => ({
  panel: panelOf(given),
  openings: openingsNamed(given.estimate, opening),
  pieces: given.estimate.core.pieces.filter((piece) => opening === undefined || piece.opening === opening),
  solidFills: given.estimate.core.solidFills
    .filter((fill) => opening === undefined || fill.opening === opening)
    .map(({ outline, holes }) => ({ outer: outline, holes })),
  fittings: onSolid(given),
  seenFrom: seenFrom(given.estimate),
});

/** What presses, where something is pressed or propped. */
export const pressPlanInput = (given: GivenOpened): PressPlanInput | undefined => {
  const { bondPressure } = given.estimate.process;
  if (bondPressure === undefined || bondPressure.lines.length + bondPressure.pieces.length === 0)
    return undefined;
  const outlines = new Map(given.estimate.core.pieces.map(({ label, outline }) => [label, outline]));
  return {
    panel: panelOf(given),
    openings: given.estimate.scope.openings.map(({ area }) => area),
    lines: bondPressure.lines,
    pieces: bondPressure.pieces.flatMap((piece) => {
      const outline = outlines.get(piece.label);
      return outline === undefined ? [] : [{ ...piece, outline }];
    }),
    ...(bondPressure.method === 'vacuum' ? { bag: bagOf(given) } : {}),
    seenFrom: seenFrom(given.estimate),
  };
};

/** From the outer edge of the taper to the tape: its own width and room for a thumb. From memory. */
const TAPE_OFF_MM = 40;

/** The tape lies outside the taper, on the panel; bolts of fittings that it takes in pass through both skins. */
function bagOf(given: GivenOpened): NonNullable<PressPlanInput['bag']> {
  const { scope, laminate } = given.estimate;
  const panel = panelOf(given);
  const cut = union(...scope.openings.map(({ area }) => regionOf(area.outer)));
  const seal = intersection(
    offset(cut, laminate.taperWidthMm + TAPE_OFF_MM),
    regionOf(panel.outer, panel.holes),
  );
  const breaches = fittingsOf(given)
    .map(({ at }) => at)
    .filter((at) => seal.some(({ outer }) => isInsideRing(outer, at)));
  return { seal, breaches };
}

/** A ply belongs to the openings whose boxes its parts meet. */
export const plyPlanInput = (given: GivenOpened, opening: string | undefined): PlyPlanInput => {
  const openings = openingsNamed(given.estimate, opening);
  const isOver = (area: Area): boolean =>
    openings.some((cut) => overlaps(boxOf(cut.area.outer), boxOf(area.outer)));
  return {
    panel: panelOf(given),
    openings,
    taperRatio: given.estimate.laminate.taperRatio,
    seenFrom: seenFrom(given.estimate),
    plies: given.estimate.laminate.plies.map((ply) => ({
      ...ply,
      materialName: named(given.reader, ply.materialName),
      outline: opening === undefined ? ply.outline : ply.outline.filter(isOver),
    })),
  };
};

const SHEETS_PER_FIGURE = 6;

export const sheetLayoutInputs = ({ estimate: { core } }: GivenOpened): readonly SheetLayoutInput[] => {
  const hasGrain = core.pieces.some(({ grainDeg }) => grainDeg !== undefined);
  return Array.from({ length: Math.ceil(core.sheets.length / SHEETS_PER_FIGURE) }, (_, index) => ({
    hasGrain,
    sheets: core.sheets.slice(index * SHEETS_PER_FIGURE, (index + 1) * SHEETS_PER_FIGURE),
  }));
};

/** Names of goods tell their weight; a reader of other units gets it in his own on drawings too. */
const named = (reader: Reader, name: string): string =>
  inReadersUnits(reader, withUnitSigns(name), { 'm²': [], 'kg': [], 'l': [] });

const THINNEST_CORE_MM = 3;

export const sectionInput = ({ estimate, record: stated, reader }: GivenOpened): SectionInput => {
  const { record } = measuredRecord(stated);
  const { core, laminate } = estimate;
  const cutFrom = seenFrom(estimate);
  const [whole, cut] =
    cutFrom === 'below' ? [record.outerSkin, record.innerSkin] : [record.innerSkin, record.outerSkin];
  return {
    method: laminate.method,
    cutFrom,
    wholeSkinMm: whole.thicknessMm,
    cutSkinMm: cut.thicknessMm,
    cavityMm: record.core.thicknessMm,
    stack: core.stack.map(({ layer, thicknessMm }) => ({
      layer,
      thicknessMm,
      isBond: thicknessMm < THINNEST_CORE_MM,
    })),
    taperRatio: laminate.taperRatio,
    taperWidthMm: laminate.taperWidthMm,
    plies: laminate.plies.map((ply) => ({ ...ply, materialName: named(reader, ply.materialName) })),
  };
};

/** A strip at an edge that is worked through a slot: each place that takes it, nothing where no slot is cut. */
export function slotSectionInputs({ estimate, record: stated }: Given): readonly SlotSectionInput[] {
  const { record } = measuredRecord(stated);
  const { methods, process, scope } = estimate;
  if (process.calendar.tasks.every(({ code }) => code !== 'strip-cut')) return [];
  return methods.places
    .filter(({ rung }) => rung === 'edge-rout-and-fill')
    .flatMap(({ place }) => scope.zones.filter(({ id }) => id === place))
    .map(({ id, outline }) => ({
      place: id,
      outerSkinMm: record.outerSkin.thicknessMm,
      coreMm: record.core.thicknessMm,
      innerSkinMm: record.innerSkin.thicknessMm,
      stripMm: leastRectangle(outline).widthMm,
    }));
}

/** Fittings whose holes are made alike are drawn once, under all their names. */
export function fittingSectionInputs({ estimate, record: stated }: Given): readonly FittingSectionInput[] {
  const { record } = measuredRecord(stated);
  const byLook = new Map<string, FittingSectionInput>();
  for (const { id, fastenerMm, fastenerLengthMm, plugMm, insert, plate, sealant } of estimate.hardware) {
    const look = {
      outerSkinMm: record.outerSkin.thicknessMm,
      coreMm: record.core.thicknessMm,
      innerSkinMm: record.innerSkin.thicknessMm,
      fastenerMm,
      fastenerLengthMm,
      plugMm,
      ...(insert === undefined ? {} : { insert: { material: insert.material } }),
      ...(plate === undefined ? {} : { plate: { thicknessMm: plate.thicknessMm, material: plate.material } }),
      sealant: sealant.kind,
    };
    const key = JSON.stringify(look);
    byLook.set(key, { ...look, names: [...(byLook.get(key)?.names ?? []), id] });
  }
  return [...byLook.values()];
}

export const checkBars = ({ estimate, reader }: Given): readonly UtilisationBar[] =>
  estimate.checks.flatMap(({ title, state, utilisation, verdict }) =>
    utilisation === undefined
      ? []
      : [
          {
            title: state === undefined ? title : `${title}, ${word(reader.words.checks.states, state)}`,
            utilisation,
            passes: verdict !== 'fails',
          },
        ],
  );

const HOURS_PER_DAY = 24;

export const ganttInput = ({ estimate: { process } }: Given): GanttInput => ({
  tasks: process.calendar.tasks.map((task) => ({
    ...task,
    waitEndDay: task.endDay + task.waitH / HOURS_PER_DAY,
  })),
  ...(process.calendar.startDate === undefined ? {} : { startDate: process.calendar.startDate }),
});

export const batchInput = ({ reader }: Given, batch: BatchCard): BatchCardInput => ({
  ...batch,
  limitedBy: codeText(reader.words.process.limits, batch.limitedBy),
});

export const potRunInput = (given: Given, { first, pots }: PotRun): BatchCardInput => ({
  ...batchInput(given, first),
  ...(pots.length === 1 ? {} : { alike: pots }),
});

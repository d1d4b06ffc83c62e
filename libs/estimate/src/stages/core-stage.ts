import { mapValue, problem, refusal, type Outcome, type Problem } from '#lib/kernel';
import type { SheetFormat } from '#lib/catalogue';
import {
  planStack,
  type CoreBill,
  type CoreBillRequest,
  type CoreCut,
  type SolidFill,
  type StackPlan,
  type StackRequest,
} from '#lib/coring';
import { areaMm2 } from '#lib/geometry';
import { derived, sumOf, type Figure } from '#lib/provenance';
import { fraction, l, m, m2, m2FromMm2, mm2 } from '#lib/units';
import { coreChecks, coreSection } from '../sections/core-section.js';
import type { Check, CoreSection } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import type { KeptWork } from '../kept-work.js';
import { spareFlangeMm } from './least-flange.js';
import { bayInOpenTime } from './open-time.js';
import type { OpenedScope } from './three-areas.js';

/** Sheets to buy of one thickness, form and format. */
export interface SheetsWanted {
  readonly thicknessMm: number;
  readonly form: 'plain' | 'scored';
  readonly sheet: SheetFormat;
  readonly count: Figure<'1'>;
  /** Core that ends up in the deck, of these sheets. */
  readonly netM2: Figure<'m2'>;
}

export interface CoreWork {
  readonly bill: CoreBill;
  readonly sheets: readonly SheetsWanted[];
  /** Ground to be cored, joints counted and what is filled solid left out: what is bedded and wetted out. */
  readonly beddedM2: Figure<'m2'>;
  /** What is filled solid, in all. */
  readonly solidL: Figure<'l'>;
  /** What is filled solid, as one section along its length; absent when nothing is. */
  readonly solid?: SolidSection;
  readonly pieces: readonly { readonly label: string; readonly areaM2: number }[];
  /** Joints of plywood across its grain, in one layer, which are taped; absent where none are. */
  readonly jointTapeM?: Figure<'m'>;
  readonly scores?: { readonly spacingMm: number; readonly widthMm: number; readonly depthMm: number };
  /** Total thickness of the new core; the panel keeps its old core where nothing is bedded. */
  readonly coreMm: number | 'old';
  readonly section: CoreSection;
  readonly checks: readonly Check[];
}

/** Mean width and depth of what is filled solid, and how long it is. */
export interface SolidSection {
  readonly lengthM: number;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Two thin layers with their butts apart hold each other; a single one is a hinge at its butts, not along its grain. Source: [FROM-MEMORY]. */
function tapedJoints(job: Job, { mosaic, stack }: CoreBill): Pick<CoreWork, 'jointTapeM'> {
  const isOneLayer = stack.layers.length === 1;
  if (job.core.coreType !== 'marine-plywood' || !isOneLayer || mosaic.buttLengthM < LEAST_JOINT_M) return {};
  return {
    jointTapeM: derived('m', m(mosaic.buttLengthM), 'joints of plywood that are taped', {
      formula: 'coring.butt-length',
      title: 'Joints between pieces across the grain',
      symbol: 'L',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    }),
  };
}

/** What arithmetic leaves of no joint. */
const LEAST_JOINT_M = 0.01;

/** Stack, mosaic and sheets for the openings. */
export function coreFor(job: Job, scope: OpenedScope, { core }: Pick<KeptWork, 'core'>): Outcome<CoreWork> {
  const outcome = core(requestOf(job, scope));
  return outcome.ok
    ? mapValue(outcome, (bill) => coreWork(job, scope, bill))
    : refusal(...outcome.problems.map(ofRecord));
}

/** More pieces than one layout takes are the fault of the area to be opened, not of a sheet. */
const ofRecord = (found: Problem): Problem =>
  found.code === 'too-many' && found.at === '/openings'
    ? problem('not-supported', '/zones', {
        why: `the openings take ${found.facts.count} pieces of core, and one estimate lays out at most ${found.facts.most}: divide the deck into panels and estimate each`,
      })
    : { ...found, at: `/core${found.at}` };

/** A first good layout: the cutting-plan endpoint takes as long as it is given. */
const QUICK_WORK = 300;

type CoreAnswers = Job['answers']['core'];
type StacksBySkin = Map<string, StackPlan | undefined>;
const stacksOf = new WeakMap<CoreAnswers, StacksBySkin>();

/**
 * The stack of a record before its openings are known: layers, camber and flush do not depend on the area. Every rung asks
 * for it several times over; but for the skin, the rungs of a record have everything about their core in common.
 */
export function stackFor(job: Job): StackPlan | undefined {
  const skin = job.answers.method.skin.value;
  const known: StacksBySkin = stacksOf.get(job.answers.core) ?? new Map();
  stacksOf.set(job.answers.core, known);
  if (!known.has(skin)) {
    const planned = planStack({ ...stackAsked(job), areaM2: 0 });
    known.set(skin, planned.ok ? planned.value : undefined);
  }
  return known.get(skin);
}

const stackAsked = (job: Job): Omit<StackRequest, 'areaM2'> => ({
  cavityMm: job.answers.core.cavityMm.value,
  core: job.core,
  skin: job.answers.method.skin.value,
  ...alikeThickness(job),
  ...(job.record.panel.camberRadiusMm === undefined
    ? {}
    : { camber: { radiusMm: job.record.panel.camberRadiusMm } }),
  ...(job.record.core.densityKgPerM3 === undefined
    ? {}
    : { oldCore: { densityKgPerM3: job.record.core.densityKgPerM3 } }),
});

function requestOf(job: Job, { plan, areas }: OpenedScope): CoreBillRequest {
  const { record } = job;
  const bay = bayInOpenTime(job);
  return {
    openings: plan.openings.map(({ label, area, undercut }) => ({
      label,
      area,
      undercut,
      staying: areas.stays.get(label) ?? [],
      isSolid: areas.fill === 'solid',
    })),
    ...(record.panel.supports === undefined
      ? {}
      : { supports: record.panel.supports.map(({ from, to }) => ({ from, to })) }),
    ...stackAsked(job),
    ...(bay === undefined ? {} : { mosaicRules: { bayM2: bay.bayM2 } }),
    sheets: sheetsOnSale(job),
    hourCost: Number(job.labourRates.perHour.laminator),
    seed: record.pricing?.seed ?? 1,
    workUnits: QUICK_WORK,
  };
}

/** Sold thicknesses differ from what a ruler reads on an old core by less than this. From memory. */
const ALIKE_MM = 0.3;
/** The thinnest beds that still fill, one at each face. From memory; 0.5 to 1.5 mm are in print for one. */
const LEAST_BEDS_MM = 0.5;

/** A new core of the old core's thickness, where it is sold and leaves room for its beds: common practice, no published source. */
export function alikeThickness({ core, answers: { core: old } }: Job): { readonly wantedMm?: number } {
  const alike = core.thicknessesMm.find(
    (thicknessMm) =>
      Math.abs(thicknessMm - old.thicknessMm.value) <= ALIKE_MM &&
      old.cavityMm.value - thicknessMm >= LEAST_BEDS_MM,
  );
  return alike === undefined ? {} : { wantedMm: alike };
}

/** Formats that the price list sells of this core, at the price of the thickness nearest to the old core's. */
export function sheetsOnSale({ core, priceList, answers }: Job): CoreBillRequest['sheets'] {
  const packs = priceList.packs.filter(
    ({ content }) => content.material === core.code && content.sheet !== undefined,
  );
  if (packs.length === 0) return undefined;
  const awayFrom = (thicknessMm = 0): number => Math.abs(thicknessMm - answers.core.thicknessMm.value);
  const nearest = Math.min(...packs.map(({ content }) => awayFrom(content.thicknessMm)));
  const formats = new Map<string, { lengthMm: number; widthMm: number; cost: number }>();
  for (const {
    content: { sheet, thicknessMm },
    prices: [first],
  } of packs) {
    if (sheet === undefined || awayFrom(thicknessMm) > nearest) continue;
    const key = `${sheet.lengthMm} x ${sheet.widthMm}`;
    formats.set(key, {
      ...sheet,
      cost: Math.min(Number(first.price), formats.get(key)?.cost ?? Number.POSITIVE_INFINITY),
    });
  }
  return [...formats.values()];
}

function coreWork(job: Job, { plan, areas }: OpenedScope, bill: CoreBill): CoreWork {
  return {
    bill,
    sheets: bill.cuts.flatMap((cut) => sheetsWanted(cut)),
    ...tapedJoints(job, bill),
    beddedM2: coredGround(bill, {
      opened: plan.figures.openedArea,
      undercut: plan.figures.undercutArea,
      stays: outlinedFigure(areas.recorded.staysM2, 'sound core that stays'),
    }),
    solidL: litresFigure(bill.mosaic.solidVolumeL),
    ...solidSection(bill),
    pieces: bill.mosaic.pieces.map(({ label, areaM2 }) => ({ label, areaM2 })),
    ...scoresOf(job, bill.stack.layers),
    coreMm:
      bill.mosaic.pieces.length === 0
        ? 'old'
        : bill.stack.layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0),
    section: coreSection(job, bill, spareFlangeMm(plan)),
    checks: coreChecks(bill),
  };
}

function coredGround(
  { stack, mosaic }: CoreBill,
  ground: Readonly<Record<'opened' | 'undercut' | 'stays', Figure<'m2'>>>,
): Figure<'m2'> {
  const inputs = {
    ...ground,
    solid: outlinedFigure(mosaic.solidAreaM2 / stack.layers.length, 'filled solid'),
  };
  const value = inputs.opened.value + inputs.undercut.value - inputs.stays.value - inputs.solid.value;
  return derived('m2', m2(Math.max(0, value)), 'ground to be cored', {
    formula: 'coring.cored-ground',
    title: 'Opened and undercut, less sound core that stays and what is filled solid',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs,
  });
}

const litresFigure = (volumeL: number): Figure<'l'> =>
  derived('l', l(volumeL), 'filled solid', {
    formula: 'geometry.volume',
    title: 'Area of outlines times their depth',
    symbol: 'V',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

const outlinedFigure = (areaM2: number, meaning: string): Figure<'m2'> =>
  derived('m2', m2(areaM2), meaning, {
    formula: 'geometry.area',
    title: 'Area of outlines',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

const MM_PER_M = 1000;

/** One section of the same volume, its width the mean by area. */
function solidSection({ mosaic: { solidFills } }: CoreBill): Pick<CoreWork, 'solid'> {
  const areaM2 = solidFills.reduce((sum, fill) => sum + fill.areaM2, 0);
  if (areaM2 === 0) return {};
  const mean = (of: (fill: SolidFill) => number): number =>
    solidFills.reduce((sum, fill) => sum + fill.areaM2 * of(fill), 0) / areaM2;
  const widthMm = Math.max(
    1,
    mean((fill) => fill.widthMm),
  );
  return {
    solid: { lengthM: (areaM2 * MM_PER_M) / widthMm, widthMm, heightMm: mean((fill) => fill.depthMm) },
  };
}

/** The cuts of scored core, which fill with resin; none where the first layer is plain. */
export function scoresOf(job: Job, layers: StackPlan['layers']): Pick<CoreWork, 'scores'> {
  const scored =
    layers[0].form === 'scored' ? job.core.forms.find(({ form }) => form === 'scored') : undefined;
  if (
    scored?.scoreSpacingMm === undefined ||
    scored.scoreWidthMm === undefined ||
    scored.scoreDepthFraction === undefined
  )
    return {};
  const thickestMm = Math.max(...layers.map(({ thicknessMm }) => thicknessMm));
  return {
    scores: {
      spacingMm: scored.scoreSpacingMm,
      widthMm: scored.scoreWidthMm,
      depthMm: scored.scoreDepthFraction * thickestMm,
    },
  };
}

function sheetsWanted({ thicknessMm, form, sheets }: CoreCut): readonly SheetsWanted[] {
  const bought = sheets.filter(({ isBought }) => isBought);
  const formats = new Map(bought.map(({ stockId, lengthMm, widthMm }) => [stockId, { lengthMm, widthMm }]));
  return [...formats].map(([stockId, sheet]) => {
    const own = bought.filter((one) => one.stockId === stockId);
    return { thicknessMm, form, sheet, ...quantitiesOf(own, thicknessMm) };
  });
}

function quantitiesOf(sheets: CoreCut['sheets'], thicknessMm: number): Pick<SheetsWanted, 'count' | 'netM2'> {
  const pieces = Object.fromEntries(
    sheets
      .flatMap(({ placements }) => placements)
      .map(({ pieceId, outline }) => [pieceId, pieceFigure(pieceId, outline)]),
  );
  const netM2 = sumOf('m2', `core pieces of ${thicknessMm} mm`, pieces);
  return {
    netM2,
    count: derived('1', fraction(sheets.length), 'sheets that the pieces fit on', {
      formula: 'nesting.sheets',
      title: 'Pieces laid out on whole sheets',
      symbol: 'n',
      cite: { source: 'ARITHMETIC', note: 'layout with kerf and trim, checked exactly for overlap' },
      inputs: { pieces: netM2 },
    }),
  };
}

const pieceFigure = (label: string, outline: readonly (readonly [number, number])[]): Figure<'m2'> =>
  derived('m2', m2(m2FromMm2(mm2(areaMm2([{ outer: outline, holes: [] }])))), `piece ${label}`, {
    formula: 'geometry.area',
    title: 'Area of an outline',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

import { settledRight, type Settlement, saidOr } from '#lib/asking';
import {
  allOfList,
  andThen,
  mapValue,
  pointer,
  problem,
  refusal,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import { areaMm2 } from '#lib/geometry';
import {
  costInSheets,
  nestInSheets,
  type CutSheet,
  type NestPiece,
  type SheetLayout,
  type SheetRequest,
  type StockSheet,
  searchQuestions,
} from '#lib/nesting';
import { assumed, computeChecked, derived, type Figure } from '#lib/provenance';
import { m2FromMm2, mm2, fraction } from '#lib/units';
import { cutMosaic, divisionProblems, type Mosaic } from '../mosaic/cut-mosaic.js';
import type { CorePiece } from '../mosaic/piece.js';
import { mosaicNumbers, grainAsked } from '../mosaic/rules.js';
import { cavityDivision } from '../mosaic/solid-fill.js';
import { wasteShare } from '../stack/formulas.js';
import { planStack, type StackPlan } from '../stack/plan-stack.js';
import { dividedByCost, type DividedMosaic, type DivisionByCost } from './division-choice.js';
import { cutQuestions, type SheetOnSale, offcutQuestions } from './questions.js';
import type { CoreBillRequest } from './request.js';
import { allUse, useOf, type SheetUse } from './waste.js';

/** Pieces, sheets and what becomes of every square millimetre of them. */
export interface CoreBill {
  /** Layers of new core that fill the cavity. */
  readonly stack: StackPlan;
  /** Pieces that the core is cut into. */
  readonly mosaic: Mosaic;
  /** How many pieces, and why so many. */
  readonly division: DivisionByCost;
  /** One for each thickness and form. */
  readonly cuts: readonly CoreCut[];
  /** Width that the saw takes between pieces. */
  readonly kerfMm: number;
  /** Sheets that must be bought. */
  readonly sheetCount: number;
  /** Price of the sheets, in the unit that prices were stated in. */
  readonly cost: number;
  /** Area of core that ends up in the deck. */
  readonly netArea: Figure<'m2'>;
  /** Area of the sheets bought. */
  readonly boughtArea: Figure<'m2'>;
  /** Share of the bought area that goes to waste, 0 to 1; absent where no core is bought. */
  readonly wasteFraction?: Figure<'1'>;
  /** Share of the bought area that becomes pieces, 0 to 1; 0 where no core is bought. */
  readonly utilisation: number;
  /** Where the bought area goes. */
  readonly waste: SheetUse;
  /** What the bill takes that nobody stated. */
  readonly assumptions: readonly Figure[];
}

export interface CoreCut {
  /** Thickness of the sheets that are cut. */
  readonly thicknessMm: number;
  /** Whether these sheets are plain or scored. */
  readonly form: 'plain' | 'scored';
  /** Each sheet with the pieces on it. */
  readonly sheets: readonly CutCoreSheet[];
  /** Price of these sheets. */
  readonly cost: number;
  /** No layout of these pieces can cost less. */
  readonly leastCost: number;
  /** How much of the sheets becomes pieces. */
  readonly use: SheetUse;
}

export interface CutCoreSheet extends CutSheet {
  /** Name of the sheet on the cutting plan. */
  readonly label: string;
  /** A sheet that is bought, or a piece that the customer has. */
  readonly isBought: boolean;
  /** Length of the bought sheet. */
  readonly lengthMm: number;
  /** Width of the bought sheet. */
  readonly widthMm: number;
  /** Rectangles no narrower than what is worth keeping. */
  readonly offcutsKept: CutSheet['offcuts'];
  /** Where the area of the sheet goes. */
  readonly use: SheetUse;
}

/** Stack, mosaic and sheets in one: how many sheets, cut how, and where the rest goes. */
export function coreBill(
  request: CoreBillRequest,
  shouldStop: () => boolean = () => false,
): Outcome<CoreBill> {
  if (sheetsOnSale(request).length === 0)
    return refusal(problem('too-few', '/sheets', { count: 0, least: 1 }));
  const problems = [...divisionProblems(request.openings, request.mosaicRules), ...sheetProblems(request)];
  if (problems.length > 0) return refusal(...problems);
  return andThen(stackFor(request, coredM2(request)), (stack) =>
    andThen(dividedFor(request, stack), ({ mosaic, byCost }) =>
      mapValue(cutsFor(request, mosaic, shouldStop), (cuts) =>
        billOf(request, { stack, mosaic, division: byCost, cuts }),
      ),
    ),
  );
}

/** A sheet narrower than the narrowest core would leave everything to be filled solid. */
function sheetProblems(request: CoreBillRequest): readonly Problem[] {
  const trimMm = 2 * settings(request).edgeTrimMm.value;
  const { leastSlotMm } = mosaicNumbers(request.mosaicRules);
  const isWide = sheetsOnSale(request).some(
    ({ lengthMm, widthMm }) => Math.min(lengthMm, widthMm) - trimMm >= leastSlotMm,
  );
  return isWide
    ? []
    : [
        problem('not-supported', '/sheets', {
          why: `no sheet, less its trim, is ${leastSlotMm} mm wide, the narrowest core that is bedded; offer a wider one`,
        }),
      ];
}

/** What takes core; the rest of the cavities is filled solid. */
function coredM2({ openings, mosaicRules }: CoreBillRequest): number {
  const numbers = mosaicNumbers(mosaicRules);
  const cored = openings.map((opening) => areaMm2(cavityDivision(opening, numbers).coreable));
  return m2FromMm2(mm2(cored.reduce((sum, area) => sum + area, 0)));
}

function stackFor(request: CoreBillRequest, areaM2: number): Outcome<StackPlan> {
  const { cavityMm, core, wantedMm, form, skin, camber, oldCore, stackRules } = request;
  return planStack({
    cavityMm,
    core,
    areaM2,
    ...(wantedMm === undefined ? {} : { wantedMm }),
    ...(form === undefined ? {} : { form }),
    ...(skin === undefined ? {} : { skin }),
    ...(camber === undefined ? {} : { camber }),
    ...(oldCore === undefined ? {} : { oldCore }),
    ...(stackRules === undefined ? {} : { rules: stackRules }),
  });
}

/** The division with the lowest cost, by first layouts of its sheets. */
const dividedFor = (request: CoreBillRequest, stack: StackPlan): Outcome<DividedMosaic> =>
  dividedByCost(sheetsOnSale(request), request.hourCost, {
    cut: (sheets, share) => mosaicFor(request, stack, { sheets, share }),
    costOf: ({ pieces }) =>
      mapValue(
        allOfList(kindsOf(pieces).map((kind) => costFor({ ...request, workUnits: 0 }, kind))),
        (costs) => costs.reduce((sum, cost) => sum + cost, 0),
      ),
  });

interface Way {
  readonly sheets: readonly SheetOnSale[];
  readonly share: number;
}

function mosaicFor(request: CoreBillRequest, stack: StackPlan, { sheets, share }: Way): Outcome<Mosaic> {
  const { openings, supports, core, grainDeg, mosaicRules } = request;
  const trimMm = 2 * settings(request).edgeTrimMm.value;
  const largestPieceM2 = share * (mosaicRules?.largestPieceM2 ?? core.largestPieceM2.value);
  return cutMosaic({
    openings,
    core,
    layers: stack.layers,
    cavityMm: request.cavityMm,
    sheets: sheets.map(({ lengthMm, widthMm }) => ({
      lengthMm: lengthMm - trimMm,
      widthMm: widthMm - trimMm,
    })),
    ...(stack.camber?.way === 'shorter-pieces' ? { longestSideMm: stack.camber.longestFlatPieceMm } : {}),
    ...(supports === undefined ? {} : { supports }),
    ...(grainDeg === undefined ? {} : { grainDeg }),
    rules: { ...mosaicRules, largestPieceM2 },
  });
}

type Settings = Settlement<typeof cutQuestions>;

const settings = ({ kerfMm, edgeTrimMm, keepFromMm }: CoreBillRequest): Settings =>
  settledRight(
    {
      ...(kerfMm === undefined ? {} : { kerfMm }),
      ...(edgeTrimMm === undefined ? {} : { edgeTrimMm }),
      ...(keepFromMm === undefined ? {} : { keepFromMm }),
    },
    cutQuestions,
  );

const sheetsOnSale = ({ sheets, core }: CoreBillRequest): NonNullable<CoreBillRequest['sheets']> =>
  sheets ?? core.sheets.map(({ lengthMm, widthMm }) => ({ lengthMm, widthMm, cost: lengthMm * widthMm }));

/** Each thickness and form is cut from sheets of its own. */
function cutsFor(
  request: CoreBillRequest,
  { pieces }: Mosaic,
  shouldStop: () => boolean,
): Outcome<readonly CoreCut[]> {
  return allOfList(kindsOf(pieces).map((kind) => cutFor(request, kind, shouldStop)));
}

/** Pieces that come out of the same sheets. */
function kindsOf(pieces: readonly CorePiece[]): readonly (readonly CorePiece[])[] {
  const kinds = [...new Map(pieces.map((piece) => [`${piece.thicknessMm}/${piece.form}`, piece])).values()];
  return kinds.map((kind) =>
    pieces.filter(({ thicknessMm, form }) => thicknessMm === kind.thicknessMm && form === kind.form),
  );
}

function costFor(request: CoreBillRequest, pieces: readonly CorePiece[]): Outcome<number> {
  const outcome = costInSheets(sheetRequest(request, pieces));
  return outcome.ok ? outcome : refusal(...asAsked(request, pieces[0], outcome.problems));
}

function sheetRequest(request: CoreBillRequest, pieces: readonly CorePiece[]): SheetRequest {
  const { kerfMm, edgeTrimMm } = settings(request);
  return {
    pieces: pieces.map((piece): NestPiece => nestPiece(request, piece)),
    stock: stockFor(request, pieces[0]),
    kerfMm: kerfMm.value,
    edgeTrimMm: edgeTrimMm.value,
    seed: saidOr(searchQuestions.seed, request.seed),
    workUnits: saidOr(searchQuestions.workUnits, request.workUnits),
  };
}

function cutFor(
  request: CoreBillRequest,
  pieces: readonly CorePiece[],
  shouldStop: () => boolean,
): Outcome<CoreCut> {
  const [{ thicknessMm, form }] = pieces;
  const outcome = nestInSheets(sheetRequest(request, pieces), shouldStop);
  if (!outcome.ok) return refusal(...asAsked(request, pieces[0], outcome.problems));
  return mapValue(outcome, (layout) => cutOf(request, { thicknessMm, form }, layout));
}

/** Drawn on the deck; on the sheet the grain lies along its length. */
function nestPiece({ core, grainDeg }: CoreBillRequest, { label, outline, holes }: CorePiece): NestPiece {
  return {
    id: label,
    outline,
    holes,
    turnsDeg: core.allowedTurnsDeg.map((turn) => turn - saidOr(grainAsked, grainDeg)),
  };
}

const ownOffcuts = (
  { offcuts = [] }: CoreBillRequest,
  { thicknessMm, form }: CorePiece,
): NonNullable<CoreBillRequest['offcuts']> =>
  offcuts.filter(
    (offcut) => offcut.thicknessMm === thicknessMm && saidOr(offcutQuestions.form, offcut.form) === form,
  );

/** Problems of the layout where the request has their cause. Pieces are of our own making: the sheets are too small for them, or the openings too many. */
function asAsked(
  request: CoreBillRequest,
  piece: CorePiece,
  problems: readonly Problem[],
): readonly Problem[] {
  const places = [
    ...ownOffcuts(request, piece).map((offcut) =>
      pointer('/offcuts', (request.offcuts ?? []).indexOf(offcut)),
    ),
    ...sheetsOnSale(request).map((_, k) => pointer('/sheets', k)),
  ];
  const asked = problems.map((one): Problem => {
    const [, of, index, ...rest] = one.at.split('/');
    if (of === 'stock' && index !== undefined)
      return { ...one, at: [places[Number(index)], ...rest].join('/') };
    return of === 'pieces' || of === 'stock'
      ? { ...one, at: one.code === 'too-many' ? '/openings' : '/sheets' }
      : one;
  });
  return asked.filter(
    ({ code, at }, k) => asked.findIndex((other) => other.code === code && other.at === at) === k,
  );
}

function stockFor(request: CoreBillRequest, piece: CorePiece): readonly StockSheet[] {
  const bought = sheetsOnSale(request).map(({ lengthMm, widthMm, cost, available }): StockSheet => ({
    id: `${lengthMm} x ${widthMm}`,
    outline: [
      [0, 0],
      [lengthMm, 0],
      [lengthMm, widthMm],
      [0, widthMm],
    ],
    cost,
    ...(available === undefined ? {} : { available }),
  }));
  const own = ownOffcuts(request, piece).map(({ id, outline, holes }): StockSheet => ({
    id: `own ${id}`,
    outline,
    holes: holes ?? [],
    cost: 0,
    available: 1,
  }));
  return [...own, ...bought];
}

function cutOf(
  request: CoreBillRequest,
  { thicknessMm, form }: Pick<CoreCut, 'thicknessMm' | 'form'>,
  layout: SheetLayout,
): CoreCut {
  const { kerfMm, edgeTrimMm, keepFromMm } = settings(request);
  const blade = { kerfMm: kerfMm.value, edgeTrimMm: edgeTrimMm.value };
  const sheets = layout.sheets.map((sheet, k): CutCoreSheet => {
    const xs = sheet.outline.map(([x]) => x);
    const ys = sheet.outline.map(([, y]) => y);
    return {
      ...sheet,
      label: `${k + 1}`,
      isBought: !sheet.stockId.startsWith('own '),
      lengthMm: Math.max(...xs) - Math.min(...xs),
      widthMm: Math.max(...ys) - Math.min(...ys),
      offcutsKept: sheet.offcuts.filter(({ outline }) => narrowest(outline) >= keepFromMm.value),
      use: useOf(sheet, blade),
    };
  });
  return {
    thicknessMm,
    form,
    sheets,
    cost: layout.cost,
    leastCost: layout.leastCost,
    use: allUse(sheets.map(({ use }) => use)),
  };
}

function narrowest(outline: CutSheet['outline']): number {
  const spans = [0, 1].map(
    (axis) =>
      Math.max(...outline.map((point) => point[axis])) - Math.min(...outline.map((point) => point[axis])),
  );
  return Math.min(...spans);
}

function billOf(
  request: CoreBillRequest,
  { stack, mosaic, division, cuts }: Pick<CoreBill, 'stack' | 'mosaic' | 'division' | 'cuts'>,
): CoreBill {
  const waste = allUse(cuts.map(({ use }) => use));
  const area = (value: number, meaning: string) =>
    derived('m2', m2FromMm2(mm2(value)), meaning, {
      formula: 'coring.layout',
      title: 'Area of outlines',
      symbol: 'A',
      cite: { source: 'ARITHMETIC' },
      inputs: { ...settings(request) },
    });
  const [netArea, boughtArea] = [
    area(waste.piecesMm2, 'core pieces'),
    area(waste.sheetMm2, 'sheets and offcuts cut'),
  ];
  return {
    stack,
    mosaic,
    division,
    cuts,
    kerfMm: settings(request).kerfMm.value,
    sheetCount: cuts.reduce((sum, { sheets }) => sum + sheets.filter(({ isBought }) => isBought).length, 0),
    cost: cuts.reduce((sum, { cost }) => sum + cost, 0),
    netArea,
    boughtArea,
    ...shareOf(netArea, boughtArea),
    waste,
    assumptions: [
      ...stack.assumptions,
      ...mosaic.assumptions,
      ...Object.values(settings(request)).filter(({ origin }) => origin.kind === 'assumed'),
      ...costAssumption(request),
    ],
  };
}

/** Where all is filled solid nothing is bought, and there is no share of nothing. */
function shareOf(
  netArea: Figure<'m2'>,
  boughtArea: Figure<'m2'>,
): Pick<CoreBill, 'wasteFraction' | 'utilisation'> {
  if (boughtArea.value === 0) return { utilisation: 0 };
  return {
    wasteFraction: computeChecked(wasteShare, { netM2: netArea, boughtM2: boughtArea }),
    utilisation: fraction(netArea.value / boughtArea.value),
  };
}

const costAssumption = ({ sheets }: CoreBillRequest): readonly Figure[] =>
  sheets === undefined
    ? [
        assumed('1', fraction(1), 'cost of sheets by area', {
          at: '/sheets',
          because: 'no prices were given, so the smallest area of sheet is the cheapest',
          cite: { source: 'COMMON-PRACTICE' },
        }),
      ]
    : [];

import { faultsIn } from '#lib/asking';
import { mapValue, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { choose } from './choose-sheets.js';
import { stockQuestions } from './questions.js';
import { commonProblems, outlineProblems, type SheetRequest, type StockSheet } from './request.js';
import { sheetJobOf, type SheetJob } from './sheet-job.js';
import { offerFor } from './offer.js';
import { layoutOf, type SheetLayout } from './sheet-layout.js';
import { fits, tableOf, type Budget, type Packing } from './sheets.js';

/**
 * Cuts pieces from sheets: fewest money first, then least material. The first complete layout comes in some tens of
 * milliseconds; the rest of the work budget looks for a better one and never gives a worse.
 *
 * The answer depends on the request alone: same pieces, stock, seed and work units, same layout. `shouldStop` may end the
 * search early; the best layout so far is the answer then.
 */
export const nestInSheets = (
  request: SheetRequest,
  shouldStop: () => boolean = () => false,
): Outcome<SheetLayout> =>
  mapValue(packed(request, shouldStop), ({ job, packing, used }) =>
    layoutOf(job, packing, leastCost(job), used),
  );

/** What the sheets of the same layout cost, without laying it out: for comparing ways to divide. */
export const costInSheets = (request: SheetRequest): Outcome<number> =>
  mapValue(
    packed(request, () => false),
    ({ packing }) => packing.cost,
  );

interface Packed {
  readonly job: SheetJob;
  readonly packing: Packing;
  readonly used: number;
}

function packed(request: SheetRequest, shouldStop: () => boolean): Outcome<Packed> {
  const problems = [...commonProblems(request), ...stockProblems(request.stock)];
  if (problems.length > 0) return refusal(...problems);
  const job = sheetJobOf(request);
  const impossible = unplaceable(job);
  if (impossible.length > 0) return refusal(...impossible);
  const budget: Budget = { workLimit: 1000 * request.workUnits, shouldStop, used: 0 };
  const packing = choose(job, request.seed, budget);
  if (packing === undefined)
    return refusal(
      problem('not-supported', '/stock', {
        why: 'the sheets that are available do not hold all pieces; make more available or leave pieces out',
      }),
    );
  return success({ job, packing, used: budget.used });
}

function stockProblems(stock: readonly StockSheet[]): readonly Problem[] {
  if (stock.length === 0) return [problem('too-few', '/stock', { count: 0, least: 1 })];
  if (stock.length > 40) return [problem('too-many', '/stock', { count: stock.length, most: 40 })];
  const ids = stock.map(({ id }) => id);
  return stock.flatMap((sheet, index) => [
    ...(ids.indexOf(sheet.id) < index
      ? [problem('duplicate', pointer('/stock', index, 'id'), { value: sheet.id })]
      : []),
    ...outlineProblems(sheet, pointer('/stock', index)),
    ...faultsIn({ cost: sheet.cost, available: sheet.available }, offerQuestions, pointer('/stock', index)),
    ...freeProblems(sheet, pointer('/stock', index, 'available')),
  ]);
}

const offerQuestions = { cost: stockQuestions.cost, available: stockQuestions.available };

const freeProblems = ({ available, cost }: StockSheet, at: string): readonly Problem[] =>
  available === undefined && cost === 0
    ? [problem('missing', at, { expected: 'say how many there are of a sheet that costs nothing' })]
    : [];

/** Pieces that lie on none of the sheets in any allowed turn. */
function unplaceable(job: SheetJob): readonly Problem[] {
  const { zones } = tableOf(
    job,
    job.kinds.map((_, kind) => kind),
  );
  return job.pieces.flatMap(({ index, id }) => {
    const fitsSomewhere = job.set.choicesOf[index].some((shape) =>
      zones.some((zone) => fits(job.set, zone, shape)),
    );
    return fitsSomewhere
      ? []
      : [problem('too-large-for-stock', pointer('/pieces', index), sizeFacts(job, index, id))];
  });
}

function sizeFacts(
  job: SheetJob,
  index: number,
  id: string,
): { readonly piece: string; readonly size: string; readonly room: string; readonly offer: string } {
  const inMm = (value: number): number => Math.round((value / job.steps) * 10) / 10;
  const { width, height } = job.set.table.shapes[job.set.choicesOf[index][0]];
  const rooms = job.kinds.map(({ room: { minX, minY, maxX, maxY } }) => ({
    width: Math.max(0, inMm(maxX - minX)),
    height: Math.max(0, inMm(maxY - minY)),
  }));
  const room = new Set(rooms.map((one) => `${one.width} x ${one.height} mm`));
  return {
    piece: id,
    size: `${inMm(width)} x ${inMm(height)} mm`,
    room: [...room].join(', '),
    offer: offerFor({ width: width / job.steps, height: height / job.steps }, rooms),
  };
}

/** The area of the pieces at the cheapest price per area, free sheets being used up first. */
function leastCost(job: SheetJob): number {
  const need = job.pieces.reduce((sum, { area, count }) => sum + area * count, 0);
  const free = job.kinds
    .filter(({ stock }) => stock.cost === 0)
    .reduce((sum, { area, available }) => sum + area * available, 0);
  const paid = job.kinds.filter(({ stock }) => stock.cost > 0);
  const open = Math.max(0, need - free);
  if (open === 0 || paid.length === 0) return 0;
  const perArea = Math.min(...paid.map(({ stock, area }) => stock.cost / area));
  return Math.max(open * perArea, Math.min(...paid.map(({ stock }) => stock.cost)));
}

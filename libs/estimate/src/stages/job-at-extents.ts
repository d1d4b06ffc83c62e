import { loadingOf, type CostLine, type CostRollUp, type JobAtExtent } from '#lib/costing';
import { findMaterial } from '#lib/catalogue';
import { triangularMean, triangularVariance } from '#lib/kernel';
import { labourFor, type OperationHours } from '#lib/work';
import type { ResinDemand } from '#lib/resin';
import { usedAt } from '#lib/takeoff';
import { isGelcoated, isStyrenated } from './coatings.js';
import { visitAmounts } from './visit-work.js';
import type { Job } from '../job/job.js';
import { isHardware } from './hardware-needs.js';
import type { ScheduleWork } from './calendar-stage.js';
import type { JobQuantities } from './labour-drivers.js';
import type { LabourWork } from './labour-stage.js';
import type { LaminateWork } from './laminate-stage.js';
import { asRecorded, type PlannedExtent } from './replan-stage.js';

export interface ExtentsContext {
  readonly job: Job;
  readonly planned: readonly PlannedExtent[];
  readonly labour: LabourWork;
  readonly schedule: Pick<ScheduleWork, 'daysAt'>;
  readonly laminate: Pick<LaminateWork, 'plyCount'>;
  readonly demand: ResinDemand;
}

/** Hours, goods and charges of every planned extent, in money of the roll-up: what the risk is worked out from. */
export function jobAtExtents(context: ExtentsContext, rollUp: CostRollUp): readonly JobAtExtent[] {
  const loading = loadingOf(rollUp);
  const recorded = asRecorded(context.planned);
  const before = amountsAt(context, recorded);
  return context.planned.map((planned): JobAtExtent => {
    const amounts = planned === recorded ? before : amountsAt(context, planned);
    const goods = goodsAt(context, rollUp, { before, after: amounts });
    return {
      extentFactor: planned.extentFactor,
      openedM2: planned.quantities.openedM2.value,
      labourH: amounts.labourH,
      labour: amounts.labourMoney * loading,
      labourVariance: amounts.labourVariance * loading ** 2,
      goods: goods.amount * loading,
      goodsVariance: goods.variance * loading ** 2,
      charges: chargesAt(context, rollUp, { before, after: amounts }) * loading,
    };
  });
}

const part = (value: number, of: number): number => (of === 0 ? 1 : value / of);

/** Plain numbers of one extent. */
interface Amounts {
  readonly labourH: number;
  readonly labourMoney: number;
  readonly labourVariance: number;
  readonly billedH: number;
  readonly workedDays: number;
  readonly quantities: JobQuantities;
  readonly fittingCount: number;
  readonly laminateM2: number;
}

/** Half of the spread of each rate is the pace of the whole job; the rest is its own. */
const OWN_SHARE = 0.5;

function amountsAt(
  { job, labour, schedule, laminate }: ExtentsContext,
  { extentFactor, drivers, quantities, fittingCount }: PlannedExtent,
): Amounts {
  const workedDays = schedule.daysAt(extentFactor, 1, 0.5).workingDays;
  const found = labourFor({ ...drivers, ...visitAmounts(job, workedDays) }, labour.flags);
  const operations = found.ok ? found.value : labour.operations;
  const own = new Set(labour.operations.filter(({ isOwn }) => isOwn).map(({ code }) => code));
  const billed = operations.filter(({ code }) => !own.has(code) && job.answers.crew.labour.value !== 'owner');
  const money = ({ skill, meanH }: OperationHours): number => Number(job.labourRates.perHour[skill]) * meanH;
  return {
    labourH: operations.reduce((sum, { meanH }) => sum + meanH, 0),
    labourMoney: billed.reduce((sum, operation) => sum + money(operation), 0),
    labourVariance: billed.reduce(
      (sum, operation) => sum + OWN_SHARE * money(operation) ** 2 * relativeVariance(operation),
      0,
    ),
    billedH: billed.reduce((sum, { meanH }) => sum + meanH, 0),
    workedDays,
    quantities,
    fittingCount,
    laminateM2: quantities.laminateM2.value * laminate.plyCount,
  };
}

/** Of each triangle the variance over the square of its mean; independent factors add theirs. */
const relativeVariance = ({ hoursPerDriver, modifiers }: OperationHours): number =>
  [hoursPerDriver, ...modifiers.map(({ factor }) => factor)].reduce((sum, points) => {
    const mean = triangularMean(points);
    return mean === 0 ? sum : sum + triangularVariance(points) / mean ** 2;
  }, 0);

interface Change {
  readonly before: Amounts;
  readonly after: Amounts;
}

function goodsAt(
  context: ExtentsContext,
  { lines }: CostRollUp,
  change: Change,
): { readonly amount: number; readonly variance: number } {
  let amount = 0;
  let variance = 0;
  for (const line of lines) {
    if (line.partOrLabour !== 'part') continue;
    const there = Number(line.amount.amount) * packFactor(line, useFactor(context, line, change));
    amount += there;
    variance +=
      OWN_SHARE *
      there ** 2 *
      triangularVariance({ low: line.spread.low, likely: 1, high: line.spread.high });
  }
  return { amount, variance };
}

/** How much more or less of a thing is used, by what it is counted by. */
function useFactor(context: ExtentsContext, { code }: CostLine, change: Change): number {
  const id = code.startsWith('material-') ? code.slice('material-'.length) : undefined;
  if (id === undefined) return 1;
  const { before, after } = change;
  const ratio = (pick: (quantities: JobQuantities) => number): number =>
    part(pick(after.quantities), pick(before.quantities));
  if (id.startsWith('overlay-')) return ratio(({ besides }) => besides['overlay-relay-m2']?.value ?? 0);
  if (isHardware(id)) return part(after.fittingCount, before.fittingCount);
  if (id.startsWith('core-')) return ratio(({ coredM2 }) => coredM2.value);
  if (id.startsWith('fabric-')) return part(after.laminateM2, before.laminateM2);
  if (id === 'resin' || id === 'hardener' || id.startsWith('filler-')) return resinFactor(context, change);
  const coating = findMaterial(context.job.catalogue, 'coating', id);
  if (coating !== undefined)
    return coating.coating === 'fairing-compound'
      ? ratio(({ fairedM2 }) => fairedM2.value)
      : ratio(({ finishM2 }) => finishM2.value);
  return consumableFactor(context, id, change);
}

const byPlies: ReadonlySet<string> = new Set(['closing-plies', 'top-laminate', 'weave-fill', 'peel-ply']);
const byCut: ReadonlySet<string> = new Set(['undercut', 'cut-kerf']);

/** Resin by its steps: plies by the laminate, joints by the cut, holes by their number, all else by the opening. */
function resinFactor({ demand }: ExtentsContext, { before, after }: Change): number {
  const factorOf = (step: string): number => {
    if (byPlies.has(step)) return part(after.laminateM2, before.laminateM2);
    if (byCut.has(step)) return part(after.quantities.cutM.value, before.quantities.cutM.value);
    if (step === 'potting') return part(after.quantities.holes.value, before.quantities.holes.value);
    if (step === 'inject') return 1;
    return part(after.quantities.openedM2.value, before.quantities.openedM2.value);
  };
  const all = demand.steps.reduce((sum, { totalL }) => sum + totalL, 0);
  if (all === 0) return 1;
  return demand.steps.reduce((sum, { step, totalL }) => sum + factorOf(step) * totalL, 0) / all;
}

function consumableFactor(context: ExtentsContext, id: string, change: Change): number {
  const { catalogue } = context.job;
  const item =
    findMaterial(catalogue, 'consumable', id) ??
    findMaterial(catalogue, 'safety', id) ??
    findMaterial(catalogue, 'fastener', id);
  if (item === undefined) return 1;
  const litres = context.demand.totals.totalL;
  const used = ({ quantities, fittingCount, laminateM2, labourH }: Amounts, mixedL: number): number =>
    usedAt(item, {
      'job': 1,
      'opened-m2': quantities.openedM2.value + quantities.injectedM2.value,
      'cut-m': quantities.cutM.value,
      'taper-m': quantities.taperM.value,
      'laminate-m2': laminateM2,
      'faired-m2': quantities.fairedM2.value,
      'finish-m2': quantities.finishM2.value,
      'hole': quantities.holes.value + quantities.injectionHoles.value,
      'fitting': fittingCount,
      'labour-h': labourH,
      'mixed-l': mixedL,
      'styrenated-l': isStyrenated(context.job) ? mixedL : 0,
      'gelcoat-m2': isGelcoated(context.job) ? quantities.finishM2.value : 0,
      'bag-perimeter-m': quantities.cutM.value,
    });
  const before = used(change.before, litres);
  return before === 0 ? 1 : used(change.after, litres * resinFactor(context, change)) / before;
}

/**
 * Whole packs: what is left over in those bought is used first, and no fewer than one is bought. What goes back on the
 * shelf is charged as it is used, and gear as it is worn.
 */
function packFactor({ packs, quantity, goods }: CostLine, use: number): number {
  if (goods !== undefined && goods.billedBy !== 'whole-packs') return use;
  const count = packs.reduce((sum, pack) => sum + pack.count, 0);
  const bought = quantity.purchase ?? 0;
  if (count === 0 || bought <= 0) return use;
  const perPack = bought / count;
  const needed = quantity.required * use;
  const packsThere =
    needed > bought
      ? count + Math.ceil((needed - bought) / perPack - 1e-9)
      : use >= 1
        ? count
        : Math.min(count, Math.max(1, Math.ceil(needed / perPack - 1e-9)));
  return packsThere / count;
}

/** Charges of the yard by job, hour, area and day worked; those by the day on the calendar are counted apart. */
function chargesAt({ job }: ExtentsContext, { lines }: CostRollUp, { before, after }: Change): number {
  return lines
    .filter(({ partOrLabour, section }) => partOrLabour === 'labour' && section !== 'labour')
    .reduce((sum, line) => {
      if (isByCalendarDay(job, line)) return sum;
      const amount = Number(line.amount.amount);
      if (line.unit === 'h') return sum + amount * part(after.billedH, before.billedH);
      if (line.unit === 'm2')
        return sum + amount * part(after.quantities.openedM2.value, before.quantities.openedM2.value);
      return sum + amount * (line.unit === 'day' ? part(after.workedDays, before.workedDays) : 1);
    }, 0);
}

/** What one square metre more takes of something, at least nothing: over all extents, because packs come whole. */
export function perMoreM2(extents: readonly JobAtExtent[], takes: (at: JobAtExtent) => number): number {
  const [least, most] = [extents[0], extents[extents.length - 1]];
  const moreM2 = most.openedM2 - least.openedM2;
  return moreM2 <= 0 ? 0 : Math.max(0, (takes(most) - takes(least)) / moreM2);
}

export const isByCalendarDay = ({ labourRates }: Job, { code }: Pick<CostLine, 'code'>): boolean =>
  labourRates.charges.some((charge) => charge.per === 'day' && code === `yard-${charge.code}`);

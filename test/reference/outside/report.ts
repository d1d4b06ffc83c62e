import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type Estimate } from '#lib/estimate';
import { moneyOfTheYear } from './money-of-the-year.js';
import type { Counted, OutsideJob, Reported } from './outside-jobs.js';

/** One reported figure beside ours. */
export interface Comparison {
  readonly what: 'hours' | 'price' | 'goods' | 'days' | 'sheets' | 'growth';
  readonly unit: string;
  readonly told: Span;
  readonly ours: Quantiles;
  readonly covers: string;
  /** The reported span and ours share at least one value. */
  readonly isInside: boolean;
}

interface Span {
  readonly low: number;
  readonly high: number;
}

interface Quantiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

const estimates = new Map<string, Estimate>();

/** Each job is worked out once, however often it is asked for. */
export function estimateOf(job: OutsideJob): Estimate {
  const known = estimates.get(job.id);
  if (known !== undefined) return known;
  const outcome = estimate(job.record, shippedCatalogue, 'outside');
  if (!outcome.ok) throw new Error(`${job.id}: ${JSON.stringify(outcome.problems)}`);
  estimates.set(job.id, outcome.value.estimate);
  return outcome.value.estimate;
}

/** Everything that the source tells of this job, each beside ours. */
export const comparisonsOf = ({ reported }: OutsideJob, made: Estimate): readonly Comparison[] => [
  ...hoursBeside(reported, made),
  ...priceBeside(reported, made),
  ...goodsBeside(reported, made),
  ...daysBeside(reported, made),
  ...sheetsBeside(reported, made),
  ...growthBeside(reported, made),
];

/** Hours of the operations that the source counts too: the job's distribution, in the share of their mean hours. */
const hoursBeside = ({ labourH }: Reported, made: Estimate): readonly Comparison[] =>
  labourH === undefined
    ? []
    : [
        compared('hours', 'h', labourH, {
          covers: labourH.covers,
          ours: scaled(
            made.summary.labourH,
            shareOf(made, labourH, ({ hours }) => hours?.mean ?? 0),
          ),
        }),
      ];

/** Money without tax, in that of the source; of the work it counts with the goods of all of it. */
const priceBeside = ({ price }: Reported, made: Estimate): readonly Comparison[] => {
  if (price === undefined) return [];
  const { totals } = made;
  const untaxed = Number(totals.base.amount) / (Number(totals.base.amount) + taxOnBase(totals));
  const counted = shareOf(made, price, ({ amount }) => Number(amount.amount));
  const { p10, p50, p90 } = totals.range;
  const range = { p10: Number(p10.amount), p50: Number(p50.amount), p90: Number(p90.amount) };
  return [
    compared('price', `${price.currency} of ${price.year}`, price, {
      covers: price.covers,
      ours: scaled(range, untaxed * counted * moneyOfTheYear(price)),
    }),
  ];
};

const taxOnBase = ({ total, tax, base }: Estimate['totals']): number =>
  (Number(tax.amount) * Number(base.amount)) / (Number(total.amount) - Number(tax.amount));

const goodsBeside = ({ materialsCost }: Reported, { lines }: Estimate): readonly Comparison[] => {
  if (materialsCost === undefined) return [];
  const { onlyOf } = materialsCost;
  const parts = lines.filter(
    ({ partOrLabour, code }) =>
      partOrLabour === 'part' &&
      (onlyOf === undefined || onlyOf.some((name) => code.startsWith(`material-${name}`))),
  );
  const sum = (pick: (line: Estimate['lines'][number]) => { readonly amount: string }): number =>
    parts.reduce((total, line) => total + Number(pick(line).amount), 0);
  return [
    compared('goods', `${materialsCost.currency} of ${materialsCost.year}`, materialsCost, {
      covers: materialsCost.covers,
      ours: scaled(
        {
          p10: sum(({ amountRange }) => amountRange.low),
          p50: sum(({ amount }) => amount),
          p90: sum(({ amountRange }) => amountRange.high),
        },
        moneyOfTheYear(materialsCost),
      ),
    }),
  ];
};

/** Days to the end of the task that the source goes up to, in the spread of the whole job. */
const daysBeside = ({ days }: Reported, { process, summary }: Estimate): readonly Comparison[] => {
  if (days === undefined) return [];
  const { tasks, planned } = process.calendar;
  const last = tasks.find(({ code }) => code === days.upTo);
  if (days.upTo !== undefined && last === undefined) throw new Error(`no task ${days.upTo}`);
  const share = last === undefined ? 1 : last.endDay / planned.calendarDays;
  return [compared('days', 'd', days, { covers: days.covers, ours: scaled(summary.calendarDays, share) })];
};

const sheetsBeside = ({ coreSheets }: Reported, { summary }: Estimate): readonly Comparison[] => {
  if (coreSheets === undefined) return [];
  const { count, covers } = coreSheets;
  const ours = { p10: summary.coreSheets, p50: summary.coreSheets, p90: summary.coreSheets };
  return [compared('sheets', 'sheets', { low: count, high: count }, { covers, ours })];
};

const growthBeside = ({ growth }: Reported, { scope }: Estimate): readonly Comparison[] => {
  if (growth === undefined) return [];
  const recordedM2 = scope.zones.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return [
    compared('growth', '1', growth, {
      covers: growth.covers,
      ours: scaled(scope.damagedAreaM2, 1 / recordedM2),
    }),
  ];
};

/**
 * Of all lines, the part that the source counts: operations left out or named are told by their code. Setting up for a
 * visit counts for the visits on which something else is counted.
 */
function shareOf(
  { lines, process: { calendar } }: Estimate,
  { without = [], only }: Counted,
  amountOf: (line: Estimate['lines'][number]) => number,
): number {
  const isCounted = (operation: string): boolean =>
    only === undefined ? !without.includes(operation) : only.includes(operation);
  const visits = daysOf(calendar.tasks.filter(({ labourH }) => labourH > 0));
  const counted = daysOf(
    calendar.tasks.filter(({ labourH, code }) => labourH > 0 && isCounted(code.replace(/-\d+$/, ''))),
  );
  const partOf = ({ code }: Estimate['lines'][number]): number => {
    const operation = code.replace(/^labour-/, '');
    if (operation === 'daily-set-up') return counted.size / visits.size;
    return isCounted(operation) ? 1 : 0;
  };
  const all = lines.reduce((sum, line) => sum + amountOf(line), 0);
  return lines.reduce((sum, line) => sum + partOf(line) * amountOf(line), 0) / all;
}

/** Days on which one of the tasks is worked at. */
const daysOf = (tasks: Estimate['process']['calendar']['tasks']): ReadonlySet<number> =>
  new Set(
    tasks.flatMap(({ startDay, endDay }) => {
      const first = Math.floor(startDay);
      return Array.from({ length: Math.max(1, Math.ceil(endDay) - first) }, (_, index) => first + index);
    }),
  );

const scaled = ({ p10, p50, p90 }: Quantiles, factor: number): Quantiles => ({
  p10: factor * p10,
  p50: factor * p50,
  p90: factor * p90,
});

const compared = (
  what: Comparison['what'],
  unit: string,
  { low, high }: Span,
  { covers, ours }: Pick<Comparison, 'covers' | 'ours'>,
): Comparison => ({
  what,
  unit,
  told: { low, high },
  ours,
  covers,
  isInside: high >= ours.p10 && low <= ours.p90,
});

/** A told figure over ours, both at their middle; nothing where the source only says "at most". */
export const ratioOf = ({ told: { low, high }, ours }: Comparison): number | undefined =>
  low > 0 ? Math.sqrt(low * high) / ours.p50 : undefined;

export interface LeftOut {
  readonly id: string;
  /** What all the others, refitted by one factor, say of this job. */
  readonly factor: number;
  readonly isInside: boolean;
}

/** One factor on all hours, refitted on every other job by the mean of the logarithms, and each job judged by it. */
export function leaveOneOut(
  jobs: readonly { readonly id: string; readonly hours: Comparison }[],
): readonly LeftOut[] {
  const known = jobs.flatMap(({ id, hours }) => {
    const ratio = ratioOf(hours);
    return ratio === undefined ? [] : [{ id, hours, log: Math.log(ratio) }];
  });
  return known.map(({ id, hours }) => {
    const others = known.filter((one) => one.id !== id);
    const factor = Math.exp(others.reduce((sum, { log }) => sum + log, 0) / others.length);
    const { p10, p90 } = scaled(hours.ours, factor);
    return { id, factor, isInside: hours.told.high >= p10 && hours.told.low <= p90 };
  });
}

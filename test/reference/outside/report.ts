import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type Estimate } from '#lib/estimate';
import { triangularQuantile } from '#lib/kernel';
import type { OutsideJob } from './outside-jobs.js';

/** One reported figure beside ours. */
export interface Comparison {
  readonly what: string;
  readonly unit: string;
  readonly reportedLow: number;
  readonly reportedHigh: number;
  readonly oursP10: number;
  readonly oursP50: number;
  readonly oursP90: number;
  readonly covers: string;
  /** The reported span and ours share at least one value. */
  readonly isInside: boolean;
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

export function comparisonsOf(
  { reported }: OutsideJob,
  { summary, scope, lines }: Estimate,
): readonly Comparison[] {
  const { labourH, coreSheets, days, openedM2, growth } = reported;
  const zoneM2 = scope.zones.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  return [
    ...(labourH === undefined
      ? []
      : [
          compared(
            'hours of work',
            'h',
            { low: labourH.low, high: labourH.high },
            { ...hoursOf(lines, labourH.without ?? []), covers: labourH.covers },
          ),
        ]),
    ...(coreSheets === undefined
      ? []
      : [
          compared(
            'sheets of core',
            'sheets',
            { low: coreSheets.count, high: coreSheets.count },
            { ...point(summary.coreSheets), covers: coreSheets.covers },
          ),
        ]),
    ...(days === undefined
      ? []
      : [
          compared(
            'days on the calendar',
            'd',
            { low: days.count, high: days.count },
            { ...summary.calendarDays, covers: days.covers },
          ),
        ]),
    ...(openedM2 === undefined
      ? []
      : [
          compared(
            'opened area',
            'm2',
            { low: openedM2, high: openedM2 },
            {
              p10: summary.openedAreaM2 * 0.9,
              p50: summary.openedAreaM2,
              p90: summary.openedAreaM2 * 1.1,
              covers: 'as stated by the author, within a tenth',
            },
          ),
        ]),
    ...(growth === undefined
      ? []
      : [
          compared(
            'area found over area surveyed',
            '1',
            { low: growth.low, high: growth.high },
            {
              p10: scope.damagedAreaM2.p10 / zoneM2,
              p50: scope.damagedAreaM2.p50 / zoneM2,
              p90: scope.damagedAreaM2.p90 / zoneM2,
              covers: growth.covers,
            },
          ),
        ]),
  ];
}

/** Our hours of the operations that the source counts too, read as the estimate reads its own: low, likely and high as a triangle. */
function hoursOf(lines: Estimate['lines'], without: readonly string[]): Pick<Ours, 'p10' | 'p50' | 'p90'> {
  const counted = lines.filter(
    ({ section, code }) =>
      section === 'labour' && !without.some((operation) => code === `labour-${operation}`),
  );
  const hoursAt = (end: 'low' | 'likely' | 'high'): number =>
    counted.reduce(
      (sum, { pricedQuantity, amount, amountRange }) =>
        sum +
        Number(pricedQuantity) *
          (end === 'likely' ? 1 : Number(amountRange[end].amount) / Number(amount.amount)),
      0,
    );
  const points = { low: hoursAt('low'), likely: hoursAt('likely'), high: hoursAt('high') };
  return {
    p10: triangularQuantile(points, 0.1),
    p50: triangularQuantile(points, 0.5),
    p90: triangularQuantile(points, 0.9),
  };
}

const point = (value: number) => ({ p10: value, p50: value, p90: value });

interface Ours {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
  readonly covers: string;
}

const compared = (
  what: string,
  unit: string,
  { low, high }: { readonly low: number; readonly high: number },
  ours: Ours,
): Comparison => ({
  what,
  unit,
  reportedLow: low,
  reportedHigh: high,
  oursP10: ours.p10,
  oursP50: ours.p50,
  oursP90: ours.p90,
  covers: ours.covers,
  isInside: high >= ours.p10 && low <= ours.p90,
});

const shown = (value: number): string => (Math.abs(value) >= 20 ? value.toFixed(0) : value.toFixed(2));
const span = (low: number, high: number): string =>
  low === high ? shown(low) : `${shown(low)} to ${shown(high)}`;

/** The page that puts reported jobs beside our estimates of them. */
export function outsidePage(jobs: readonly OutsideJob[]): string {
  const head = [
    '# Jobs that others did or quoted, beside our estimates of them',
    '',
    'Generated by `npm run manual`. Records restate what the sources say; what they leave out is supposed and said.',
    'No constant of the catalogue was tuned to any of these jobs. A figure that falls outside our range is left outside, with what may explain it.',
    'Money is not compared: the sources give other years and currencies, and the shipped prices are invented.',
    '',
  ];
  return `${[...head, ...jobs.flatMap(jobLines)].join('\n')}\n`;
}

function jobLines(job: OutsideJob): readonly string[] {
  const rows = comparisonsOf(job, estimateOf(job)).map(
    ({ what, unit, reportedLow, reportedHigh, oursP10, oursP50, oursP90, covers, isInside }) =>
      `| ${what} (${unit}) | ${span(reportedLow, reportedHigh)} | ${shown(oursP50)} | ${span(oursP10, oursP90)} | ${isInside ? 'inside' : '**outside**'} | ${covers} |`,
  );
  return [
    `## ${job.title}`,
    '',
    `Source: ${job.source}.`,
    '',
    '| figure | reported | ours, P50 | ours, P10 to P90 | verdict | what the report covers |',
    '|---|---|---|---|---|---|',
    ...rows,
    '',
    'Supposed, because the source does not say:',
    ...job.supposed.map((text) => `- ${text}`),
    '',
    'What may explain the difference:',
    ...job.explained.map((text) => `- ${text}`),
    '',
  ];
}

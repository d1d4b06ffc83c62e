import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import type { RandomJob } from './random-jobs.js';

/** What an invariant found against a job; the job stands beside it so that it can be made again. */
export interface Breach {
  readonly rule: Rule;
  readonly said: string;
}

export const rules = [
  'price between P10 and P90',
  'about as often above as below',
  'better evidence takes no larger share',
  'a larger zone costs no less',
  'a larger zone takes no fewer hours',
  'a larger zone takes no fewer days',
  'one per cent more area moves nothing by three',
  'a fitting less costs no more',
] as const;
export type Rule = (typeof rules)[number];

/** Undefined where the record is refused: what cannot be carried out is not priced. */
export function priceOf(record: DefectRecord): Estimate | undefined {
  const outcome = estimate(record, shippedCatalogue, 'test');
  return outcome.ok ? outcome.value.estimate : undefined;
}

const rungOf = ({ methods }: Estimate): string => methods.planned.rung;
const money = ({ amount }: { readonly amount: string }): number => Number(amount);
const shown = (value: number): string => value.toFixed(3);

/** Of one estimate by itself. */
export function breachesOf({ totals }: Estimate): readonly Breach[] {
  const { total, range, shareWithin, betterEvidence, contingency } = totals;
  const price = money(total);
  const [p10, p90] = [money(range.p10), money(range.p90)];
  const before = [money(contingency), ...betterEvidence.map((one) => money(one.contingency))];
  return [
    ...(p10 < price && price < p90
      ? []
      : [breach('price between P10 and P90', `${shown(price)} in ${shown(p10)} to ${shown(p90)}`)]),
    ...(shareWithin >= 0.4 && shareWithin <= 0.6
      ? []
      : [breach('about as often above as below', shown(shareWithin))]),
    ...(before.some((one, index) => index > 0 && one > before[index - 1] * 1.001 + 1)
      ? [breach('better evidence takes no larger share', before.map(shown).join(', '))]
      : []),
  ];
}

/** Of a job and the same with more bad core: at the same rung, because another way of doing it is another job. */
export function breachesOfMore(less: Estimate, more: Estimate): readonly Breach[] {
  if (rungOf(less) !== rungOf(more)) return [];
  const fewer = (rule: Rule, one: number, other: number, allowed: number): readonly Breach[] =>
    other >= one - allowed ? [] : [breach(rule, `${shown(one)} to ${shown(other)}`)];
  return [
    ...fewer('a larger zone costs no less', money(less.totals.total), money(more.totals.total), 0.01),
    ...fewer('a larger zone takes no fewer hours', less.summary.labourH.p50, more.summary.labourH.p50, 1e-6),
    ...fewer(
      'a larger zone takes no fewer days',
      less.summary.calendarDays.p50,
      more.summary.calendarDays.p50,
      0.05,
    ),
  ];
}

export function breachesOfAHair(one: Estimate, hair: Estimate): readonly Breach[] {
  if (rungOf(one) !== rungOf(hair)) return [];
  const moved = Math.abs(money(hair.totals.total) / money(one.totals.total) - 1);
  return moved <= 0.03 ? [] : [breach('one per cent more area moves nothing by three', shown(moved))];
}

export function breachesOfLess(withIt: Estimate, without: Estimate): readonly Breach[] {
  const [more, less] = [money(withIt.totals.total), money(without.totals.total)];
  return less <= more + 0.01
    ? []
    : [breach('a fitting less costs no more', `${shown(more)} to ${shown(less)}`)];
}

const breach = (rule: Rule, said: string): Breach => ({ rule, said });

export interface Tried {
  readonly isPriced: boolean;
  readonly shareWithin: number;
  readonly contingencyShare: number;
  readonly breaches: readonly Breach[];
}

const nothingTried: Tried = { isPriced: false, shareWithin: 0, contingencyShare: 0, breaches: [] };

/** Every rule over one job and its changed sisters. */
export function tried({ record, withZoneOf, withoutFitting }: RandomJob): Tried {
  const made = priceOf(record);
  if (made === undefined) return nothingTried;
  const beside = (
    other: DefectRecord | undefined,
    judge: (one: Estimate, found: Estimate) => readonly Breach[],
  ): readonly Breach[] => {
    const found = other === undefined ? undefined : priceOf(other);
    return found === undefined ? [] : judge(made, found);
  };
  return {
    isPriced: true,
    shareWithin: made.totals.shareWithin,
    contingencyShare: money(made.totals.contingency) / (money(made.totals.total) - money(made.totals.tax)),
    breaches: [
      ...breachesOf(made),
      ...beside(withZoneOf(1.01), breachesOfAHair),
      ...beside(withZoneOf(1.4), breachesOfMore),
      ...beside(withoutFitting, breachesOfLess),
    ],
  };
}

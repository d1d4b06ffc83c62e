import { compareRevisions, type LineChange, type RevisionComparison } from '#lib/costing';
import { pricedDocumentOf, type Estimate } from '#lib/estimate';
import { detailOf, mapValue, type Outcome } from '#lib/kernel';
import { addMoney, exactMoney, moneyJson, subtractMoney, type Money, type MoneyJson } from '#lib/money';
import { figureChanges, type FigureChange } from './comparison.js';

/** What estimates that are kept would come to with an edition, beside what they come to with another. Nothing is stored. */
export interface EditionTrial {
  /** Code of the edition that was tried. */
  readonly edition: string;
  /** Code of the edition it is compared with. */
  readonly against: string;
  /** Version of the program that worked both out. */
  readonly engineVersion: string;
  /** Estimates that come to the same in every line and figure. */
  readonly sameCount: number;
  /** Stored estimates, each as the draft would price it. */
  readonly estimates: readonly TriedEstimate[];
  /** Estimates that both editions could answer, summed for each currency. */
  readonly totals: readonly TrialTotal[];
}

/** One estimate, worked out again with both editions from the record that it keeps. */
export interface TriedEstimate {
  /** Estimate that was tried. */
  readonly id: string;
  /** Revision of it that was tried. */
  readonly revisionNumber: number;
  /** Only for callers who may read estimates. */
  readonly title?: string;
  /** Only for callers who may read estimates. */
  readonly reference?: string;
  /** Without tax, provisional sums included, as it is kept: made with its own edition and version of the program. */
  readonly keptNet: MoneyJson;
  /** Without tax, provisional sums included; absent where an edition could not answer. */
  readonly before?: MoneyJson;
  /** The same with the edition tried. */
  readonly after?: MoneyJson;
  /** Total with the draft less the stored total; absent when it could not be made. */
  readonly difference?: MoneyJson;
  /** Of the amount before, such as 0.04 for 4 % more; absent when that was nothing. */
  readonly shareOfBefore?: number;
  /** Figures of the scope that differ, such as sheets of core. */
  readonly figures: readonly FigureChange[];
  /** Lines that differ: by how much, because of how much more of it and because of its rate. */
  readonly lines: readonly LineChange[];
  /** Why an edition could not answer, one sentence for each thing. */
  readonly refusedBecause: readonly string[];
}

export interface TrialTotal {
  /** Currency that these estimates are in. */
  readonly currency: string;
  /** Estimates that the sums are over. */
  readonly estimateCount: number;
  /** Sum of the stored totals. */
  readonly before: MoneyJson;
  /** Sum of the totals with the draft. */
  readonly after: MoneyJson;
  /** What the draft adds to the sum. */
  readonly difference: MoneyJson;
}

/** What is known of an estimate before it is tried. */
export type Tried = Pick<TriedEstimate, 'id' | 'revisionNumber' | 'title' | 'reference' | 'keptNet'>;

/** Refusals of either edition are findings of the trial, not of the request. */
export function triedEstimate(
  known: Tried,
  before: Outcome<Estimate>,
  after: Outcome<Estimate>,
): TriedEstimate {
  const none = { ...known, figures: [], lines: [] };
  const reasons = [...reasonsOf('before', before), ...reasonsOf('after', after)];
  if (!before.ok || !after.ok) return { ...none, refusedBecause: reasons };
  const compared = compareRevisions(pricedDocumentOf(before.value), pricedDocumentOf(after.value));
  if (!compared.ok) return { ...none, refusedBecause: reasonsOf('after', compared) };
  return { ...none, ...effectOf(before.value, after.value, compared.value), refusedBecause: [] };
}

const effectOf = (
  before: Estimate,
  after: Estimate,
  { lines, difference, shareOfBefore }: RevisionComparison,
): Omit<TriedEstimate, keyof Tried | 'refusedBecause'> => ({
  before: pricedDocumentOf(before).net,
  after: pricedDocumentOf(after).net,
  difference,
  ...(shareOfBefore === undefined ? {} : { shareOfBefore }),
  figures: figureChanges(before, after),
  lines: lines.filter(({ change }) => change !== 'same'),
});

const reasonsOf = (edition: 'before' | 'after', outcome: Outcome<unknown>): readonly string[] =>
  outcome.ok ? [] : outcome.problems.map((found) => `${wordsOf[edition]}: ${detailOf(found)}`);

const wordsOf = { before: 'With the edition compared with', after: 'With the edition tried' } as const;

/** Sums for each currency; nothing is converted. */
export function trialTotals(estimates: readonly TriedEstimate[]): readonly TrialTotal[] {
  const sums = new Map<string, { readonly count: number; readonly before: Money; readonly after: Money }>();
  for (const { before, after } of estimates) {
    if (before === undefined || after === undefined) continue;
    const [then, now] = [exactMoney(before), exactMoney(after)];
    const known = sums.get(before.currency);
    sums.set(before.currency, {
      count: (known?.count ?? 0) + 1,
      before: known === undefined ? then : addMoney(known.before, then),
      after: known === undefined ? now : addMoney(known.after, now),
    });
  }
  return [...sums].map(([currency, { count, before, after }]) => ({
    currency,
    estimateCount: count,
    before: moneyJson(before),
    after: moneyJson(after),
    difference: moneyJson(subtractMoney(after, before)),
  }));
}

export const isSame = ({ refusedBecause, figures, lines, difference }: TriedEstimate): boolean =>
  refusedBecause.length === 0 &&
  figures.length === 0 &&
  lines.length === 0 &&
  Number(difference?.amount) === 0;

/** The document of an estimate as it was written. */
export const documentIn = (outcome: Outcome<{ readonly resultJson: string }>): Outcome<Estimate> =>
  mapValue(outcome, ({ resultJson }): Estimate => JSON.parse(resultJson));

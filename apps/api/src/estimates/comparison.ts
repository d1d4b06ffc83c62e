import { Defect } from '#lib/kernel';
import type { Estimate, EstimateLine } from '#lib/estimate';
import { findCurrency, moneyFrom, moneyJson, subtractMoney, type Money, type MoneyJson } from '#lib/money';
import type { RevisionMark } from './stored-estimate.js';

/** What changed from one estimate to another, line by line. */
export interface Comparison {
  readonly before: ComparedEstimate;
  readonly after: ComparedEstimate;
  /** Changed figures of the scope, such as the opened area. */
  readonly figures: readonly FigureChange[];
  readonly lines: readonly LineChange[];
  readonly sections: readonly SectionChange[];
  readonly total: AmountChange;
}

export interface ComparedEstimate {
  readonly id: string;
  readonly createdAt: string;
  readonly revision: RevisionMark;
  readonly edition: string;
  readonly engineVersion: string;
}

export interface FigureChange {
  readonly code: string;
  readonly name: string;
  readonly unit: string;
  readonly before: number;
  readonly after: number;
}

export interface LineChange {
  readonly code: string;
  readonly title: string;
  readonly change: 'added' | 'removed' | 'changed';
  readonly unit: string;
  readonly quantityBefore?: number;
  readonly quantityAfter?: number;
  readonly amountBefore?: MoneyJson;
  readonly amountAfter?: MoneyJson;
  readonly difference: MoneyJson;
}

export interface SectionChange extends AmountChange {
  readonly code: string;
  readonly title: string;
}

export interface AmountChange {
  readonly before: MoneyJson;
  readonly after: MoneyJson;
  readonly difference: MoneyJson;
}

interface Side {
  readonly about: ComparedEstimate;
  readonly estimate: Estimate;
}

/** Unchanged lines and figures are left out. */
export function compared(before: Side, after: Side): Comparison {
  return {
    before: before.about,
    after: after.about,
    figures: figureChanges(before.estimate, after.estimate),
    lines: lineChanges(before.estimate, after.estimate),
    sections: sectionChanges(before.estimate, after.estimate),
    total: amountChange(before.estimate.totals.total, after.estimate.totals.total),
  };
}

const figures: readonly { readonly code: string; readonly name: string; readonly unit: string; readonly of: (estimate: Estimate) => number }[] = [
  { code: 'damagedAreaM2', name: 'Damaged area, likely', unit: 'm2', of: ({ scope }) => scope.damagedAreaM2.p50 },
  { code: 'openedAreaM2', name: 'Opened area', unit: 'm2', of: ({ summary }) => summary.openedAreaM2 },
  { code: 'cutLengthM', name: 'Length of cut', unit: 'm', of: ({ summary }) => summary.cutLengthM },
  { code: 'coreSheets', name: 'Sheets of core', unit: 'each', of: ({ summary }) => summary.coreSheets },
  { code: 'mixedResinL', name: 'Mixed resin', unit: 'l', of: ({ summary }) => summary.mixedResinL },
  { code: 'labourH', name: 'Labour, likely', unit: 'h', of: ({ summary }) => summary.labourH.p50 },
  { code: 'workingDays', name: 'Working days, likely', unit: 'd', of: ({ summary }) => summary.workingDays.p50 },
];

const figureChanges = (before: Estimate, after: Estimate): readonly FigureChange[] =>
  figures.map(({ code, name, unit, of }) => ({ code, name, unit, before: of(before), after: of(after) })).filter((change) => change.before !== change.after);

function lineChanges(before: Estimate, after: Estimate): readonly LineChange[] {
  const old = new Map(before.lines.map((line) => [line.code, line]));
  const current = new Map(after.lines.map((line) => [line.code, line]));
  const codes = [...current.keys(), ...[...old.keys()].filter((code) => !current.has(code))];
  return codes.flatMap((code) => lineChange(old.get(code), current.get(code)));
}

function lineChange(before: EstimateLine | undefined, after: EstimateLine | undefined): readonly LineChange[] {
  const line = after ?? before;
  if (line === undefined) throw new Defect('A line that neither estimate has was compared');
  const isSame = before !== undefined && after !== undefined && before.purchaseQuantity === after.purchaseQuantity && before.amount.amount === after.amount.amount
    && before.amount.currency === after.amount.currency && before.title === after.title;
  if (isSame) return [];
  return [{
    code: line.code,
    title: line.title,
    change: before === undefined ? 'added' : after === undefined ? 'removed' : 'changed',
    unit: line.unit,
    ...(before === undefined ? {} : { quantityBefore: before.purchaseQuantity, amountBefore: before.amount }),
    ...(after === undefined ? {} : { quantityAfter: after.purchaseQuantity, amountAfter: after.amount }),
    difference: difference(before?.amount ?? zeroLike(line.amount), after?.amount ?? zeroLike(line.amount)),
  }];
}

function sectionChanges(before: Estimate, after: Estimate): readonly SectionChange[] {
  const old = new Map(before.sections.map((section) => [section.code, section]));
  const current = new Map(after.sections.map((section) => [section.code, section]));
  return [...new Map([...old, ...current])].map(([code, { title, amount }]) => ({
    code, title, ...amountChange(old.get(code)?.amount ?? zeroLike(amount), current.get(code)?.amount ?? zeroLike(amount)),
  })).filter((change) => change.before.amount !== change.after.amount);
}

const amountChange = (before: MoneyJson, after: MoneyJson): AmountChange => ({ before, after, difference: difference(before, after) });

const zeroLike = ({ currency }: MoneyJson): MoneyJson => moneyJson(exact({ amount: '0', currency }));

const difference = (before: MoneyJson, after: MoneyJson): MoneyJson => moneyJson(subtractMoney(exact(after), exact(before)));

function exact({ amount, currency }: MoneyJson): Money {
  const known = findCurrency(currency);
  const money = known === undefined ? undefined : moneyFrom(amount, known);
  if (money === undefined) throw new Defect(`A stored estimate holds ${amount} ${currency}, which is no money`);
  return money;
}

import { Defect } from '#lib/kernel';
import {
  addMoney,
  money,
  noMoney,
  spread,
  sumMoney,
  type Currency,
  type Decimal,
  type Money,
  type Rounding,
} from '#lib/money';
import { causeClasses, partOrLabours, type CauseClass, type PartOrLabour } from './cost-line.js';
import { percentOf } from './exact.js';

/** What a line contributes to the totals. */
export interface Contribution {
  readonly amount: Money;
  readonly taxGroup: string;
  readonly causeClass: CauseClass;
  readonly partOrLabour: PartOrLabour;
}

export interface TotalsTerms {
  readonly currency: Currency;
  readonly rounding: Rounding;
  readonly taxGroups: readonly { readonly code: string; readonly percent: Decimal }[];
  readonly overheadPercent: Decimal;
  readonly profitPercent: Decimal;
  /** Provisional sums: what will probably be found besides, measured again and paid by what is found; none when absent. */
  readonly provisional?: Money;
  readonly contingency: { readonly percent: Decimal } | { readonly amount: Money };
}

/** One corner of the table tax group x cause x part-or-labour, with everything that falls to it. */
export interface Cell {
  readonly taxGroup: string;
  readonly causeClass: CauseClass;
  readonly partOrLabour: PartOrLabour;
  readonly direct: Money;
  readonly overhead: Money;
  readonly profit: Money;
  readonly provisional: Money;
  readonly contingency: Money;
  readonly net: Money;
  readonly tax: Money;
}

export interface Totals {
  readonly direct: Money;
  readonly overhead: Money;
  readonly profit: Money;
  readonly provisional: Money;
  readonly contingency: Money;
  readonly net: Money;
  readonly taxes: readonly { readonly code: string; readonly taxable: Money; readonly tax: Money }[];
  readonly tax: Money;
  readonly gross: Money;
  readonly cells: readonly Cell[];
}

/**
 * Sums, loadings and tax in whole minor units.
 *
 * Overhead is a percentage of the lines, profit of lines and overhead, provisional sums are amounts, contingency a stated
 * amount or a percentage of all of these; each is rounded once and then shared over the cells by largest remainder, so that every way of adding up
 * gives the same total. Tax follows EN 16931: one taxable sum per group, one rounding per group, totals by addition.
 * Cells have an order of their own, so that the order of the lines changes nothing.
 *
 * Source: [EN-16931-1] BR-CO-10, BR-CO-13, BR-CO-14, BR-CO-15, BR-CO-17
 * Worked: test/reference/cases/costing-totals.ts
 */
export function totalsOf(contributions: readonly Contribution[], terms: TotalsTerms): Totals {
  const { rounding, currency } = terms;
  const direct = directByCell(contributions, terms);
  const sum = sumMoney(
    direct.map((cell) => cell.direct),
    currency,
  );
  const overhead = percentOf(sum, terms.overheadPercent, rounding);
  const profit = percentOf(addMoney(sum, overhead), terms.profitPercent, rounding);
  const { provisional = noMoney(currency) } = terms;
  const contingency = contingencyOf(sumMoney([sum, overhead, profit, provisional], currency), terms);
  const untaxed = withLoadings(direct, { overhead, profit, provisional, contingency });
  const taxes = terms.taxGroups.map(({ code, percent }) => taxOfGroup({ code, percent }, untaxed, terms));
  const cells = terms.taxGroups.flatMap(({ code }, index) =>
    withTax(
      untaxed.filter(({ taxGroup }) => taxGroup === code),
      taxes[index].tax,
    ),
  );
  const net = sumMoney([sum, overhead, profit, provisional, contingency], currency);
  const tax = sumMoney(
    taxes.map((group) => group.tax),
    currency,
  );
  const gross = addMoney(net, tax);
  return { direct: sum, overhead, profit, provisional, contingency, net, taxes, tax, gross, cells };
}

type DirectCell = Pick<Cell, 'taxGroup' | 'causeClass' | 'partOrLabour' | 'direct'>;
type UntaxedCell = Omit<Cell, 'tax'>;

function directByCell(
  contributions: readonly Contribution[],
  { taxGroups, currency }: TotalsTerms,
): readonly DirectCell[] {
  const sums = new Map<string, bigint>();
  for (const { amount, ...place } of contributions) {
    const key = cellKey(place);
    sums.set(key, (sums.get(key) ?? 0n) + amount.minor);
  }
  const cells = taxGroups.flatMap(({ code }) =>
    causeClasses.flatMap((causeClass) =>
      partOrLabours.flatMap((partOrLabour) => {
        const minor = sums.get(cellKey({ taxGroup: code, causeClass, partOrLabour }));
        return minor === undefined
          ? []
          : [{ taxGroup: code, causeClass, partOrLabour, direct: money(minor, currency) }];
      }),
    ),
  );
  if (cells.length !== sums.size)
    throw new Defect('A line belongs to a tax group that the roll-up does not have');
  return cells;
}

const cellKey = ({ taxGroup, causeClass, partOrLabour }: Omit<Contribution, 'amount'>): string =>
  `${causeClass}/${partOrLabour}/${taxGroup}`;

const contingencyOf = (base: Money, { contingency, rounding }: TotalsTerms): Money =>
  'amount' in contingency ? contingency.amount : percentOf(base, contingency.percent, rounding);

interface Loadings {
  readonly overhead: Money;
  readonly profit: Money;
  readonly provisional: Money;
  readonly contingency: Money;
}

function withLoadings(cells: readonly DirectCell[], loadings: Loadings): readonly UntaxedCell[] {
  const weights = weightsOf(cells.map(({ direct }) => direct.minor));
  const { overhead, profit, provisional, contingency } = loadings;
  const [overheads, profits, provisionals, contingencies] = [overhead, profit, provisional, contingency].map(
    (amount) => (cells.length === 0 ? [] : spread(amount, weights)),
  );
  return cells.map((cell, index) => {
    const parts = {
      overhead: overheads[index],
      profit: profits[index],
      provisional: provisionals[index],
      contingency: contingencies[index],
    };
    return { ...cell, ...parts, net: sumMoney([cell.direct, ...Object.values(parts)], cell.direct.currency) };
  });
}

/** Where nothing costs anything, everything weighs the same. */
const weightsOf = (amounts: readonly bigint[]): readonly bigint[] =>
  amounts.every((amount) => amount === 0n) ? amounts.map(() => 1n) : amounts;

function taxOfGroup(
  { code, percent }: TotalsTerms['taxGroups'][number],
  cells: readonly UntaxedCell[],
  { currency, rounding }: TotalsTerms,
): Totals['taxes'][number] {
  const minor = cells.reduce((sum, cell) => (cell.taxGroup === code ? sum + cell.net.minor : sum), 0n);
  const taxable = money(minor, currency);
  return { code, taxable, tax: percentOf(taxable, percent, rounding) };
}

function withTax(cells: readonly UntaxedCell[], tax: Money): readonly Cell[] {
  if (cells.length === 0) return [];
  const shares = spread(tax, weightsOf(cells.map(({ net }) => net.minor)));
  return cells.map((cell, index) => ({ ...cell, tax: shares[index] }));
}

/** The sum of one column over some of the cells. */
export const cellSum = (
  cells: readonly Cell[],
  column: 'direct' | 'overhead' | 'profit' | 'provisional' | 'contingency' | 'net' | 'tax',
  currency: Currency,
): Money => cells.reduce((sum, cell) => addMoney(sum, cell[column]), noMoney(currency));

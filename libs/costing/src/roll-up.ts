import { saidOr } from '#lib/asking';
import { priceJobQuestions } from './questions.js';
import {
  andThen,
  below,
  mapValue,
  pointer,
  problem,
  refusal,
  success,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import {
  addMoney,
  currencyCodes,
  decimal,
  decimalFromNumber,
  decimalString,
  exactDecimal,
  findCurrency,
  moneyFrom,
  moneyIn,
  moneyJson,
  noMoney,
  subtractMoney,
  sumMoney,
  type Currency,
  type Decimal,
  type Money,
  type MoneyJson,
  type Rounding,
} from '#lib/money';
import { assumptionsOf, type Figure } from '#lib/provenance';
import {
  causeClasses,
  partOrLabours,
  sectionTitles,
  type CauseClass,
  type CostLine,
  type LineRequest,
  type PartOrLabour,
  type Section,
  type TaxGroup,
} from './cost-line.js';
import { roundings } from './exact.js';
import { decimalFault, faultsOfLine } from './line-faults.js';
import { priceLine, type PricedLine } from './price-line.js';
import { cellSum, totalsOf, type Cell, type Totals, type TotalsTerms } from './totals.js';

export interface RollUpRequest {
  /** ISO 4217; every rate is in it, nothing is converted. */
  readonly currency: string;
  readonly lines: readonly LineRequest[];
  readonly taxGroups: readonly TaxGroup[];
  /** Exact decimal texts; absent means none. */
  readonly overheadPercent?: string;
  readonly profitPercent?: string;
  /** Exact decimal text: what will probably be found besides; absent means none. */
  readonly provisional?: string;
  readonly contingency?: { readonly percent: string } | { readonly amount: string };
  readonly rounding?: Rounding;
}

export interface SectionTotal {
  /** Section that is summed. */
  readonly section: Section;
  /** Name of the section. */
  readonly title: string;
  /** Lines in the section. */
  readonly lineCount: number;
  /** Sum of the section. */
  readonly amount: MoneyJson;
}

/** What falls to one cause, or to parts or labour: loadings and tax shared by largest remainder. */
export interface Share {
  /** Lines of this share. */
  readonly direct: MoneyJson;
  /** Overhead, profit and reserves of this share. */
  readonly loadings: MoneyJson;
  /** This share before tax. */
  readonly net: MoneyJson;
  /** Tax on this share. */
  readonly tax: MoneyJson;
  /** This share with tax. */
  readonly gross: MoneyJson;
}

export interface CostRollUp {
  /** Currency of the whole roll-up (ISO 4217). */
  readonly currency: string;
  /** Priced lines in the order of their sections. */
  readonly lines: readonly CostLine[];
  /** Named and priced, not summed. */
  readonly outOfScope: readonly CostLine[];
  /** Sum of each section. */
  readonly sections: readonly SectionTotal[];
  /** Sum of all lines in scope. */
  readonly direct: MoneyJson;
  /** Overhead on the direct cost. */
  readonly overhead: MoneyJson;
  /** Profit on direct cost and overhead. */
  readonly profit: MoneyJson;
  /** Sums for work that is not yet known. */
  readonly provisional: MoneyJson;
  /** Reserve for what may be found. */
  readonly contingency: MoneyJson;
  /** Price before tax. */
  readonly net: MoneyJson;
  /** Each tax with what it is on. */
  readonly taxes: readonly (TaxGroup & {
    /** Amount that the tax is on. */
    readonly taxable: MoneyJson;
    /** Tax on that amount. */
    readonly tax: MoneyJson;
  })[];
  /** All taxes together. */
  readonly tax: MoneyJson;
  /** Price with tax. */
  readonly gross: MoneyJson;
  /** The price parted by who bears its cause. */
  readonly byCause: readonly (Share & {
    /** Cause that the share is put down to. */
    readonly causeClass: CauseClass;
  })[];
  /** The price parted into goods and work. */
  readonly byPartOrLabour: readonly (Share & {
    /** Whether the share is goods or work. */
    readonly partOrLabour: PartOrLabour;
  })[];
  /** Cause and part or labour crossed, as a claim splits them. */
  readonly byCauseAndPart: readonly (Share & {
    /** Cause of this cell of the table. */
    readonly causeClass: CauseClass;
    /** Goods or work in this cell of the table. */
    readonly partOrLabour: PartOrLabour;
  })[];
  /** Wear of old parts that new ones replace. */
  readonly depreciation: {
    /** Price of parts that wear counts on. */
    readonly parts: MoneyJson;
    /** Wear taken off. */
    readonly depreciation: MoneyJson;
    /** Parts less wear. */
    readonly remaining: MoneyJson;
  };
  /** Percentages and rounding that the price is made with. */
  readonly terms: {
    /** Overhead in percent of direct cost. */
    readonly overheadPercent: string;
    /** Profit in percent of cost with overhead. */
    readonly profitPercent: string;
    /** Reserve in percent; absent when it is worked out from the risk. */
    readonly contingencyPercent?: string;
    /** How amounts are rounded. */
    readonly rounding: Rounding;
  };
  /** Terms of the price that nobody stated. */
  readonly assumptions: readonly Figure[];
}

const MOST_LINES = 20_000;

/** Lines into sections, loadings, tax and total: exact, and the same whichever way it is added up. */
export const rollUp = (request: RollUpRequest): Outcome<CostRollUp> =>
  mapValue(priced(request), (lines) => assembled(request, lines));

/** What is set aside beyond the lines, once they are known. */
export type Decide<T> = (bare: CostRollUp) => Outcome<T & Pick<RollUpRequest, 'contingency' | 'provisional'>>;

/** Lines priced once and added up twice: bare, and with the contingency that is decided on seeing that. */
export const rollUpDeciding = <T>(
  request: Omit<RollUpRequest, 'contingency'>,
  decide: Decide<T>,
): Outcome<T & { readonly bare: CostRollUp; readonly rollUp: CostRollUp }> =>
  andThen(priced(request), (lines) => {
    const bare = assembled(request, lines);
    return andThen(decide(bare), (decided) => {
      const { contingency, provisional } = decided;
      const problems = contingency === undefined ? [] : contingencyFault(contingency, lines.currency);
      return problems.length > 0
        ? refusal(...problems)
        : success({
            ...decided,
            bare,
            rollUp: assembled(
              {
                ...request,
                ...(contingency === undefined ? {} : { contingency }),
                ...(provisional === undefined ? {} : { provisional }),
              },
              lines,
            ),
          });
    });
  });

interface PricedRequest {
  readonly currency: Currency;
  readonly lines: readonly PricedLine[];
}

function priced(request: RollUpRequest): Outcome<PricedRequest> {
  const currency = findCurrency(request.currency);
  if (currency === undefined) {
    return refusal(
      problem('not-one-of', '/currency', { value: request.currency, choices: currencyCodes.join(', ') }),
    );
  }
  const problems = faultsOf(request, currency);
  if (problems.length > 0) return refusal(...problems);
  const terms = termsOf(request, currency);
  return success({
    currency,
    lines: request.lines.map((line, index) => pricedLine(line, { terms, at: pointer('/lines', index) })),
  });
}

const none = decimal(0n, 0);
const read = (text: string | undefined): Decimal => (text === undefined ? none : exactDecimal(text));

const termsOf = (request: RollUpRequest, currency: Currency): TotalsTerms => ({
  currency,
  rounding: saidOr(priceJobQuestions.rounding, request.rounding),
  taxGroups: request.taxGroups.map(({ code, percent }) => ({ code, percent: read(percent) })),
  overheadPercent: read(request.overheadPercent),
  profitPercent: read(request.profitPercent),
  provisional: request.provisional === undefined ? noMoney(currency) : moneyIn(request.provisional, currency),
  contingency: contingencyTerms(request, currency),
});

function contingencyTerms({ contingency }: RollUpRequest, currency: Currency): TotalsTerms['contingency'] {
  if (contingency === undefined) return { percent: none };
  if ('percent' in contingency) return { percent: read(contingency.percent) };
  return { amount: moneyIn(contingency.amount, currency) };
}

function pricedLine(
  line: LineRequest,
  { terms, at }: { readonly terms: TotalsTerms; readonly at: string },
): PricedLine {
  const group = terms.taxGroups.find(({ code }) => code === line.taxGroup);
  const worn = depreciationPercent(line);
  return priceLine(line, {
    currency: terms.currency,
    rounding: terms.rounding,
    unitRate: read(line.unitRate),
    taxPercent: group?.percent ?? none,
    at,
    ...(worn === undefined ? {} : { depreciationPercent: worn }),
  });
}

/** Straight line over the life where no percentage is stated; never more than everything. */
function depreciationPercent({ depreciation }: LineRequest): Decimal | undefined {
  if (depreciation === undefined) return undefined;
  if (depreciation.percent !== undefined) return read(depreciation.percent);
  const share = depreciation.ageYears / (depreciation.lifeYears ?? Number.POSITIVE_INFINITY);
  return decimalFromNumber(Math.min(1, share) * 100, 2, 'half-away-from-zero');
}

function assembled(request: RollUpRequest, { currency, lines: all }: PricedRequest): CostRollUp {
  const terms = termsOf(request, currency);
  const summed = all.filter(({ line }) => line.scope === 'in');
  const totals = totalsOf(
    summed.map(({ line: { taxGroup, causeClass, partOrLabour }, amount }) => ({
      amount,
      taxGroup,
      causeClass,
      partOrLabour,
    })),
    terms,
  );
  const lines = summed.map(({ line }) => line);
  return {
    currency: request.currency,
    lines,
    outOfScope: all.filter(({ line }) => line.scope === 'out').map(({ line }) => line),
    sections: sectionsOf(summed, terms.currency),
    ...mainTotals(totals),
    taxes: request.taxGroups.map((group, index) => ({
      ...group,
      taxable: moneyJson(totals.taxes[index].taxable),
      tax: moneyJson(totals.taxes[index].tax),
    })),
    ...splits(totals.cells, terms.currency),
    depreciation: depreciationTotals(summed, terms.currency),
    terms: termsShown(terms),
    // Looked for below every line when they are read: whoever wants the sums alone is spared it.
    get assumptions() {
      return lines.flatMap(({ why }) => assumptionsOf(why));
    },
  };
}

const mainTotals = (
  totals: Totals,
): Pick<
  CostRollUp,
  'direct' | 'overhead' | 'profit' | 'provisional' | 'contingency' | 'net' | 'tax' | 'gross'
> => ({
  direct: moneyJson(totals.direct),
  overhead: moneyJson(totals.overhead),
  profit: moneyJson(totals.profit),
  provisional: moneyJson(totals.provisional),
  contingency: moneyJson(totals.contingency),
  net: moneyJson(totals.net),
  tax: moneyJson(totals.tax),
  gross: moneyJson(totals.gross),
});

const termsShown = ({
  overheadPercent,
  profitPercent,
  contingency,
  rounding,
}: TotalsTerms): CostRollUp['terms'] => ({
  overheadPercent: decimalString(overheadPercent),
  profitPercent: decimalString(profitPercent),
  ...('percent' in contingency ? { contingencyPercent: decimalString(contingency.percent) } : {}),
  rounding,
});

const allSections = (): readonly Section[] => Object.keys(sectionTitles).filter(isSection);
const isSection = (text: string): text is Section => Object.hasOwn(sectionTitles, text);

const sectionsOf = (priced: readonly PricedLine[], currency: Currency): readonly SectionTotal[] =>
  allSections().flatMap((section) => {
    const own = priced.filter(({ line }) => line.section === section);
    if (own.length === 0) return [];
    const amount = sumMoney(
      own.map((one) => one.amount),
      currency,
    );
    return [{ section, title: sectionTitles[section], lineCount: own.length, amount: moneyJson(amount) }];
  });

function splits(
  cells: readonly Cell[],
  currency: Currency,
): Pick<CostRollUp, 'byCause' | 'byPartOrLabour' | 'byCauseAndPart'> {
  const byCauseAndPart = causeClasses.flatMap((causeClass) =>
    partOrLabours.flatMap((partOrLabour) => {
      const own = cells.filter(
        (cell) => cell.causeClass === causeClass && cell.partOrLabour === partOrLabour,
      );
      return own.length === 0 ? [] : [{ causeClass, partOrLabour, ...shareOf(own, currency) }];
    }),
  );
  return {
    byCause: causeClasses.flatMap((causeClass) => {
      const own = cells.filter((cell) => cell.causeClass === causeClass);
      return own.length === 0 ? [] : [{ causeClass, ...shareOf(own, currency) }];
    }),
    byPartOrLabour: partOrLabours.flatMap((partOrLabour) => {
      const own = cells.filter((cell) => cell.partOrLabour === partOrLabour);
      return own.length === 0 ? [] : [{ partOrLabour, ...shareOf(own, currency) }];
    }),
    byCauseAndPart,
  };
}

function shareOf(cells: readonly Cell[], currency: Currency): Share {
  const direct = cellSum(cells, 'direct', currency);
  const net = cellSum(cells, 'net', currency);
  const tax = cellSum(cells, 'tax', currency);
  return {
    direct: moneyJson(direct),
    loadings: moneyJson(subtractMoney(net, direct)),
    net: moneyJson(net),
    tax: moneyJson(tax),
    gross: moneyJson(addMoney(net, tax)),
  };
}

function depreciationTotals(priced: readonly PricedLine[], currency: Currency): CostRollUp['depreciation'] {
  const parts: Money = sumMoney(
    priced.filter(({ line }) => line.partOrLabour === 'part').map(({ amount }) => amount),
    currency,
  );
  const worn = sumMoney(
    priced.map(({ depreciation }) => depreciation),
    currency,
  );
  return {
    parts: moneyJson(parts),
    depreciation: moneyJson(worn),
    remaining: moneyJson(subtractMoney(parts, worn)),
  };
}

function faultsOf(request: RollUpRequest, currency: Currency): readonly Problem[] {
  const summed = request.lines.filter(({ scope }) => scope !== 'out').length;
  if (summed === 0) return [problem('too-few', '/lines', { count: 0, least: 1 })];
  if (request.lines.length > MOST_LINES)
    return [problem('too-many', '/lines', { count: request.lines.length, most: MOST_LINES })];
  return [
    ...faultsOfTerms(request, currency),
    ...repeated(
      request.taxGroups.map(({ code }) => code),
      '/taxGroups',
    ),
    ...repeated(
      request.lines.map(({ code }) => code),
      '/lines',
    ),
    ...request.lines.flatMap((line, index) => {
      const faults = faultsOfLine(line, request.taxGroups);
      return faults.length === 0 ? faults : below(pointer('/lines', index), faults);
    }),
  ];
}

function faultsOfTerms(
  { overheadPercent, profitPercent, provisional, contingency, rounding, taxGroups }: RollUpRequest,
  currency: Currency,
): readonly Problem[] {
  return [
    ...(overheadPercent === undefined ? [] : decimalFault(overheadPercent, '/overheadPercent')),
    ...(profitPercent === undefined ? [] : decimalFault(profitPercent, '/profitPercent')),
    ...taxGroups.flatMap(({ percent }, index) =>
      decimalFault(percent, pointer('/taxGroups', index, 'percent')),
    ),
    ...(contingency === undefined ? [] : contingencyFault(contingency, currency)),
    ...(provisional === undefined ? [] : contingencyFault({ amount: provisional }, currency, '/provisional')),
    ...(rounding === undefined || roundings.includes(rounding)
      ? []
      : [problem('not-one-of', '/rounding', { value: rounding, choices: roundings.join(', ') })]),
  ];
}

function contingencyFault(
  contingency: NonNullable<RollUpRequest['contingency']>,
  currency: Currency,
  at = '/contingency/amount',
): readonly Problem[] {
  if ('percent' in contingency) return decimalFault(contingency.percent, '/contingency/percent');
  const amount = moneyFrom(contingency.amount, currency);
  if (amount !== undefined && amount.minor >= 0n) return [];
  return [
    problem('not-a-decimal', at, {
      value: contingency.amount,
      most: currency.minorDigits,
    }),
  ];
}

function repeated(codes: readonly string[], at: string): readonly Problem[] {
  const seen = new Set<string>();
  return codes.flatMap((code, index) => {
    if (seen.has(code)) return [problem('duplicate', pointer(at, index, 'code'), { value: code })];
    seen.add(code);
    return [];
  });
}

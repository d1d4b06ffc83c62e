import { Defect, problem, refusal, success, type Outcome } from '#lib/kernel';
import {
  addMoney,
  decimalFrom,
  exactMoney,
  findCurrency,
  money,
  moneyJson,
  noMoney,
  roundedDivision,
  subtractMoney,
  sumMoney,
  type Currency,
  type Money,
  type MoneyJson,
} from '#lib/money';
import type { DocumentLine, PricedDocument } from './priced-document.js';
import type { ReMeasured } from './re-measured.js';

export type Change = 'added' | 'removed' | 'changed' | 'same';

/** A line that differs between two estimates. */
export interface LineChange {
  /** Line of the estimate that changed. */
  readonly code: string;
  /** What the line is for. */
  readonly title: string;
  /** Whether it was added, removed or changed. */
  readonly change: Change;
  /** Its amount in the earlier estimate. */
  readonly before: MoneyJson;
  /** Its amount in the later estimate. */
  readonly after: MoneyJson;
  /** Later amount less the earlier. */
  readonly difference: MoneyJson;
  /** Unit of the line's quantities. */
  readonly unit: string;
  /** Quantity in the earlier estimate, as decimal text. */
  readonly quantityBefore: string;
  /** Quantity in the later estimate, as decimal text. */
  readonly quantityAfter: string;
  /** Of the difference, because there is more or less of it, at the old rate. */
  readonly becauseOfQuantity: MoneyJson;
  /** Of the difference, because it costs more or less. */
  readonly becauseOfRate: MoneyJson;
  /** In words: what the caller said of it, else what the numbers say. */
  readonly because: readonly string[];
}

/** A section of the sum, or a step from the sum of the lines to what is to be paid. */
export interface TotalChange {
  /** Which total changed. */
  readonly code: string;
  /** Name of the total. */
  readonly name: string;
  /** The total in the earlier estimate. */
  readonly before: MoneyJson;
  /** The total in the later estimate. */
  readonly after: MoneyJson;
  /** What the total rose by; negative where it fell. */
  readonly difference: MoneyJson;
}

export interface RevisionComparison {
  readonly currency: string;
  readonly lines: readonly LineChange[];
  readonly totals: readonly TotalChange[];
  readonly difference: MoneyJson;
  /** Of the amount without tax before; undefined when that was nothing. */
  readonly shareOfBefore?: number;
}

export interface RevisionReasons {
  /** What became known, e.g. that the opened area was measured again. */
  readonly overall?: string;
  /** By line code. */
  readonly byLine?: Readonly<Record<string, string>>;
}

/** Line by line what changed from one revision to the next, by how much and because of what. */
export function compareRevisions(
  before: PricedDocument,
  after: PricedDocument,
  reasons: RevisionReasons = {},
): Outcome<RevisionComparison> {
  const currency = findCurrency(after.currency);
  if (currency === undefined || before.currency !== after.currency) {
    return refusal(
      problem('other-currency', '/before/currency', { value: before.currency, currency: after.currency }),
    );
  }
  const lines = pairsOf(before, after).map((pair) => lineChange(pair, currency, reasons));
  const lineSum = sumMoney(
    lines.map(({ difference }) => exactMoney(difference)),
    currency,
  );
  const difference = subtractMoney(exactMoney(after.direct), exactMoney(before.direct));
  if (lineSum.minor !== difference.minor)
    throw new Defect('The differences of the lines do not make the difference of the totals');
  const net = Number(before.net.amount);
  const change = subtractMoney(exactMoney(after.net), exactMoney(before.net));
  return success({
    currency: after.currency,
    lines,
    totals: totalsOf(before, after, currency),
    difference: moneyJson(change),
    ...(net === 0 ? {} : { shareOfBefore: (Number(after.net.amount) - net) / net }),
  });
}

interface Pair {
  readonly before: DocumentLine | undefined;
  readonly after: DocumentLine | undefined;
}

/** In the order of the new revision, what fell away at the end. */
function pairsOf(before: PricedDocument, after: PricedDocument): readonly Pair[] {
  const old = new Map(before.lines.map((line) => [line.code, line]));
  const kept = new Set(after.lines.map(({ code }) => code));
  return [
    ...after.lines.map((line) => ({ before: old.get(line.code), after: line })),
    ...before.lines.filter(({ code }) => !kept.has(code)).map((line) => ({ before: line, after: undefined })),
  ];
}

function lineChange({ before, after }: Pair, currency: Currency, reasons: RevisionReasons): LineChange {
  const known = after ?? before;
  if (known === undefined) throw new Defect('A change of no line');
  const amountBefore = before === undefined ? noMoney(currency) : exactMoney(before.amount);
  const amountAfter = after === undefined ? noMoney(currency) : exactMoney(after.amount);
  const difference = subtractMoney(amountAfter, amountBefore);
  const byQuantity = quantityEffect({ before, after }, difference);
  const change = changeOf({ before, after }, difference);
  return {
    code: known.code,
    title: known.title,
    change,
    before: moneyJson(amountBefore),
    after: moneyJson(amountAfter),
    difference: moneyJson(difference),
    unit: known.unit,
    quantityBefore: before?.quantity.charged ?? '0',
    quantityAfter: after?.quantity.charged ?? '0',
    becauseOfQuantity: moneyJson(byQuantity),
    becauseOfRate: moneyJson(subtractMoney(difference, byQuantity)),
    because: change === 'same' ? [] : reasonsFor({ before, after }, change, reasons),
  };
}

function changeOf({ before, after }: Pair, difference: Money): Change {
  if (before === undefined) return 'added';
  if (after === undefined) return 'removed';
  const isSame =
    difference.minor === 0n &&
    before.quantity.charged === after.quantity.charged &&
    before.unitRate.amount === after.unitRate.amount;
  return isSame ? 'same' : 'changed';
}

/** (new quantity - old quantity) at the old rate, which is the old amount over the old quantity; the rest is the rate's. */
function quantityEffect({ before, after }: Pair, difference: Money): Money {
  if (before === undefined || after === undefined) return difference;
  const old = decimalFrom(before.quantity.charged);
  const now = decimalFrom(after.quantity.charged);
  if (old === undefined || now === undefined || old.scaled === 0n || before.unit !== after.unit)
    return difference;
  const places = Math.max(old.places, now.places);
  const scaled = (one: typeof old): bigint => one.scaled * 10n ** BigInt(places - one.places);
  const amount = exactMoney(before.amount);
  return money(
    roundedDivision(amount.minor * (scaled(now) - scaled(old)), scaled(old), 'half-away-from-zero'),
    difference.currency,
  );
}

function reasonsFor(pair: Pair, change: Change, { overall, byLine }: RevisionReasons): readonly string[] {
  const code = (pair.after ?? pair.before)?.code ?? '';
  const said = byLine?.[code];
  return [
    ...(said === undefined ? [] : [said]),
    ...wordsFor(pair, change),
    ...(said === undefined && overall !== undefined ? [overall] : []),
  ];
}

function wordsFor({ before, after }: Pair, change: Change): readonly string[] {
  if (before === undefined || after === undefined)
    return [change === 'added' ? 'not in the revision before' : 'no longer needed'];
  const isMore = before.quantity.charged !== after.quantity.charged;
  const isDearer = before.unitRate.amount !== after.unitRate.amount;
  return [
    ...(isMore ? [`quantity ${before.quantity.charged} to ${after.quantity.charged} ${after.unit}`] : []),
    ...(isDearer
      ? [
          `rate ${before.unitRate.amount} to ${after.unitRate.amount} ${after.unitRate.currency}/${after.unit}`,
        ]
      : []),
  ];
}

/** The steps from the lines to what is to be paid, in order. */
const steps = {
  direct: 'Sum of lines',
  overhead: 'Overhead',
  profit: 'Profit',
  provisional: 'Provisional sums for what is found besides',
  contingency: 'Contingency',
  net: 'Without tax',
  tax: 'Tax',
  gross: 'With tax',
} as const satisfies Partial<Record<keyof PricedDocument, string>>;

const stepNames = [
  'direct',
  'overhead',
  'profit',
  'provisional',
  'contingency',
  'net',
  'tax',
  'gross',
] as const satisfies readonly (keyof typeof steps)[];

function totalsOf(before: PricedDocument, after: PricedDocument, currency: Currency): readonly TotalChange[] {
  const change = (code: string, name: string, pick: (priced: PricedDocument) => MoneyJson): TotalChange => ({
    code,
    name,
    before: pick(before),
    after: pick(after),
    difference: moneyJson(subtractMoney(exactMoney(pick(after)), exactMoney(pick(before)))),
  });
  const titles = new Map(
    [...before.sections, ...after.sections].map(({ section, title }) => [section, title]),
  );
  const none = moneyJson(noMoney(currency));
  return [
    ...[...titles].map(([section, title]) =>
      change(
        section,
        title,
        ({ sections }) => sections.find((one) => one.section === section)?.amount ?? none,
      ),
    ),
    ...stepNames.map((step) => change(step, steps[step], (priced) => priced[step])),
  ];
}

export interface ChangeOrderRequest {
  readonly number: number;
  readonly reference: string;
  readonly reason: string;
  readonly date: string;
  /** Working days more or less. */
  readonly extraDays?: number;
  /** What was agreed first, without tax; the sum before this change order when there was no other. */
  readonly firstSum?: MoneyJson;
  readonly byRates?: ReMeasured;
}

/** A change order as text to be signed, in the parts that a letter has. */
export interface ChangeOrder {
  /** Heading of the change order. */
  readonly title: string;
  /** Why the work changed, as stated with the revision. */
  readonly reason: string;
  /** Lines that came in or grew. */
  readonly additions: readonly LineChange[];
  /** Lines that went or shrank. */
  readonly deductions: readonly LineChange[];
  /** From the lines to what is to be paid, before and after. */
  readonly steps: readonly TotalChange[];
  /** The steps from the old total to the new one. */
  readonly sums: readonly {
    /** What the sum is. */
    readonly name: string;
    /** Its amount; a deduction is negative. */
    readonly amount: MoneyJson;
  }[];
  /** Everything found since the first issue, by the rates agreed with it; absent where that was in another currency. */
  readonly byRates?: ReMeasured;
  /** Sentences that both parties sign. */
  readonly statements: readonly string[];
  /** Whose name, date and signature it needs. */
  readonly signatures: readonly string[];
}

/** Above this share of the sum agreed, work should not go on before the owner has agreed in writing. */
const AUTHORISE_ABOVE_SHARE = 0.1;

export function changeOrder(comparison: RevisionComparison, request: ChangeOrderRequest): ChangeOrder {
  const currency = findCurrency(comparison.currency);
  if (currency === undefined) throw new Defect(`A comparison in ${comparison.currency}`);
  const total = (code: (typeof stepNames)[number]): TotalChange =>
    comparison.totals.find((one) => one.code === code) ?? missing(code);
  const before = exactMoney(total('net').before);
  const first = request.firstSum?.currency === currency.code ? exactMoney(request.firstSum) : before;
  const isAbove = (test: (minor: bigint) => boolean) =>
    comparison.lines.filter(({ difference }) => test(exactMoney(difference).minor));
  return {
    title: `Change order ${request.number} to ${request.reference}, ${request.date}`,
    reason: request.reason,
    additions: isAbove((minor) => minor > 0n),
    deductions: isAbove((minor) => minor < 0n),
    steps: stepNames.map(total),
    sums: [
      { name: 'Sum agreed first, without tax', amount: moneyJson(first) },
      { name: 'Earlier change orders', amount: moneyJson(subtractMoney(before, first)) },
      { name: 'This change order', amount: comparison.difference },
      {
        name: 'Sum after this change order, without tax',
        amount: moneyJson(addMoney(before, exactMoney(comparison.difference))),
      },
      { name: 'Tax on the whole', amount: total('tax').after },
      { name: 'Sum with tax', amount: total('gross').after },
    ],
    ...(request.byRates === undefined ? {} : { byRates: request.byRates }),
    statements: statementsOf(comparison, request),
    signatures: ['For the yard', 'For the owner'],
  };
}

const missing = (name: string): never => {
  throw new Defect(`A comparison without ${name}`);
};

function statementsOf(
  { shareOfBefore, currency }: RevisionComparison,
  { extraDays, firstSum }: ChangeOrderRequest,
): readonly string[] {
  const share = shareOfBefore ?? 0;
  const days = extraDays ?? 0;
  return [
    'Everything not named here stays as agreed.',
    ...(firstSum === undefined || firstSum.currency === currency
      ? []
      : [
          `The first issue was in ${firstSum.currency}; nothing is converted, so the sum agreed first is that of the issue before this one.`,
        ]),
    days === 0
      ? 'The date of completion stays as agreed.'
      : `The work takes ${Math.abs(days)} working days ${days > 0 ? 'more' : 'less'}.`,
    ...(share > AUTHORISE_ABOVE_SHARE
      ? [
          `The sum rises by ${Math.round(share * 1000) / 10} %. Work on what is added does not start before this is signed; local law may ask for the same.`,
        ]
      : []),
  ];
}

import { pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { addMoney, exactMoney, moneyJson, subtractMoney, type MoneyJson } from '#lib/money';
import type { CostRisk } from './risk/cost-risk.js';
import type { CostRollUp } from './roll-up.js';

/** One way of doing the same job, worked out; or refused, with the rule that refuses it. */
export interface VariantResult {
  readonly code: string;
  readonly title: string;
  readonly rollUp?: CostRollUp;
  readonly risk?: Pick<CostRisk, 'p10' | 'p80' | 'p90'>;
  readonly days?: number;
  readonly massKg?: number;
  /** Largest utilisation of any structural check; above 1 fails. */
  readonly utilisation?: number;
  readonly refusal?: { readonly rule: string; readonly why: string };
  /** On what its figures rest, where that is not plain. */
  readonly note?: string;
}

/** What variants are weighed on; less is better in each. */
export const criteria = ['cost', 'p80', 'labourH', 'days', 'massKg', 'utilisation', 'spread'] as const;
export type Criterion = (typeof criteria)[number];

/** What a variant comes to in each of the criteria; absent where it is not known. */
export interface VariantValues {
  /** Lines with overhead and profit, without tax. */
  readonly cost: MoneyJson;
  /** What four jobs in five stay below, without tax. */
  readonly p80?: MoneyJson;
  /** Hours that the variant takes. */
  readonly labourH: number;
  /** Working days. */
  readonly days?: number;
  /** Mass that the variant adds; absent when unknown. */
  readonly massKg?: number;
  /** Highest demand over capacity with the variant. */
  readonly utilisation?: number;
  /** What lies between P10 and P90 of the cost, without tax. */
  readonly spread?: MoneyJson;
}

export interface VariantRow {
  /** Code of the variant. */
  readonly code: string;
  /** Name of the variant. */
  readonly title: string;
  /** Figures that variants are compared by. */
  readonly values: VariantValues;
  /** Its price before tax. */
  readonly net: MoneyJson;
  /** Its price with tax. */
  readonly gross: MoneyJson;
  /** Whether a check fails with it. */
  readonly failsCheck: boolean;
  /** Codes of variants that are as good in everything compared and better in something. */
  readonly dominatedBy: readonly string[];
  /** In which of the criteria nothing is better. */
  readonly bestIn: readonly Criterion[];
  /** What to know about the variant. */
  readonly note?: string;
}

export interface VariantComparison {
  /** Currency of all variants. */
  readonly currency: string;
  /** Criteria that every variant has a value for, and that dominance is judged on. */
  readonly compared: readonly Criterion[];
  /** Variants, each with its figures. */
  readonly rows: readonly VariantRow[];
  /** Variants that cannot be done. */
  readonly refused: readonly {
    /** Variant that is refused. */
    readonly code: string;
    /** Name of the refused variant. */
    readonly title: string;
    /** Rule that refuses it. */
    readonly rule: string;
    /** Why it refuses it here. */
    readonly why: string;
  }[];
}

/** The same job done in several ways, on equal terms. */
export function compareVariants(variants: readonly VariantResult[]): Outcome<VariantComparison> {
  const problems = faultsOf(variants);
  if (problems.length > 0) return refusal(...problems);
  const valued = variants.flatMap((variant) =>
    variant.rollUp === undefined
      ? []
      : [{ variant, rollUp: variant.rollUp, values: valuesOf(variant, variant.rollUp) }],
  );
  const compared = criteria.filter((criterion) =>
    valued.every(({ values }) => values[criterion] !== undefined),
  );
  return success({
    currency: valued[0].rollUp.currency,
    compared,
    rows: valued.map(({ variant, rollUp, values }) => ({
      code: variant.code,
      title: variant.title,
      values,
      net: rollUp.net,
      gross: rollUp.gross,
      failsCheck: (variant.utilisation ?? 0) > 1,
      dominatedBy: valued
        .filter((other) => dominates(other.values, values, compared))
        .map((other) => other.variant.code),
      bestIn: compared.filter((criterion) =>
        valued.every((other) => at(values, criterion) <= at(other.values, criterion)),
      ),
      ...(variant.note === undefined ? {} : { note: variant.note }),
    })),
    refused: variants.flatMap(({ code, title, refusal: why }) =>
      why === undefined ? [] : [{ code, title, ...why }],
    ),
  });
}

const at = (values: VariantValues, criterion: Criterion): number => {
  const value = values[criterion];
  return typeof value === 'object' ? Number(value.amount) : (value ?? Number.POSITIVE_INFINITY);
};

const dominates = (a: VariantValues, b: VariantValues, compared: readonly Criterion[]): boolean =>
  compared.every((criterion) => at(a, criterion) <= at(b, criterion)) &&
  compared.some((criterion) => at(a, criterion) < at(b, criterion));

function valuesOf(
  { risk, days, massKg, utilisation }: VariantResult,
  { direct, overhead, profit, lines }: CostRollUp,
): VariantValues {
  const labourH = lines
    .filter(({ section, unit }) => section === 'labour' && unit === 'h')
    .reduce((sum, { quantity }) => sum + Number(quantity.charged), 0);
  return {
    cost: moneyJson([direct, overhead, profit].map(exactMoney).reduce(addMoney)),
    labourH,
    ...(risk === undefined
      ? {}
      : { p80: risk.p80, spread: moneyJson(subtractMoney(exactMoney(risk.p90), exactMoney(risk.p10))) }),
    ...(days === undefined ? {} : { days }),
    ...(massKg === undefined ? {} : { massKg }),
    ...(utilisation === undefined ? {} : { utilisation }),
  };
}

function faultsOf(variants: readonly VariantResult[]): readonly Problem[] {
  const codes = variants.map(({ code }) => code);
  const currencies = new Set(
    variants.flatMap(({ rollUp }) => (rollUp === undefined ? [] : [rollUp.currency])),
  );
  return [
    ...(currencies.size === 0 ? [problem('too-few', '/variants', { count: 0, least: 1 })] : []),
    ...codes.flatMap((code, index) =>
      codes.indexOf(code) === index
        ? []
        : [problem('duplicate', pointer('/variants', index, 'code'), { value: code })],
    ),
    ...(currencies.size > 1
      ? [
          problem('other-currency', '/variants', {
            value: [...currencies].slice(1).join(', '),
            currency: [...currencies][0],
          }),
        ]
      : []),
    ...variants.flatMap(({ rollUp, refusal: why }, index) =>
      rollUp === undefined && why === undefined
        ? [
            problem('missing', pointer('/variants', index), {
              expected: 'a roll-up, or the rule that refuses the variant',
            }),
          ]
        : [],
    ),
  ];
}

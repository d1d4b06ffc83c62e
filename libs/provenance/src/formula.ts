import {
  Defect,
  liesWithin,
  problem,
  rangeInWords,
  refusal,
  success,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import type { In } from '#lib/units';
import type { Cite } from './cite.js';
import { derived, type Figure } from './figure.js';

/** One input with the source's validity range; outside it the formula refuses, it never extrapolates. */
export interface FormulaInput {
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
  /** Must be greater than this. */
  readonly above?: number;
  /** Must be this or more. */
  readonly from?: number;
  /** Must be less than this. */
  readonly below?: number;
  /** Must be this or less. */
  readonly upTo?: number;
}

export interface FormulaOutput {
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
}

type Inputs = Readonly<Record<string, FormulaInput>>;
type Given<I extends Inputs> = { readonly [K in keyof I]: In<I[K]['unit']> };
type GivenFigures<I extends Inputs> = { readonly [K in keyof I]: Figure<I[K]['unit']> };

/** A published example: `printed` is exactly what the source prints; its last digit sets the tolerance. */
export interface WorkedExample<K extends string = string> {
  readonly at: string;
  readonly given: Readonly<Record<K, number>>;
  readonly printed: string;
  /** Only where the source itself is rounder than its last digit; says why. */
  readonly within?: { readonly absolute: number; readonly because: string };
}

export interface Formula<I extends Inputs = Inputs, O extends FormulaOutput = FormulaOutput> {
  readonly id: string;
  readonly title: string;
  readonly cite: Cite;
  readonly inputs: I;
  readonly output: O;
  readonly evaluate: (given: Given<I>) => In<O['unit']>;
  readonly worked: readonly [
    WorkedExample<Extract<keyof I, string>>,
    ...WorkedExample<Extract<keyof I, string>>[],
  ];
}

/** A formula as the tests and the docs see it: any inputs, any output. */
export interface AnyFormula {
  readonly id: string;
  readonly title: string;
  readonly cite: Cite;
  readonly inputs: Inputs;
  readonly output: FormulaOutput;
  readonly evaluate: (given: never) => number;
  readonly worked: readonly WorkedExample[];
}

export const defineFormula = <const I extends Inputs, const O extends FormulaOutput>(
  formula: Formula<I, O>,
): Formula<I, O> => formula;

/** Evaluates a formula on figures; the answer remembers the formula, its source and what went in. */
export function compute<I extends Inputs, O extends FormulaOutput>(
  formula: Formula<I, O>,
  figures: GivenFigures<NoInfer<I>>,
): Outcome<Figure<O['unit']>> {
  const problems = Object.entries(formula.inputs).flatMap(([name, input]) =>
    faultsOf(name, input, figures[name]),
  );
  if (problems.length > 0) return refusal(...problems);
  return success(evaluated(formula, figures));
}

/** `compute` for inputs already known to lie in range; being out of range is then our own fault. */
export function computeChecked<I extends Inputs, O extends FormulaOutput>(
  formula: Formula<I, O>,
  figures: GivenFigures<NoInfer<I>>,
): Figure<O['unit']> {
  const outcome = compute(formula, figures);
  if (outcome.ok) return outcome.value;
  throw new Defect(`${formula.id} refused checked inputs: ${JSON.stringify(outcome.problems)}`);
}

function evaluated<I extends Inputs, O extends FormulaOutput>(
  formula: Formula<I, O>,
  figures: GivenFigures<I>,
): Figure<O['unit']> {
  const value = formula.evaluate(valuesOf(figures));
  if (!Number.isFinite(value)) throw new Defect(`${formula.id} gave ${value}`);
  return derived<O['unit']>(formula.output.unit, value, formula.output.meaning, {
    formula: formula.id,
    title: formula.title,
    symbol: formula.output.symbol,
    cite: formula.cite,
    inputs: figures,
  });
}

const valuesOf = <I extends Inputs>(figures: GivenFigures<I>): Given<I> =>
  Object.fromEntries(
    Object.entries<Figure>(figures).map(([name, figure]) => [name, figure.value]),
  ) as Given<I>;

function faultsOf(name: string, input: FormulaInput, figure: Figure): readonly Problem[] {
  if (figure.unit !== input.unit)
    throw new Defect(`${name} is in ${figure.unit}; ${input.unit} was expected`);
  const { value } = figure;
  if (liesWithin(value, input)) return [];
  return [
    problem('out-of-range', originField(figure, name), { value, range: rangeInWords(input, input.unit) }),
  ];
}

const originField = (figure: Figure, name: string): string =>
  figure.origin.kind === 'entered' || figure.origin.kind === 'assumed' ? figure.origin.at : `/${name}`;

import { Defect } from '#lib/kernel';
import { assumed, derived, entered, fromCatalogue, type Cite, type Figure } from '#lib/provenance';
import type { Datum } from '#lib/catalogue';
import type { In } from '#lib/units';
import type { Assumption, Default, Question } from './question.js';

const isIn = <U extends string>(value: number, unit: U): value is In<U> =>
  Number.isFinite(value) && unit !== '';

/** Names the unit of a number that formulas of this room use and `libs/units` has no brand for. */
export function inUnit<U extends string>(unit: U, value: number): In<U> {
  if (isIn(value, unit)) return value;
  throw new Defect(`A quantity in ${unit} came out as ${value}`);
}

export const enteredIn = <U extends string>(unit: U, value: number, meaning: string, at: string): Figure<U> =>
  entered(unit, inUnit(unit, value), meaning, at);

export const assumedIn = <U extends string>(
  unit: U,
  { value, ...rest }: Default,
  meaning: string,
  at: string,
): Figure<U> => assumed(unit, inUnit(unit, value), meaning, { at, ...rest });

/** What the caller said, or the default, which then says that it is one. */
export const enteredOrAssumed = <U extends string>(
  unit: U,
  given: number | undefined,
  meaning: string,
  fallback: Default & { readonly at: string },
): Figure<U> =>
  given === undefined
    ? assumedIn(unit, fallback, meaning, fallback.at)
    : enteredIn(unit, given, meaning, fallback.at);

/** The answer to a question that has a default of its own: what the caller said, or that default. */
export const answeredIn = <U extends string>(
  { unit, meaning, otherwise }: Asked<U>,
  given: number | undefined,
  at: string,
): Figure<U> => enteredOrAssumed(unit, given, meaning, { at, ...otherwise });

/** What was said, or the value that stands for silence, for a room that needs no origin of it. */
export const saidOr = <T>(
  { otherwise }: Pick<Question<T>, 'accepts'> & { readonly otherwise: { readonly value: NoInfer<T> } },
  said: NoInfer<T> | undefined,
): T => said ?? otherwise.value;

interface Asked<U extends string> {
  readonly unit: U;
  readonly meaning: string;
  readonly otherwise: Default;
}

export const catalogueIn = <U extends string>(
  unit: U,
  { value, ...rest }: Datum,
  meaning: string,
  place: { readonly item: string; readonly field: string },
): Figure<U> => fromCatalogue(unit, inUnit(unit, value), meaning, { ...place, ...rest });

/** A figure that a method of this room worked out from others. */
export const workedOut = <U extends string>(
  unit: U,
  value: number,
  meaning: string,
  method: {
    readonly formula: string;
    readonly title: string;
    readonly symbol: string;
    readonly cite: Cite;
    readonly inputs: Readonly<Record<string, Figure>>;
  },
): Figure<U> => derived(unit, inUnit(unit, value), meaning, method);

/** A figure that nobody stated, as a reader of the answer sees it. */
export function assumptionFrom(figure: Figure): readonly Assumption[] {
  if (figure.origin.kind !== 'assumed') return [];
  const { at, because, cite } = figure.origin;
  return [
    {
      at,
      meaning: figure.meaning,
      value: `${figure.value} ${figure.unit === '1' ? '' : figure.unit}`.trim(),
      because,
      source: cite.source,
    },
  ];
}

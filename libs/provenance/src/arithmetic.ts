import { Defect } from '#lib/kernel';
import type { In } from '#lib/units';
import type { Cite } from './cite.js';
import { derived, type Figure } from './figure.js';

const arithmetic: Cite = { source: 'ARITHMETIC' };

/** The sum of figures of one unit, remembering each part. */
export function sumOf<U extends string>(
  unit: U,
  meaning: string,
  parts: Readonly<Record<string, Figure<NoInfer<U>>>>,
): Figure<U> {
  for (const part of Object.values<Figure>(parts)) {
    if (part.unit !== unit) throw new Defect(`A sum in ${unit} met a part in ${part.unit}`);
  }
  const total = Object.values<Figure<U>>(parts).reduce((sum, part) => sum + part.value, 0);
  return derived<U>(unit, total as In<U>, meaning, {
    formula: 'arithmetic.sum',
    title: 'Sum of parts',
    symbol: 'Σ',
    cite: arithmetic,
    inputs: parts,
  });
}

/** The product of a figure and dimensionless or per-unit figures; the unit of the result is stated by the caller. */
export function productOf<U extends string>(
  unit: U,
  meaning: string,
  factors: Readonly<Record<string, Figure>>,
): Figure<U> {
  const product = Object.values(factors).reduce((value, factor) => value * factor.value, 1);
  return derived<U>(unit, product as In<U>, meaning, {
    formula: 'arithmetic.product',
    title: 'Product of factors',
    symbol: 'Π',
    cite: arithmetic,
    inputs: factors,
  });
}

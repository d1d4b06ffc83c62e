import { expect, test } from '@jest/globals';
import { formulas } from './index.js';

const halfLastDigit = (printed: string): number => 0.5 * 10 ** -(printed.split('.')[1]?.length ?? 0);
const examples = formulas.flatMap(({ id, worked, evaluate }) =>
  worked.map((example) => [`${id}: ${example.at}`, evaluate, example] as const),
);

test.each(examples)('%s', (_, evaluate, { given, printed }) => {
  const value = (evaluate as (values: unknown) => number)(given);
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(halfLastDigit(printed) * (1 + 1e-9));
});

test('every formula has an id of its own', () => {
  expect(new Set(formulas.map(({ id }) => id)).size).toBe(formulas.length);
});

import { describe, expect, test } from '@jest/globals';
import { allFormulas } from './all-formulas.js';
import { halfLastDigit } from './published-case.js';

const formulas = await allFormulas();

test('every formula has an id of its own', () => {
  const ids = formulas.map(({ formula }) => formula.id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

describe('worked examples', () => {
  const examples = formulas.flatMap(({ formula }) =>
    formula.worked.map((worked) => [`${formula.id}: ${worked.at}`, formula, worked] as const),
  );

  test.each(examples)('%s', (_, formula, worked) => {
    const value = formula.evaluate(worked.given as never);
    const allowed = worked.within?.absolute ?? halfLastDigit(worked.printed) * (1 + 1e-9);
    expect(Math.abs(value - Number(worked.printed))).toBeLessThanOrEqual(allowed);
  });
});

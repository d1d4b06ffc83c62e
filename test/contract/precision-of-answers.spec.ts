import { describe, expect, test } from '@jest/globals';
import { isRecord } from '../../apps/api/src/edge/record.js';
import { decimalsByUnit, LEAST_DIGITS, OTHER_DIGITS } from '../../apps/api/src/edge/precision.js';
import { unitOfField } from '../../libs/units/src/index.js';
import { recordedExamples } from '../../apps/api/src/schemas/generated/examples.js';

/**
 * What a real run answered, number by number, against what the head of the contract says of precision: so many decimals by
 * unit, so many significant digits otherwise. Read from the digits themselves and not with the function that rounds.
 */
interface Digits {
  readonly decimals: number;
  readonly significant: number;
}

function digitsOf(value: number): Digits {
  const [mantissa, exponent = '0'] = String(value).split('e');
  const [whole, fraction = ''] = mantissa.replace('-', '').split('.');
  return {
    decimals: Math.max(0, fraction.length - Number(exponent)),
    significant: (whole + fraction).replace(/^0+/, '').length,
  };
}

const unitIn = (owner: Readonly<Record<string, unknown>>, name: string): string | undefined => {
  const own = unitOfField(name);
  if (own !== undefined) return own;
  if (/[a-z0-9]H$/.test(name) || (name === 'hours' && !Array.isArray(owner.hours))) return 'h';
  if (/(?:Days|^days)$/.test(name)) return 'd';
  return typeof owner.unit === 'string' ? owner.unit : undefined;
};

function isTooFine(value: number, unit: string | undefined): boolean {
  const { decimals, significant } = digitsOf(value);
  const stated = unit === undefined ? undefined : decimalsByUnit[unit];
  return stated === undefined
    ? decimals > 2 && significant > OTHER_DIGITS
    : decimals > stated && significant > LEAST_DIGITS;
}

interface Place {
  readonly at: string;
  readonly unit?: string;
}

function numbersIn(value: unknown, { at, unit }: Place): readonly (Place & { readonly value: number })[] {
  if (typeof value === 'number') return [{ at, unit, value }];
  if (Array.isArray(value)) return value.flatMap((part) => numbersIn(part, { at: `${at}/-`, unit }));
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([name, part]) =>
    numbersIn(part, { at: `${at}/${name}`, unit: unitIn(value, name) ?? unit }),
  );
}

/** What was read and not worked out comes back with every digit that it was given with. */
const READ = /^POST \/v1\/estimating\/quantities /;

/** Costs that sheets are only compared by are the caller's own numbers, in any one currency or none. */
const ONLY_COMPARED = /^POST \/v1\/estimating\/(?:core-bill|cutting-plan) .*\/(?:cost|leastCost|sheetCost)$/;

const answers = Object.entries(recordedExamples).flatMap(([operation, { answers: byStatus }]) =>
  Object.entries(byStatus).map(([status, body]) => ({ at: `${operation} ${status}`, body })),
);

describe('numbers of answers', () => {
  test('none has more digits than its unit is stated to have', () => {
    const numbers = answers.flatMap(({ at, body }) => numbersIn(body, { at }));
    const fractions = numbers.filter(({ at, value }) => !Number.isInteger(value) && !READ.test(at));
    expect(fractions.length).toBeGreaterThan(400);
    expect(fractions.filter(({ value, unit }) => isTooFine(value, unit))).toEqual([]);
  });

  test('no amount of money is a number: it is exact text beside its currency', () => {
    const money = /(?:amount|price|cost|net|gross|tax|total|rate|fee|saving|delivery|surcharge)$/i;
    const named = answers.flatMap(({ at, body }) =>
      numbersIn(body, { at }).filter(
        (one) => money.test(one.at) && one.unit === undefined && !ONLY_COMPARED.test(one.at),
      ),
    );
    expect(named.map(({ at, value }) => `${at}: ${value}`)).toEqual([]);
  });

  test.each([
    [42.688287750544404, 'h'],
    [8070.620000000001, undefined],
    [0.123456, 'mm'],
  ])('%d %s would be seen', (value, unit) => {
    expect(isTooFine(value, unit)).toBe(true);
  });
});

import { expect, test } from '@jest/globals';
import { REC_20_3, REC_21_3 } from 'un-ece-recommendation';
import { unitCodes } from './unit-codes.js';

interface Ucum {
  validateUnitString(text: string): { readonly status: string };
  convertUnitTo(
    from: string,
    value: number,
    to: string,
  ): { readonly status: string; readonly toVal: number | null };
}

/** The package has no types of its own, so that it is loaded by a name the compiler does not look up. */
const oracle: string = '@lhncbc/ucum-lhc';
const lhc: Ucum = (await import(oracle)).default.UcumLhcUtils.getInstance();

test.each(Object.entries(unitCodes))('%s is a valid unit of UCUM', (_, { ucum: code }) => {
  expect(lhc.validateUnitString(code).status).toBe('valid');
});

/** What each Recommendation 20 code stands for, as the recommendation states it in SI terms; counted things have none. */
const stated: Readonly<Record<string, { readonly factor: number; readonly of: string }>> = {
  KGM: { factor: 1, of: 'kg' },
  GRM: { factor: 0.001, of: 'kg' },
  LTR: { factor: 0.001, of: 'm3' },
  MTR: { factor: 1, of: 'm' },
  MTK: { factor: 1, of: 'm2' },
  MMT: { factor: 0.001, of: 'm' },
  HUR: { factor: 3600, of: 's' },
  DAY: { factor: 86400, of: 's' },
};

test.each(Object.entries(unitCodes).filter(([, { rec20 }]) => Object.hasOwn(stated, rec20)))(
  '%s is the same size in both code systems',
  (_, { rec20, ucum: code }) => {
    const { factor, of } = stated[rec20];
    const converted = lhc.convertUnitTo(code, 1, of);
    expect(converted.status).toBe('succeeded');
    expect(converted.toVal! / factor).toBeCloseTo(1, 12);
  },
);

const published = new Map(
  [...REC_20_3, ...REC_21_3].map(({ code, name }) => [code, (name ?? '').toLowerCase()]),
);

test.each(Object.entries(unitCodes))(
  '%s has the code that the recommendations list for its name',
  (_, { rec20, name }) => {
    expect(published.get(rec20)).toBe(name);
  },
);

test('no two units share a trade code, and what is counted has no size of its own', () => {
  const codes = Object.values(unitCodes).map(({ rec20 }) => rec20);
  expect(new Set(codes).size).toBe(codes.length);
  for (const { rec20, ucum: code } of Object.values(unitCodes))
    expect(code === '1').toBe(!Object.hasOwn(stated, rec20));
});

test('trade codes have the form of the recommendation: two or three capitals and digits', () => {
  for (const { rec20 } of Object.values(unitCodes)) expect(rec20).toMatch(/^[A-Z0-9]{2,3}$/);
});

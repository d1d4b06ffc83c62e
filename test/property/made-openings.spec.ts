import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { coreBillFrom } from '#lib/coring';
import { madeOpenings } from '../bench/decks/makes-of-openings.js';

/** Drawn for the bench; pieces that were pushed together on one sheet once overlapped by a step of the grid in these. */
const once = [67, 170, 241];

test.each(once)('opening %d of the bench is laid out on sheets, proven free of overlap', (at) => {
  const { request } = madeOpenings(20261130, 300)[at];
  const bill = coreBillFrom({ ...request, workUnits: 1000 }, shippedCatalogue);
  expect(bill.ok && bill.value.cuts.every(({ cost, leastCost }) => cost >= leastCost)).toBe(true);
});

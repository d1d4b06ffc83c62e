import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate, type Estimate } from '#lib/estimate';
import { detailOf } from '#lib/kernel';
import { plannedSituations, type PlannedSituation } from './planned-situations.js';

function plannedFor({ record }: PlannedSituation): Estimate {
  const made = estimate({ ...record, pricing: { samples: 1000 } }, shippedCatalogue, 'test');
  if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
  return made.value.estimate;
}

/** Lines by their codes, steps of resin, cautions. */
const contentsOf = ({ lines, process, cautions }: Estimate): readonly string[] => [
  ...lines.map(({ code }) => code),
  ...process.demands.map(({ step }) => `step:${step}`),
  ...cautions.map(({ code }) => `caution:${code}`),
];

describe('the plan of', () => {
  test.each(plannedSituations.map((one) => [one.title, one] as const))('%s', (_, one) => {
    const made = plannedFor(one);
    expect(made.methods.planned.rung).toBe(one.disagreement?.says ?? one.expected);
    const contents = contentsOf(made);
    const must = one.disagreement === undefined ? one.must : (one.insteadMust ?? one.must);
    expect(must.filter((code) => !contents.includes(code))).toEqual([]);
    const mustNot = one.disagreement === undefined ? one.mustNot : one.mustNot.slice(0, 1);
    expect(mustNot.filter((code) => contents.includes(code))).toEqual([]);
  });
});

import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate } from '#lib/estimate';
import { detailOf } from '#lib/kernel';
import { expectedOrders, type ExpectedOrder } from './expected-orders.js';

function oursOf({ record }: ExpectedOrder) {
  const outcome = estimate(record, shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  const { totals, summary } = outcome.value.estimate;
  return {
    hours: summary.labourH.p50,
    price: Number(totals.total.amount) - Number(totals.tax.amount),
    days: summary.calendarDays.p50,
  };
}

describe('what was expected before the run', () => {
  test.each(expectedOrders.map((job) => [job.title, job] as const))('%s', (_, job) => {
    const ours = oursOf(job);
    for (const what of ['hours', 'price', 'days'] as const) {
      const span = job[what];
      if (span === undefined) continue;
      const isInside = span[0] <= ours[what] && ours[what] <= span[1];
      // What lies outside is said, and what is said to lie outside does.
      expect([what, ours[what], isInside]).toEqual([what, ours[what], job.outside?.[what] === undefined]);
    }
  });
});

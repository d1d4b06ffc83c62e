import { growthLaw, growthMean, growthQuantile, judgedShare, type EvidenceGrade } from '#lib/extent';
import type { PublishedCase } from '../published-case.js';

/** Found over recorded of a small area that no panel holds, by grade of evidence. */
const law = (grade: EvidenceGrade) => growthLaw({ grade, recordedM2: 0.3, mostM2: 1000 });
const metered = () => law('sounded-and-metered');
const plugs = () => law('mapped-with-plugs');

interface Statistic {
  readonly id: string;
  readonly title: string;
  readonly printed: string;
  readonly ours: () => number;
  readonly oursShouldBe: number;
  readonly reason: string;
}

/** Statistics of other repair trades beside the law that is anchored to them; judged, so that none has to agree. */
const statistic =
  (source: string, locus: string) =>
  ({ id, title, printed, ours, oursShouldBe, reason }: Statistic): PublishedCase => ({
    id,
    room: 'extent',
    title,
    source,
    locus,
    unit: '1',
    printed,
    ours,
    disagreement: { oursShouldBe, relative: 0.005, reason },
  });

const bridges = statistic('GROWTH-BRIDGES-2023', 'digitised curve of cost overruns, decision to completion');
const ships = statistic('GROWTH-SHIP-2020', 'highlights: 41 repair periods planned by a third party');

export const growthStatistics: readonly PublishedCase[] = [
  bridges({
    id: 'growth-bridges-median',
    title: 'Median of final over first estimate; ours: sounded and metered',
    printed: '1.19',
    ours: () => growthQuantile(metered(), 0.5),
    oursShouldBe: 1.1703,
    reason:
      'one in twenty of ours is a false alarm, which bridges do not know; without it the median is 1.20',
  }),
  bridges({
    id: 'growth-bridges-under',
    title: 'Share at or under the first estimate; ours: sounded and metered',
    printed: '0.26',
    ours: () => judgedShare(metered(), 1),
    oursShouldBe: 0.3499,
    reason:
      'false alarms, and a wider spread: of seven decks that somebody careful had sounded three came out smaller',
  }),
  bridges({
    id: 'growth-bridges-half-as-much-again',
    title: 'Share above 1.5 times; ours: sounded and metered',
    printed: '0.23',
    ours: () => 1 - judgedShare(metered(), 1.5),
    oursShouldBe: 0.2646,
    reason:
      'a spread of 0.38 of the logarithm against 0.31 that fits the curve: an area is known worse than a sum',
  }),
  bridges({
    id: 'growth-bridges-twice',
    title: 'Share above twice; ours: sounded and metered',
    printed: '0.06',
    ours: () => 1 - judgedShare(metered(), 2),
    oursShouldBe: 0.085,
    reason: 'the same wider spread',
  }),
  ships({
    id: 'growth-ships-mean',
    title: 'Mean of final over estimate; ours: mapped with plugs',
    printed: '1.05',
    ours: () => growthMean(plugs()),
    oursShouldBe: 1.0711,
    reason: 'a median of 1.05 with a spread of 0.2 has the mean 1.07; ours is of area, theirs of money',
  }),
  ships({
    id: 'growth-ships-under',
    title: 'Share at or under the estimate, 21 of 41; ours: mapped with plugs',
    printed: '0.51',
    ours: () => judgedShare(plugs(), 1),
    oursShouldBe: 0.4036,
    reason:
      'their planners hold a margin in each estimate; ours has the opened deck re-measured at 0.50 and plugs below it',
  }),
];

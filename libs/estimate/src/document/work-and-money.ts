import type { WorkedJob } from '../worked-job.js';
import type { BodySummary } from './estimate-document.js';
import { timeRanges } from './range.js';

type WorkAndMoney = Omit<BodySummary, 'openedAreaM2' | 'cutLengthM' | 'coreSheets'>;

/** What a summary says of every job, whether the deck is opened or stays closed. */
export const workAndMoney = ({
  process,
  labour,
  cost: { risk, totals },
}: Pick<WorkedJob, 'process' | 'labour' | 'cost'>): WorkAndMoney => ({
  mixedResinL: process.batches.demand.totals.totalL,
  labourLikelyH: labour.likelyH,
  labourMeanH: labour.meanH.value,
  ...timeRanges(risk),
  total: totals.total,
  totalRange: totals.range,
  totalWithContingency: totals.totalWithContingency,
  insurer: {
    attributable: totals.insurer.attributable,
    prior: totals.insurer.prior,
    improvement: totals.insurer.improvement,
  },
});

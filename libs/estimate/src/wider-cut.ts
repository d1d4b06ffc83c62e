import { assumptionOf } from '#lib/asking';
import { openingMethodQuestions } from '#lib/extent';
import { assumed } from '#lib/provenance';
import { mm } from '#lib/units';
import type { Job } from './job/job.js';
import { filledLips } from './sections/core-section.js';
import { lipOrWider } from './sections/lip-or-wider.js';
import { leastFlangeMm, spareFlangeMm } from './stages/least-flange.js';
import type { WorkedJob } from './worked-job.js';

/**
 * The job with its cut moved out to the narrowest flange that the taper has room on, to be worked out and compared. Nothing
 * where the flange was stated or cannot be narrower, or where by the rates of filling and opening nothing is saved.
 */
export function withWiderCut({ job, scope: { plan }, core }: WorkedJob): Job | undefined {
  const isStated = job.record.method?.flangeMm !== undefined;
  const lip = isStated ? undefined : lipOrWider(filledLips(core.bill), spareFlangeMm(plan));
  if (lip === undefined || lip.widerH >= lip.fillH) return undefined;
  return withFlange(job, leastFlangeMm(plan), 'to be compared');
}

/** Nobody tells one plan from another by less. */
const LEAST_SAVED_H = 0.1;

/** Of the usual cut and the wider one, the wider where it takes fewer hours and costs less, with both as its reason. */
export function lesserCut(usual: WorkedJob, wider: WorkedJob): WorkedJob {
  const isLess = savedH(usual, wider) >= LEAST_SAVED_H && priceOf(wider) < priceOf(usual);
  if (!isLess) return usual;
  const { flangeMm } = wider.job.answers.method;
  return { ...wider, job: withFlange(wider.job, flangeMm.value, reasonFor(usual, wider)) };
}

const savedH = (usual: WorkedJob, wider: WorkedJob): number =>
  usual.labour.meanH.value - wider.labour.meanH.value;

const priceOf = ({ cost }: WorkedJob): number => Number(cost.rollUp.net.amount);

function reasonFor(usual: WorkedJob, wider: WorkedJob): string {
  const takes = ({ labour, core, cost: { rollUp } }: WorkedJob): string =>
    `${labour.meanH.value.toFixed(1)} h, ${core.solidL.value.toFixed(1)} l of filling and ${rollUp.net.amount} ${rollUp.net.currency}`;
  return `as much as the taper needs: the deck is opened over more of the lip, which takes ${takes(wider)} against ${takes(usual)} at the usual ${usual.job.answers.method.flangeMm.value} mm`;
}

/** Not the record's own words, so it stands among the assumptions with its reason. */
function withFlange(job: Job, widthMm: number, because: string): Job {
  const at = '/method/flangeMm';
  const { meaning } = openingMethodQuestions.flangeMm;
  const cite = { source: 'METHODS-EDGES' };
  const flangeMm = assumed('mm', mm(widthMm), meaning, { at, because, cite });
  return {
    ...job,
    answers: { ...job.answers, method: { ...job.answers.method, flangeMm } },
    assumptions: [
      ...job.assumptions.filter((assumption) => assumption.at !== at),
      ...assumptionOf({ at, value: `${widthMm} mm`, because, assumedFrom: cite }, meaning),
    ],
  };
}

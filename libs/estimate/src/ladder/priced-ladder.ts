import { andThen, detailOf, mapValue, problem, refusal, success, type Outcome } from '#lib/kernel';
import { growthLaw } from '#lib/extent';
import { combinationWith, type JudgedRung } from '#lib/methods';
import { timeRanges } from '../document/range.js';
import type { Job } from '../job/job.js';
import { besideOpening, type BesideWork } from './beside-opening.js';
import { closedPlan } from './closed-plan.js';
import { cardsFor } from './hardware.js';
import type { LadderWork } from './method-ladder.js';
import { roughOpening } from './opening-plan.js';
import {
  compareRung,
  type ComparedRung,
  type RungExtent,
  type RungPlan,
  type RungWork,
} from './rung-work.js';
import { takingRung } from './taking-rung.js';

/** One rung with what it would take; a refused one has none, and one that cannot be worked out says so. */
export interface PricedRung {
  readonly rung: JudgedRung;
  readonly takes?: ComparedRung;
  readonly isRough: boolean;
  readonly notWorkedOut?: string;
}

/** A ladder that is judged, whatever is chosen of it. */
type Judged = Pick<LadderWork, 'ladder' | 'extent'>;

/** Every rung of the ladder that is not refused, worked out in the rough; the planned one is given as it was worked out. */
export const pricedLadder = (
  job: Job,
  ladder: LadderWork,
  planned: Pick<RungWork, 'cost'>,
): readonly PricedRung[] =>
  ladder.ladder.governing.rungs.map((rung) =>
    rung.method.code === ladder.chosen.method.code
      ? { rung, takes: takenBy(planned), isRough: false }
      : roughRung(job, rung, ladder),
  );

const takenBy = ({ cost: { risk, totals } }: Pick<RungWork, 'cost'>): ComparedRung => ({
  times: timeRanges(risk),
  price: totals.range,
});

/** Every rung alike, before one is planned. */
export const roughLadder = (job: Job, judged: Judged): readonly PricedRung[] =>
  judged.ladder.governing.rungs.map((rung) => roughRung(job, rung, judged));

function roughRung(job: Job, rung: JudgedRung, { ladder, extent }: Judged): PricedRung {
  if (rung.verdict === 'unfit') return { rung, isRough: true };
  const combination = combinationWith(ladder, rung.method.code);
  const takes = andThen(planFor(job, rung, combination), (plan) =>
    compareRung(plan, extent ?? growthOfAPlug),
  );
  return takes.ok
    ? { rung, isRough: true, takes: takes.value }
    : { rung, isRough: true, notWorkedOut: takes.problems.map(detailOf).join(' ') };
}

function planFor(job: Job, rung: JudgedRung, combination: LadderWork['combination']): Outcome<RungPlan> {
  if (rung.method.reach !== 'opening') return success(closedPlan(job, combination));
  const opened = combination.flatMap(({ place, rung: own }) =>
    own.method.reach === 'opening' ? [place] : [],
  );
  return andThen(
    opened.length === 0
      ? refusal(problem('not-supported', '/zones', { why: 'no place is opened by this rung' }))
      : success(opened),
    (places) =>
      mapValue(roughOpening(takingRung(job, rung), rung, places), (plan) =>
        withBeside(plan, besideOpening(job, combination, { method: rung.method, offAnyway: plan.cards })),
      ),
  );
}

/** The rough opening with the places that are mended closed beside it. */
const withBeside = (plan: RungPlan, beside: BesideWork): RungPlan => ({
  ...plan,
  quantities: beside.added(plan.quantities),
  steps: [...plan.steps, ...beside.steps],
  laminate: { ...plan.laminate, plies: [...plan.laminate.plies, ...beside.plies] },
  cards: [...plan.cards, ...cardsFor(plan.job, beside.off)],
  needsBesides: beside.needs,
});

/** Where only plugs beside fittings speak: as well known as plugs make it. */
export const growthOfAPlug: RungExtent = {
  grade: 'mapped-with-plugs',
  law: growthLaw({ grade: 'mapped-with-plugs', recordedM2: 0.1, mostM2: 1 }),
  recordedM2: 0.1,
  mostM2: 1,
};

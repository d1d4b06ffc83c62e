import { batchQuestions, type BatchLimit, type BatchRequest, type StepPots } from './batch-request.js';
import type { PotClock } from './pot-life.js';
import type { StepDemand } from './resin-demand.js';
import { stepDefinitions } from './step-definitions.js';

/** Settings of the crew after defaults. */
export interface CrewPace {
  readonly people: number;
  readonly usableFraction: number;
  readonly mixingMinutes: number;
  readonly largestPotG: number;
}

/** A pot may warm by this much before it is empty; more, and its printed life no longer holds. From memory. */
const MOST_WARMING_K = 20;
/** Smallest pot worth weighing: below it the scale and the cup walls spoil the ratio. From memory. */
export const SMALLEST_POT_G = 40;
/** Thickened pots take longer to stir. From memory. */
const STIR_FILLER_MIN = 2;

export function paceOf(request: BatchRequest): CrewPace {
  return {
    people: request.people,
    usableFraction: request.usableFraction ?? batchQuestions.usableFraction.otherwise.value,
    mixingMinutes: request.mixingMinutes ?? batchQuestions.mixingMinutes.otherwise.value,
    largestPotG: request.largestPotG ?? batchQuestions.largestPotG.otherwise.value,
  };
}

export const minutesPerUnitOf = (request: BatchRequest, index: number): number =>
  request.steps[index].minutesPerUnit ?? stepDefinitions[request.steps[index].step].minutesPerUnit.value;

/** The largest pot of a step: mixed, stirred and spread before its usable life is over and before it warms itself. */
export function potsFor(demand: StepDemand, request: BatchRequest, clock: PotClock): StepPots {
  const pace = paceOf(request);
  const totalG = demand.resinG + demand.hardenerG + demand.fillerG;
  const minutesPerG =
    totalG === 0 ? 0 : (minutesPerUnitOf(request, demand.index) * demand.units) / (pace.people * totalG);
  const stirMin = pace.mixingMinutes + (demand.fillerG > 0 ? STIR_FILLER_MIN : 0);
  const byTime = largest(
    (massG) => stirMin + massG * minutesPerG <= pace.usableFraction * clock.lifeOf(massG).lifeMin,
    pace.largestPotG,
  );
  const byHeat = largest((massG) => clock.lifeOf(massG).warmingK <= MOST_WARMING_K, pace.largestPotG);
  const largestG = Math.min(byTime, byHeat, pace.largestPotG);
  return {
    demand,
    totalG,
    minutesPerG,
    largestG,
    limitedBy: limitOf({ byTime, byHeat, potSize: pace.largestPotG }),
  };
}

function limitOf({
  byTime,
  byHeat,
  potSize,
}: {
  readonly byTime: number;
  readonly byHeat: number;
  readonly potSize: number;
}): BatchLimit {
  if (byTime <= byHeat && byTime < potSize) return 'pot-life';
  return byHeat < potSize ? 'exotherm' : 'pot-size';
}

/** The largest mass up to `most` that still passes; zero when none does. */
function largest(passes: (massG: number) => boolean, most: number): number {
  if (passes(most)) return most;
  if (!passes(1)) return 0;
  let [good, bad] = [1, most];
  while (bad - good > 0.5) {
    const middle = (good + bad) / 2;
    if (passes(middle)) good = middle;
    else bad = middle;
  }
  return good;
}

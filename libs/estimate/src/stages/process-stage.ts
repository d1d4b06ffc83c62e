import { isKnown, problem, refusal, success, type Outcome } from '#lib/kernel';
import { materialsOf } from '#lib/catalogue';
import { planBatches, type BatchPlan, type ResinStepRequest } from '#lib/resin';
import {
  camberPressure,
  planBondPressure,
  planUpwardPress,
  type BondPressurePlan,
  type BondPressureRequest,
} from '#lib/press';
import { planCure, requirementsOf, type CurePlan } from '#lib/cure';
import { mm, mPa } from '#lib/units';
import { namingResins } from './fitting-materials.js';
import { stackFor } from './core-stage.js';
import { bayOf } from './panel-values.js';
import type { Job } from '../job/job.js';
import { extentOfOutline } from '../job/outline-size.js';
import { atRecord } from '../job/record-pointers.js';
import { resinStepsOf, type ResinContext } from './resin-steps.js';
import type { ScopeWork } from './scope-stage.js';
import type { CureMilestones, ProcessSection } from '../document/estimate-document.js';
import type { GateGroup } from './gate-groups.js';

export interface ProcessWork {
  readonly batches: BatchPlan;
  readonly cure: CurePlan;
}

/** Pots and waits for this resin at this temperature. */
export const processOf = (context: ResinContext): Outcome<ProcessWork> =>
  potsAndWaits(context.job, resinStepsOf(context));

export function potsAndWaits(job: Job, steps: readonly ResinStepRequest[]): Outcome<ProcessWork> {
  const batches = potsOf(job, steps);
  if (!batches.ok) return batches;
  const cure = planCure({
    resin: job.resin,
    hardener: batches.value.resin.hardener,
    temperature: { kind: 'constant', temperatureC: job.answers.conditions.temperatureC.value },
  });
  return cure.ok
    ? success({ batches: batches.value, cure: cure.value })
    : refusal(...atRecord(cure.problems, processFields, '/method'));
}

/** What is mixed of which hardener, without its waits. */
export function potsOf(job: Job, steps: readonly ResinStepRequest[]): Outcome<BatchPlan> {
  const batches = planBatches({
    resin: job.resin,
    fillers: materialsOf(job.catalogue, 'filler'),
    steps,
    temperatureC: job.answers.conditions.temperatureC.value,
    people: job.answers.crew.people.value,
    ...(job.record.method?.pumpResinMlPerStroke === undefined
      ? {}
      : { pumpResinMlPerStroke: job.record.method.pumpResinMlPerStroke }),
  });
  return batches.ok
    ? batches
    : refusal(...atRecord(namingResins(batches.problems, job.catalogue), processFields, '/method'));
}

const processFields = {
  '/temperatureC': '/conditions/temperatureC',
  '/temperature/temperatureC': '/conditions/temperatureC',
  '/people': '/crew/people',
  '/pumpResinMlPerStroke': '/method/pumpResinMlPerStroke',
};

/** What presses the largest opening, and whether the inner skin can carry it. */
export const pressOf = (job: Job, scope: ScopeWork): Outcome<BondPressurePlan> =>
  job.answers.method.access.value === 'from-below' ? heldUp(job, scope) : pressedDown(job, scope);

const MM_PER_M = 1000;

/** From below the inner skin is cut away: core is held up, and the skin above is kept in its shape. */
function heldUp(job: Job, { plan }: ScopeWork): Outcome<BondPressurePlan> {
  const { answers, core } = job;
  const largest = plan.openings[0];
  const box = extentOfOutline(largest.area.outer);
  const press = planUpwardPress({
    areaM2: largest.areaM2,
    lengthMm: box.maxX - box.minX,
    widthMm: box.maxY - box.minY,
    skinAboveMm: answers.outerSkin.thicknessMm.value,
    coreKgPerM2: (core.densityKgPerM3.value * answers.core.thicknessMm.value) / MM_PER_M,
    altitudeM: answers.conditions.altitudeM.value,
    prefer: answers.method.press.value === 'vacuum' ? 'vacuum' : 'jacks',
  });
  const bendKPa = bendingKPa(job);
  return bendKPa > press.requiredKPa
    ? refusal(
        cannotBend(
          job,
          bendKPa.toFixed(1),
          `and from below more than ${press.requiredKPa.toFixed(1)} kPa lifts the deck`,
        ),
      )
    : success(press);
}

/** What the core asks only to follow the camber. */
function bendingKPa(job: Job): number {
  const camber = camberOf(job);
  return camber === undefined
    ? 0
    : camberPressure.evaluate({
        modulusMPa: mPa(camber.modulusMPa),
        thicknessMm: mm(camber.thicknessMm),
        radiusMm: mm(camber.radiusMm),
        lengthMm: mm(camber.pieceLengthMm),
      });
}

/**
 * Only sheet that is bent to the camber asks for pressure: short pieces and scored sheet lie on it by themselves. It is bent no
 * further than to the gap that its bed fills.
 */
function camberOf(job: Job): BondPressureRequest['camber'] {
  const { record, core } = job;
  const stack = stackFor(job);
  if (record.panel.camberRadiusMm === undefined || stack?.camber?.way !== 'bends') return undefined;
  return {
    radiusMm: Math.max(record.panel.camberRadiusMm, stack.camber.bentRadius.value),
    pieceLengthMm: Math.sqrt(core.largestPieceM2.value) * MM_PER_M,
    thicknessMm: Math.max(...stack.layers.map(({ thicknessMm }) => thicknessMm)),
    modulusMPa: core.inPlaneModulusMPa.value,
  };
}

function pressedDown(job: Job, { plan }: ScopeWork): Outcome<BondPressurePlan> {
  const largest = plan.openings[0];
  const box = extentOfOutline(largest.area.outer);
  const [lengthMm, widthMm] = [box.maxX - box.minX, box.maxY - box.minY];
  const airtight = job.answers.panel.isInnerSkinAirtight;
  const camber = camberOf(job);
  return planBondPressure({
    areaM2: largest.areaM2,
    lengthMm,
    widthMm,
    perimeterM: largest.cutLengthM,
    prefer: job.answers.method.press.value,
    altitudeM: job.answers.conditions.altitudeM.value,
    // Round the opening the deck is still a sandwich: the skin alone spans the opening, or the bay where that is shorter.
    innerSkin: {
      thicknessMm: otherSkinMm(job),
      spanMm: Math.min(lengthMm, widthMm, ...bayOf(job)),
      ...(isKnown(airtight) ? { isAirtight: airtight.value } : {}),
    },
    canPropFromBelow: job.answers.panel.accessBelow.value !== 'none',
    // Through the piece into the skin below, which hangs on them: no more of it is counted on than its thickness.
    battens: { deckAround: 'laminate-only', isIntoInnerSkin: true, threadMm: otherSkinMm(job) },
    ...(camber === undefined ? {} : { camber }),
  });
}

const cannotBend = ({ record, answers }: Job, neededKPa: string, because: string) =>
  problem('not-supported', '/panel/camberRadiusMm', {
    why: `core of ${answers.core.thicknessMm.value} mm needs ${neededKPa} kPa to be bent to a radius of ${record.panel.camberRadiusMm ?? 0} mm, ${because}: take a scored core, or a larger radius if the deck is flatter`,
  });

const otherSkinMm = ({ answers: { method, innerSkin, outerSkin } }: Job): number =>
  (method.access.value === 'from-above' ? innerSkin : outerSkin).thicknessMm.value;

type Pots = Pick<ProcessSection, 'resin' | 'demands' | 'batches' | 'findings' | 'gates'>;

/** Pots, and the gates of the work that waits for them. */
export const potsSection = (job: Job, { batches }: ProcessWork, gates: readonly GateGroup[]): Pots => ({
  resin: batches.resin,
  demands: batches.demand.steps.map(({ step, title, netL, wasteL, totalL, totalKg, fillerG, filler }) => ({
    step,
    title,
    netL,
    wasteL,
    totalL,
    totalKg,
    ...(filler === undefined ? {} : { filler, fillerKg: fillerG / 1000 }),
  })),
  batches: batches.batches.map(
    ({
      number,
      step,
      title,
      resinG,
      hardenerG,
      fillerG,
      filler,
      weigh,
      mixedMl,
      covers,
      useWithinMin,
      limitedBy,
      pumps,
    }) => ({
      number,
      step,
      title,
      resinG,
      hardenerG,
      fillerG,
      weigh,
      mixedMl,
      covers,
      useWithinMin,
      limitedBy,
      ...(filler === undefined ? {} : { filler }),
      ...(pumps === undefined ? {} : { pumps }),
    }),
  ),
  findings: batches.findings,
  gates: gates.map(({ title, limits }) => ({
    step: title,
    requires: requirementsOf(limits, job.answers.conditions.shelter.value).map(({ text }) => text),
  })),
});

/** Hours of the milestones that are reached, and what to say beside them. */
export function cureHours(
  { milestones }: CurePlan,
  notes: readonly string[],
): Omit<CureMilestones, 'step' | 'temperatureC' | 'basis'> {
  const hoursTo = (wanted: CurePlan['milestones'][number]['code']) =>
    milestones.find(({ code }) => code === wanted)?.likelyH;
  const entries = {
    gelH: hoursTo('gel'),
    releaseH: hoursTo('release'),
    sandableH: hoursTo('sandable'),
    recoatShutsH: hoursTo('recoat-shuts'),
    fullCureH: hoursTo('full'),
  };
  const known = Object.fromEntries(Object.entries(entries).filter(([, hours]) => hours !== undefined));
  return { ...known, ...(notes.length === 0 ? {} : { note: notes.join(' ') }) };
}

/** Waste does not stay in the deck. */
export const resinLeftKg = ({ batches }: ProcessWork): number =>
  batches.demand.steps.reduce(
    (sum, { totalKg, netL, totalL }) => sum + (totalL === 0 ? 0 : totalKg * (netL / totalL)),
    0,
  );

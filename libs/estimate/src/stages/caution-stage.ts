import { materialsOf } from '#lib/catalogue';
import { cautionsFor, type CautionContext } from '#lib/cautions';
import { coatingsOf } from './coatings.js';
import type { Caution, Check, Outline } from '../document/estimate-document.js';
import { extentOfOutline } from '../job/outline-size.js';
import type { WorkedJob } from '../worked-job.js';

/** What can hurt somebody or spoil this job: from its own materials, steps and conditions, the worst first. */
export function cautionsOf(work: WorkedJob, checks: readonly Check[]): readonly Caution[] {
  const called = cautionsFor(contextOf(work, checks));
  const known = new Set(called.map(({ code }) => code));
  const ofPanel = work.panel.cautions
    .filter(({ code }) => !known.has(code))
    .map((caution): Caution => ({ ...caution, kind: 'structure', protection: [], hazards: [] }));
  return [...called, ...ofPanel].sort(
    (a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity),
  );
}

const severities: readonly Caution['severity'][] = ['danger', 'warning', 'caution'];

function contextOf(
  { job, scope: { plan }, core, process, press, labour, extent, weather }: WorkedJob,
  checks: readonly Check[],
): CautionContext {
  const { record, catalogue } = job;
  return {
    flags: labour.flags,
    resin: job.resin,
    hardener: process.batches.resin.hardener,
    fillers: materialsOf(catalogue, 'filler').filter(({ code }) =>
      process.batches.demand.totals.fillers.some(({ filler }) => filler === code),
    ),
    coatings: coatingsOf(job),
    application: 'brush-and-roller',
    usesSolvent: true,
    usesPumps: record.method?.pumpResinMlPerStroke !== undefined,
    openedAreaM2: plan.openedAreaM2,
    surface: job.answers.panel.surface.value,
    finishExtent: job.answers.method.finish.value,
    ...(record.craft?.yearBuilt === undefined ? {} : { yearBuilt: record.craft.yearBuilt }),
    ...(record.panel.under === undefined ? {} : { under: record.panel.under }),
    isUnderKnown: record.panel.under !== undefined,
    fittings: plan.fittings.map(({ id, kind, isHighlyLoaded, holes }) => ({
      id,
      kind,
      isHighlyLoaded,
      isThroughBolted: holes > 0,
    })),
    solidInserts: plan.fittings.filter(({ work }) => work.includes('insert')).length,
    temperatureC: job.answers.conditions.temperatureC.value,
    relativeHumidityPercent: job.answers.conditions.relativeHumidityPercent.value,
    ...(weather.outlook === undefined ? {} : { coldestNightC: weather.outlook.said.coldestDeckC }),
    evidence: extent.grade,
    plugs: record.survey?.readings.filter(({ kind }) => kind === 'plug').length ?? 0,
    ...(record.cause === undefined ? {} : { cause: record.cause.cause }),
    needsBleedHoles: job.core.needsBleedHoles,
    proudMm: core.bill.stack.flush.value,
    taperFits: checks.every(({ code, verdict }) => !code.endsWith('taper-room') || verdict !== 'fails'),
    innerSkinSpanMm: spanOf(plan.openings[0].area.outer),
    innerSkinHasHoles: plan.fittings.some(({ where, holes }) => where === 'inside' && holes > 0),
    weightsKg:
      press.method === 'weights' ? (press.quantities.find(({ code }) => code === 'weights')?.value ?? 0) : 0,
    largestPotG: Math.max(0, ...process.batches.batches.map(({ mixedG }) => mixedG)),
    forgottenPotPeakC: Math.max(
      0,
      ...process.batches.batches.map(({ forgottenPotPeakC }) => forgottenPotPeakC),
    ),
    batchFindings: process.batches.findings.map(({ code }) => code),
    ...(press.method === undefined ? { pressRefusals: press.refusals } : {}),
  };
}

/** Short side of the largest opening: what the skin that stays spans alone. */
const spanOf = (outline: Outline): number => {
  const { minX, minY, maxX, maxY } = extentOfOutline(outline);
  return Math.min(maxX - minX, maxY - minY);
};

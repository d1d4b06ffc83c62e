import { cautionsFor, type CautionContext } from '#lib/cautions';
import { mixedFacts, recordFacts, usesSolvent, type Facts } from './caution-facts.js';
import { coatingsOf } from './coatings.js';
import { coreFoundBy, coreTakenOut } from './core-readings.js';
import type { Caution, Check } from '../document/estimate-document.js';
import type { WorkedJob } from '../worked-job.js';

/** What can hurt somebody or spoil this job: from its own materials, steps and conditions, the worst first. */
export function cautionsOf(work: WorkedJob, checks: readonly Check[]): readonly Caution[] {
  const called = cautionsFor(contextOf(work, checks));
  const known = new Set(called.map(({ code }) => code));
  const ofPanel = work.panel.cautions
    .filter(({ code }) => !known.has(code))
    .filter(({ code }) => code !== 'open-inner-skin' || !isCutFromBelow(work))
    .map((caution): Caution => ({ ...caution, kind: 'structure', protection: [], hazards: [] }));
  return [...called, ...ofPanel].sort(
    (a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity),
  );
}

/** Then the inner skin is what comes off, and nobody could stand on it. */
const isCutFromBelow = ({ job }: WorkedJob): boolean => job.answers.method.access.value === 'from-below';

const severities: readonly Caution['severity'][] = ['danger', 'warning', 'caution'];

const contextOf = (work: WorkedJob, checks: readonly Check[]): CautionContext => ({
  flags: work.labour.flags,
  ...recordFacts(work.job),
  ...mixedFacts(work.job, work.process.batches),
  ...coreFacts(work),
  ...deckFacts(work, checks),
});

/** How the core was found, and what goes in. */
function coreFacts({
  job,
  scope: { plan },
  core,
  extent,
  weather,
}: WorkedJob): Facts<
  'coreMoisturePercent' | 'coreReadings' | 'evidence' | 'needsBleedHoles' | 'proudMm' | 'coldestNightC'
> {
  const found = coreFoundBy(job.record.survey, coreTakenOut(plan));
  return {
    coreMoisturePercent: found.wettestPlugPercent,
    coreReadings: found.readings,
    evidence: extent.grade,
    needsBleedHoles: job.core.needsBleedHoles && core.bill.stack.layers.some(({ form }) => form === 'plain'),
    proudMm: core.bill.stack.flush.value,
    coldestNightC: weather.outlook?.said.coldestDeckC ?? 'unknown',
  };
}

/** What is opened, pressed, bolted and laid. */
const deckFacts = (
  { job, scope: { plan }, press, pricing, quantities }: WorkedJob,
  checks: readonly Check[],
): Facts<
  | 'coatings'
  | 'usesSolvent'
  | 'openedAreaM2'
  | 'injectedAreaM2'
  | 'fittings'
  | 'solidInserts'
  | 'taperFits'
  | 'innerSkinSpanMm'
  | 'innerSkinHasHoles'
  | 'weightsKg'
> => ({
  coatings: coatingsOf(job),
  usesSolvent: usesSolvent(job, pricing.needs),
  openedAreaM2: plan.openedAreaM2,
  injectedAreaM2: quantities.injectedM2.value,
  fittings: plan.fittings.map(({ id, kind, isHighlyLoaded, holes }) => ({
    id,
    kind,
    isHighlyLoaded,
    isThroughBolted: holes > 0,
  })),
  solidInserts: plan.fittings.filter(({ work }) => work.includes('insert')).length,
  taperFits: checks.every(({ code, verdict }) => !code.endsWith('taper-room') || verdict !== 'fails'),
  innerSkinSpanMm: press.innerSkin.props.spanMm ?? 'unknown',
  innerSkinHasHoles: plan.fittings.some(({ where, holes }) => where === 'inside' && holes > 0),
  weightsKg: press.quantities.find(({ code }) => code === 'weights')?.value ?? 0,
});

import { extentMultipliers } from '#lib/costing';
import type { EvidenceGrade, Finding, ZoneShape } from '#lib/extent';
import { areaMm2, type Region } from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import { success, type Outcome } from '#lib/kernel';
import type { Range, Scope } from './estimate.js';
import type { Job } from './job.js';

/** How far the bad core goes, and how sure that is. */
export interface ExtentWork {
  readonly zones: readonly (ZoneShape & { readonly condition: string })[];
  readonly grade: EvidenceGrade;
  readonly damagedAreaM2: Range;
  readonly contours: Scope['contours'];
  readonly findings: readonly Finding[];
}

export const extentOf = (job: Job): Outcome<ExtentWork> => success(drawnExtent(job));

/** Drawn zones are taken as drawn; the evidence says how far they may still grow. */
function drawnExtent(job: Job): ExtentWork {
  const zones = (job.record.zones ?? []).map(({ id, outline, condition }) => ({ id, outline, condition: condition ?? 'wet-rotten' }));
  const drawn: Region = zones.map(({ outline }) => ({ outer: outline, holes: [] }));
  const { low, likely, high } = extentMultipliers[job.evidence.value];
  const area = m2FromMm2(mm2(areaMm2(drawn)));
  return { zones, grade: job.evidence.value, damagedAreaM2: { p10: area * low, p50: area * likely, p90: area * high }, contours: [], findings: [] };
}

import { mapValue, type Outcome } from '#lib/kernel';
import type { EvidenceGrade, Extent, Finding, GrowthLaw, ZoneShape } from '#lib/extent';
import type { Figure } from '#lib/provenance';
import type { Range, Scope } from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import type { KeptWork } from '../kept-work.js';
import { usualCondition } from '../job/questions/defect.js';
import { areasOf } from '../sections/areas.js';

/** How far the bad core goes, and how sure that is. */
export interface ExtentWork {
  readonly zones: readonly (ZoneShape & { readonly condition: string })[];
  readonly grade: EvidenceGrade;
  readonly gradeBecause: string;
  /** How much more or less than mapped may be found. */
  readonly law: GrowthLaw;
  readonly recordedM2: number;
  readonly mostM2: number;
  readonly damagedAreaM2: Range;
  readonly contours: Scope['contours'];
  /** Where to read next; worked out when it is asked for. */
  readonly next: () => Pick<Scope, 'nextReadings'>;
  readonly findings: readonly Finding[];
  readonly assumptions: () => readonly Figure[];
}

/** From readings or from drawn zones; readings can lower a stated grade, never raise it. */
export const extentOf = (job: Job, { extent: ask }: Pick<KeptWork, 'extent'>): Outcome<ExtentWork> =>
  mapValue(ask(requestOf(job)), (extent) => extentWork(job, extent));

function requestOf({ record, answers }: Job): Parameters<KeptWork['extent']>[0] {
  const isGradedByReadings = record.survey !== undefined && record.evidence === undefined;
  return {
    panel: record.panel,
    ...(record.fittings === undefined ? {} : { fittings: record.fittings }),
    ...(record.survey === undefined ? {} : { survey: record.survey }),
    ...(record.zones === undefined || record.zones.length === 0 ? {} : { zones: record.zones }),
    ...(isGradedByReadings ? {} : { evidence: answers.evidence.value }),
    ...(record.pricing?.foundOverRecorded === undefined
      ? {}
      : { foundOverRecorded: record.pricing.foundOverRecorded }),
  };
}

function extentWork({ record }: Job, extent: Extent): ExtentWork {
  const conditionOf = (id: string) =>
    record.zones?.find((zone) => zone.id === id)?.condition ?? usualCondition.value;
  const { p10, p50, p90 } = extent.damagedAreaM2;
  return {
    zones: extent.zones.map(({ id, outline, holes, boundary }) => ({
      id,
      outline,
      holes,
      boundary,
      condition: conditionOf(id),
    })),
    grade: extent.evidence.grade,
    gradeBecause: extent.evidence.because,
    law: extent.evidence.law,
    recordedM2: Math.max(1e-4, extent.mappedAreaM2),
    mostM2: extent.evidence.law.most * Math.max(1e-4, extent.mappedAreaM2),
    damagedAreaM2: { p10, p50, p90 },
    contours: extent.contours.map(({ probability, areas, areaM2 }) => ({
      probability,
      areas: areasOf(areas),
      areaM2,
    })),
    findings: extent.findings,
    next: () => nextOf(extent),
    assumptions: () => [...extent.assumptions, ...(extent.nextReadings?.assumptions ?? [])],
  };
}

function nextOf({ nextReadings: next }: Extent): Pick<Scope, 'nextReadings'> {
  if (next === undefined) return {};
  const { readings, minutes, worthH, isWorthIt, areaRangeM2, advice } = next;
  return { nextReadings: { readings, minutes, worthH, isWorthIt, areaRangeM2, advice } };
}

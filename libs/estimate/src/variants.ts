import { allOfList, andThen, below, mapValue, pointer, problem, refusal, success, type Outcome } from '#lib/kernel';
import { areaMm2 } from '#lib/geometry';
import type { Catalogue } from '#lib/catalogue';
import { compareVariants, type VariantComparison, type VariantResult } from '#lib/costing';
import { m2FromMm2, mm2 } from '#lib/units';
import type { Conditions, DefectRecord, MethodChoice } from './defect-record.js';
import { jobOf } from './job.js';
import { workOut, type WorkedJob } from './run.js';

/** One way of doing the job: what differs from the record's own method and conditions. */
export interface VariantAsked {
  readonly code: string;
  readonly title?: string;
  /** Fill the gap under a sound skin through drilled holes instead of opening it. */
  readonly inject?: boolean;
  readonly method?: MethodChoice;
  readonly conditions?: Conditions;
}

export interface VariantsRequest {
  readonly record: DefectRecord;
  readonly variants: readonly VariantAsked[];
}

const MOST_VARIANTS = 12;

/** The same defect under several methods, worked out on equal terms and compared; what a rule refuses is listed with the rule. */
export function estimateVariants({ record, variants }: VariantsRequest, catalogue: Catalogue): Outcome<VariantComparison> {
  if (variants.length === 0) return refusal(problem('too-few', '/variants', { count: 0, least: 1 }));
  if (variants.length > MOST_VARIANTS) return refusal(problem('too-many', '/variants', { count: variants.length, most: MOST_VARIANTS }));
  const own = jobOf(record, catalogue);
  if (!own.ok) return refusal(...below('/record', own.problems));
  const results = variants.map((variant, index) => resultOf(variant, record, { catalogue, at: pointer('/variants', index) }));
  return andThen(allOfList(results), compareVariants);
}

interface Place {
  readonly catalogue: Catalogue;
  readonly at: string;
}

function resultOf(variant: VariantAsked, record: DefectRecord, { catalogue, at }: Place): Outcome<VariantResult> {
  const { code, title = code, method, conditions } = variant;
  if (variant.inject === true) return success({ code, title, refusal: injectionRefusal(record) });
  const changed: DefectRecord = { ...record, method: { ...record.method, ...method }, conditions: { ...record.conditions, ...conditions } };
  const job = jobOf(changed, catalogue);
  if (!job.ok) return refusal(...below(at, job.problems));
  const worked = workOut(job.value);
  // What cannot be worked out for this record is a refusal of the variant, with the reason; the others still stand.
  if (!worked.ok) return success({ code, title, refusal: { rule: worked.problems[0].code, why: String(worked.problems[0].facts.why ?? worked.problems[0].code) } });
  return mapValue(worked, (work) => valuesOf({ code, title }, work));
}

function valuesOf({ code, title }: { readonly code: string; readonly title: string }, work: WorkedJob): VariantResult {
  const repaired = work.panel.states.find(({ state }) => state === 'repaired');
  return {
    code, title, rollUp: work.cost.rollUp, risk: work.cost.risk, days: work.calendar.calendarDays.p50, massKg: massAddedKg(work),
    ...(repaired?.governing === undefined ? {} : { utilisation: repaired.governing.utilisation }),
  };
}

/** What the deck weighs more: new core over old sound core, and all resin and glass that stay in it. */
const massAddedKg = ({ core, laminate, process }: WorkedJob): number =>
  core.section.massChangeKg + laminate.section.glassKg + process.batches.demand.steps.reduce((sum, { totalKg, netL, totalL }) => sum + (totalL === 0 ? 0 : totalKg * (netL / totalL)), 0);

/** Injection is for small, dry, unloaded debonding only: trade guidance puts the limit at one to two square feet. */
const MOST_INJECTED_M2 = 0.2;

function injectionRefusal({ zones = [], fittings = [], survey }: DefectRecord): { readonly rule: string; readonly why: string } {
  const areaM2 = m2FromMm2(mm2(zones.reduce((sum, { outline }) => sum + areaMm2([{ outer: outline, holes: [] }]), 0)));
  if (zones.length === 0 || survey?.readings.some(({ kind }) => kind === 'plug') !== true) {
    return { rule: 'injection-needs-plug', why: 'injection is considered only where a zone is drawn and a plug shows dry, sound core' };
  }
  if (zones.some(({ condition }) => condition !== 'dry-debonded')) return { rule: 'injection-on-rot', why: 'resin does not mend wet or rotten core: take it out' };
  if (areaM2 > MOST_INJECTED_M2) return { rule: 'injection-too-large', why: `${areaM2.toFixed(2)} m2 is more than the ${MOST_INJECTED_M2} m2 that injection is trusted with` };
  if (fittings.length > 0) return { rule: 'injection-under-fitting', why: 'a fitting stands on or near the zone: its core is replaced by something dense' };
  return { rule: 'injection-not-priced', why: 'allowed here, but the catalogue holds no hours for injection, so it is not priced' };
}

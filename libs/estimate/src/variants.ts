import {
  allOfList,
  andThen,
  below,
  detailOf,
  mapValue,
  pointer,
  problem,
  refusal,
  success,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import type { Catalogue } from '#lib/catalogue';
import { compareVariants, type VariantComparison, type VariantResult } from '#lib/costing';
import type { Conditions, DefectRecord, MethodChoice } from './job/defect-record.js';
import { jobOf } from './job/job.js';
import { keptWork, type KeptWork } from './kept-work.js';
import { resinLeftKg } from './stages/process-stage.js';
import { workedWay, type WorkedWay } from './estimate.js';
import type { ClosedJob } from './ladder/closed-job.js';
import type { WorkedJob } from './worked-job.js';

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
export function estimateVariants(
  { record, variants }: VariantsRequest,
  catalogue: Catalogue,
): Outcome<VariantComparison> {
  if (variants.length === 0) return refusal(problem('too-few', '/variants', { count: 0, least: 1 }));
  if (variants.length > MOST_VARIANTS)
    return refusal(problem('too-many', '/variants', { count: variants.length, most: MOST_VARIANTS }));
  const own = jobOf(record, catalogue);
  if (!own.ok) return refusal(...below('/record', own.problems));
  const kept = keptWork();
  const tried = variants.map((variant, index) =>
    triedOf(variant, record, { catalogue, kept, at: pointer('/variants', index) }),
  );
  return andThen(allOfList(tried), (all) => compareVariants(all.map((one) => resultOf(one, asBuiltOf(all)))));
}

interface Place {
  readonly catalogue: Catalogue;
  readonly kept: KeptWork;
  readonly at: string;
}

/** A variant worked out in full, with the deck opened or closed, or refused. */
interface Tried {
  readonly code: string;
  readonly title: string;
  readonly work?: WorkedJob;
  readonly closed?: ClosedJob;
  readonly refusal?: { readonly rule: string; readonly why: string };
}

function triedOf(
  variant: VariantAsked,
  record: DefectRecord,
  { catalogue, kept, at }: Place,
): Outcome<Tried> {
  const { code, title = code, inject, method, conditions } = variant;
  const changed: DefectRecord = {
    ...record,
    method: inject === true ? injecting(record, method) : { ...record.method, ...method },
    conditions: { ...record.conditions, ...conditions },
  };
  const job = jobOf(changed, catalogue);
  if (!job.ok) return refusal(...below(at, job.problems));
  const worked = mapValue(workedWay(job.value, kept, 'planned'), triedWay);
  // What cannot be worked out for this record is a refusal of the variant, with the reason; the others still stand.
  return success({
    code,
    title,
    ...(worked.ok ? worked.value : { refusal: refusalBy(worked.problems) }),
  });
}

/** Nothing is cut where resin is injected, so that nothing is said of the skin and the side it is cut from. */
const injecting = ({ method: own }: DefectRecord, asked: MethodChoice | undefined): MethodChoice => ({
  ...own,
  ...asked,
  skin: undefined,
  access: undefined,
  rung: 'inject',
});

/** A rung that the ladder refuses is refused by the ladder's own rule. */
const refusalBy = (problems: readonly Problem[]): NonNullable<Tried['refusal']> => {
  const [{ code, facts }] = problems;
  return {
    rule: typeof facts.rule === 'string' ? facts.rule : code,
    why: problems.map(detailOf).join(' '),
  };
};

const triedWay = (way: WorkedWay): Pick<Tried, 'work' | 'closed'> =>
  way.kind === 'opened' ? { work: way.work } : { closed: way.work };

/** The panel as built is the same whatever is done to it. */
const asBuiltOf = (all: readonly Tried[]): number | undefined =>
  all
    .flatMap(
      ({ work }) =>
        work?.panel.states.find(({ state }) => state === 'as-built')?.governing?.utilisation ?? [],
    )
    .at(0);

function resultOf(
  { code, title, work, closed, refusal: refused }: Tried,
  asBuilt: number | undefined,
): VariantResult {
  if (work !== undefined) return valuesOf({ code, title }, work);
  if (closed !== undefined)
    return {
      code,
      title,
      rollUp: closed.cost.rollUp,
      risk: closed.cost.range,
      days: closed.cost.risk.calendarDays.p50,
      massKg: resinLeftKg(closed.process),
      note: closed.ladder.chosen.leavesUndone.join(' '),
      ...(asBuilt === undefined ? {} : { utilisation: asBuilt }),
    };
  return { code, title, ...(refused === undefined ? {} : { refusal: refused }) };
}

function valuesOf(
  { code, title }: { readonly code: string; readonly title: string },
  work: WorkedJob,
): VariantResult {
  const repaired = work.panel.states.find(({ state }) => state === 'repaired');
  return {
    code,
    title,
    rollUp: work.cost.rollUp,
    risk: work.cost.range,
    days: work.cost.risk.calendarDays.p50,
    massKg: massAddedKg(work),
    ...(repaired?.governing === undefined ? {} : { utilisation: repaired.governing.utilisation }),
  };
}

/** What the deck weighs more: new core over old sound core, and all resin and glass that stay in it. */
const massAddedKg = ({ core, laminate, process }: WorkedJob): number =>
  core.section.massChangeKg + laminate.section.glassKg + resinLeftKg(process);

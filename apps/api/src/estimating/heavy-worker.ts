import type { Catalogue } from '#lib/catalogue';
import { coreBillFrom, type CoreBill, type CoreBillByCode } from '#lib/coring';
import type { VariantComparison } from '#lib/costing';
import { estimateVariants, type VariantsRequest } from '#lib/estimate';
import { extentAndOpenings, type ExtentAndOpenings, type ExtentAndOpeningsRequest } from '#lib/extent';
import type { Outcome } from '#lib/kernel';
import { cuttingPlan, usualTimeLimitS, type CuttingPlan, type CuttingPlanRequest } from '#lib/nesting';

/** One job: exactly one of the four. */
export interface HeavyTask {
  readonly plan?: CuttingPlanRequest;
  readonly bill?: { readonly request: CoreBillByCode; readonly catalogue: Catalogue };
  readonly variants?: { readonly request: VariantsRequest; readonly catalogue: Catalogue };
  readonly openings?: ExtentAndOpeningsRequest;
}

/** The answer to the one that was asked. */
export interface HeavyAnswer {
  readonly plan?: Outcome<CuttingPlan>;
  readonly bill?: Outcome<CoreBill>;
  readonly variants?: Outcome<VariantComparison>;
  readonly openings?: Outcome<ExtentAndOpenings>;
}

/** Runs one job. The clock is read here, so that the rooms need none; the best answer so far is the answer when time is up. */
export const run = ({ plan, bill, variants, openings }: HeavyTask): HeavyAnswer => ({
  ...(plan === undefined ? {} : { plan: cuttingPlan(plan, untilTimeIsUp(plan.timeLimitS)) }),
  ...(bill === undefined
    ? {}
    : { bill: coreBillFrom(bill.request, bill.catalogue, untilTimeIsUp(bill.request.timeLimitS)) }),
  ...(variants === undefined ? {} : { variants: estimateVariants(variants.request, variants.catalogue) }),
  ...(openings === undefined ? {} : { openings: extentAndOpenings(openings) }),
});

function untilTimeIsUp(limitS = usualTimeLimitS): () => boolean {
  const end = performance.now() + 1000 * limitS;
  return () => performance.now() >= end;
}

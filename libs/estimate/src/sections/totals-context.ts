import type { CostRollUp, JobAtExtent, JobRisk } from '#lib/costing';
import type { CostContext, CostWork } from '../stages/cost-context.js';

export interface TotalsContext {
  readonly context: CostContext;
  /** Lines and loadings alone. */
  readonly bare: CostRollUp;
  readonly rollUp: CostRollUp;
  readonly risk: JobRisk;
  readonly better: CostWork['better'];
  readonly extents: readonly JobAtExtent[];
}

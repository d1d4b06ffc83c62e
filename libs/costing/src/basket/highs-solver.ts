import type { Highs, ModelData, ModelStatusCode } from 'highs';
import {
  sparseModel,
  type LinearModel,
  type SolverAnswer,
  type SolverLimits,
  type SolverStatus,
} from './linear-model.js';

/**
 * Solves by HiGHS, once somebody has loaded it. It blocks its thread until it is done, so a service runs it in a worker.
 *
 * A model it will not take comes back as "empty" without an exception, which is
 * a failure here. The costs of an order are bounded below, so "infeasible or unbounded" can only be infeasible.
 */
export function solveByHighs(
  highs: Highs,
  model: LinearModel,
  { timeLimitS, relativeGap }: SolverLimits,
): SolverAnswer {
  const native = highs.createModel(dataOf(model));
  try {
    native.options.set({
      ...quickForOrders,
      output_flag: false,
      mip_rel_gap: relativeGap,
      mip_abs_gap: ABSOLUTE_GAP,
      time_limit: timeLimitS,
      random_seed: 1,
    });
    native.run();
    const status = statusOf(highs, native.getModelStatus());
    const hasValues =
      status === 'optimal' ||
      (status === 'time-limit' && Number(native.info.get('primal_solution_status')) === FEASIBLE);
    return {
      status,
      values: hasValues ? Array.from(native.getSolution().colValue) : [],
      bound: Number(native.info.get('mip_dual_bound')),
      said: `model status ${native.getModelStatus()}`,
    };
  } finally {
    native.dispose();
  }
}

/** Searches for early solutions that orders do not need: without them a solve takes less than half the time. */
const quickForOrders = {
  mip_heuristic_run_rins: false,
  mip_heuristic_run_rens: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_heuristic_run_feasibility_jump: false,
} as const;

/** Far below a minor unit, and below what leftovers add to tell orders of one cost apart. */
const ABSOLUTE_GAP = 1e-7;

const FEASIBLE = 2;

function statusOf({ constants: { modelStatus } }: Highs, status: ModelStatusCode): SolverStatus {
  switch (status) {
    case modelStatus.optimal:
      return 'optimal';
    case modelStatus.infeasible:
      return 'infeasible';
    case modelStatus.unboundedOrInfeasible:
      return 'infeasible';
    case modelStatus.timeLimit:
      return 'time-limit';
    default:
      return 'failed';
  }
}

function dataOf(model: LinearModel): ModelData {
  const sparse = sparseModel(model);
  return {
    numCols: sparse.columnCount,
    numRows: sparse.rowCount,
    colCost: sparse.costs,
    colLower: sparse.columnLower,
    colUpper: sparse.columnUpper,
    rowLower: sparse.rowLower,
    rowUpper: sparse.rowUpper,
    integrality: sparse.isWhole,
    matrix: {
      format: 'csr',
      numRows: sparse.rowCount,
      numCols: sparse.columnCount,
      starts: sparse.starts,
      indices: sparse.indices,
      values: sparse.factors,
    },
  };
}

import type { AnyFormula } from '#lib/provenance';
import { contingencyAtP80 } from './risk/risk-formulas.js';
import { triangularMean } from './risk/spread-quantile.js';

export {
  causeClasses,
  partOrLabours,
  sectionTitles,
  type AtExtent,
  type CauseClass,
  type CostLine,
  type DepreciationTerms,
  type LineDepreciation,
  type LinePack,
  type LineQuantity,
  type LineRequest,
  type MoneyRange,
  type PartOrLabour,
  type Section,
  type TaxGroup,
} from './cost-line.js';
export { depreciationQuestions } from './depreciation-questions.js';
export {
  askWear,
  atExtentQuestions,
  extentFactorQuestions,
  linePackQuestions,
  lineQuestions,
  priceJobQuestions,
  riskQuestions,
  spreadQuestions,
  taxGroupQuestions,
  unitAsked,
  type PriceJobRequest,
  type RiskTerms,
} from './questions.js';
export { commercialRounding, moneyNear, netOfInclusivePrice, percentOf } from './exact.js';
export {
  labourLines,
  yardLines,
  type LabourTerms,
  type WorkedOperation,
  type YardAmounts,
} from './labour.js';
export { pricingDecimals } from './price-line.js';
export {
  rollUp,
  rollUpDeciding,
  type CostRollUp,
  type RollUpRequest,
  type SectionTotal,
  type Share,
} from './roll-up.js';
export { totalsOf, type Cell, type Contribution, type Totals, type TotalsTerms } from './totals.js';
export {
  costRisk,
  type CostRisk,
  type CostRiskRequest,
  type Driver,
  type RiskLine,
} from './risk/cost-risk.js';
export { amountFactorAt } from './risk/at-extents.js';
export {
  contingencyFor,
  jobRisk,
  paceSigma,
  priceSigma,
  riskKinds,
  riskKindTitles,
  type JobAtExtent,
  type JobDays,
  type JobRisk,
  type JobRiskRequest,
  type NewAreaWork,
  type Quantiles,
  type RiskKind,
} from './risk/job-risk.js';
export type { InformationValue } from './risk/information-value.js';
export type { CommonCause } from './risk/risk-model.js';
export type { HistogramBar } from './risk/sample-statistics.js';
export { betaQuantiles, triangularMean, type SpreadShape } from './risk/spread-quantile.js';
export type {
  Basket,
  BasketLine,
  BasketOrder,
  Coverage,
  Leftover,
  MatchedResin,
  Missing,
  Gap,
  Proof,
  Proven,
  SecondBest,
  Substitution,
  SupplierOrder,
} from './basket/basket.js';
export { faultsOfBasket, faultsOfPriceList } from './basket/basket-faults.js';
export { priceDrift, type LineDrift, type PriceDrift, type ReckonedLine } from './basket/price-drift.js';
export type { Excluded } from './basket/plan-parts.js';
export type { BasketRequest, ResinMatch } from './basket/basket-request.js';
export type { BasketNeed, BasketOptions, OnHand, Substitute, Transport } from './basket/questions.js';
export { basketFrom } from './basket/basket-by-code.js';
export {
  basketOptionQuestions,
  basketQuestions,
  hardenerChoiceQuestions,
  needQuestions,
  onHandQuestions,
  orderQuestions,
  sheetSizeQuestions,
  substituteQuestions,
  variantQuestions,
  type BasketByCode,
} from './basket/questions.js';
export { contentIn } from './basket/content.js';
export { solveByHighs } from './basket/highs-solver.js';
export type {
  Column,
  LinearModel,
  Row,
  Solve,
  SolverAnswer,
  SolverLimits,
  Term,
} from './basket/linear-model.js';
export { solveBasket } from './basket/solve-basket.js';
export { priceJob, type PricedJob } from './price-job.js';
export { goodsBillings, type BilledBy, type GoodsBilling, type LeftOver } from './goods-billing.js';
export { packLines, type PackLines, type PackLinesRequest } from './pack-lines.js';
export {
  costWithRisk,
  loadingOf,
  riskLinesOf,
  withShareOfLoadings,
  type CostWithRisk,
  type CostWithRiskRequest,
} from './cost-with-risk.js';
export { basketCsv, comparisonCsv, csv, runsInSpreadsheet, type Cell as CsvCell } from './exports/csv.js';
export type { DocumentLine, PricedDocument } from './priced-document.js';
export {
  ublOrders,
  ublQuotation,
  type DocumentHead,
  type OrderDocument,
  type Party,
  type QuotationHead,
} from './exports/ubl.js';
export { unitCodeOf, unitCodes, type UnitCode } from './exports/unit-codes.js';
export {
  changeOrder,
  compareRevisions,
  type Change,
  type ChangeOrder,
  type ChangeOrderRequest,
  type LineChange,
  type RevisionComparison,
  type RevisionReasons,
  type TotalChange,
} from './revisions.js';
export { reMeasured, type ReMeasured } from './re-measured.js';
export {
  compareVariants,
  criteria,
  type Criterion,
  type VariantComparison,
  type VariantResult,
  type VariantRow,
} from './variants.js';

export const formulas: readonly AnyFormula[] = [triangularMean, contingencyAtP80];
export { commonShareQuestions, drawQuestions } from './risk/risk-questions.js';

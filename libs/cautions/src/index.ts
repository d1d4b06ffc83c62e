export { massConcentration } from './exposure.js';
export { MOST_INJECTED_M2 } from './work-rules.js';
export { cautionRules, cautionsFor } from './cautions.js';
export type {
  CautionContext,
  CautionKind,
  CautionRule,
  CautionSeverity,
  ProcessCaution,
} from './caution-context.js';
export { type HazardStatement, hazardStatements, statementsFor } from './hazard-statements.js';
export { formulas } from './formulas.js';

export { massConcentration } from './exposure.js';
export { cautionRules, cautionsFor } from './cautions.js';
export type {
  CautionContext,
  CautionKind,
  CautionRule,
  CautionSeverity,
  CoreReadings,
  ProcessCaution,
} from './caution-context.js';
export { type HazardStatement, hazardStatements, statementsFor } from './hazard-statements.js';
export { formulas } from './formulas.js';

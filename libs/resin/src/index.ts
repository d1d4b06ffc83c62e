export type { BatchPlan } from './batch-request.js';
export type { BatchRequest } from './batch-request.js';
export { planBatches } from './batches.js';
export { resinDemand } from './resin-demand.js';
export type { BatchFinding, BatchLimit, HardenerVerdict, PlannedBatch, Weighing } from './batch-request.js';
export type { ResinDemand, StepDemand } from './resin-demand.js';
export {
  beddedPieceQuestions,
  plyToWetQuestions,
  resinStepQuestions,
  type BeddedPiece,
  type PlyToWet,
  type ResinDemandRequest,
  type ResinStepRequest,
} from './resin-request.js';
export {
  type StepBasis,
  type StepCode,
  type StepDefinition,
  stepCodes,
  stepDefinitions,
} from './step-definitions.js';
export { hardenerInBatch, mixedDensity, partsByMassFromVolume, thickenedDensity } from './mixing.js';
export { plyResin } from './step-volumes.js';
export { formulas } from './formulas.js';
export { resinBatches, resinBatchesQuestions, type ResinBatchesRequest } from './by-code.js';

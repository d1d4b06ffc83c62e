export {
  beamCases,
  bendTestStress,
  sandwichBar,
  stiffnessFromTwoSpans,
  type BeamCase,
  type BeamSection,
  type BendTestStress,
  type SandwichBar,
} from './plate/beams.js';
export {
  notEstablished,
  defineCheck,
  type BuiltCheck,
  type CheckInputs,
  type PanelCheckItem,
  type ReasonedCheck,
  type Verdict,
} from './comparison/check.js';
export { CLASS_DECK_PRESSURE_KPA, CLASS_DECK_SPAN_OVER_DEFLECTION } from './yardstick/class-rules.js';
export * as classRules from './yardstick/class-rules.js';
export {
  coreFormulas,
  coreTables,
  fromCoreTable,
  type CoreFormula,
  type CoreFormulas,
  type CoreTable,
  type CoreTableColumn,
} from './yardstick/core-properties.js';
export * as fastening from './yardstick/fastening.js';
export { loadInWords } from './comparison/loads.js';
export { isHighlyLoaded } from './comparison/fitting-checks.js';
export { pointLoad, roundPatch, type Indentation, type SkinOnCore } from './plate/indentation.js';
export { type OpenSkinAnswer, type OpenSkinRequest } from './plate/open-skin.js';
export {
  panelAnswer,
  panelCheck,
  type ExplainedCheck,
  type LoadResult,
  type PanelAnswer,
  type PanelCaution,
  type PanelCheck,
  type Response,
  type SectionResult,
  type StateAnswer,
  type StateResult,
} from './comparison/panel-check.js';
export {
  asFoundQuestions,
  backingPlateQuestions,
  classDeckLoadQuestions,
  coreValuesQuestions,
  craftForPanelQuestions,
  criteriaQuestions,
  eachEdgeQuestions,
  openedPanelQuestions,
  panelCheckQuestions,
  panelFittingQuestions,
  panelSizeQuestions,
  patchLoadQuestions,
  personLoadQuestions,
  pressureLoadQuestions,
  sandwichValuesQuestions,
  skinValuesQuestions,
  yardstickLoadQuestions,
} from './comparison/panel-request.js';
export type {
  AsFound,
  CraftForPanel,
  Criteria,
  EachEdge,
  EdgeKindAsked,
  FittingRequest,
  LoadRequest,
  OpenedPanel,
  PanelCheckRequest,
  PanelSize,
} from './comparison/panel-request.js';
export { keptPlates, type PlateSource } from './plate/kept-plates.js';
export {
  plateModel,
  type EdgeFixing,
  type NamedSpot,
  type PlateAnswer,
  type PlateEdges,
  type PlateModel,
} from './plate/plate-answer.js';
export {
  everywhere,
  type PlateFields,
  type PlateStiffness,
  type Rectangle,
  type RectangularLoad,
  type Spot,
} from './plate/plate.js';
export * as plywood from './yardstick/plywood.js';
export {
  membraneStiffness,
  sandwichSection,
  separateSkins,
  skinPlate,
  type SandwichSection,
  type StressPerMoment,
} from './plate/sandwich-section.js';
export * as sandwich from './plate/sandwich-formulas.js';
export type { Working } from './comparison/state-analysis.js';
export {
  restorationOf,
  type Ratio,
  type RepairJudge,
  type Restoration,
  type RestorationRequest,
} from './comparison/restoration.js';
export type { CoreValues, SandwichValues, SkinValues, StateName } from './plate/states.js';
export { supportedPlate, type SeriesFields, type SupportedPlate } from './plate/supported-plate.js';
export * as yardstick from './yardstick/yardstick.js';
export { formulas } from './formulas.js';

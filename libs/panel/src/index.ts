export {
  beamCases,
  beamDeflection,
  bendTestStress,
  sandwichBar,
  stiffnessFromTwoSpans,
  stripUnderPressure,
  type BeamCase,
  type BeamDeflection,
  type BeamSection,
  type BendTestStress,
  type SandwichBar,
  type StripAnswer,
} from './beams.js';
export {
  notEstablished,
  defineCheck,
  type BuiltCheck,
  type CheckInputs,
  type PanelCheckItem,
  type ReasonedCheck,
  type Verdict,
} from './check.js';
export { CLASS_DECK_PRESSURE_KPA, CLASS_DECK_SPAN_OVER_DEFLECTION, coreShearShares } from './class-rules.js';
export * as classRules from './class-rules.js';
export {
  coreFormulas,
  coreFormulasFor,
  coreTables,
  fromCoreTable,
  type CoreFormula,
  type CoreFormulas,
  type CoreTable,
  type CoreTableColumn,
} from './core-properties.js';
export * as fastening from './fastening.js';
export { isHighlyLoaded } from './fitting-checks.js';
export { pointLoad, roundPatch, type Indentation, type SkinOnCore } from './indentation.js';
export { openSkin, type OpenSkinAnswer, type OpenSkinRequest } from './open-skin.js';
export {
  panelAnswer,
  panelCheck,
  type ExplainedCheck,
  type LoadResult,
  type PanelAnswer,
  type PanelAssumption,
  type PanelCaution,
  type PanelCheck,
  type Response,
  type SectionResult,
  type StateAnswer,
  type StateResult,
} from './panel-check.js';
export type {
  AsFound,
  CraftForPanel,
  Criteria,
  EachEdge,
  EdgeKindAsked,
  FittingRequest,
  LoadedFitting,
  LoadRequest,
  OpenedPanel,
  PanelCheckRequest,
  PanelSize,
} from './panel-request.js';
export {
  plateModel,
  type EdgeFixing,
  type NamedSpot,
  type PlateAnswer,
  type PlateEdges,
  type PlateModel,
} from './plate-answer.js';
export {
  everywhere,
  type PlateFields,
  type PlateStiffness,
  type Rectangle,
  type RectangularLoad,
  type Spot,
} from './plate.js';
export * as plywood from './plywood.js';
export {
  membraneStiffness,
  sandwichSection,
  separateSkins,
  skinPlate,
  type SandwichSection,
  type StressPerMoment,
} from './sandwich-section.js';
export * as sandwich from './sandwich-formulas.js';
export type { Working } from './state-analysis.js';
export { restorationOf, type Ratio, type Restoration, type RestorationRequest } from './restoration.js';
export type { CoreValues, SandwichValues, SkinValues, StateName } from './states.js';
export { supportedPlate, type SeriesFields, type SupportedPlate } from './supported-plate.js';
export * as yardstick from './yardstick.js';
export { formulas } from './formulas.js';

export {
  constituentSets,
  type ConstituentSet,
  type FibreConstants,
  type ResinChemistry,
  type ResinConstants,
} from './ply/constituents.js';
export {
  defaultFraction,
  mixedFraction,
  type FractionKind,
  type LayupSkill,
} from './ply/default-fractions.js';
export {
  fibreVolumeFraction,
  lowFibreThicknessFactor,
  plyThickness,
  resinPerArea,
  stackFibreFraction,
  thicknessOf,
  volumeFractionOf,
  yardstickThickness,
} from './ply/ply-thickness.js';
export { bvUnidirectional, glUnidirectional, lrUnidirectional, mixtureOf } from './ply/class-methods.js';
export {
  crossPly,
  halpinTsai,
  matFrom,
  mixedPly,
  rigidCylinderShear,
  roundFibres,
  seriesModulus,
  type Mixture,
  type ShapeFactors,
} from './ply/micromechanics.js';
export {
  plyMethodInWords,
  type PlyBasis,
  type PlyLayup,
  type PlyMethod,
  type PlyMethodName,
  type PlyProperties,
  type Remark,
} from './ply/ply-method.js';
export {
  findPlyMethod,
  plyMethods,
  plyProperties,
  spreadOverMethods,
  type MethodSpread,
  type PlyRequest,
  type PropertySpread,
} from './ply/ply-properties.js';
export type { Ply, PlyBreakingStrain, PlyElastic, PlyExpansion, PlyStrength } from './ply/ply.js';
export { stiffnessOf, writeQBar, writeTurn, type Stiffness, type Symmetric } from './theory/stiffness.js';
export { complianceOf, type Compliance } from './theory/compliance.js';
export {
  flexuralConstants,
  inPlaneConstants,
  type EngineeringConstants,
} from './theory/engineering-constants.js';
export {
  noClimate,
  noLoads,
  responseOf,
  type Climate,
  type Loads,
  type Response,
} from './theory/response.js';
export {
  criteria,
  modeAt,
  onsetOf,
  type Criterion,
  type FailureMode,
  type Onset,
  type PlyLimits,
  type Stress,
} from './theory/failure.js';
export {
  firstPlyFailure,
  progressiveFailure,
  type Degradation,
  type PlyFailure,
  type ProgressiveFailure,
} from './theory/ply-failure.js';
export {
  laminate,
  MOST_PLIES,
  type LaminateAnswer,
  type LaminateRequest,
  type PlyAnswer,
} from './theory/laminate.js';
export { layupOf, resinConstantsOf, type LaidPly, type Layup, type LayupRequest } from './theory/layup.js';
export { layupFigures, type LayupFigures, type LayupSource } from './theory/layup-figures.js';
export {
  measureMembrane,
  measureSkin,
  membraneOf,
  membraneStrength,
  pulls,
  type Membrane,
  type SkinMeasure,
} from './theory/skin.js';
export {
  guessedMatShare,
  measureOldSkin,
  type OldPly,
  type OldSkin,
  type OldSkinMeasure,
  type SkinBuild,
} from './schedule/old-skin.js';
export type { FabricOffer, ScheduleRequest } from './schedule/schedule-request.js';
export { openSearch, searchSchedules, type OpenSearch } from './schedule/schedule-search.js';
export type { LeftOut } from './schedule/prepared-search.js';
export type {
  Missing,
  OldSkinReport,
  Schedule,
  SchedulePly,
  ScheduleSearch,
  SkinCheck,
} from './schedule/schedule-report.js';
export {
  compareStacks,
  searchStacks,
  type SearchEffort,
  type Stack,
  type StackSearch,
} from './schedule/stack-search.js';
export { arrange, type Arrangement, type PanelRatios } from './schedule/stack-order.js';
export {
  emptyStrip,
  neutralHeight,
  stripBending,
  withLayer,
  type StripSums,
} from './theory/sandwich-strip.js';
export {
  EQUAL,
  type StackOption,
  type StackPanel,
  type StackProblem,
  type StackTarget,
} from './schedule/stack-problem.js';
export {
  diagnose,
  type Constraint,
  type ConstraintReport,
  type Diagnosis,
} from './schedule/stack-diagnosis.js';
export { formulas } from './formulas.js';
export {
  checkScarf,
  scarfPeel,
  scarfRatio,
  scarfShear,
  taperWidth,
  type ScarfCheck,
  type ScarfCheckRequest,
} from './taper/scarf.js';
export {
  closingPlies,
  pliesToFill,
  type ClosingCheck,
  type ClosingPlies,
  type ClosingPly,
  type ClosingRequest,
} from './taper/closing-plies.js';
export { usualTaper } from './taper/usual-taper.js';
export {
  relaidPlies,
  type LaidOutPly,
  type PlyToLay,
  type RelaidPlies,
  type RelaidRequest,
  type RoomCheck,
} from './taper/relaid-plies.js';
export { layingConsequences, stagesOf, type LayingOrder, type Stage } from './taper/laying.js';
export { cutFromRoll, type RollCut, type RollPiece, type RollRequest } from './taper/roll-cut.js';
export { lengthOffRoll, type RollStrip } from './taper/roll-strips.js';
export { glassMass, plyMass, resinMass } from './ply/ply-mass.js';
export { laminateSchedule, type LaminateSchedule } from './schedule/laminate-schedule.js';
export {
  coreLayerQuestions,
  flushQuestions,
  jointQuestions,
  laminateScheduleQuestions,
  layOutQuestions,
  namedFabricQuestions,
  namedPlyQuestions,
  oldSkinQuestions,
  otherSkinQuestions,
  panelBelowQuestions,
  rebeddedSkinQuestions,
  relaidSkinQuestions,
  scheduleLimitsQuestions,
  type CoreLayer,
  type LaminateScheduleRequest,
  type NamedPly,
  type PanelBelow,
  type RebeddedSkinRequest,
  type RelaidSkinRequest,
  type ScheduleLimits,
} from './schedule/asked.js';

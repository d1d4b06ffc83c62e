export {
  constituentSets,
  type ConstituentSet,
  type FibreConstants,
  type ResinChemistry,
  type ResinConstants,
} from './constituents.js';
export { defaultFraction, mixedFraction, type FractionKind, type LayupSkill } from './default-fractions.js';
export {
  fibreVolumeFraction,
  lowFibreThicknessFactor,
  plyThickness,
  resinPerArea,
  stackFibreFraction,
  thicknessOf,
  volumeFractionOf,
  yardstickThickness,
} from './ply-thickness.js';
export { bvUnidirectional, glUnidirectional, lrUnidirectional, mixtureOf } from './class-methods.js';
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
} from './micromechanics.js';
export type { PlyBasis, PlyLayup, PlyMethod, PlyMethodName, PlyProperties, Remark } from './ply-method.js';
export {
  findPlyMethod,
  plyMethods,
  plyProperties,
  spreadOverMethods,
  type MethodSpread,
  type PlyRequest,
  type PropertySpread,
} from './ply-properties.js';
export type { Ply, PlyBreakingStrain, PlyElastic, PlyExpansion, PlyStrength } from './ply.js';
export { stiffnessOf, writeQBar, writeTurn, type Stiffness, type Symmetric } from './stiffness.js';
export { complianceOf, type Compliance } from './compliance.js';
export { flexuralConstants, inPlaneConstants, type EngineeringConstants } from './engineering-constants.js';
export { noClimate, noLoads, responseOf, type Climate, type Loads, type Response } from './response.js';
export {
  criteria,
  modeAt,
  onsetOf,
  type Criterion,
  type FailureMode,
  type Onset,
  type PlyLimits,
  type Stress,
} from './failure.js';
export {
  firstPlyFailure,
  progressiveFailure,
  type Degradation,
  type PlyFailure,
  type ProgressiveFailure,
} from './ply-failure.js';
export {
  laminate,
  MOST_PLIES,
  type LaminateAnswer,
  type LaminateRequest,
  type PlyAnswer,
} from './laminate.js';
export { layupOf, resinConstantsOf, type LaidPly, type Layup, type LayupRequest } from './layup.js';
export { layupFigures, type LayupFigures, type LayupSource } from './layup-figures.js';
export {
  measureMembrane,
  measureSkin,
  membraneOf,
  membraneStrength,
  pulls,
  type Membrane,
  type Pull,
  type SkinMeasure,
} from './skin.js';
export type { Assumption } from './assumption.js';
export {
  guessedMatShare,
  measureOldSkin,
  type OldPly,
  type OldSkin,
  type OldSkinMeasure,
  type SkinBuild,
} from './old-skin.js';
export type {
  CoreLayer,
  FabricOffer,
  PanelBelow,
  ScheduleLimits,
  ScheduleRequest,
} from './schedule-request.js';
export { searchSchedules, type LeftOut } from './schedule-search.js';
export type {
  Missing,
  OldSkinReport,
  Schedule,
  SchedulePly,
  ScheduleSearch,
  SkinCheck,
} from './schedule-report.js';
export {
  compareStacks,
  searchStacks,
  type SearchEffort,
  type Stack,
  type StackSearch,
} from './stack-search.js';
export { arrange, type Arrangement, type PanelRatios } from './stack-order.js';
export { emptyStrip, neutralHeight, stripBending, withLayer, type StripSums } from './sandwich-strip.js';
export {
  EQUAL,
  type StackOption,
  type StackPanel,
  type StackProblem,
  type StackTarget,
} from './stack-problem.js';
export { diagnose, type Constraint, type ConstraintReport, type Diagnosis } from './stack-diagnosis.js';
export { formulas } from './formulas.js';
export {
  checkScarf,
  scarfPeel,
  scarfRatio,
  scarfShear,
  taperWidth,
  type ScarfCheck,
  type ScarfCheckRequest,
} from './scarf.js';
export {
  closingPlies,
  pliesToFill,
  type ClosingCheck,
  type ClosingPlies,
  type ClosingPly,
  type ClosingRequest,
} from './closing-plies.js';
export { usualTaper } from './usual-taper.js';
export {
  relaidPlies,
  type LaidOutPly,
  type PlyToLay,
  type RelaidPlies,
  type RelaidRequest,
  type RoomCheck,
} from './relaid-plies.js';
export { layingConsequences, stagesOf, type LayingOrder, type Stage } from './laying.js';
export { cutFromRoll, type RollCut, type RollPiece, type RollRequest } from './roll-cut.js';
export { glassMass, plyMass, resinMass } from './ply-mass.js';
export {
  laminateSchedule,
  type LaminateSchedule,
  type LaminateScheduleRequest,
  type LayOutRequest,
  type NamedFabric,
  type NamedPly,
  type RebeddedSkinRequest,
  type RelaidSkinRequest,
} from './laminate-schedule.js';

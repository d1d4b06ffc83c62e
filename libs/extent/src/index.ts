export * from './reading.js';
export { finding, type Finding, type FindingCode } from './finding.js';
export {
  estimateExtent,
  nextReadings,
  type Extent,
  type ExtentFigures,
  type ExtentZone,
  type ProbabilityContour,
  type ProbabilityMap,
} from './estimate-extent.js';
export {
  extentAndOpenings,
  type ExtentAndOpenings,
  type ExtentAndOpeningsRequest,
} from './extent-and-openings.js';
export type { ExtentRequest, MapSettings } from './extent-request.js';
export { BRACKET_MM, silentMultipliers } from './evidence-grade.js';
export {
  growthByGrade,
  growthCite,
  growthLaw,
  growthLevels,
  growthMean,
  growthQuantile,
  judgedShare,
  newAreas,
  shareBelowRecord,
  type GrowthLaw,
  type NewAreas,
} from './growth-law.js';
export type { CutChoice } from './cut-choice.js';
export {
  LEAST_READINGS,
  MOST_READINGS,
  meterQuestions,
  readingQuestions,
  surveyFaults,
  surveyQuestions,
  surveySoFarQuestions,
} from './survey-questions.js';
export { mapQuestions } from './map/questions.js';
export { usualOdds, type ReadingOdds } from './map/reading-odds.js';
export type { NextReading, NextReadings } from './next/next-readings.js';
export { nextQuestions, type NextAsked, type ReadingKind } from './next/questions.js';
export { quantilesOf, type Quantiles } from './quantiles.js';
export {
  planOpenings,
  labelOf,
  type OpeningPlan,
  type PlanFigures,
  type PlannedOpening,
} from './openings/plan.js';
export { reachOfPlan, type PlanReach } from './openings/reach-of-plan.js';
export { openingsAt, type OpeningsAtExtent } from './openings/at-extent.js';
export {
  fittingKinds,
  isHighlyLoaded,
  isLoaded,
  type FittingInScope,
  type FittingWork,
} from './openings/fittings.js';
export type { Datum, MarkedCorner, MarkingOut, SawLine } from './openings/marking-out.js';
export type { Join } from './openings/merge.js';
export type {
  FittingKind,
  FittingOnDeck,
  OpeningRequest,
  PanelShape,
  SupportShape,
  ZoneShape,
} from './openings/request.js';
export {
  bondableQuestions,
  openingMethodQuestions,
  openingRuleQuestions,
  skinMethodAsked,
  taperRatioAsked,
  type OpeningMethod,
  type OpeningRules,
} from './openings/rules.js';
import { edgeShift } from './openings/at-extent.js';
import { cutDepth, taperWidth } from './openings/depth.js';
import { grownArea } from './evidence-grade.js';
import { bayesOdds } from './map/reading-odds.js';
import { cutProbability } from './cut-choice.js';

export const formulas = [edgeShift, cutDepth, taperWidth, grownArea, bayesOdds, cutProbability];

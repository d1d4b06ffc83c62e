export type * from './reading.js';
export type { Finding, FindingCode } from './finding.js';
export { planOpenings, labelOf, type OpeningPlan, type PlanFigures, type PlannedOpening } from './openings/plan.js';
export { fittingKinds, isHighlyLoaded, type FittingInScope, type FittingWork } from './openings/fittings.js';
export type { Datum, MarkedCorner, MarkingOut, SawLine } from './openings/marking-out.js';
export type { Join } from './openings/merge.js';
export type {
  FittingKind, FittingOnDeck, OpeningMethod, OpeningRequest, OpeningRules, PanelShape, SupportShape, ZoneShape,
} from './openings/request.js';
export { openingRules } from './openings/rules.js';
import { cutDepth, taperWidth } from './openings/depth.js';

export const formulas = [cutDepth, taperWidth];

import type { AnswersTo } from '#lib/asking';
import type {
  findingClasses,
  findingQuestions,
  inspectionQuestions,
  occurrenceQuestions,
  partyQuestions,
  surveyorQuestions,
  vesselQuestions,
} from './questions/attendance.js';
import type { craftQuestions } from './questions/craft.js';
import type {
  coreQuestions,
  outerSkinQuestions,
  overlayQuestions,
  panelQuestions,
  supportQuestions,
} from './questions/deck.js';
import type { causeQuestions, fittingQuestions, zoneQuestions } from './questions/defect.js';
import type { methodQuestions } from './questions/method.js';
import type { conditionQuestions, crewQuestions } from './questions/place.js';
import type { pricingQuestions } from './questions/pricing.js';
import type { recordQuestions } from './questions/record.js';

/**
 * What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,
 * and the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
 *
 * Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
 */
export type DefectRecord = AnswersTo<typeof recordQuestions>;

export type Vessel = AnswersTo<typeof vesselQuestions>;
export type Inspection = AnswersTo<typeof inspectionQuestions>;
export type Surveyor = AnswersTo<typeof surveyorQuestions>;
export type Parties = AnswersTo<typeof partyQuestions>;
export type Occurrence = AnswersTo<typeof occurrenceQuestions>;
export type StatedFinding = AnswersTo<typeof findingQuestions>;
export type FindingClass = (typeof findingClasses)[number];
export type Craft = AnswersTo<typeof craftQuestions>;
export type OverlayRecord = AnswersTo<typeof overlayQuestions>;
export type PanelRecord = AnswersTo<typeof panelQuestions>;
export type SupportLine = AnswersTo<typeof supportQuestions>;
export type EdgeKind = SupportLine['kind'];
export type SkinRecord = AnswersTo<typeof outerSkinQuestions>;
export type OldCore = AnswersTo<typeof coreQuestions>;
export type ZoneRecord = AnswersTo<typeof zoneQuestions>;
export type ZoneCondition = NonNullable<ZoneRecord['condition']>;
export type FittingRecord = AnswersTo<typeof fittingQuestions>;
export type FittingKind = FittingRecord['kind'];
export type CauseRecord = AnswersTo<typeof causeQuestions>;
export type CauseClass = NonNullable<CauseRecord['causeClass']>;
export type MethodChoice = AnswersTo<typeof methodQuestions>;
export type Conditions = AnswersTo<typeof conditionQuestions>;
export type Crew = AnswersTo<typeof crewQuestions>;
export type PricingChoice = AnswersTo<typeof pricingQuestions>;

import type { AnswersTo } from '#lib/asking';
import type { findingClasses, findingQuestions } from './questions/attendance.js';
import type {
  outerSkinQuestions,
  overlayQuestions,
  panelQuestions,
  supportQuestions,
} from './questions/deck.js';
import type { causeQuestions, fittingQuestions, zoneQuestions } from './questions/defect.js';
import type { methodQuestions } from './questions/method.js';
import type { conditionQuestions } from './questions/place.js';
import type { recordQuestions } from './questions/record.js';

/**
 * What somebody knows about a soft deck, as its questions ask for it. Only `panel.outline`, one of `zones` and `survey`,
 * and the thicknesses are needed; everything else has a default that the estimate lists under `assumptions`.
 *
 * Lengths in mm, areas in m2, masses in kg, temperatures in degC; points `[xMm, yMm]` in the deck plane.
 */
export type DefectRecord = AnswersTo<typeof recordQuestions>;

export type StatedFinding = AnswersTo<typeof findingQuestions>;
export type FindingClass = (typeof findingClasses)[number];
export type OverlayRecord = AnswersTo<typeof overlayQuestions>;
export type PanelRecord = AnswersTo<typeof panelQuestions>;
export type SupportLine = AnswersTo<typeof supportQuestions>;
export type SkinRecord = AnswersTo<typeof outerSkinQuestions>;
export type ZoneRecord = AnswersTo<typeof zoneQuestions>;
export type ZoneCondition = NonNullable<ZoneRecord['condition']>;
export type FittingRecord = AnswersTo<typeof fittingQuestions>;
export type FittingKind = FittingRecord['kind'];
export type CauseRecord = AnswersTo<typeof causeQuestions>;
export type CauseClass = NonNullable<CauseRecord['causeClass']>;
export type MethodChoice = AnswersTo<typeof methodQuestions>;
export type Conditions = AnswersTo<typeof conditionQuestions>;

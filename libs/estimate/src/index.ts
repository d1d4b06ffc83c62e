export type * from './job/defect-record.js';
export {
  findingQuestions,
  inspectionQuestions,
  occurrenceQuestions,
  partyQuestions,
  surveyorQuestions,
  vesselQuestions,
} from './job/questions/attendance.js';
export { craftQuestions } from './job/questions/craft.js';
export {
  coreQuestions,
  innerSkinQuestions,
  outerSkinQuestions,
  overlayQuestions,
  panelQuestions,
  plyQuestions,
  supportQuestions,
} from './job/questions/deck.js';
export { causeQuestions, fittingQuestions, zoneQuestions } from './job/questions/defect.js';
export { methodQuestions } from './job/questions/method.js';
export { conditionQuestions, crewQuestions } from './job/questions/place.js';
export { pricingQuestions } from './job/questions/pricing.js';
export { recordQuestions } from './job/questions/record.js';
export {
  nextReadingsFor,
  nextReadingsQuestions,
  openedZoneQuestions,
  openingsFor,
  openingsQuestions,
  type NextReadingsAsked,
  type OpeningsAsked,
} from './job/deck-requests.js';
export type * from './document/estimate-document.js';
export { pricedDocumentOf } from './document/priced-document.js';
export { estimate } from './estimate.js';
export { previewOf } from './preview/preview.js';
export type {
  EstimatePreview,
  PreviewedOpening,
  PreviewPanel,
  PreviewPrice,
  PreviewSummary,
} from './preview/estimate-preview.js';
export { estimateVariants, type VariantAsked, type VariantsRequest } from './variants.js';
export { measuredRecord } from './job/measured.js';
export { jobOf } from './job/job.js';
export { methodLadder } from './ladder/ladder-answer.js';
export { judgedLadder } from './ladder/method-ladder.js';

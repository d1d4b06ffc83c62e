export { ask, type NumberAsked, type NumberQuestion, type Wording } from './ask-number.js';
export {
  askCode,
  askDay,
  askDecimal,
  askEach,
  askFor,
  askLabel,
  askSome,
  askText,
  askWhether,
  askWhich,
  assumptionOf,
  inWords,
  codeForm,
  dayFaults,
  decimalForm,
  statedInRecord,
  type ValueQuestion,
} from './ask-value.js';
export { askByKind, askList, askPart, type ListQuestion, type PartQuestion } from './ask-part.js';
export { askOutline, askOutlines, askPlace } from './ask-shape.js';
export {
  cavityAsked,
  closesABed,
  coreThicknessAsked,
  fittingBaseAsked,
  fittingHolesAsked,
  sagsLeast,
  skinThicknessAsked,
} from './deck-asked.js';
export { commonPractice, fromMemory, practice, remembered } from './practice.js';
export { assumptionsIn, faultsIn, settle, settledRight } from './settle.js';
export type {
  Answer,
  Answers,
  AnswersTo,
  Assumption,
  Assumption as ProcessAssumption,
  Count,
  Default,
  Form,
  Otherwise,
  Question,
  Questions,
  Settlement,
  Settling,
  TextLimits,
} from './question.js';
export {
  answeredIn,
  assumedIn,
  assumptionFrom,
  catalogueIn,
  enteredIn,
  enteredOrAssumed,
  inUnit,
  saidOr,
  workedOut,
} from './unit-figures.js';
export {
  type Bounds,
  choiceFaults,
  countFaults,
  numberFaults,
  optionalFaults,
  repeatFaults,
  wholeFaults,
  within,
} from './request-faults.js';

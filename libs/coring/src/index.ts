import {
  bendRadius,
  bondResin,
  camberGap,
  coreMass,
  flushness,
  kerfVolume,
  stackHeight,
  wasteShare,
  waterLeaving,
} from './stack/formulas.js';
import { plywoodRadius } from './stack/plywood-bending.js';

export { planStack, type StackCheck, type StackLayer, type StackPlan } from './stack/plan-stack.js';
export type { StackChoice } from './stack/choices.js';
export type { CamberPlan } from './stack/camber.js';
export type { StackRequest } from './stack/request.js';
export {
  camberQuestions,
  oldCoreQuestions,
  stackQuestions,
  type CamberRequest,
  type OldCoreRequest,
  type StackRules,
} from './stack/rules.js';
export { cutMosaic, type Mosaic } from './mosaic/cut-mosaic.js';
export type { DivisionChoice, MosaicDivision } from './mosaic/division.js';
export type { Entry } from './mosaic/entry.js';
export type { MosaicFinding } from './mosaic/findings.js';
export type { CorePiece } from './mosaic/piece.js';
export type { MosaicRequest, OpeningToFill } from './mosaic/request.js';
export { mosaicRuleQuestions, type MosaicRules } from './mosaic/rules.js';
export type { SolidFill, SolidKind } from './mosaic/solid-fill.js';
export { coreBill, type CoreBill, type CoreCut, type CutCoreSheet } from './bill/core-bill.js';
export type { DivisionByCost, DivisionOption } from './bill/division-choice.js';
export { coreBillFrom } from './bill/bill-from-catalogue.js';
export {
  coreBillQuestions,
  drawnOpeningQuestions,
  offcutQuestions,
  sheetQuestions,
  supportLineQuestions,
  type CoreBillByCode,
  type DrawnOpening,
  type OwnOffcut,
  type SheetOnSale,
} from './bill/questions.js';
export type { CoreBillRequest } from './bill/request.js';
export type { SheetUse } from './bill/waste.js';

export const formulas = [
  stackHeight,
  flushness,
  kerfVolume,
  bendRadius,
  camberGap,
  plywoodRadius,
  coreMass,
  waterLeaving,
  bondResin,
  wasteShare,
];

import {
  camberQuestions,
  coreBillQuestions,
  drawnOpeningQuestions,
  mosaicRuleQuestions,
  offcutQuestions,
  oldCoreQuestions,
  sheetQuestions,
  stackQuestions,
  supportLineQuestions,
} from '#lib/coring';
import { answering } from '../../edge/dto/index.js';

export class DrawnOpeningDto extends answering(drawnOpeningQuestions) {}

export class CoreSupportDto extends answering(supportLineQuestions) {}

export class CamberDto extends answering(camberQuestions) {}

export class OldCoreMassDto extends answering(oldCoreQuestions) {}

export class StackRulesDto extends answering(stackQuestions) {}

export class MosaicRulesDto extends answering(mosaicRuleQuestions) {}

export class SheetOnSaleDto extends answering(sheetQuestions) {}

export class OwnOffcutDto extends answering(offcutQuestions) {}

/** Openings and a core material; from there to labelled pieces and sheets. */
export class CoreBillRequestDto extends answering(coreBillQuestions, {
  openings: () => DrawnOpeningDto,
  supports: () => CoreSupportDto,
  camber: () => CamberDto,
  oldCore: () => OldCoreMassDto,
  stackRules: () => StackRulesDto,
  mosaicRules: () => MosaicRulesDto,
  sheets: () => SheetOnSaleDto,
  offcuts: () => OwnOffcutDto,
}) {}

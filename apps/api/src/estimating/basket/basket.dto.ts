import {
  basketOptionQuestions,
  basketQuestions,
  hardenerChoiceQuestions,
  needQuestions,
  onHandQuestions,
  sheetSizeQuestions,
  substituteQuestions,
  variantQuestions,
} from '#lib/costing';
import { answering } from '../../edge/dto/index.js';

export class SheetSizeDto extends answering(sheetSizeQuestions) {}

/** A material in the form that is meant; fields left out may be anything. */
export class MaterialVariantDto extends answering(variantQuestions, { sheet: () => SheetSizeDto }) {}

export class BasketNeedDto extends answering(needQuestions, { sheet: () => SheetSizeDto }) {}

export class HardenerChoiceDto extends answering(hardenerChoiceQuestions) {}

export class SubstituteDto extends answering(substituteQuestions, {
  insteadOf: () => MaterialVariantDto,
  use: () => MaterialVariantDto,
}) {}

export class OnHandDto extends answering(onHandQuestions, { sheet: () => SheetSizeDto }) {}

export class BasketOptionsDto extends answering(basketOptionQuestions) {}

export class BasketRequestDto extends answering(basketQuestions, {
  needs: () => BasketNeedDto,
  hardeners: () => HardenerChoiceDto,
  substitutes: () => SubstituteDto,
  onHand: () => OnHandDto,
  options: () => BasketOptionsDto,
}) {}

import {
  basketOptionQuestions,
  basketQuestions,
  hardenerChoiceQuestions,
  needQuestions,
  onHandQuestions,
  sheetSizeQuestions,
  substituteQuestions,
  variantQuestions,
  type BasketByCode,
  type BasketNeed,
  type BasketOptions,
  type OnHand,
  type Substitute,
  type Transport,
} from '#lib/costing';
import type { MaterialVariant } from '#lib/takeoff';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';

export class SheetSizeDto {
  @Asked(sheetSizeQuestions.lengthMm)
  readonly lengthMm!: number;

  @Asked(sheetSizeQuestions.widthMm)
  readonly widthMm!: number;
}

/** A material in the form that is meant; fields left out may be anything. */
export class MaterialVariantDto implements MaterialVariant {
  @Asked(variantQuestions.material)
  readonly material!: string;

  @Asked(variantQuestions.part)
  readonly part?: string;

  @Asked(variantQuestions.thicknessMm)
  readonly thicknessMm?: number;

  @Asked(variantQuestions.form)
  readonly form?: 'plain' | 'scored';

  @AskedPart(variantQuestions.sheet, () => SheetSizeDto)
  readonly sheet?: SheetSizeDto;

  @Asked(variantQuestions.rollWidthMm)
  readonly rollWidthMm?: number;
}

export class BasketNeedDto extends MaterialVariantDto implements BasketNeed {
  @Asked(needQuestions.id)
  readonly id!: string;

  @Asked(needQuestions.title)
  readonly title?: string;

  @Asked(needQuestions.estimate)
  readonly estimate?: string;

  @Asked(needQuestions.requiredQuantity)
  readonly requiredQuantity!: number;

  @Asked(needQuestions.unit)
  readonly unit!: string;
}

export class HardenerChoiceDto {
  @Asked(hardenerChoiceQuestions.resin)
  readonly resin!: string;

  @Asked(hardenerChoiceQuestions.hardener)
  readonly hardener!: string;
}

export class SubstituteDto implements Substitute {
  @AskedPart(substituteQuestions.insteadOf, () => MaterialVariantDto)
  readonly insteadOf!: MaterialVariantDto;

  @AskedPart(substituteQuestions.use, () => MaterialVariantDto)
  readonly use!: MaterialVariantDto;

  @Asked(substituteQuestions.ratio)
  readonly ratio!: number;

  @Asked(substituteQuestions.penaltyPerUnit)
  readonly penaltyPerUnit!: string;

  @Asked(substituteQuestions.reason)
  readonly reason!: string;
}

export class OnHandDto extends MaterialVariantDto implements OnHand {
  @Asked(onHandQuestions.quantity)
  readonly quantity!: number;

  @Asked(onHandQuestions.unit)
  readonly unit!: string;

  @Asked(onHandQuestions.monthsLeft)
  readonly monthsLeft?: number;
}

export class BasketOptionsDto implements BasketOptions {
  @Asked(basketOptionQuestions.transport)
  readonly transport?: Transport;

  @Asked(basketOptionQuestions.monthsUntilUse)
  readonly monthsUntilUse?: number;

  @Asked(basketOptionQuestions.suppliers)
  readonly suppliers?: readonly string[];

  @Asked(basketOptionQuestions.hazardBoxKg)
  readonly hazardBoxKg?: number;

  @Asked(basketOptionQuestions.mayCutSheets)
  readonly mayCutSheets?: boolean;

  @Asked(basketOptionQuestions.secondBest)
  readonly secondBest?: boolean;

  @Asked(basketOptionQuestions.timeLimitS)
  readonly timeLimitS?: number;

  @Asked(basketOptionQuestions.orderDate)
  readonly orderDate?: string;
}

export class BasketRequestDto implements BasketByCode {
  @Asked(basketQuestions.priceList)
  readonly priceList!: string;

  @AskedParts(basketQuestions.needs, () => BasketNeedDto)
  readonly needs!: readonly BasketNeedDto[];

  @AskedParts(basketQuestions.hardeners, () => HardenerChoiceDto)
  readonly hardeners?: readonly HardenerChoiceDto[];

  @AskedParts(basketQuestions.substitutes, () => SubstituteDto)
  readonly substitutes?: readonly SubstituteDto[];

  @AskedParts(basketQuestions.onHand, () => OnHandDto)
  readonly onHand?: readonly OnHandDto[];

  @AskedPart(basketQuestions.options, () => BasketOptionsDto)
  readonly options?: BasketOptionsDto;
}

import {
  unitCodes,
  type BasketByCode,
  type BasketNeed,
  type BasketOptions,
  type OnHand,
  type Substitute,
  type Transport,
} from '#lib/costing';
import type { MaterialVariant } from '#lib/takeoff';
import {
  CalendarDate,
  Code,
  DecimalText,
  Flag,
  Length,
  Num,
  OneOf,
  Part,
  Parts,
  Text,
  Texts,
} from '../../edge/dto/index.js';

const units = Object.keys(unitCodes);

export class SheetSizeDto {
  @Length({ above: 0, upTo: 10_000 })
  readonly lengthMm!: number;

  @Length({ above: 0, upTo: 10_000 })
  readonly widthMm!: number;
}

/** A material in the form that is meant; fields left out may be anything. */
export class MaterialVariantDto implements MaterialVariant {
  @Code({ description: 'Material of the catalogue.' })
  readonly material!: string;

  @Code({ optional: true, description: 'Hardener of a resin.' })
  readonly part?: string;

  @Length({ optional: true, above: 0, upTo: 200 })
  readonly thicknessMm?: number;

  @OneOf(['plain', 'scored'], { optional: true })
  readonly form?: 'plain' | 'scored';

  @Part(() => SheetSizeDto, { optional: true })
  readonly sheet?: SheetSizeDto;

  @Length({ optional: true, above: 0, upTo: 10_000 })
  readonly rollWidthMm?: number;
}

export class BasketNeedDto extends MaterialVariantDto implements BasketNeed {
  @Text({ atMost: 120 })
  readonly id!: string;

  @Text({ optional: true })
  readonly title?: string;

  @Text({
    optional: true,
    atMost: 80,
    description: 'Several estimates may be bought for in one order; each is told its share.',
  })
  readonly estimate?: string;

  @Num({ from: 0, upTo: 1e6, description: 'With waste.' })
  readonly requiredQuantity!: number;

  @OneOf(units)
  readonly unit!: string;
}

export class HardenerChoiceDto {
  @Code()
  readonly resin!: string;

  @Code()
  readonly hardener!: string;
}

export class SubstituteDto implements Substitute {
  @Part(() => MaterialVariantDto)
  readonly insteadOf!: MaterialVariantDto;

  @Part(() => MaterialVariantDto)
  readonly use!: MaterialVariantDto;

  @Num({ above: 0, upTo: 1000, description: 'Units of the substitute that do the work of one unit.' })
  readonly ratio!: number;

  @DecimalText({ description: 'For each unit replaced; steers the choice and is not paid.' })
  readonly penaltyPerUnit!: string;

  @Text({ atMost: 400 })
  readonly reason!: string;
}

export class OnHandDto extends MaterialVariantDto implements OnHand {
  @Num({ from: 0, upTo: 1e6 })
  readonly quantity!: number;

  @OneOf(units)
  readonly unit!: string;

  @Num({ optional: true, from: 0, upTo: 600, unit: 'months' })
  readonly monthsLeft?: number;
}

export class BasketOptionsDto implements BasketOptions {
  @OneOf(['ground', 'air', 'collect'], {
    optional: true,
    description: 'By air nothing hazardous travels; who collects pays no freight. Absent: ground.',
  })
  readonly transport?: Transport;

  @Num({
    optional: true,
    from: 0,
    upTo: 120,
    unit: 'months',
    description: 'Packs that would not keep this long are left out.',
  })
  readonly monthsUntilUse?: number;

  @Texts({
    optional: true,
    least: 1,
    most: 50,
    each: { atMost: 80 },
    description: 'Suppliers of the list to order from; absent: all.',
  })
  readonly suppliers?: readonly string[];

  @Num({
    optional: true,
    above: 0,
    upTo: 1000,
    unit: 'kg',
    description:
      'Mass of a box of hazardous goods, each with its surcharge; absent: one surcharge to an order.',
  })
  readonly hazardBoxKg?: number;

  @Flag({
    optional: true,
    description: 'Whole sheets may be cut by the shop, for its fee, so that they travel as ordinary goods.',
  })
  readonly mayCutSheets?: boolean;

  @Flag({ optional: true, description: 'Absent: true.' })
  readonly secondBest?: boolean;

  @Num({
    optional: true,
    above: 0,
    upTo: 30,
    unit: 's',
    description:
      'For all searches of the order together; absent: 5. What is found by then is given, with its distance from the best that is possible.',
  })
  readonly timeLimitS?: number;

  @CalendarDate({ optional: true, description: 'The validity of the price list is checked against it.' })
  readonly orderDate?: string;
}

export class BasketRequestDto implements BasketByCode {
  @Code({ description: 'Price list of the edition.' })
  readonly priceList!: string;

  @Parts(() => BasketNeedDto, { least: 1, most: 2000 })
  readonly needs!: readonly BasketNeedDto[];

  @Parts(() => HardenerChoiceDto, {
    optional: true,
    most: 50,
    description:
      'Which hardener cures a resin of the order; absent: the one that is needed, else the cheapest of the resin.',
  })
  readonly hardeners?: readonly HardenerChoiceDto[];

  @Parts(() => SubstituteDto, { optional: true, most: 100 })
  readonly substitutes?: readonly SubstituteDto[];

  @Parts(() => OnHandDto, { optional: true, most: 500 })
  readonly onHand?: readonly OnHandDto[];

  @Part(() => BasketOptionsDto, { optional: true })
  readonly options?: BasketOptionsDto;
}

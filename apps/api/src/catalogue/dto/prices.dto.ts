import type {
  LabourRates,
  Pack,
  PackContent,
  PriceBreak,
  PriceList,
  Skill,
  Supplier,
  YardCharge,
} from '#lib/catalogue';
import { currencyCodes } from '#lib/money';
import type { PriceChangeAsked } from '../price-change.js';
import {
  CalendarDate,
  Code,
  DecimalText,
  Flag,
  Num,
  OneOf,
  Part,
  Parts,
  Text,
  Texts,
  Whole,
} from '../../edge/dto/index.js';
import { CiteDto } from './datum.dto.js';
import { SheetFormatDto } from './materials.dto.js';

export class PackContentDto implements PackContent {
  @Code({ description: 'Code of a material of the same edition.' })
  readonly material!: string;

  @Code({ optional: true, description: 'Code of a hardener, when the pack holds one.' })
  readonly part?: string;

  @Num({ optional: true, above: 0, upTo: 500, unit: 'mm' })
  readonly thicknessMm?: number;

  @OneOf(['plain', 'scored'], { optional: true })
  readonly form?: 'plain' | 'scored';

  @Part(() => SheetFormatDto, { optional: true })
  readonly sheet?: SheetFormatDto;

  @Num({ optional: true, above: 0, upTo: 10_000, unit: 'mm' })
  readonly rollWidthMm?: number;

  @Num({ above: 0, upTo: 1_000_000 })
  readonly quantity!: number;

  @OneOf(['kg', 'l', 'm2', 'm', 'each', 'pair', 'roll', 'pack'])
  readonly unit!: string;
}

export class PriceBreakDto implements PriceBreak {
  @Whole({ from: 1, upTo: 1_000_000 })
  readonly fromPacks!: number;

  @DecimalText()
  readonly price!: string;
}

export class PackDto implements Pack {
  @Text({ atMost: 80 })
  readonly sku!: string;

  @Text({ atMost: 200 })
  readonly name!: string;

  @Code()
  readonly supplier!: string;

  @Part(() => PackContentDto)
  readonly content!: PackContentDto;

  @Parts(() => PriceBreakDto, { least: 1, most: 20, description: 'The first is for one pack; ascending.' })
  readonly prices!: readonly PriceBreakDto[];

  @Num({ from: 0, upTo: 10_000, unit: 'kg' })
  readonly massKg!: number;

  @Flag()
  readonly hazardous!: boolean;

  @Flag()
  readonly oversize!: boolean;

  @Num({ optional: true, from: 0, upTo: 1200 })
  readonly shelfLifeMonths?: number;

  @Whole({ optional: true, from: 0 })
  readonly stock?: number;

  @DecimalText({ optional: true })
  readonly cutFee?: string;
}

export class SupplierDto implements Supplier {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @DecimalText()
  readonly delivery!: string;

  @DecimalText()
  readonly hazardSurcharge!: string;

  @DecimalText()
  readonly oversizeFreight!: string;

  @DecimalText()
  readonly minimumOrder!: string;

  @DecimalText({ optional: true })
  readonly freeDeliveryFrom?: string;
}

export class PriceListDto implements PriceList {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @OneOf(currencyCodes)
  readonly currency!: string;

  @CalendarDate()
  readonly validFrom!: string;

  @CalendarDate()
  readonly validTo!: string;

  @Flag({ description: 'True for prices of an invented scenario.' })
  readonly invented!: boolean;

  @Flag()
  readonly pricesIncludeTax!: boolean;

  @Parts(() => SupplierDto, { least: 1, most: 100 })
  readonly suppliers!: readonly SupplierDto[];

  @Parts(() => PackDto, { most: 5000 })
  readonly packs!: readonly PackDto[];
}

export class PriceChangeDto implements PriceChangeAsked {
  @Text({
    atMost: 9,
    form: {
      pattern: /^(?:\d{1,3}|-(?:\d|[1-8]\d|90))(?:\.\d{1,4})?$/,
      words: 'a percentage as text such as "4.5" or "-10", from -90 to 999',
    },
    description: 'How far prices rise, or fall with a minus sign before it.',
    example: '4.5',
  })
  readonly percent!: string;

  @DecimalText({
    optional: true,
    description: 'The step that new prices are rounded to; the minor unit of the currency when absent.',
    example: '0.05',
  })
  readonly roundTo?: string;

  @Texts({ optional: true, least: 1, most: 100, description: 'Only packs of these suppliers, by code.' })
  readonly suppliers?: readonly string[];

  @Texts({
    optional: true,
    least: 1,
    most: 500,
    description: 'Only packs that hold these materials, by code.',
  })
  readonly materials?: readonly string[];

  @Texts({ optional: true, least: 1, most: 1000, description: 'Only these packs, by SKU.' })
  readonly skus?: readonly string[];
}

export class RatePerHourDto implements Readonly<Record<Skill, string>> {
  @DecimalText()
  readonly general!: string;

  @DecimalText()
  readonly laminator!: string;

  @DecimalText()
  readonly finisher!: string;

  @DecimalText()
  readonly rigger!: string;
}

export class YardChargeDto implements YardCharge {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @OneOf(['job', 'day', 'worked-day', 'labour-h', 'opened-m2'], {
    description: 'day: on the calendar; worked-day: one on which somebody works.',
  })
  readonly per!: YardCharge['per'];

  @DecimalText()
  readonly price!: string;

  @OneOf(['shed', 'tent', 'open', 'heated'], {
    optional: true,
    description: 'By the shelter, or only while a heater warms the deck; always when absent.',
  })
  readonly when?: YardCharge['when'];

  @OneOf(['ashore-for-this', 'yard'], {
    optional: true,
    description: 'Only where the boat was hauled for this job, or only in a yard; everywhere when absent.',
  })
  readonly where?: YardCharge['where'];
}

export class TaxGroupDto {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @DecimalText()
  readonly percent!: string;
}

export class LabourRatesDto implements LabourRates {
  @Code()
  readonly code!: string;

  @Text()
  readonly name!: string;

  @Text()
  readonly region!: string;

  @OneOf(currencyCodes)
  readonly currency!: string;

  @CalendarDate()
  readonly validFrom!: string;

  @CalendarDate()
  readonly validTo!: string;

  @Flag({ description: 'True for rates of an invented scenario.' })
  readonly invented!: boolean;

  @Part(() => RatePerHourDto)
  readonly perHour!: RatePerHourDto;

  @Parts(() => YardChargeDto, { most: 200 })
  readonly charges!: readonly YardChargeDto[];

  @OneOf(['posted', 'wage'], {
    description:
      'posted: what a yard charges, overhead and profit inside, so that both percentages are 0; wage: what it pays.',
  })
  readonly rateBasis!: LabourRates['rateBasis'];

  @DecimalText()
  readonly overheadPercent!: string;

  @DecimalText()
  readonly profitPercent!: string;

  @Parts(() => TaxGroupDto, { least: 1, most: 20 })
  readonly taxGroups!: readonly TaxGroupDto[];

  @Part(() => CiteDto, { optional: true })
  readonly cite?: CiteDto;
}

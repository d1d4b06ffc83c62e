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

  @Num({
    optional: true,
    above: 0,
    upTo: 500,
    unit: 'mm',
    description: 'Thickness of the sheet in the pack.',
  })
  readonly thicknessMm?: number;

  @OneOf(['plain', 'scored'], {
    optional: true,
    description: 'Whether the sheet in the pack is plain or scored.',
  })
  readonly form?: 'plain' | 'scored';

  @Part(() => SheetFormatDto, { optional: true, description: 'Size of the sheet in the pack.' })
  readonly sheet?: SheetFormatDto;

  @Num({ optional: true, above: 0, upTo: 10_000, unit: 'mm', description: 'Width of the roll in the pack.' })
  readonly rollWidthMm?: number;

  @Num({ above: 0, upTo: 1_000_000, description: 'How much the pack holds, in its unit.' })
  readonly quantity!: number;

  @OneOf(['kg', 'l', 'm2', 'm', 'each', 'pair', 'roll', 'pack'], {
    description: 'Unit of what the pack holds.',
  })
  readonly unit!: string;
}

export class PriceBreakDto implements PriceBreak {
  @Whole({ from: 1, upTo: 1_000_000, description: 'Packs from which the price holds.' })
  readonly fromPacks!: number;

  @DecimalText({ description: 'Price of one pack from then on.' })
  readonly price!: string;
}

export class PackDto implements Pack {
  @Text({ atMost: 80, description: 'Number that the supplier sells the pack under.' })
  readonly sku!: string;

  @Text({ atMost: 200, description: 'Name that the supplier sells the pack under.' })
  readonly name!: string;

  @Code({ description: 'Code of a supplier of the same list.' })
  readonly supplier!: string;

  @Part(() => PackContentDto, { description: 'Which material, how much and in which form.' })
  readonly content!: PackContentDto;

  @Parts(() => PriceBreakDto, {
    least: 1,
    most: 20,
    description: 'Price of one pack by how many are bought: the first from one pack on, then ascending.',
  })
  readonly prices!: readonly PriceBreakDto[];

  @Num({ from: 0, upTo: 10_000, unit: 'kg', description: 'Mass of the full pack, for carriage.' })
  readonly massKg!: number;

  @Flag({ description: 'Whether it is sent as dangerous goods.' })
  readonly hazardous!: boolean;

  @Flag({ description: 'Whether it is too large for parcels.' })
  readonly oversize!: boolean;

  @Num({ optional: true, from: 0, upTo: 1200, description: 'How long the closed pack keeps.' })
  readonly shelfLifeMonths?: number;

  @Whole({
    optional: true,
    from: 0,
    upTo: 1_000_000,
    description: 'Packs there are; absent when nobody counts.',
  })
  readonly stock?: number;

  @DecimalText({ optional: true, description: 'Extra charge when a part of the pack is cut off.' })
  readonly cutFee?: string;
}

export class SupplierDto implements Supplier {
  @Code({ description: 'Code of the supplier, unique in the list.' })
  readonly code!: string;

  @Text({ description: 'Name that orders are addressed to.' })
  readonly name!: string;

  @DecimalText({ description: 'Price of one delivery.' })
  readonly delivery!: string;

  @DecimalText({ description: 'What a box of dangerous goods adds to it.' })
  readonly hazardSurcharge!: string;

  @DecimalText({ description: 'What goods too large for parcels add to it.' })
  readonly oversizeFreight!: string;

  @DecimalText({ description: 'Least sum that the supplier delivers for.' })
  readonly minimumOrder!: string;

  @DecimalText({ optional: true, description: 'Sum from which delivery is free.' })
  readonly freeDeliveryFrom?: string;
}

export class PriceListDto implements PriceList {
  @Code({ description: 'Code of the list, unique in the edition.' })
  readonly code!: string;

  @Text({ description: 'Name that estimates show the list by.' })
  readonly name!: string;

  @OneOf(currencyCodes, { description: 'Currency of all prices in the list (ISO 4217).' })
  readonly currency!: string;

  @CalendarDate({ description: 'First day that the prices hold (ISO 8601).' })
  readonly validFrom!: string;

  @CalendarDate({ description: 'Last day that the prices hold (ISO 8601).' })
  readonly validTo!: string;

  @Flag({ description: 'True for prices of an invented scenario.' })
  readonly invented!: boolean;

  @Flag({ description: 'Whether the prices hold tax already.' })
  readonly pricesIncludeTax!: boolean;

  @Parts(() => SupplierDto, { least: 1, most: 100, description: 'Who sells, and on which terms.' })
  readonly suppliers!: readonly SupplierDto[];

  @Parts(() => PackDto, { most: 5000, description: 'What can be bought, one entry a pack.' })
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
  @DecimalText({ description: 'Rate of general labour.' })
  readonly general!: string;

  @DecimalText({ description: 'Rate of whoever laminates.' })
  readonly laminator!: string;

  @DecimalText({ description: 'Rate of whoever fairs and paints.' })
  readonly finisher!: string;

  @DecimalText({ description: 'Rate of whoever takes rig and fittings off.' })
  readonly rigger!: string;
}

export class YardChargeDto implements YardCharge {
  @Code({ description: 'Code that estimates name the charge by.' })
  readonly code!: string;

  @Text({ description: 'What the yard charges for.' })
  readonly name!: string;

  @OneOf(['job', 'day', 'worked-day', 'labour-h', 'opened-m2'], {
    description: 'day: on the calendar; worked-day: one on which somebody works.',
  })
  readonly per!: YardCharge['per'];

  @DecimalText({ description: 'Price of it.' })
  readonly price!: string;

  @OneOf(['shed', 'tent', 'open', 'heated', 'shaded'], {
    optional: true,
    description: 'By the shelter, or only where the deck is heated or shaded; always when absent.',
  })
  readonly when?: YardCharge['when'];

  @OneOf(['ashore-for-this', 'yard'], {
    optional: true,
    description: 'Only where the boat was hauled for this job, or only in a yard; everywhere when absent.',
  })
  readonly where?: YardCharge['where'];
}

export class TaxGroupDto {
  @Code({ description: 'Code that lines name the tax by.' })
  readonly code!: string;

  @Text({ description: 'Name of the tax on an invoice.' })
  readonly name!: string;

  @DecimalText({ description: 'Rate of the tax in percent, as decimal text.' })
  readonly percent!: string;
}

export class LabourRatesDto implements LabourRates {
  @Code({ description: 'Code of the rates, unique in the edition.' })
  readonly code!: string;

  @Text({ description: 'Name that estimates show the rates by.' })
  readonly name!: string;

  @Text({ description: 'Where the rates hold.' })
  readonly region!: string;

  @OneOf(currencyCodes, { description: 'Currency of all rates and charges (ISO 4217).' })
  readonly currency!: string;

  @CalendarDate({ description: 'First day that the rates hold (ISO 8601).' })
  readonly validFrom!: string;

  @CalendarDate({ description: 'Last day that the rates hold (ISO 8601).' })
  readonly validTo!: string;

  @Flag({ description: 'True for rates of an invented scenario.' })
  readonly invented!: boolean;

  @Part(() => RatePerHourDto, { description: 'Price of an hour by skill.' })
  readonly perHour!: RatePerHourDto;

  @Parts(() => YardChargeDto, { most: 200, description: 'What the yard asks besides hours.' })
  readonly charges!: readonly YardChargeDto[];

  @OneOf(['posted', 'wage'], {
    description:
      'posted: what a yard charges, overhead and profit inside, so that both percentages are 0; wage: what it pays.',
  })
  readonly rateBasis!: LabourRates['rateBasis'];

  @DecimalText({ description: 'Overhead on the direct cost, as decimal text.' })
  readonly overheadPercent!: string;

  @DecimalText({ description: 'Profit on cost with overhead, as decimal text.' })
  readonly profitPercent!: string;

  @Parts(() => TaxGroupDto, { least: 1, most: 20, description: 'Taxes that lines can fall under.' })
  readonly taxGroups!: readonly TaxGroupDto[];

  @Part(() => CiteDto, { optional: true, description: 'Where the rates come from.' })
  readonly cite?: CiteDto;
}

import {
  causeClasses,
  partOrLabours,
  riskDefaults,
  sectionTitles,
  unitCodes,
  type AtExtent,
  type CauseClass,
  type LinePack,
  type LineRequest,
  type PartOrLabour,
  type PriceJobRequest,
  type RiskTerms,
  type Section,
  type TaxGroup,
} from '#lib/costing';
import { evidenceGrades } from '#lib/extent';
import type { Rounding } from '#lib/money';
import { DepreciationDto } from '../../inputs/depreciation.dto.js';
import { Code, DecimalText, Flag, Num, OneOf, Part, Parts, Text, Whole } from '../../edge/dto/index.js';

const QUANTITY = { from: 0, upTo: 1e9 } as const;

export class LineSpreadDto {
  @Num({ from: 0, upTo: 1, description: 'Least amount as a share of the likely one.' })
  readonly low!: number;

  @Num({ from: 1, upTo: 100, description: 'Most amount as a multiple of the likely one.' })
  readonly high!: number;
}

export class AtExtentDto implements AtExtent {
  @Num({ from: 0, upTo: 100, description: 'Found area over recorded area.' })
  readonly extentFactor!: number;

  @Num({ from: 0, upTo: 1000, description: 'Amount there over the amount of the line.' })
  readonly amountFactor!: number;
}

export class LinePackDto implements LinePack {
  @Text({ atMost: 120 })
  readonly sku!: string;

  @Text()
  readonly name!: string;

  @Text({ atMost: 80 })
  readonly supplier!: string;

  @Whole({ from: 0, upTo: 1_000_000 })
  readonly count!: number;

  @DecimalText({ decimals: 12, description: 'Price of one pack.' })
  readonly price!: string;
}

export class CostLineDto implements LineRequest {
  @Text({ atMost: 120, description: 'Unique among the lines; a revision is compared by it.' })
  readonly code!: string;

  @OneOf(Object.keys(sectionTitles))
  readonly section!: Section;

  @Text()
  readonly title!: string;

  @Text({ optional: true, atMost: 80, description: 'Step of the job.' })
  readonly stage?: string;

  @OneOf(partOrLabours, {
    description: 'Only parts depreciate; hire, yard charges and disposal count as labour.',
  })
  readonly partOrLabour!: PartOrLabour;

  @OneOf(causeClasses, { description: 'What an insurer asks: sudden, there before, or upkeep.' })
  readonly causeClass!: CauseClass;

  @Num(QUANTITY)
  readonly netQuantity!: number;

  @Num({ optional: true, from: 0, upTo: 10, description: 'Waste on top of the net quantity, as a fraction.' })
  readonly wasteFraction?: number;

  @Num({ optional: true, ...QUANTITY, description: 'Whole packs; charged instead of the required quantity.' })
  readonly purchaseQuantity?: number;

  @OneOf(Object.keys(unitCodes))
  readonly unit!: string;

  @DecimalText({
    optional: true,
    decimals: 12,
    description: 'Exact price per unit; absent where packs are priced.',
  })
  readonly unitRate?: string;

  @Parts(() => LinePackDto, { optional: true, most: 50 })
  readonly packs?: readonly LinePackDto[];

  @Flag({ optional: true, description: 'The rate holds the tax of its group; absent: false.' })
  readonly rateIncludesTax?: boolean;

  @Code({ description: 'Code of one of taxGroups.' })
  readonly taxGroup!: string;

  @Part(() => LineSpreadDto, { optional: true })
  readonly spread?: LineSpreadDto;

  @Parts(() => AtExtentDto, {
    optional: true,
    least: 1,
    most: 20,
    description:
      'What planning it again at other extents gave, the extents rising; straight between them and the recorded one. Absent: the same whatever is found.',
  })
  readonly atExtents?: readonly AtExtentDto[];

  @Part(() => DepreciationDto, { optional: true })
  readonly depreciation?: DepreciationDto;

  @OneOf(['in', 'out'], {
    optional: true,
    description: 'Out: listed so that nobody can say it was forgotten, not summed. Absent: in.',
  })
  readonly scope?: 'in' | 'out';

  @Text({ optional: true, atMost: 1000 })
  readonly note?: string;
}

export class TaxGroupDto implements TaxGroup {
  @Code()
  readonly code!: string;

  @Text({ atMost: 80 })
  readonly name!: string;

  @DecimalText({ description: 'Percentage.', example: '20' })
  readonly percent!: string;
}

export class ExtentFactorDto {
  @Num({ from: 0, upTo: 100 })
  readonly low!: number;

  @Num({ from: 0, upTo: 100 })
  readonly likely!: number;

  @Num({ from: 0, upTo: 100 })
  readonly high!: number;
}

export class CommonShareDto {
  @Num({ optional: true, from: 0, upTo: 1, description: `Absent: ${riskDefaults.labour}.` })
  readonly labour?: number;

  @Num({ optional: true, from: 0, upTo: 1, description: `Absent: ${riskDefaults.part}.` })
  readonly part?: number;
}

export class RiskTermsDto implements RiskTerms {
  @OneOf(evidenceGrades, {
    optional: true,
    description: 'How the extent was found; decides how far it may grow.',
  })
  readonly evidence?: RiskTerms['evidence'];

  @Part(() => ExtentFactorDto, { optional: true, description: 'The growth itself, instead of the evidence.' })
  readonly extentFactor?: ExtentFactorDto;

  @Whole({
    optional: true,
    from: 100,
    upTo: 200_000,
    description: `A multiple of ten; absent: ${riskDefaults.samples}.`,
  })
  readonly samples?: number;

  @Whole({
    optional: true,
    from: 0,
    upTo: 4_294_967_295,
    description: `The same seed gives the same range; absent: ${riskDefaults.seed}.`,
  })
  readonly seed?: number;

  @OneOf(['triangular', 'beta'], {
    optional: true,
    description: `How three points are read as a distribution; absent: ${riskDefaults.shape}.`,
  })
  readonly shape?: RiskTerms['shape'];

  @Num({
    optional: true,
    from: 0,
    upTo: 1,
    description: `Correlation of unit rates with the extent; absent: ${riskDefaults.extentToRate}.`,
  })
  readonly extentToRate?: number;

  @Part(() => CommonShareDto, {
    optional: true,
    description: 'Share of the variance of rates that labour, or parts, have in common.',
  })
  readonly commonShare?: CommonShareDto;

  @DecimalText({ optional: true, description: 'Price of opening and mapping before the rest is agreed.' })
  readonly stageZeroCost?: string;

  @DecimalText({ optional: true, description: 'What the repair is worth to the owner.' })
  readonly worthOfRepair?: string;
}

export class CostRollupRequestDto implements PriceJobRequest {
  @Text({
    atLeast: 3,
    atMost: 3,
    form: { pattern: /^[A-Z]{3}$/, words: 'a currency code of ISO 4217' },
    description: 'Every price is in it; nothing is converted.',
    example: 'EUR',
  })
  readonly currency!: string;

  @Parts(() => CostLineDto, { least: 1, most: 2000 })
  readonly lines!: readonly CostLineDto[];

  @Parts(() => TaxGroupDto, { least: 1, most: 20 })
  readonly taxGroups!: readonly TaxGroupDto[];

  @DecimalText({ optional: true, description: 'On the sum of the lines.' })
  readonly overheadPercent?: string;

  @DecimalText({ optional: true, description: 'On lines and overhead.' })
  readonly profitPercent?: string;

  @DecimalText({
    optional: true,
    description: 'Absent, with no contingencyAmount: P80 less the point where risk is asked for, else none.',
  })
  readonly contingencyPercent?: string;

  @DecimalText({ optional: true })
  readonly contingencyAmount?: string;

  @OneOf(['half-away-from-zero', 'half-to-even', 'floor', 'ceiling'], {
    optional: true,
    description: 'Absent: half-away-from-zero.',
  })
  readonly rounding?: Rounding;

  @Part(() => RiskTermsDto, { optional: true })
  readonly risk?: RiskTermsDto;
}

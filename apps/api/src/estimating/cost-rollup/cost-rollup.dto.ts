import {
  atExtentQuestions,
  commonShareQuestions,
  extentFactorQuestions,
  linePackQuestions,
  lineQuestions,
  priceJobQuestions,
  riskQuestions,
  spreadQuestions,
  taxGroupQuestions,
  type AtExtent,
  type CauseClass,
  type LinePack,
  type JobLine,
  type PartOrLabour,
  type PriceJobRequest,
  type RiskTerms,
  type Section,
  type TaxGroup,
} from '#lib/costing';
import type { Rounding } from '#lib/money';
import { DepreciationDto } from '../../inputs/depreciation.dto.js';
import { Asked, AskedPart, AskedParts, Part, saidOf } from '../../edge/dto/index.js';

export class LineSpreadDto {
  @Asked(spreadQuestions.low)
  readonly low!: number;

  @Asked(spreadQuestions.high)
  readonly high!: number;
}

export class AtExtentDto implements AtExtent {
  @Asked(atExtentQuestions.extentFactor)
  readonly extentFactor!: number;

  @Asked(atExtentQuestions.amountFactor)
  readonly amountFactor!: number;
}

export class LinePackDto implements LinePack {
  @Asked(linePackQuestions.sku)
  readonly sku!: string;

  @Asked(linePackQuestions.name)
  readonly name!: string;

  @Asked(linePackQuestions.supplier)
  readonly supplier!: string;

  @Asked(linePackQuestions.count)
  readonly count!: number;

  @Asked(linePackQuestions.price)
  readonly price!: string;
}

export class CostLineDto implements JobLine {
  @Asked(lineQuestions.code)
  readonly code!: string;

  @Asked(lineQuestions.section)
  readonly section!: Section;

  @Asked(lineQuestions.title)
  readonly title!: string;

  @Asked(lineQuestions.stage)
  readonly stage?: string;

  @Asked(lineQuestions.partOrLabour)
  readonly partOrLabour!: PartOrLabour;

  @Asked(lineQuestions.causeClass)
  readonly causeClass!: CauseClass;

  @Asked(lineQuestions.netQuantity)
  readonly netQuantity!: number;

  @Asked(lineQuestions.wasteFraction)
  readonly wasteFraction?: number;

  @Asked(lineQuestions.purchaseQuantity)
  readonly purchaseQuantity?: number;

  @Asked(lineQuestions.unit)
  readonly unit!: string;

  @Asked(lineQuestions.unitRate)
  readonly unitRate?: string;

  @AskedParts(lineQuestions.packs, () => LinePackDto)
  readonly packs?: readonly LinePackDto[];

  @Asked(lineQuestions.rateIncludesTax)
  readonly rateIncludesTax?: boolean;

  @Asked(lineQuestions.taxGroup)
  readonly taxGroup!: string;

  @AskedPart(lineQuestions.spread, () => LineSpreadDto)
  readonly spread?: LineSpreadDto;

  @AskedParts(lineQuestions.atExtents, () => AtExtentDto)
  readonly atExtents?: readonly AtExtentDto[];

  @Part(() => DepreciationDto, saidOf(lineQuestions.depreciation))
  readonly depreciation?: DepreciationDto;

  @Asked(lineQuestions.scope)
  readonly scope?: 'in' | 'out';

  @Asked(lineQuestions.note)
  readonly note?: string;
}

export class LineTaxGroupDto implements TaxGroup {
  @Asked(taxGroupQuestions.code)
  readonly code!: string;

  @Asked(taxGroupQuestions.name)
  readonly name!: string;

  @Asked(taxGroupQuestions.percent)
  readonly percent!: string;
}

export class ExtentFactorDto {
  @Asked(extentFactorQuestions.low)
  readonly low!: number;

  @Asked(extentFactorQuestions.likely)
  readonly likely!: number;

  @Asked(extentFactorQuestions.high)
  readonly high!: number;
}

export class CommonShareDto {
  @Asked(commonShareQuestions.labour)
  readonly labour?: number;

  @Asked(commonShareQuestions.part)
  readonly part?: number;
}

export class RiskTermsDto implements RiskTerms {
  @Asked(riskQuestions.evidence)
  readonly evidence?: RiskTerms['evidence'];

  @AskedPart(riskQuestions.extentFactor, () => ExtentFactorDto)
  readonly extentFactor?: ExtentFactorDto;

  @Asked(riskQuestions.samples)
  readonly samples?: number;

  @Asked(riskQuestions.seed)
  readonly seed?: number;

  @Asked(riskQuestions.shape)
  readonly shape?: RiskTerms['shape'];

  @Asked(riskQuestions.extentToRate)
  readonly extentToRate?: number;

  @AskedPart(riskQuestions.commonShare, () => CommonShareDto)
  readonly commonShare?: CommonShareDto;

  @Asked(riskQuestions.stageZeroCost)
  readonly stageZeroCost?: string;

  @Asked(riskQuestions.worthOfRepair)
  readonly worthOfRepair?: string;
}

export class CostRollupRequestDto implements PriceJobRequest {
  @Asked(priceJobQuestions.currency)
  readonly currency!: string;

  @AskedParts(priceJobQuestions.lines, () => CostLineDto)
  readonly lines!: readonly CostLineDto[];

  @AskedParts(priceJobQuestions.taxGroups, () => LineTaxGroupDto)
  readonly taxGroups!: readonly LineTaxGroupDto[];

  @Asked(priceJobQuestions.overheadPercent)
  readonly overheadPercent?: string;

  @Asked(priceJobQuestions.profitPercent)
  readonly profitPercent?: string;

  @Asked(priceJobQuestions.contingencyPercent)
  readonly contingencyPercent?: string;

  @Asked(priceJobQuestions.contingencyAmount)
  readonly contingencyAmount?: string;

  @Asked(priceJobQuestions.rounding)
  readonly rounding?: Rounding;

  @AskedPart(priceJobQuestions.risk, () => RiskTermsDto)
  readonly risk?: RiskTermsDto;
}

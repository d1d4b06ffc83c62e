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
} from '#lib/costing';
import { DepreciationDto } from '../../inputs/depreciation.dto.js';
import { answering } from '../../edge/dto/index.js';

export class LineSpreadDto extends answering(spreadQuestions) {}

export class AtExtentDto extends answering(atExtentQuestions) {}

export class LinePackDto extends answering(linePackQuestions) {}

export class CostLineDto extends answering(lineQuestions, {
  packs: () => LinePackDto,
  spread: () => LineSpreadDto,
  atExtents: () => AtExtentDto,
  depreciation: () => DepreciationDto,
}) {}

export class LineTaxGroupDto extends answering(taxGroupQuestions) {}

export class ExtentFactorDto extends answering(extentFactorQuestions) {}

export class CommonShareDto extends answering(commonShareQuestions) {}

export class RiskTermsDto extends answering(riskQuestions, {
  extentFactor: () => ExtentFactorDto,
  commonShare: () => CommonShareDto,
}) {}

export class CostRollupRequestDto extends answering(priceJobQuestions, {
  lines: () => CostLineDto,
  taxGroups: () => LineTaxGroupDto,
  risk: () => RiskTermsDto,
}) {}

import { depreciationQuestions, type DepreciationTerms } from '#lib/costing';
import { Asked } from '../edge/dto/index.js';

export class DepreciationDto implements DepreciationTerms {
  @Asked(depreciationQuestions.ageYears)
  readonly ageYears!: number;

  @Asked(depreciationQuestions.lifeYears)
  readonly lifeYears?: number;

  @Asked(depreciationQuestions.percent)
  readonly percent?: string;
}

import type { DepreciationTerms } from '#lib/costing';
import { DecimalText, Num } from '../edge/dto/index.js';

export class DepreciationDto implements DepreciationTerms {
  @Num({ from: 0, upTo: 200, unit: 'years' })
  readonly ageYears!: number;

  @Num({
    optional: true,
    above: 0,
    upTo: 200,
    unit: 'years',
    description: 'Straight-line life, where no percentage is given.',
  })
  readonly lifeYears?: number;

  @DecimalText({
    optional: true,
    description: 'Percentage taken off the price of the part, 0 to 100.',
    example: '20',
  })
  readonly percent?: string;
}

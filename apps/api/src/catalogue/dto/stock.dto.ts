import { Parts, Text, Whole } from '../../edge/dto/index.js';

const MOST_PACKS = 1_000_000;

export class CountedPackDto {
  @Text({ atMost: 80, description: 'SKU of a pack of the list in the current edition.' })
  readonly sku!: string;

  @Whole({ from: 0, upTo: MOST_PACKS, description: 'Whole packs that can be sold now.' })
  readonly packs!: number;
}

export class CountedPacksDto {
  @Parts(() => CountedPackDto, {
    least: 1,
    most: 5000,
    description: 'Counts that take the place of earlier ones; what was counted of other packs stays.',
  })
  readonly items!: readonly CountedPackDto[];
}

export class PackCountDto {
  @Whole({ from: 0, upTo: MOST_PACKS, description: 'Whole packs that can be sold now.' })
  readonly packs!: number;
}

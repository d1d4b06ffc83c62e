import { OneOf, Parts, Text } from '../../edge/dto/index.js';
import { columnMeanings, type ColumnMeaning, type SupplierSheet } from '../supplier-sheet.js';

export class SheetColumnDto {
  @Text({ atMost: 200, description: 'What stands above the column.' })
  readonly heading!: string;

  @OneOf(columnMeanings, { description: 'What it says of a pack; `price` is that of one pack.' })
  readonly means!: ColumnMeaning;
}

export class SupplierSheetDto implements SupplierSheet {
  @Text({
    atMost: 1_000_000,
    description:
      'The cells, headings first: parted by tabs, semicolons or commas, whichever the headings have most of, and quoted as RFC 4180 says.',
  })
  readonly cells!: string;

  @Parts(() => SheetColumnDto, {
    least: 2,
    most: 20,
    description: 'What the columns mean; columns that are not named here are left out.',
  })
  readonly columns!: readonly SheetColumnDto[];

  @OneOf(['.', ','], { description: 'What parts the decimals in the numbers of the sheet.' })
  readonly decimalMark!: '.' | ',';

  @OneOf(['keep', 'drop'], {
    description: 'What becomes of the prices from more packs on, where a price is taken.',
  })
  readonly breaks!: 'keep' | 'drop';

  @OneOf(['refuse', 'leave-out'], { description: 'What becomes of rows whose SKU is not in the list.' })
  readonly unknownSkus!: 'refuse' | 'leave-out';
}

import { OneOf, Parts, Text } from '../../edge/dto/index.js';

export const dimensions = ['length', 'area', 'mass', 'temperature', 'areal mass', 'volume', 'speed'] as const;

export class TypedQuantityDto {
  @OneOf(dimensions, { description: 'What the text measures.' })
  readonly dimension!: (typeof dimensions)[number];

  @Text({ atMost: 40, description: 'A number with its unit.', example: '5/8 in' })
  readonly text!: string;
}

export class QuantitiesRequestDto {
  @Parts(() => TypedQuantityDto, {
    least: 1,
    most: 500,
    description: 'Texts to read, each with the unit that is wanted.',
  })
  readonly quantities!: readonly TypedQuantityDto[];
}

import type { VariantAsked, VariantsRequest } from '#lib/estimate';
import { ConditionsDto, DefectRecordDto, MethodDto } from '../../inputs/defect-record.dto.js';
import { Code, Flag, Part, Parts, Text } from '../../edge/dto/index.js';

const MOST_VARIANTS = 12;

export class VariantAskedDto implements VariantAsked {
  @Code({ description: 'Names the variant in the answer.', example: 'relay-vacuum' })
  readonly code!: string;

  @Text({
    optional: true,
    atMost: 100,
    description: 'What the variant is called in the answer. Absent: its code.',
  })
  readonly title?: string;

  @Flag({
    optional: true,
    description:
      'Fill the gap under a sound skin through drilled holes; refused, with the rule, wherever that is not trusted.',
  })
  readonly inject?: boolean;

  @Part(() => MethodDto, {
    optional: true,
    description: "What is done otherwise than the record's own method says.",
  })
  readonly method?: MethodDto;

  @Part(() => ConditionsDto, {
    optional: true,
    description: "What is otherwise than the record's own conditions say.",
  })
  readonly conditions?: ConditionsDto;
}

/** One defect, and the ways of mending it that are to be weighed. */
export class VariantsRequestDto implements VariantsRequest {
  @Part(() => DefectRecordDto, { description: 'Defect record that all variants share.' })
  readonly record!: DefectRecordDto;

  @Parts(() => VariantAskedDto, {
    least: 1,
    most: MOST_VARIANTS,
    description: 'An entry with nothing but a code is the record as it stands.',
  })
  readonly variants!: readonly VariantAskedDto[];
}

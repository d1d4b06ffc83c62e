import { problem, type Problem } from '#lib/kernel';
import type { Datum } from '#lib/catalogue';
import type { Cite } from '#lib/provenance';
import { Field, filled, type Said } from '../../edge/dto/field.js';
import { Num, Part, Text } from '../../edge/dto/index.js';
import { partFaults } from '../../edge/dto/plain-fields.js';
import { numberFaults, type Range } from '../../edge/dto/quantities.js';

/** Keys of sources are words of capitals, as in the shipped catalogue. */
export const sourceKey = {
  pattern: /^[A-Z0-9]+(?:[-.][A-Z0-9]+)*$/,
  words: 'a source key of capitals, digits, hyphens and dots',
};

export class CiteDto implements Cite {
  @Text({ atMost: 80, form: sourceKey, description: 'Key of a source of the same edition.' })
  readonly source!: string;

  @Text({ optional: true, atMost: 200, description: 'Clause, table, equation or page.' })
  readonly clause?: string;

  @Text({
    optional: true,
    atMost: 500,
    description: 'Page or table, or why the value stands without a source.',
  })
  readonly note?: string;
}

export class DatumDto implements Datum {
  @Num({ description: 'The value in the unit that its field names.' })
  readonly value!: number;

  @Num({ optional: true, description: 'Least value seen.' })
  readonly low?: number;

  @Num({ optional: true, description: 'Greatest value seen.' })
  readonly high?: number;

  @Part(() => CiteDto, { description: 'Where the value is published.' })
  readonly cite!: CiteDto;
}

/** One value of a material with its spread and its source; the unit stands in the name of the field. */
export const Value = (said: Range & Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a value with its source, such as {"value": 150, "cite": {"source": "COMMON-PRACTICE"}}',
    part: () => DatumDto,
    read: (raw) => filled(DatumDto, raw),
    check: (value) => [...partFaults(value), ...(value instanceof DatumDto ? datumFaults(value, said) : [])],
    schema: {
      type: () => DatumDto,
      ...(said.description === undefined ? {} : { description: said.description }),
    },
  });

function datumFaults({ value, low, high }: Datum, range: Range): readonly Problem[] {
  if (typeof value !== 'number') return [];
  const outside = numberFaults(value, range, '1').map((found) => ({ ...found, at: '/value' }));
  const isInOrder = (low === undefined || low <= value) && (high === undefined || high >= value);
  return isInOrder
    ? outside
    : [
        ...outside,
        problem('contradiction', '', {
          other: 'itself',
          why: 'low, value and high are not in ascending order',
        }),
      ];
}

import { Text } from '../../edge/dto/index.js';

/** What is said of an uploaded photograph, beside its number in the path. */
export class PhotographQueryDto {
  @Text({ atMost: 300, description: 'What the photograph shows.' })
  readonly caption!: string;

  @Text({
    optional: true,
    atMost: 40,
    form: {
      pattern: /^-?\d{1,6}(?:\.\d{1,3})?,-?\d{1,6}(?:\.\d{1,3})?$/,
      words: 'two numbers of millimetres with a comma between them, such as 1130,-40',
    },
    description:
      'Where on the deck it was taken, `xMm,yMm` in the coordinates of the record; drawn on the plan with its number.',
  })
  readonly at?: string;

  @Text({
    optional: true,
    atMost: 3,
    form: {
      pattern: /^(?:[0-9]|[1-9][0-9]|[12][0-9]{2}|3[0-5][0-9])$/,
      words: 'whole degrees from 0 to 359',
    },
    description:
      'Which way it looks, in degrees: 0 towards the bow, 90 to starboard. Only together with `at`.',
  })
  readonly directionDeg?: string;
}

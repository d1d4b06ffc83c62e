import type { ReadAs, Source } from '#lib/catalogue';
import { OneOf, Text } from '../../edge/dto/index.js';
import { sourceKey } from './datum.dto.js';

export const waysOfReading: readonly ReadAs[] = [
  'first-hand',
  'second-hand',
  'memory',
  'derived',
  'common-practice',
];

export class SourceDto implements Source {
  @Text({ atMost: 80, form: sourceKey, description: 'Key that cites name the source by.' })
  readonly key!: string;

  @Text({ atMost: 400, description: 'Title of what was published.' })
  readonly title!: string;

  @Text({ atMost: 300, description: 'Who published it.' })
  readonly body!: string;

  @Text({ atMost: 40, description: 'Year or edition of the publication.' })
  readonly year!: string;

  @OneOf(waysOfReading, { description: 'In which form it was read.' })
  readonly readAs!: ReadAs;

  @Text({
    optional: true,
    atMost: 500,
    form: { pattern: /^https?:\/\/[^\s<>"]+$/, words: 'a web address' },
    description: 'Where it can be read, if freely.',
  })
  readonly url?: string;

  @Text({ optional: true, atMost: 1000, description: 'What to know about the source.' })
  readonly note?: string;
}

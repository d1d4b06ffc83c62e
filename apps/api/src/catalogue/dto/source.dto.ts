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
  @Text({ atMost: 80, form: sourceKey })
  readonly key!: string;

  @Text({ atMost: 400 })
  readonly title!: string;

  @Text({ atMost: 300, description: 'Who published it.' })
  readonly body!: string;

  @Text({ atMost: 40 })
  readonly year!: string;

  @OneOf(waysOfReading)
  readonly readAs!: ReadAs;

  @Text({ optional: true, atMost: 500, form: { pattern: /^https?:\/\/[^\s<>"]+$/, words: 'a web address' } })
  readonly url?: string;

  @Text({ optional: true, atMost: 1000 })
  readonly note?: string;
}

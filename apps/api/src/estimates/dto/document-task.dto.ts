import type { ReaderChoice } from '../../documents/render.js';
import { annexNames, purposes, type AnnexName, type Purpose } from '#lib/drawings';
import { OneOf, Part, SomeOf, Text } from '../../edge/dto/index.js';

class ReaderChoiceDto implements ReaderChoice {
  @Text()
  readonly locale!: string;

  @OneOf(['si', 'us'])
  readonly units!: ReaderChoice['units'];

  @OneOf(['a4', 'letter'])
  readonly paper!: ReaderChoice['paper'];

  @OneOf(purposes)
  readonly purpose!: Purpose;

  @SomeOf(annexNames, { optional: true })
  readonly annexes?: readonly AnnexName[];
}

/** A document to be set later, as it lies in the queue. */
export class DocumentTaskDto {
  @Text()
  readonly estimateId!: string;

  @OneOf(['report', 'job-pack', 'templates'])
  readonly document!: 'report' | 'job-pack' | 'templates';

  @OneOf(['application/pdf', 'text/html'])
  readonly mediaType!: 'application/pdf' | 'text/html';

  @Part(() => ReaderChoiceDto)
  readonly reader!: ReaderChoiceDto;

  /** What the letterhead and the program were like, so that a changed one makes another task. */
  @Text()
  readonly madeWith!: string;
}

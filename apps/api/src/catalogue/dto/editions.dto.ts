import { Code, Instant, Text } from '../../edge/dto/index.js';

export class NewEditionDto {
  @Code({ description: 'A name for the edition, such as spring-2027.' })
  readonly code!: string;

  @Code({ optional: true, description: 'Code of the edition to start from; the current one when absent.' })
  readonly basedOn?: string;

  @Text({ optional: true, atMost: 1000, description: 'What the draft is for.' })
  readonly note?: string;
}

export class PublicationDto {
  @Instant({
    optional: true,
    description: 'From when it counts; at once when absent. Until then the present edition stays current.',
  })
  readonly effectiveAt?: string;
}

export class RestorationDto {
  @Code({ description: 'A name for the edition that holds it again, such as autumn-2027-again.' })
  readonly code!: string;

  @Text({ optional: true, atMost: 1000, description: 'Why.' })
  readonly note?: string;
}

export class EditionComparisonQueryDto {
  @Code({ description: 'Code of the edition to compare with, as the state before.' })
  readonly with!: string;
}

export class EditionQueryDto {
  @Code({
    optional: true,
    description: 'Code of an edition; the current one when absent. Changes need the code of a draft.',
  })
  readonly edition?: string;
}

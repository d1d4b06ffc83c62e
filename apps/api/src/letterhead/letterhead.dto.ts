import { Text, Texts } from '../edge/dto/index.js';

export class LetterheadDto {
  @Texts({
    most: 6,
    each: { atMost: 80 },
    description: 'Address and whatever else belongs below the name, line by line.',
  })
  readonly lines!: readonly string[];

  @Text({
    optional: true,
    atMost: 200,
    description:
      'What the logo shows, for those who cannot see it; the name of the organisation when absent.',
  })
  readonly logoDescription?: string;
}

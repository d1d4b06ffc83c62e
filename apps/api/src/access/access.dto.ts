import { Code, Instant, SomeOf, Text, Texts, Whole } from '../edge/dto/index.js';
import { PageSize } from '../edge/dto/query.js';
import { roles, scopes, type Role, type Scope } from './roles.js';

export class NewOrganisationDto {
  @Text({ atMost: 200, description: 'As it stands at the head of documents.' })
  readonly name!: string;
}

export class NewKeyDto {
  @Text({
    atMost: 200,
    description: 'Whose key it is, or what for; shown with everything that is done with it.',
  })
  readonly name!: string;

  @SomeOf(roles, {
    least: 1,
    most: roles.length,
    description: 'What the key is for; a platform-operator alone gives the role platform-operator.',
  })
  readonly roles!: readonly Role[];

  @SomeOf(scopes, {
    optional: true,
    least: 1,
    most: scopes.length,
    description: 'What an integrator may do: required for that role, and of no use to another.',
  })
  readonly scopes?: readonly Scope[];

  @Instant({ optional: true, description: 'When the key ends by itself; never when absent.' })
  readonly expiresAt?: string;
}

export class RenewalDto {
  @Whole({
    from: 0,
    upTo: 720,
    description: 'Hours for which the old key still opens what it opened, so that programs can change over.',
  })
  readonly overlapHours!: number;
}

const origin = {
  pattern: /^(?:https:\/\/[a-z0-9.-]{1,253}(?::\d{1,5})?|http:\/\/(?:localhost|127\.0\.0\.1)(?::\d{1,5})?)$/,
  words:
    'the origin of a page such as "https://shop.example", without path and wildcards; http is for localhost alone',
};

export class NewPublishableKeyDto {
  @Text({ atMost: 200, description: 'Which page it is for.' })
  readonly name!: string;

  @Texts({
    least: 1,
    most: 20,
    each: { atMost: 270, form: origin },
    description: 'Origins of the pages that may use the key, exactly as a browser sends them.',
  })
  readonly origins!: readonly string[];

  @Whole({ from: 1, upTo: 6000, description: 'Requests a minute of all visitors together.' })
  readonly perMinute!: number;

  @Whole({ from: 1, upTo: 600, description: 'Requests a minute from one address.' })
  readonly perMinutePerVisitor!: number;

  @Whole({ from: 1, upTo: 100_000, description: 'Estimates a day, counted from midnight UTC.' })
  readonly perDay!: number;

  @Code({
    optional: true,
    description: 'A published edition, in effect, to estimate with; whichever is current when absent.',
  })
  readonly edition?: string;

  @Instant({ optional: true, description: 'When the key ends by itself; never when absent.' })
  readonly expiresAt?: string;
}

export class NewClientSessionDto {
  @Text({ optional: true, atMost: 100, description: 'The reference that the estimate will carry.' })
  readonly reference?: string;

  @Whole({
    optional: true,
    from: 1,
    upTo: 60,
    description: 'How long the estimate may be waited for; 15 when absent.',
  })
  readonly minutes?: number;
}

export class PageQueryDto {
  @PageSize()
  readonly limit?: number;

  @Text({
    optional: true,
    atMost: 100,
    description: '`nextCursor` of the page before; absent for the first page.',
  })
  readonly cursor?: string;
}

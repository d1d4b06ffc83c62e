import { SomeOf, Text, Whole } from '../edge/dto/index.js';
import { PageSize } from '../edge/dto/query.js';
import { eventTypes, type EventType } from './service-event.js';

export class EventsQueryDto {
  @PageSize()
  readonly limit?: number;

  @Text({
    optional: true,
    atMost: 19,
    form: { pattern: /^\d{1,19}$/, words: 'the nextCursor of an earlier page' },
    description: '`nextCursor` of the page read before; the oldest events that are kept when absent.',
  })
  readonly cursor?: string;

  @Text({
    optional: true,
    atMost: 200,
    form: {
      pattern: new RegExp(
        `^(?:${eventTypes.join('|')})(?:,(?:${eventTypes.join('|')}))*$`.replaceAll('.', '\\.'),
      ),
      words: `some of ${eventTypes.join(', ')} with commas between`,
    },
    description: 'Only events of these types, with commas between.',
  })
  readonly types?: string;
}

export class NewWebhookEndpointDto {
  @Text({
    atMost: 2000,
    description: 'Where events are posted: https, on a public address, without a port.',
    example: 'https://shop.example/kingplank-events',
  })
  readonly url!: string;

  @SomeOf(eventTypes, { least: 1, most: eventTypes.length, description: 'What the endpoint is told of.' })
  readonly types!: readonly EventType[];
}

export class SecretRenewalDto {
  @Whole({
    from: 0,
    upTo: 168,
    description:
      'Hours for which events are signed with the old secret as well, so that receivers can change over.',
  })
  readonly overlapHours!: number;
}

import type { EventRow, WebhookEndpointRow } from './event.entities.js';
import type { DeliveryRow } from './events.repository.js';
import type { ServiceEvent, WebhookDelivery, WebhookEndpoint } from './service-event.js';

type Told = Pick<EventRow, 'id' | 'type' | 'at' | 'data'>;

/** An event as it is listed and delivered; it was written by `tell`, which is typed. */
export const eventView = ({ id, type, at, data }: Told): ServiceEvent =>
  Object.assign({ id, type, timestamp: at.toISOString(), data });

export const endpointView = ({
  id,
  url,
  types,
  createdAt,
  disabledBecause,
}: WebhookEndpointRow): WebhookEndpoint => ({
  id,
  url,
  types,
  createdAt: createdAt.toISOString(),
  ...(disabledBecause === null ? {} : { disabledBecause }),
});

export const deliveryView = ({
  eventId,
  type,
  status,
  attempts,
  dueAt,
  triedAt,
  lastStatus,
  lastFailure,
}: DeliveryRow): WebhookDelivery => ({
  eventId,
  type,
  status,
  attempts,
  ...(status === 'waiting' ? { nextAttemptAt: dueAt.toISOString() } : {}),
  ...(triedAt === null ? {} : { triedAt: triedAt.toISOString() }),
  ...(lastStatus === null ? {} : { lastStatus }),
  ...(lastFailure === null ? {} : { lastFailure }),
});

/** What others can be told of. Types are promises to callers: they are added, never renamed. */
export const eventTypes = [
  'estimate.created',
  'estimate.revised',
  'edition.published',
  'edition.withdrawn',
  'operation.done',
  'order.made',
] as const;
export type EventType = (typeof eventTypes)[number];

/** An estimate was made. */
export interface EstimateCreated {
  /** Id of the event of this making of an estimate, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the estimate was made (RFC 3339). */
  readonly timestamp: string;
  /** An estimate was made. */
  readonly type: 'estimate.created';
  /** The estimate that was made; what it names is fetched from its address. */
  readonly data: EstimateNamed;
}

/** A revision of an estimate was made. */
export interface EstimateRevised {
  /** Id of the event of this revision, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the revision was made (RFC 3339). */
  readonly timestamp: string;
  /** An estimate was revised. */
  readonly type: 'estimate.revised';
  /** The revision and what it revises; what it names is fetched from its address. */
  readonly data: RevisionNamed;
}

/** An edition of the catalogue was published: it is current, or will be from `effectiveAt`. */
export interface EditionPublished {
  /** Id of the event of this publication, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the edition was published (RFC 3339). */
  readonly timestamp: string;
  /** An edition of the catalogue took effect. */
  readonly type: 'edition.published';
  /** The edition and when it counts; what it names is fetched from its address. */
  readonly data: PublicationNamed;
}

/** A publication was taken back before it counted. */
export interface EditionWithdrawn {
  /** Id of the event of this withdrawal, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the publication was taken back (RFC 3339). */
  readonly timestamp: string;
  /** A publication was taken back. */
  readonly type: 'edition.withdrawn';
  /** The edition that is a draft again; what it names is fetched from its address. */
  readonly data: EditionNamed;
}

/** An operation ended: with a result, or with a reason why there is none. */
export interface OperationDone {
  /** Id of the event of this ending of an operation, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the operation ended (RFC 3339). */
  readonly timestamp: string;
  /** Work that was answered later has ended. */
  readonly type: 'operation.done';
  /** The operation and how it ended; what it names is fetched from its address. */
  readonly data: OperationNamed;
}

/** An order to a supplier was written. */
export interface OrderMade {
  /** Id of the event of this order, the same at each attempt to deliver it. */
  readonly id: string;
  /** When the order was written (RFC 3339). */
  readonly timestamp: string;
  /** An order for a supplier was written. */
  readonly type: 'order.made';
  /** The order and its supplier; what it names is fetched from its address. */
  readonly data: OrderNamed;
}

export type ServiceEvent =
  EstimateCreated | EstimateRevised | EditionPublished | EditionWithdrawn | OperationDone | OrderMade;

export interface EstimateNamed {
  /** Id of the estimate the event tells of. */
  readonly id: string;
  /** Path of the estimate. */
  readonly href: string;
  /** The caller's own reference, when it gave one. */
  readonly reference?: string;
  /** Code of the edition it was made with. */
  readonly edition: string;
  /** Id of the publishable key of the page that made it; absent for estimates made with secret keys. */
  readonly publishableKeyId?: string;
}

export interface RevisionNamed extends EstimateNamed {
  /** Id of the first estimate of this line of revisions. */
  readonly rootId: string;
  /** 1 for the first revision. */
  readonly revisionNumber: number;
}

export interface EditionNamed {
  /** Edition that the event tells of. */
  readonly code: string;
  /** Path of the edition. */
  readonly href: string;
}

export interface PublicationNamed extends EditionNamed {
  /** RFC 3339 instant from which it counts; absent when that is at once. */
  readonly effectiveAt?: string;
}

export interface OperationNamed {
  /** Id of the operation that ended. */
  readonly id: string;
  /** Path of the operation. */
  readonly href: string;
  /** How it ended. */
  readonly status: 'done' | 'failed';
}

export interface OrderNamed {
  /** Ids of the estimates that are ordered for. */
  readonly estimateIds: readonly string[];
  /** Code of the edition, and no moment, whose prices the order has. */
  readonly pricedAt: string;
  /** Code of the supplier, when the order names one. */
  readonly supplier?: string;
}

interface DataOf {
  readonly 'estimate.created': EstimateNamed;
  readonly 'estimate.revised': RevisionNamed;
  readonly 'edition.published': PublicationNamed;
  readonly 'edition.withdrawn': EditionNamed;
  readonly 'operation.done': OperationNamed;
  readonly 'order.made': OrderNamed;
}

/** Something that happened, before it is written down. */
export interface Happening<T extends EventType = EventType> {
  readonly organisationId: string;
  readonly type: T;
  readonly data: DataOf[T];
}

/** A page of what happened, oldest first. */
export interface EventPage {
  /** Events in the order they happened. */
  readonly items: readonly ServiceEvent[];
  /** Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new. */
  readonly nextCursor?: string;
}

/** Where an organisation wants to be told what happened. */
export interface WebhookEndpoint {
  /** Id of the endpoint. */
  readonly id: string;
  /** Where events are posted to. */
  readonly url: string;
  /** Events that the endpoint is told of. */
  readonly types: readonly EventType[];
  /** When the endpoint was made (RFC 3339). */
  readonly createdAt: string;
  /** Why nothing is delivered any more; absent while it is. */
  readonly disabledBecause?: string;
}

/** An endpoint with the secret that signs its events, shown in this answer only. */
export interface NewWebhookEndpoint extends WebhookEndpoint {
  /** `whsec_` and base64 of 32 random bytes. */
  readonly secret: string;
}

/** Endpoints of the organisation, oldest first. */
export interface WebhookEndpointList {
  /** Endpoints of the organisation. */
  readonly items: readonly WebhookEndpoint[];
}

/** How far an event came on its way to an endpoint. */
export interface WebhookDelivery {
  /** Event that is delivered. */
  readonly eventId: string;
  /** Type of that event. */
  readonly type: EventType;
  /** How the delivery stands. */
  readonly status: 'waiting' | 'delivered' | 'failed';
  /** How often it was tried; there are ten attempts in three days. */
  readonly attempts: number;
  /** RFC 3339 instant of the next attempt; only while it waits. */
  readonly nextAttemptAt?: string;
  /** RFC 3339 instant of the last attempt; absent before the first. */
  readonly triedAt?: string;
  /** HTTP status of the last attempt; absent when nothing was answered. */
  readonly lastStatus?: number;
  /** Why the last attempt failed, in a sentence. */
  readonly lastFailure?: string;
}

/** The last deliveries to an endpoint, newest event first. */
export interface WebhookDeliveryList {
  /** Deliveries, newest first. */
  readonly items: readonly WebhookDelivery[];
}

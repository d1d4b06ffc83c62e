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

/** What every event says of itself. */
interface About {
  /** The same at each attempt to deliver it. */
  readonly id: string;
  /** RFC 3339 instant at which it happened. */
  readonly timestamp: string;
}

/** An estimate was made. */
export interface EstimateCreated extends About {
  readonly type: 'estimate.created';
  /** Thin: what it names is fetched from its address. */
  readonly data: EstimateNamed;
}

/** A revision of an estimate was made. */
export interface EstimateRevised extends About {
  readonly type: 'estimate.revised';
  /** Thin: what it names is fetched from its address. */
  readonly data: RevisionNamed;
}

/** An edition of the catalogue was published: it is current, or will be from `effectiveAt`. */
export interface EditionPublished extends About {
  readonly type: 'edition.published';
  /** Thin: what it names is fetched from its address. */
  readonly data: PublicationNamed;
}

/** A publication was taken back before it counted. */
export interface EditionWithdrawn extends About {
  readonly type: 'edition.withdrawn';
  /** Thin: what it names is fetched from its address. */
  readonly data: EditionNamed;
}

/** An operation ended: with a result, or with a reason why there is none. */
export interface OperationDone extends About {
  readonly type: 'operation.done';
  /** Thin: what it names is fetched from its address. */
  readonly data: OperationNamed;
}

/** An order to a supplier was written. */
export interface OrderMade extends About {
  readonly type: 'order.made';
  /** Thin: what it names is fetched from its address. */
  readonly data: OrderNamed;
}

export type ServiceEvent =
  EstimateCreated | EstimateRevised | EditionPublished | EditionWithdrawn | OperationDone | OrderMade;

export interface EstimateNamed {
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
  readonly code: string;
  /** Path of the edition. */
  readonly href: string;
}

export interface PublicationNamed extends EditionNamed {
  /** RFC 3339 instant from which it counts; absent when that is at once. */
  readonly effectiveAt?: string;
}

export interface OperationNamed {
  readonly id: string;
  /** Path of the operation. */
  readonly href: string;
  readonly status: 'done' | 'failed';
}

export interface OrderNamed {
  /** Ids of the estimates that are ordered for. */
  readonly estimateIds: readonly string[];
  /** Code of the edition whose prices the order has. */
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
  readonly items: readonly ServiceEvent[];
  /** Keep it, and give it as `cursor` to read what came after these; absent when there was nothing new. */
  readonly nextCursor?: string;
}

/** Where an organisation wants to be told what happened. */
export interface WebhookEndpoint {
  readonly id: string;
  readonly url: string;
  readonly types: readonly EventType[];
  /** RFC 3339 instant. */
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
  readonly items: readonly WebhookEndpoint[];
}

/** How far an event came on its way to an endpoint. */
export interface WebhookDelivery {
  readonly eventId: string;
  readonly type: EventType;
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
  readonly items: readonly WebhookDelivery[];
}

export { Kingplank } from './client.js';
export { Answer, type AnswerWithResponse } from './answer.js';
export { Audit, Health, Keys, Organisations, ShopPages } from './access.js';
export { Editions, PriceLists, Shelf, type Collection } from './catalogue.js';
export {
  AbortedError,
  ConflictError,
  ConnectionFailedError,
  ForbiddenError,
  InvalidRequestError,
  KingplankError,
  MisusedClientError,
  NotFoundError,
  ProblemError,
  RateLimitedError,
  ServiceFailedError,
  StaleVersionError,
  TimedOutError,
  UnauthenticatedError,
  UnreadableAnswerError,
  UntrustedEventError,
} from './errors.js';
export {
  Estimates,
  type ChangeOrder,
  type Comparison,
  type DefectRecord,
  type Drawings,
  type EstimateBasket,
  type EstimateCalendar,
  type EstimateListed,
  type EstimatePage,
  type Replay,
  type Revisions,
  type StoredEstimate,
  type StoredRecord,
  type Why,
} from './estimates.js';
export { Estimating, type Room } from './estimating.js';
export { Events, WebhookEndpoints } from './events.js';
export { Letterhead, type OrganisationLetterhead } from './letterhead.js';
export type { Logger } from './log.js';
export { Operations, type Operation } from './operations.js';
export { Pages, type Page } from './pages.js';
export type { ProblemDocument, ProblemEntry, ProblemKind } from './problem-document.js';
export type { Asked, Request } from './request.js';
export type { Download } from './resource.js';
export { API_VERSION, CLIENT_VERSION, type ClientOptions, type LogLevel } from './settings.js';
export type { CallOptions } from './transport.js';
export type { AnswerOf, BodyOf, Method, Path, QueryOf, Versioned } from './types.js';
export { Webhooks, type DeliveredEvent, type HeadersLike, type UnwrapOptions } from './webhooks.js';
export type * from './generated/names.js';

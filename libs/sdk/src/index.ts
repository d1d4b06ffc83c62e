export { Kingplank } from './client.js';
export { Editions, Shelf, type Collection } from './catalogue.js';
export {
  AbortedError,
  ConflictError,
  ConnectionFailedError,
  ForbiddenError,
  InvalidRequestError,
  KingplankError,
  NotFoundError,
  ProblemError,
  RateLimitedError,
  ServiceFailedError,
  StaleVersionError,
  TimedOutError,
  UnauthenticatedError,
} from './errors.js';
export {
  Estimates,
  type ChangeOrder,
  type Comparison,
  type DefectRecord,
  type Drawings,
  type EstimateCalendar,
  type EstimateListed,
  type EstimatePage,
  type Revisions,
  type StoredEstimate,
  type Why,
} from './estimates.js';
export { Estimating, type Room } from './estimating.js';
export { Letterhead, type OrganisationLetterhead } from './letterhead.js';
export { Operations, type Operation } from './operations.js';
export { Pages, type Page } from './pages.js';
export type { ProblemDocument, ProblemEntry, ProblemKind } from './problem-document.js';
export type { CallOptions, ClientOptions } from './transport.js';
export type { AnswerOf, BodyOf, Path, QueryOf, Versioned } from './types.js';

import { seedFirstKey } from './access/first-key.seed.js';
import { seedShippedEdition } from './catalogue/shipped-edition.seed.js';
import type { Seed } from './persistence/seeding.js';
import {
  ApiKeyRow,
  EstimateSecretRow,
  EstimateShareRow,
  OrganisationRow,
  PageUseRow,
} from './access/access.entities.js';
import { AuditEntryRow } from './audit/audit-entry.entity.js';
import {
  EditionRow,
  LabourRatesRow,
  MaterialRow,
  PriceListRow,
  SourceRow,
} from './catalogue/catalogue.entities.js';
import { StockRow } from './catalogue/stock.entity.js';
import { EstimateRow } from './estimates/estimate.entity.js';
import { PhotographRow } from './estimates/photograph.entity.js';
import { EventRow, WebhookDeliveryRow, WebhookEndpointRow } from './events/event.entities.js';
import { IdempotencyKeyRow } from './idempotency/idempotency-key.entity.js';
import { LetterheadRow } from './letterhead/letterhead.entity.js';
import { OperationRow } from './operations/operation.entity.js';

/** The tables of all features. */
export const entities = [
  ApiKeyRow,
  AuditEntryRow,
  EditionRow,
  EstimateRow,
  EstimateSecretRow,
  EstimateShareRow,
  EventRow,
  IdempotencyKeyRow,
  LabourRatesRow,
  LetterheadRow,
  MaterialRow,
  OperationRow,
  OrganisationRow,
  PageUseRow,
  PhotographRow,
  PriceListRow,
  SourceRow,
  StockRow,
  WebhookDeliveryRow,
  WebhookEndpointRow,
];

/** What a new database is given, in this order. */
export const seeds: readonly Seed[] = [seedShippedEdition, seedFirstKey];

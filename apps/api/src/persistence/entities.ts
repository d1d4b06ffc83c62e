import { ApiKeyRow, OrganisationRow } from '../access/access.entities.js';
import { AuditEntryRow } from '../audit/audit-entry.entity.js';
import { EditionRow, LabourRatesRow, MaterialRow, PriceListRow, SourceRow } from '../catalogue/catalogue.entities.js';
import { EstimateRow } from '../estimates/estimate.entity.js';
import { IdempotencyKeyRow } from '../idempotency/idempotency-key.entity.js';
import { Foundation1764028800000 } from './migrations/1764028800000-foundation.js';

export const entities = [
  ApiKeyRow, AuditEntryRow, EditionRow, EstimateRow, IdempotencyKeyRow, LabourRatesRow, MaterialRow, OrganisationRow, PriceListRow, SourceRow,
];

export const migrations = [Foundation1764028800000];

import { ApiKeyRow, OrganisationRow } from '../access/access.entities.js';
import { AuditEntryRow } from '../audit/audit-entry.entity.js';
import {
  EditionRow,
  LabourRatesRow,
  MaterialRow,
  PriceListRow,
  SourceRow,
} from '../catalogue/catalogue.entities.js';
import { EstimateRow } from '../estimates/estimate.entity.js';
import { IdempotencyKeyRow } from '../idempotency/idempotency-key.entity.js';
import { LetterheadRow } from '../letterhead/letterhead.entity.js';
import { OperationRow } from '../operations/operation.entity.js';
import { Foundation1764028800000 } from './migrations/1764028800000-foundation.js';
import { Operations1764115200000 } from './migrations/1764115200000-operations.js';
import { Letterhead1764201600000 } from './migrations/1764201600000-letterhead.js';

export const entities = [
  ApiKeyRow,
  AuditEntryRow,
  EditionRow,
  EstimateRow,
  IdempotencyKeyRow,
  LabourRatesRow,
  LetterheadRow,
  MaterialRow,
  OperationRow,
  OrganisationRow,
  PriceListRow,
  SourceRow,
];

export const migrations = [Foundation1764028800000, Operations1764115200000, Letterhead1764201600000];

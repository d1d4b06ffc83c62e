import type { Request } from 'express';
import { JSON_TYPE } from '../edge/media.js';
import { inUnits, unitsOf, type Units } from '../edge/units.js';
import { storedJson } from './estimate.mapper.js';
import type { Made } from './estimates.service.js';

/** 201 with an estimate that was made, or had been made under the same key. */
export function sendMade({ row, resultJson, isReplay, secret }: Made, request: Request): void {
  const response = request.res;
  if (response === undefined) return;
  const units = unitsOf(request);
  response.setHeader('Location', `/v1/estimates/${row.id}`);
  response.setHeader('ETag', jsonTag(row.id, units));
  if (isReplay) response.setHeader('Idempotency-Replayed', 'true');
  response
    .status(201)
    .type(JSON_TYPE)
    .send(inUnits(units, storedJson(row, resultJson, secret)));
}

/** Each representation has a tag of its own. */
export const jsonTag = (id: string, units: Units): string =>
  units === 'si' ? `"${id}.json"` : `"${id}.${units}.json"`;

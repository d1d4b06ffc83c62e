import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { Defect } from '#lib/kernel';
import { callerOf } from '../access/caller.js';
import { DtoPipe } from '../edge/dto.pipe.js';
import type { CatalogueTable } from './catalogue-rows.js';
import { EditionQueryDto } from './dto/editions.dto.js';
import type { Shelf } from './items.service.js';

/** A shelf together with the request, whose preconditions a change must meet. */
export interface ShelvedRequest extends Shelf {
  readonly request: Request;
}

const pipe = new DtoPipe();

export const Shelved = createParamDecorator(
  (table: CatalogueTable, context: ExecutionContext): ShelvedRequest => {
    const request = context.switchToHttp().getRequest<Request>();
    const caller = callerOf(request);
    if (caller === undefined) throw new Defect('A route asked for its caller without being guarded');
    const query = pipe.transform({ ...request.query }, { type: 'query', metatype: EditionQueryDto });
    return {
      caller,
      table,
      request,
      ...(query instanceof EditionQueryDto && query.edition !== undefined ? { edition: query.edition } : {}),
    };
  },
);

import {
  Injectable,
  SetMetadata,
  type CanActivate,
  type CustomDecorator,
  type ExecutionContext,
} from '@nestjs/common';
import { ROUTE_ARGS_METADATA } from '@nestjs/common/constants.js';
import { RouteParamtypes } from '@nestjs/common/enums/route-paramtypes.enum.js';
import type { Request } from 'express';
import { problem } from '#lib/kernel';
import { HttpProblem, summaryOf } from './problems.js';
import { isRecord } from './record.js';

const readsQueryKey = 'kingplank:reads-query';

/** Marks a route that reads its query by other means than a `@Query()` parameter. */
export const ReadsQuery = (): CustomDecorator => SetMetadata(readsQueryKey, true);

/** Refuses a query where a route reads none: a misspelt or wished-for parameter is never silently without effect. */
@Injectable()
export class QueryGuard implements CanActivate {
  canActivate(context: ExecutionContext): boolean {
    const names = Object.keys(context.switchToHttp().getRequest<Request>().query);
    if (names.length === 0 || readsQuery(context)) return true;
    const problems = names.map((parameter) => ({
      ...problem('unknown-field', `/${parameter}`, { hint: '' }),
      parameter,
    }));
    throw new HttpProblem('bad-request', { detail: summaryOf(problems), problems });
  }
}

function readsQuery(context: ExecutionContext): boolean {
  const handler = context.getHandler();
  if (Reflect.getMetadata(readsQueryKey, handler) === true) return true;
  const parameters: unknown = Reflect.getMetadata(ROUTE_ARGS_METADATA, context.getClass(), handler.name);
  return (
    isRecord(parameters) && Object.keys(parameters).some((key) => key.startsWith(`${RouteParamtypes.QUERY}:`))
  );
}

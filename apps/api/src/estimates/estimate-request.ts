import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { Defect } from '#lib/kernel';
import { callerOf } from '../access/caller.js';
import type { Caller } from '../access/roles.js';
import { keyOf } from '../idempotency/idempotency-header.js';

/** Who asks for a new estimate, and under which Idempotency-Key. */
export interface Asker {
  readonly caller: Caller;
  readonly idempotencyKey?: string;
}

export const AskerParam = createParamDecorator((_: unknown, context: ExecutionContext): Asker => {
  const request = context.switchToHttp().getRequest<Request>();
  const caller = callerOf(request);
  if (caller === undefined) throw new Defect('A route asked for its caller without being guarded');
  const given = request.headers['idempotency-key'];
  return given === undefined ? { caller } : { caller, idempotencyKey: keyOf(given) };
});

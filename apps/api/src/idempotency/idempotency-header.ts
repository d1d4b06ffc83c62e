import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { Request } from 'express';
import { problem } from '#lib/kernel';
import { HttpProblem } from '../http/problems.js';

/** The caller's Idempotency-Key: a quoted string as the IETF draft has it, or bare as people send it. */
export const IdempotencyKey = createParamDecorator((_: unknown, context: ExecutionContext): string | undefined => {
  const given = context.switchToHttp().getRequest<Request>().headers['idempotency-key'];
  return given === undefined ? undefined : keyOf(given);
});

/** @throws {HttpProblem} bad-request */
export function keyOf(given: string | string[]): string {
  const text = Array.isArray(given) ? given.join(',') : given.trim();
  const quoted = /^"([\x20-\x21\x23-\x7e]{1,255})"$/.exec(text)?.[1];
  const bare = /^[A-Za-z0-9._~:+/=-]{1,255}$/.test(text) ? text : undefined;
  const key = quoted ?? bare;
  if (key !== undefined) return key;
  throw new HttpProblem('bad-request', {
    detail: 'The Idempotency-Key cannot be read.',
    problems: [{ ...problem('not-in-form', '', { value: JSON.stringify(text.slice(0, 60)), form: 'a quoted string of 1 to 255 printable characters, such as "8e03978e-40d5-43dd-bc93-6894a57f9324"' }), header: 'Idempotency-Key' }],
  });
}

import { ApiHeader } from '@nestjs/swagger';
import { problem } from '#lib/kernel';
import { HttpProblem } from '../edge/problems.js';

/** Documents that a route takes an Idempotency-Key. */
export const TakesIdempotencyKey = (): MethodDecorator =>
  ApiHeader({
    name: 'Idempotency-Key',
    required: false,
    schema: { type: 'string', minLength: 1, maxLength: 257 },
    description:
      'The same key and body get the same estimate again; another body is refused with 422, a key still at work with 409.',
  });

/**
 * The caller's key: a quoted string as the IETF draft has it, or bare as people send it.
 *
 * @throws {HttpProblem} bad-request
 */
export function keyOf(given: string | string[]): string {
  const text = Array.isArray(given) ? given.join(',') : given.trim();
  const quoted = /^"([\x20-\x21\x23-\x7e]{1,255})"$/.exec(text)?.[1];
  const bare = /^[A-Za-z0-9._~:+/=-]{1,255}$/.test(text) ? text : undefined;
  const key = quoted ?? bare;
  if (key !== undefined) return key;
  throw new HttpProblem('bad-request', {
    detail: 'The Idempotency-Key cannot be read.',
    problems: [
      {
        ...problem('not-in-form', '', {
          value: JSON.stringify(text.slice(0, 60)),
          form: 'a quoted string of 1 to 255 printable characters, such as "8e03978e-40d5-43dd-bc93-6894a57f9324"',
        }),
        header: 'Idempotency-Key',
      },
    ],
  });
}

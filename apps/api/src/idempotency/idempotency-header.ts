import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';
import { problem } from '#lib/kernel';
import { headerText } from '../edge/endpoint.js';
import { HttpProblem, notInForm } from '../edge/problems.js';
import { remembersKey } from './remembers.js';

/** The header field of a change, as the document has it. */
export const idempotencyHeader = {
  name: 'Idempotency-Key',
  required: false,
  schema: headerText(257),
  description:
    'Makes the change once however often it is sent: the same key and request get the same answer again, with `Idempotency-Replayed: true`. Another request under the key is refused with 422, one still at work with 409 and `Retry-After`. A refusal is not kept; the key may be used again after it.',
} as const;

/** For a route that keeps by its own means what it made under an Idempotency-Key. */
export const RemembersItself = (): MethodDecorator =>
  applyDecorators(SetMetadata(remembersKey, 'itself'), ApiHeader(idempotencyHeader));

export const reusedKey = (): HttpProblem =>
  new HttpProblem('unprocessable', {
    detail: 'This Idempotency-Key was used for another request; a new request needs a new key.',
    problems: [
      {
        ...problem('contradiction', '', {
          other: 'an earlier request',
          why: 'the same key came with another body or address',
        }),
        header: 'Idempotency-Key',
      },
    ],
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
      notInForm(
        { header: 'Idempotency-Key' },
        text,
        'a quoted string of 1 to 255 printable characters, such as "8e03978e-40d5-43dd-bc93-6894a57f9324"',
      ),
    ],
  });
}

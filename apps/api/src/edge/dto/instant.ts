import { problem } from '#lib/kernel';
import { Field, shownValue, type Said } from './field.js';

const FORM = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(?:\.\d{1,6})?(?:Z|[+-]\d{2}:\d{2})$/;

/** An RFC 3339 instant with its zone. */
export const Instant = (said: Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'an instant such as 2027-04-30T12:00:00Z',
    check: (value) =>
      typeof value === 'string' && FORM.test(value) && !Number.isNaN(Date.parse(value))
        ? []
        : [
            problem('not-in-form', '', {
              value: shownValue(value),
              form: 'an RFC 3339 instant with its zone such as 2027-04-30T12:00:00Z',
            }),
          ],
    schema: {
      type: 'string',
      format: 'date-time',
      minLength: 20,
      maxLength: 32,
      pattern: FORM.source,
      ...(said.description === undefined ? {} : { description: said.description }),
    },
  });

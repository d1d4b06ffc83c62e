import { problem } from '#lib/kernel';
import { Field, shownValue } from './field.js';

export const MOST_ON_PAGE = 200;
export const USUAL_ON_PAGE = 50;

/** How many entries a page has; a query can only be text, so this field reads digits. */
export const PageSize = (): PropertyDecorator =>
  Field({
    optional: true,
    expected: 'a whole number',
    read: (raw) => (typeof raw === 'string' && /^\d{1,4}$/.test(raw) ? Number(raw) : raw),
    check: (value) =>
      typeof value === 'number' && value >= 1 && value <= MOST_ON_PAGE
        ? []
        : [
            problem('out-of-range', '', {
              value: shownValue(value),
              range: `a whole number from 1 to ${MOST_ON_PAGE}`,
            }),
          ],
    schema: {
      type: 'integer',
      format: 'int32',
      minimum: 1,
      maximum: MOST_ON_PAGE,
      default: USUAL_ON_PAGE,
      description: 'Entries on a page.',
    },
  });

import { liesWithin, problem, rangeInWords, type Problem, type Range } from '#lib/kernel';

import { exampleOf, readQuantity, siUnitOf, unitsOf, type Dimension, type QuantityFault } from '#lib/units';
import { Field, shownValue, type Said } from './field.js';

export type { Range };

/** A length: a number in mm, or text with a unit such as "5/8 in" or "2 ft 3 in". The room receives mm. */
export const Length = (said: Range & Said = {}): PropertyDecorator => typed('length', said);
/** A number in m2, or text such as "22 ft2". */
export const Area = (said: Range & Said = {}): PropertyDecorator => typed('area', said);
/** A number in kg, or text such as "40 lb". */
export const Mass = (said: Range & Said = {}): PropertyDecorator => typed('mass', said);
/** A number in degC, or text such as "65 degF". */
export const Temperature = (said: Range & Said = {}): PropertyDecorator => typed('temperature', said);
/** A number in g/m2, or text such as "18 oz/yd2". */
export const ArealMass = (said: Range & Said = {}): PropertyDecorator => typed('areal mass', said);
/** A number in m/s, or text such as "12 kn". */
export const Speed = (said: Range & Said = {}): PropertyDecorator => typed('speed', said);

/** A plain number whose unit stands in its name; text is refused. `unit` only serves the words. */
export const Num = (said: Range & Said & { readonly unit?: string } = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: `a number, ${rangeInWords(said, said.unit ?? '1')}`,
    check: (value) => numberFaults(value, said, said.unit ?? '1'),
    schema: { ...described(said), ...numberSchema(said) },
  });

const MOST_INT32 = 2_147_483_647;

/** A whole number. */
export const Whole = (said: Range & Said = {}): PropertyDecorator =>
  Field({
    ...said,
    expected: 'a whole number',
    check: (value) => [
      ...numberFaults(value, said, '1'),
      ...(typeof value === 'number' && Number.isFinite(value) && !Number.isInteger(value)
        ? [problem('not-a-number', '', { hint: ' without a fraction', value })]
        : []),
    ],
    schema: {
      ...described(said),
      ...numberSchema(said),
      type: 'integer',
      format: (said.upTo ?? 0) > MOST_INT32 ? 'int64' : 'int32',
    },
  });

/** Temperatures in kelvin and lengths of zero are real; what is absurd is for each field to say by its range. */
const typed = (dimension: Dimension, said: Range & Said): PropertyDecorator =>
  Field({
    ...said,
    expected: `a number in ${siUnitOf(dimension)} or text such as "${exampleOf(dimension)}"`,
    read: (raw) => readText(raw, dimension),
    check: (value) => quantityFaults(value, dimension, said),
    schema: {
      description: said.description ?? `A number in ${siUnitOf(dimension)}, or text with a unit.`,
      oneOf: [
        numberSchema(said),
        {
          type: 'string',
          maxLength: 40,
          description: `With a unit: ${unitsOf(dimension).join(', ')}.`,
          examples: [exampleOf(dimension)],
        },
      ],
      ...(said.example === undefined ? {} : { examples: [said.example] }),
    },
  });

function readText(raw: unknown, dimension: Dimension): unknown {
  if (typeof raw !== 'string') return raw;
  const reading = readQuantity(raw, dimension);
  return typeof reading === 'number' ? reading : raw;
}

export function quantityFaults(value: unknown, dimension: Dimension, range: Range): readonly Problem[] {
  if (typeof value === 'number') return numberFaults(value, range, siUnitOf(dimension));
  const reading = typeof value === 'string' ? readQuantity(value, dimension) : notText;
  return typeof reading === 'number' ? [] : [quantityProblem(reading, dimension, shownValue(value))];
}

const notText: QuantityFault = { fault: 'unreadable', why: 'it is neither a number nor text' };

/** What is wrong with a typed quantity, in the words of a caller. */
export const quantityProblem = (fault: QuantityFault, dimension: Dimension, value: string): Problem =>
  fault.fault === 'wrong-unit'
    ? problem('wrong-unit', '', {
        given: fault.given.slice(0, 20),
        dimension,
        accepted: unitsOf(dimension).join(', '),
      })
    : problem('not-a-quantity', '', {
        unit: siUnitOf(dimension),
        example: exampleOf(dimension),
        value,
        why: fault.why,
      });

export function numberFaults(value: unknown, range: Range, unit: string): readonly Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [
      problem('not-a-number', '', { hint: unit === '1' ? '' : ` in ${unit}`, value: shownValue(value) }),
    ];
  return liesWithin(value, range)
    ? []
    : [problem('out-of-range', '', { value, range: rangeInWords(range, unit) })];
}

const described = ({ description, example }: Said) => ({
  ...(description === undefined ? {} : { description }),
  ...(example === undefined ? {} : { examples: [example] }),
});

/** In the OpenAPI 3.0 form that the document builder knows; `openapi-document.ts` turns it into the 3.1 form. */
export const numberSchema = ({ above, from, below, upTo }: Range) => ({
  type: 'number' as const,
  ...(above === undefined ? {} : { minimum: above, exclusiveMinimum: true }),
  ...(from === undefined ? {} : { minimum: from }),
  ...(below === undefined ? {} : { maximum: below, exclusiveMaximum: true }),
  ...(upTo === undefined ? {} : { maximum: upTo }),
});

import { Defect } from '#lib/kernel';

/** A schema of the document, as far as requests use JSON Schema. */
export interface Schema {
  readonly $ref?: string;
  readonly allOf?: readonly Schema[];
  readonly oneOf?: readonly Schema[];
  readonly discriminator?: {
    readonly propertyName: string;
    readonly mapping: Readonly<Record<string, string>>;
  };
  readonly type?: string | readonly string[];
  readonly format?: string;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
  readonly items?: Schema;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly enum?: readonly string[];
  readonly examples?: readonly unknown[];
}

export type Schemas = Readonly<Record<string, Schema>>;

/** A member of an object, or the first entry of a list; `as` is the kind that the entry must then be. */
export interface Step {
  readonly key: string | 0;
  readonly as?: { readonly name: string; readonly kind: string };
}

/** One bound of the contract: values that it takes, and values that it refuses, at one place of a request. */
export interface Bound {
  readonly steps: readonly Step[];
  readonly schema: Schema;
  readonly says: string;
  readonly inside: readonly unknown[];
  readonly outside: readonly unknown[];
}

/** Every bound at or below a schema. */
export function boundsOf(schemas: Schemas, schema: Schema, steps: readonly Step[] = []): readonly Bound[] {
  const { kinds, plain } = kindsOf(schemas, schema);
  if (plain === undefined)
    return kinds.flatMap(([kind, one, name]) => {
      const last = steps.at(-1);
      if (last === undefined) throw new Defect('The root of a request has kinds of its own');
      return boundsOf(schemas, one, [...steps.slice(0, -1), { ...last, as: { name, kind } }]);
    });
  const { properties, items } = plain;
  return [
    ...ownBounds(plain).map((bound) => ({ steps, schema: plain, ...bound })),
    ...Object.entries(properties ?? {}).flatMap(([key, one]) => boundsOf(schemas, one, [...steps, { key }])),
    ...(items === undefined || isPoint(plain) ? [] : boundsOf(schemas, items, [...steps, { key: 0 }])),
  ];
}

/** A schema by itself, or the kinds it may be of. Of a number that may be typed with its unit, the number. */
export function kindsOf(
  schemas: Schemas,
  schema: Schema,
): { readonly plain?: Schema; readonly kinds: readonly (readonly [string, Schema, string])[] } {
  const { $ref, allOf, oneOf, discriminator } = schema;
  if ($ref !== undefined) return kindsOf(schemas, { ...named(schemas, $ref), ...schema, $ref: undefined });
  if (allOf !== undefined) return kindsOf(schemas, allOf[0]);
  if (oneOf === undefined) return { plain: asNumber(schema), kinds: [] };
  if (discriminator === undefined) throw new Defect('A request has a choice that nothing tells apart');
  const { propertyName, mapping } = discriminator;
  return {
    kinds: Object.entries(mapping).map(([kind, ref]) => [kind, named(schemas, ref), propertyName]),
  };
}

/** Of a number that may be typed with its unit, the number. */
const asNumber = (schema: Schema): Schema =>
  Array.isArray(schema.type) && schema.type.includes('number') ? { ...schema, type: 'number' } : schema;

const named = (schemas: Schemas, ref: string): Schema => schemas[ref.split('/').at(-1) ?? ''];

const isPoint = ({ minItems, maxItems, items }: Schema): boolean =>
  minItems === 2 && maxItems === 2 && items?.type === 'number';

type Own = Pick<Bound, 'says' | 'inside' | 'outside'>;

function ownBounds(schema: Schema): readonly Own[] {
  if (schema.enum !== undefined)
    return [{ says: 'choice', inside: schema.enum, outside: ['no-such-word', '', 3] }];
  switch (schema.type) {
    case 'number':
    case 'integer':
      return numberBounds(schema);
    case 'string':
      return textBounds(schema);
    case 'array':
      return isPoint(schema) ? [] : countBounds(schema);
    case 'boolean':
      return [{ says: 'flag', inside: [true, false], outside: ['true', 0] }];
    default:
      return [];
  }
}

function numberBounds(schema: Schema): readonly Own[] {
  const { minimum, maximum, exclusiveMinimum, exclusiveMaximum, type } = schema;
  const isWhole = type === 'integer';
  const step = (bound: number): number => (isWhole ? 1 : Math.max(1e-9, Math.abs(bound) * 1e-9));
  const form: readonly Own[] = isWhole
    ? [{ says: 'whole', inside: [], outside: [(minimum ?? 0) + 0.5] }]
    : [{ says: 'number', inside: [], outside: [true, 'much'] }];
  return [
    ...form,
    ...from('minimum', minimum, (bound) => ({ inside: [bound], outside: [bound - step(bound)] })),
    ...from('maximum', maximum, (bound) => ({ inside: [bound], outside: [bound + step(bound)] })),
    ...from('above', exclusiveMinimum, (bound) => ({ inside: [bound + step(bound)], outside: [bound] })),
    ...from('below', exclusiveMaximum, (bound) => ({ inside: [bound - step(bound)], outside: [bound] })),
  ];
}

const from = (
  name: string,
  bound: number | undefined,
  values: (bound: number) => Omit<Own, 'says'>,
): readonly Own[] => (bound === undefined ? [] : [{ says: `${name} ${bound}`, ...values(bound) }]);

/** Texts with a pattern are probed by their length alone where the pattern takes plain letters or digits. */
function textBounds({ minLength = 0, maxLength, pattern, format }: Schema): readonly Own[] {
  if (format !== undefined)
    return [{ says: format, inside: [], outside: ['2026-02-30', 'tomorrow', '1000000000'] }];
  const fits = new RegExp(pattern ?? '', 'u');
  const inside = [minLength, maxLength ?? minLength].flatMap((length) =>
    ['a', 'A', '7'].map((letter) => letter.repeat(length)).filter((text) => text !== '' && fits.test(text)),
  );
  return [
    {
      says: `length ${minLength} to ${maxLength ?? 'any'}`,
      inside: [...new Set(inside)],
      outside: [
        ...(minLength > 0 ? ['a'.repeat(minLength - 1)] : []),
        ...(maxLength === undefined ? [] : ['a'.repeat(maxLength + 1)]),
        ...(fits.test('!') ? [] : ['!']),
      ],
    },
  ];
}

const countBounds = ({ minItems = 0, maxItems }: Schema): readonly Own[] => [
  {
    says: `count ${minItems} to ${maxItems ?? 'any'}`,
    inside: [new Count(minItems), ...(maxItems === undefined ? [] : [new Count(maxItems)])],
    outside: [
      ...(minItems > 0 ? [new Count(minItems - 1)] : []),
      ...(maxItems === undefined ? [] : [new Count(maxItems + 1)]),
    ],
  },
];

/** Stands for a list of so many entries, which only the request around it can make. */
export class Count {
  constructor(readonly of: number) {}

  toString(): string {
    return `${this.of} entries`;
  }
}

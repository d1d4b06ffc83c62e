import { unitOfField, usText } from '#lib/units';
import { isRecord } from './record.js';
import { mayHaveStatedUnit, statedUnit } from './stated-unit.js';

type Json = Readonly<Record<string, unknown>>;
export type SchemaByName = Readonly<Record<string, unknown>>;

/** The member that an object gets when US customary units are asked for: texts under the names of the object's own fields. */
export const DISPLAY = 'us';

/** Facts are words for a person with the numbers in them; their names are not fields. */
const withoutDisplay = new Set(['facts']);

/** A copy of an answer in which every object with a dimension has its US texts beside it; nothing else changes. */
export function withUsDisplay(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withUsDisplay);
  if (!isRecord(value)) return value;
  const texts = Object.entries(value).flatMap(([name, part]) =>
    entryOf(name, textsOf(part, unitIn(value, name))),
  );
  const parts = Object.entries(value).map(([name, part]) => [
    name,
    withoutDisplay.has(name) ? part : withUsDisplay(part),
  ]);
  return Object.fromEntries(texts.length === 0 ? parts : [...parts, [DISPLAY, Object.fromEntries(texts)]]);
}

const entryOf = (name: string, found: unknown): readonly (readonly [string, unknown])[] =>
  found === undefined ? [] : [[name, found]];

const unitIn = (owner: Json, name: string): string | undefined =>
  unitOfField(name) ?? statedUnit(owner, name);

/** Texts in the shape of the numbers: one, a list, or a range of named numbers. */
function textsOf(value: unknown, unit: string | undefined): unknown {
  if (unit === undefined) return undefined;
  if (typeof value === 'number') return usText(value, unit);
  const inside = (part: unknown): unknown => textsOf(part, unit);
  if (Array.isArray(value)) return allOrNone(value.map(inside), (texts) => texts);
  if (!isRecord(value)) return undefined;
  return allOrNone(Object.values(value).map(inside), (texts) =>
    Object.fromEntries(Object.keys(value).map((key, index) => [key, texts[index]])),
  );
}

const allOrNone = (texts: readonly unknown[], make: (texts: readonly unknown[]) => unknown): unknown =>
  texts.length === 0 || texts.includes(undefined) ? undefined : make(texts);

/** What the schemas of such answers say, by the same names: the schemas reached from `roots`, each object with its display member. */
export function schemasWithUsDisplay(schemas: SchemaByName, roots: readonly unknown[]): SchemaByName {
  const reached = new Set<string>();
  roots.forEach((root) => {
    reach(root, schemas, reached);
  });
  return Object.fromEntries(
    Object.entries(schemas).map(([name, schema]) => [
      name,
      reached.has(name) ? displayed(schema, { schemas, owner: name }) : schema,
    ]),
  );
}

function reach(node: unknown, schemas: SchemaByName, reached: Set<string>): void {
  if (Array.isArray(node))
    node.forEach((part) => {
      reach(part, schemas, reached);
    });
  if (!isRecord(node)) return;
  const name = referred(node);
  if (name !== undefined && !reached.has(name)) {
    reached.add(name);
    reach(schemas[name], schemas, reached);
  }
  Object.values(node).forEach((part) => {
    reach(part, schemas, reached);
  });
}

const referred = ({ $ref }: Json): string | undefined =>
  typeof $ref === 'string' ? $ref.replace('#/components/schemas/', '') : undefined;

interface Place {
  readonly schemas: SchemaByName;
  /** The schema that the object stands in, for the words. */
  readonly owner: string;
}

function displayed(node: unknown, place: Place): unknown {
  if (Array.isArray(node)) return node.map((part) => displayed(part, place));
  if (!isRecord(node)) return node;
  const copy = Object.fromEntries(Object.entries(node).map(([key, part]) => [key, displayed(part, place)]));
  const { properties } = node;
  if (node.type !== 'object' || !isRecord(properties)) return copy;
  const display = displaySchema(properties, place);
  return display === undefined
    ? copy
    : { ...copy, properties: { ...(isRecord(copy.properties) ? copy.properties : {}), [DISPLAY]: display } };
}

function displaySchema(properties: Json, { schemas, owner }: Place): unknown {
  const texts = Object.entries(properties).flatMap(([name, schema]) =>
    mayHaveUnit(name, properties) && !withoutDisplay.has(name)
      ? entryOf(name, called(name, textSchema(schema, schemas)))
      : [],
  );
  if (texts.length === 0) return undefined;
  return {
    type: 'object',
    description: `Of ${owner}, in US customary units (\`Accept-Units: us\`).`,
    properties: Object.fromEntries(texts),
    additionalProperties: false,
  };
}

const mayHaveUnit = (name: string, properties: Json): boolean =>
  unitOfField(name) !== undefined || (mayHaveStatedUnit(name) && Object.hasOwn(properties, 'unit'));

/** One text speaks for itself; a list or a range of them says what it is of. */
const called = (name: string, text: unknown): unknown =>
  isRecord(text) && text.$ref === undefined
    ? { ...text, description: `\`${name}\` in US customary units.` }
    : text;

function textSchema(schema: unknown, schemas: SchemaByName): unknown {
  if (!isRecord(schema)) return undefined;
  const name = referred(schema);
  if (name !== undefined) return textSchema(schemas[name], schemas);
  if (schema.type === 'number' || schema.type === 'integer') return { $ref: '#/components/schemas/UsText' };
  if (schema.type === 'array')
    return entryOf('items', textSchema(schema.items, schemas)).map(([, items]) => ({
      type: 'array',
      items,
    }))[0];
  if (schema.type !== 'object' || !isRecord(schema.properties)) return undefined;
  return rangeSchema(schema.properties, schemas);
}

function rangeSchema(properties: Json, schemas: SchemaByName): unknown {
  const parts = Object.entries(properties).map(([key, part]) => [key, textSchema(part, schemas)] as const);
  return parts.some(([, text]) => text === undefined)
    ? undefined
    : {
        type: 'object',
        properties: Object.fromEntries(parts),
        required: parts.map(([key]) => key),
        additionalProperties: false,
      };
}

import type { OpenAPIObject } from '@nestjs/swagger';
import type { RandomStream } from '#lib/kernel';
import { resolved } from './conformance.js';

export type Json = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const oneOf = <T>(list: readonly T[], random: RandomStream): T =>
  list[Math.floor(random() * list.length)];

const DEEPEST = 6;

/** A value as a schema describes it: what must be there always, what may be there now and then. */
export function valueFrom(
  document: OpenAPIObject,
  schema: unknown,
  random: RandomStream,
  depth = 0,
): unknown {
  const rule = isObject(schema) ? { ...resolved(document, schema), ...besideReference(schema) } : {};
  for (const word of ['example', 'const', 'default'] as const)
    if (rule[word] !== undefined && random() < 0.7) return rule[word];
  if (Array.isArray(rule.enum)) return oneOf(rule.enum, random);
  for (const word of ['oneOf', 'anyOf'] as const) {
    const forms = rule[word];
    if (Array.isArray(forms)) return valueFrom(document, oneOf(forms, random), random, depth);
  }
  if (Array.isArray(rule.allOf)) {
    const parts: readonly unknown[] = rule.allOf;
    return parts.reduce<Json>((whole, part) => {
      const value = valueFrom(document, part, random, depth);
      return isObject(value) ? { ...whole, ...value } : whole;
    }, {});
  }
  return ofType(document, rule, random, depth);
}

/** What stands beside a reference narrows what is referred to. */
const besideReference = (schema: Json): Json =>
  Object.fromEntries(Object.entries(schema).filter(([key]) => key !== '$ref'));

function ofType(document: OpenAPIObject, rule: Json, random: RandomStream, depth: number): unknown {
  const type: unknown = Array.isArray(rule.type) ? oneOf(rule.type, random) : rule.type;
  switch (type) {
    case 'object':
      return objectFrom(document, rule, random, depth);
    case 'array': {
      const [least, most] = [Number(rule.minItems ?? 0), Number(rule.maxItems ?? 3)];
      const length = Math.min(most, least + (depth > DEEPEST ? 0 : Math.floor(3 * random())));
      return Array.from({ length }, () => valueFrom(document, rule.items, random, depth + 1));
    }
    case 'integer':
      return Math.round(numberFrom(rule, random));
    case 'number':
      return numberFrom(rule, random);
    case 'boolean':
      return random() < 0.5;
    case 'string':
      return textFrom(rule, random);
    default:
      return 1;
  }
}

function objectFrom(document: OpenAPIObject, rule: Json, random: RandomStream, depth: number): Json {
  const properties = isObject(rule.properties) ? rule.properties : {};
  const required: readonly unknown[] = Array.isArray(rule.required) ? rule.required : [];
  const chosen = Object.entries(properties).filter(
    ([name]) => required.includes(name) || (depth < DEEPEST && random() < 0.35),
  );
  return Object.fromEntries(
    chosen.map(([name, part]) => [name, valueFrom(document, part, random, depth + 1)]),
  );
}

function numberFrom({ minimum, exclusiveMinimum, maximum }: Json, random: RandomStream): number {
  const low = Number(minimum ?? exclusiveMinimum ?? 0);
  const high = Number(maximum ?? low + 100);
  return low + (high - low) * random() ** 3;
}

const words = [
  'spring-2027',
  'filler',
  'a',
  'Z1',
  '2027-03-01',
  '2027-03-01T08:00:00Z',
  'a@example.org',
  '10',
];

function textFrom({ minLength, maxLength, format }: Json, random: RandomStream): string {
  if (format === 'date') return '2027-03-01';
  if (format === 'date-time') return '2027-03-01T08:00:00Z';
  if (format === 'uuid') return '00000000-0000-7000-8000-000000000000';
  const word = oneOf(words, random);
  return word.padEnd(Number(minLength ?? 0), 'x').slice(0, Number(maxLength ?? 100));
}

const odd: readonly unknown[] = [
  null,
  -1,
  0,
  1e308,
  -1e-308,
  1e21,
  '',
  ' ',
  '1/2 in',
  'NaN',
  '\u0000',
  '\ud800',
  'x'.repeat(5000),
  [],
  {},
  [[]],
  true,
];

/** The value with one place in it changed: left out, doubled, made odd, or moved by a power of ten. */
export function mutated(value: unknown, random: RandomStream): unknown {
  if (Array.isArray(value) && value.length > 0 && random() < 0.85) {
    const items: readonly unknown[] = value;
    const place = Math.floor(random() * items.length);
    const turn = random();
    if (turn < 0.08) return items.filter((_, index) => index !== place);
    if (turn < 0.16) return [...items, items[place]];
    return items.map((item, index) => (index === place ? mutated(item, random) : item));
  }
  if (isObject(value) && Object.keys(value).length > 0 && random() < 0.9) {
    const name = oneOf(Object.keys(value), random);
    const turn = random();
    if (turn < 0.1) return Object.fromEntries(Object.entries(value).filter(([one]) => one !== name));
    if (turn < 0.14) return { ...value, [`${name}x`]: value[name] };
    return { ...value, [name]: mutated(value[name], random) };
  }
  if (typeof value === 'number' && random() < 0.6) return value * 10 ** (8 * random() - 4);
  return oneOf(odd, random);
}

import type { OpenAPIObject } from '@nestjs/swagger';

export interface Exchange {
  readonly method: string;
  /** Path without query. */
  readonly path: string;
  readonly status: number;
  readonly contentType: string;
  readonly body: unknown;
}

type Json = Readonly<Record<string, unknown>>;

/**
 * What an answer does that the OpenAPI document does not say: a status, a media type or a body of another shape.
 * Answers of unknown paths and wrong methods belong to no operation and are not judged.
 */
export function contradictions(document: OpenAPIObject, exchange: Exchange): readonly string[] {
  const operation = operationFor(document, exchange);
  if (operation === undefined) return [];
  const name = `${exchange.method} ${exchange.path}`;
  const stated = recordIn(operation.responses, String(exchange.status));
  const isOfEdge = AT_THE_EDGE.has(exchange.status);
  const response = resolved(
    document,
    stated ?? (isOfEdge ? recordIn(operation.responses, 'default') : undefined),
  );
  if (response === undefined) return [`${name} answered ${exchange.status}, which is not documented`];
  if (exchange.status === 304 || exchange.status === 204) return [];
  const media = mediaFor(response, exchange.contentType);
  if (media === undefined)
    return [`${name} answered ${exchange.status} as ${exchange.contentType}, which is not documented`];
  if (!/json/.test(exchange.contentType)) return [];
  return mismatches(document, media.schema, exchange.body, '')
    .map((fault) => `${name} ${exchange.status}: ${fault}`)
    .slice(0, 10);
}

/** Refusals of the edge, which the document says once under `default`; whatever else is answered is to be stated. */
const AT_THE_EDGE = new Set([406, 408, 413, 415, 431, 503]);

/** The part itself where the document refers to one among its components. */
export function resolved(document: OpenAPIObject, part: Json | undefined): Json | undefined {
  if (typeof part?.$ref !== 'string') return part;
  const [section, name] = part.$ref.replace('#/components/', '').split('/');
  return recordIn(recordIn(document.components, section), name);
}

function operationFor(document: OpenAPIObject, { method, path }: Exchange): Json | undefined {
  const candidates = Object.entries(document.paths).filter(([template]) => pattern(template).test(path));
  // A path written out comes before one with parameters.
  const [found] = candidates
    .sort(([a], [b]) => a.split('{').length - b.split('{').length)
    .flatMap(([, item]) =>
      [recordIn(item, method.toLowerCase())].filter((operation) => operation !== undefined),
    );
  return found;
}

const pattern = (template: string): RegExp =>
  new RegExp(`^${template.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\w+\}/g, '[^/]+')}/?$`);

function mediaFor(response: Json, contentType: string): Json | undefined {
  return recordIn(response.content, contentType.split(';')[0].trim().toLowerCase());
}

function recordIn(value: unknown, key: string): Json | undefined {
  if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
  const found = (value as Json)[key];
  return typeof found === 'object' && found !== null ? (found as Json) : undefined;
}

/** The part of JSON Schema that the document uses; `additionalProperties` is taken as closed where nothing is said. */
function mismatches(document: OpenAPIObject, schema: unknown, value: unknown, at: string): readonly string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const rule = schema as Json;
  if (typeof rule.$ref === 'string') return mismatches(document, resolved(document, rule), value, at);
  if (Array.isArray(rule.allOf)) return rule.allOf.flatMap((part) => mismatches(document, part, value, at));
  if (Array.isArray(rule.oneOf)) {
    const tries = rule.oneOf.map((part) => mismatches(document, part, value, at));
    return tries.some((faults) => faults.length === 0)
      ? []
      : [`${at} fits none of ${tries.length} forms: ${tries[0][0]}`];
  }
  if (Array.isArray(rule.enum) && !rule.enum.includes(value))
    return [`${at} is ${JSON.stringify(value)}, not one of ${rule.enum.join(', ')}`];
  return typeMismatches(document, rule, value, at);
}

function typeMismatches(document: OpenAPIObject, rule: Json, value: unknown, at: string): readonly string[] {
  if (Array.isArray(rule.type)) {
    const tries = rule.type.map((type) => typeMismatches(document, { ...rule, type }, value, at));
    return tries.find((faults) => faults.length === 0) ?? tries[0];
  }
  switch (rule.type) {
    case 'object':
      return isObject(value) ? memberMismatches(document, rule, value, at) : [`${at} is not an object`];
    case 'array':
      return Array.isArray(value)
        ? [
            ...countMismatches(rule, value.length, at),
            ...value.flatMap((item, index) => mismatches(document, rule.items, item, `${at}/${index}`)),
          ]
        : [`${at} is not a list`];
    case 'string':
      return typeof value === 'string' ? textMismatches(rule, value, at) : [`${at} is not text`];
    case 'integer':
      return Number.isInteger(value) ? [] : [`${at} is not a whole number`];
    case 'number':
      return typeof value === 'number' ? [] : [`${at} is not a number`];
    case 'boolean':
      return typeof value === 'boolean' ? [] : [`${at} is neither true nor false`];
    case 'null':
      return value === null ? [] : [`${at} is not null`];
    default:
      return [];
  }
}

const countMismatches = ({ minItems, maxItems }: Json, count: number, at: string): readonly string[] =>
  count < Number(minItems ?? 0) || count > Number(maxItems ?? Infinity) ? [`${at} has ${count} entries`] : [];

function textMismatches(
  { pattern, minLength, maxLength }: Json,
  text: string,
  at: string,
): readonly string[] {
  const length = [...text].length;
  const isOfLength = length >= Number(minLength ?? 0) && length <= Number(maxLength ?? Infinity);
  const isOfForm = typeof pattern !== 'string' || new RegExp(pattern, 'u').test(text);
  return isOfLength && isOfForm ? [] : [`${at} is not of the form or length promised: ${text.slice(0, 80)}`];
}

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function memberMismatches(document: OpenAPIObject, rule: Json, value: Json, at: string): readonly string[] {
  const properties = isObject(rule.properties) ? rule.properties : {};
  const required = Array.isArray(rule.required) ? (rule.required as readonly string[]) : [];
  const missing = required.filter((key) => value[key] === undefined).map((key) => `${at}/${key} is missing`);
  const isOpen = rule.additionalProperties !== undefined && rule.additionalProperties !== false;
  return [
    ...missing,
    ...Object.entries(value).flatMap(([key, part]) => {
      if (Object.hasOwn(properties, key)) return mismatches(document, properties[key], part, `${at}/${key}`);
      if (isOpen) return mismatches(document, rule.additionalProperties, part, `${at}/${key}`);
      return Object.keys(properties).length === 0 ? [] : [`${at}/${key} is not documented`];
    }),
  ];
}

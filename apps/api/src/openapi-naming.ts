import type { OpenAPIObject } from '@nestjs/swagger';
import { Defect } from '#lib/kernel';
import { isRecord } from './edge/dto/field.js';
import { LONGEST_LIST, shownText } from './edge/answer-limits.js';
import { namedTexts, textNameOf } from './openapi-texts.js';
import { namedQuantities, quantityNameOf } from './openapi-quantities.js';

type Node = Record<string, unknown>;

/**
 * Gives names to what recurs in schemas or stands unnamed inside them: quantities that may be typed with a unit, kinds
 * of text, and objects inside objects. A name is a type for whoever makes a client, and is said once. Changes the
 * document in place.
 */
export function nameParts(document: OpenAPIObject): void {
  const schemas: Node = Object.assign({}, document.components?.schemas, namedTexts, namedQuantities);
  const naming = { schemas, byText: new Map<string, string>() };
  for (const [name, schema] of Object.entries(document.components?.schemas ?? {}))
    nameInside(schema, name, naming);
  for (const item of Object.values(document.paths))
    for (const operation of Object.values(item)) if (isRecord(operation)) nameBodies(operation, naming);
  describeWhereUsedOnce(document, schemas);
  const used = JSON.stringify([document.paths, document.webhooks, schemas]);
  const isUsed = (name: string): boolean =>
    !(name in namedTexts || name in namedQuantities) || used.includes(`"#/components/schemas/${name}"`);
  const sorted = Object.entries(schemas)
    .filter(([name]) => isUsed(name))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  document.components = Object.assign({}, document.components, { schemas: Object.fromEntries(sorted) });
}

interface Naming {
  readonly schemas: Node;
  /** Names of what was named here, by what it says. */
  readonly byText: Map<string, string>;
}

/** What stands below a schema: members, entries, values of a map, and forms it may take. */
function nameInside(schema: unknown, owner: string, naming: Naming): void {
  if (!isRecord(schema)) return;
  if (schema.type === 'array') limitList(schema);
  inOneForm(schema);
  inOnePiece(schema);
  if (isRecord(schema.properties))
    for (const [key, part] of Object.entries(schema.properties))
      replace(schema.properties, key, { part, name: owner + inPascalCase(key), key }, naming);
  for (const key of ['items', 'additionalProperties'] as const)
    replace(schema, key, { part: schema[key], name: owner, key: '' }, naming);
  for (const key of ['oneOf', 'allOf', 'prefixItems'] as const) {
    const forms: unknown = schema[key];
    if (Array.isArray(forms))
      forms.forEach((part: unknown, index) => {
        replace(forms, index, { part, name: `${owner}${index + 1}`, key: '' }, naming);
      });
  }
}

interface Part {
  readonly part: unknown;
  /** What it would be called. */
  readonly name: string;
  /** Member that it is the value of, if it is one. */
  readonly key: string;
}

function replace(
  holder: Node | unknown[],
  key: string | number,
  { part, name, key: member }: Part,
  naming: Naming,
): void {
  if (!isRecord(part)) return;
  const known = quantityNameOf(part) ?? textNameOf(part, member);
  if (known !== undefined) {
    Object.assign(holder, { [key]: { ...known.beside, $ref: `#/components/schemas/${known.name}` } });
    return;
  }
  countOnlyWholes(part, member);
  const own = calledBy(part);
  const called = own ?? name;
  nameInside(part, called, naming);
  if (own !== undefined || isUnnamed(part))
    Object.assign(holder, { [key]: referenceTo(part, called, naming) });
}

/** Objects with members of their own, and unions of objects. */
const isUnnamed = (part: Node): boolean =>
  (part.type === 'object' && isRecord(part.properties)) || part.discriminator !== undefined;

function referenceTo(part: Node, name: string, { schemas, byText }: Naming): Node {
  const text = JSON.stringify(part);
  const known = byText.get(text) ?? name;
  if (!byText.has(text)) {
    if (known in schemas) throw new Defect(`Two parts of the contract would be called ${known}`);
    schemas[known] = part;
    byText.set(text, known);
  }
  return { $ref: `#/components/schemas/${known}` };
}

/** The builder wraps a reference that words stand beside; in 3.1 they may stand beside it. */
function inOnePiece(schema: Node): void {
  const { allOf } = schema;
  if (!Array.isArray(allOf) || allOf.length !== 1 || !isRecord(allOf[0]) || !('$ref' in allOf[0])) return;
  Reflect.deleteProperty(schema, 'allOf');
  Object.assign(schema, allOf[0]);
}

/** A number or a text or a flag is one value of several types, not a choice between schemas. */
function inOneForm(schema: Node): void {
  const { oneOf } = schema;
  if (!Array.isArray(oneOf)) return;
  const types = oneOf.map((form: unknown) =>
    isRecord(form) && Object.keys(form).length === 1 ? form.type : undefined,
  );
  if (!types.every((type) => ['number', 'string', 'boolean'].includes(String(type)))) return;
  Reflect.deleteProperty(schema, 'oneOf');
  schema.type = types;
  if (types.includes('string')) Object.assign(schema, shownText);
}

const MOST_INT32 = 2_147_483_647;

/** What is called a count has no fraction; types of the code cannot say so. */
function countOnlyWholes(part: Node, member: string): void {
  if (part.type !== 'number' || part.enum !== undefined || !/(?:^c|C)ount$/.test(member)) return;
  Object.assign(part, { type: 'integer', format: 'int32', minimum: 0, maximum: MOST_INT32 });
}

/** Requests state their own limits; no list of an answer is longer than the edge lets it be. */
function limitList(list: Node): void {
  list.minItems ??= 0;
  list.maxItems ??= LONGEST_LIST;
}

/** What an operation asks for or answers in place is called by the operation. */
function nameBodies(operation: Node, naming: Naming): void {
  const name = inPascalCase(String(operation.operationId));
  nameContent(operation.requestBody, `${name}Body`, naming);
  if (isRecord(operation.responses))
    for (const [status, response] of Object.entries(operation.responses))
      if (status < '300') nameContent(response, `${name}Answer`, naming);
}

function nameContent(holder: unknown, name: string, naming: Naming): void {
  if (!isRecord(holder) || !isRecord(holder.content)) return;
  for (const media of Object.values(holder.content))
    if (isRecord(media)) replace(media, 'schema', { part: media.schema, name, key: '' }, naming);
}

/** A schema in place may bring the name that it is to have. */
function calledBy(schema: Node): string | undefined {
  if (typeof schema['x-name'] !== 'string') return undefined;
  const name = schema['x-name'];
  Reflect.deleteProperty(schema, 'x-name');
  return name;
}

const inPascalCase = (words: string): string =>
  words.replace(/(?:^|-|_)(\w)/g, (_, letter: string) => letter.toUpperCase());

/** What is said of the one member that holds an object is said of the object, where every reader of schemas finds it. */
function describeWhereUsedOnce(document: OpenAPIObject, schemas: Node): void {
  const uses = new Map<string, Node[]>();
  gatherReferences([document.paths, document.webhooks, schemas], uses);
  for (const [to, [only, ...others]] of uses) {
    const named = schemas[to.replace('#/components/schemas/', '')];
    if (others.length > 0 || !isRecord(named) || named.description !== undefined) continue;
    if (typeof only.description !== 'string') continue;
    Object.assign(named, { description: only.description });
    Reflect.deleteProperty(only, 'description');
  }
}

function gatherReferences(node: unknown, uses: Map<string, Node[]>): void {
  if (Array.isArray(node))
    node.forEach((part) => {
      gatherReferences(part, uses);
    });
  if (!isRecord(node)) return;
  if (typeof node.$ref === 'string') uses.set(node.$ref, [...(uses.get(node.$ref) ?? []), node]);
  for (const [key, part] of Object.entries(node))
    if (key !== 'example' && key !== 'examples') gatherReferences(part, uses);
}

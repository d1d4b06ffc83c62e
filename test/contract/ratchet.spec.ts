import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { isRecord } from '../../apps/api/src/edge/record.js';

/**
 * What can be counted of the contract may not get worse. A count is a floor, never the aim: whether a sentence helps is
 * for whoever reads it. What linters count is held by `apps/workshop/lint-contract.mjs`.
 */
const read = (...at: readonly string[]): string =>
  readFileSync(path.join(import.meta.dirname, ...at), 'utf8');

type Node = Readonly<Record<string, unknown>>;

const contract: Node = JSON.parse(read('openapi.json'));
const { counted }: { readonly counted: Readonly<Record<string, number>> } = JSON.parse(read('ratchet.json'));

const entriesOf = (node: unknown): readonly (readonly [string, unknown])[] =>
  isRecord(node) ? Object.entries(node) : [];
const at = (node: unknown, ...keys: readonly string[]): unknown =>
  keys.reduce<unknown>((held, key) => (isRecord(held) ? held[key] : undefined), node);
const components = (section: string): readonly (readonly [string, unknown])[] =>
  entriesOf(at(contract, 'components', section));
const saysSomething = (node: unknown): boolean => String(at(node, 'description') ?? '').trim() !== '';

/** A part of its own kind speaks for itself; a text or a number that many fields share says nothing of the field. */
const isDescribed = (node: unknown): boolean =>
  saysSomething(node) ||
  (saysSomething(referred(node)) &&
    (!isOneValue(node) || at(node, '$ref') === '#/components/schemas/UsText'));

const operations = entriesOf(contract.paths).flatMap(([where, item]) =>
  entriesOf(item).map(([method, operation]) => [`${method} ${where}`, operation] as const),
);

/** Everything in a part of the document that satisfies a test, by where it stands; examples are no schemas. */
function found(
  node: unknown,
  isWanted: (node: Node) => boolean,
  where = '',
): readonly (readonly [string, Node])[] {
  if (Array.isArray(node)) return node.flatMap((part, index) => found(part, isWanted, `${where}/${index}`));
  if (!isRecord(node)) return [];
  return [
    ...(isWanted(node) ? [[where, node] as const] : []),
    ...Object.entries(node).flatMap(([key, part]) =>
      key === 'example' || key === 'examples' ? [] : found(part, isWanted, `${where}/${key}`),
    ),
  ];
}

/** Every property of every object, wherever it stands. */
const properties = found(contract, ({ properties: named }) => isRecord(named))
  // A property may itself be called `properties`.
  .filter(([where]) => !where.endsWith('/properties'))
  .flatMap(([where, { properties: named }]) =>
    entriesOf(named).map(([name, property]) => [`${where}/${name}`, property] as const),
  );

const referred = (node: unknown): unknown => {
  const to = at(node, '$ref');
  return typeof to === 'string' ? at(contract, ...to.replace('#/', '').split('/')) : node;
};
const isOneValue = (node: unknown): boolean =>
  ['string', 'number', 'integer', 'boolean'].some((type) =>
    [at(referred(node), 'type')].flat().includes(type),
  );
const isObject = (node: unknown): boolean => at(referred(node), 'type') === 'object';

const ownParameters = operations.flatMap(([name, one]) => {
  const listed = at(one, 'parameters');
  return (Array.isArray(listed) ? listed : []).map((part: unknown) => [name, referred(part)] as const);
});

/** Of every operation: media types of JSON, asked or answered well. */
const jsonMedia = operations.flatMap(([name, operation]) => {
  const answers = entriesOf(at(operation, 'responses')).filter(([status]) => status.startsWith('2'));
  return [['body', at(operation, 'requestBody')] as const, ...answers].flatMap(([place, holder]) =>
    entriesOf(at(referred(holder), 'content'))
      .filter(([type]) => /^application\/(?:merge-patch\+)?json$/.test(type))
      .map(([, media]) => [`${name} ${place}`, media] as const),
  );
});

function saidTooOften(): readonly string[] {
  const times = new Map<string, number>();
  for (const [, property] of properties) {
    const said = at(property, 'description');
    if (typeof said === 'string') times.set(said, (times.get(said) ?? 0) + 1);
  }
  return [...times].filter(([, count]) => count > 3).map(([said, count]) => `${count} times: ${said}`);
}

const kilobytes = (bytes: number): number => Math.ceil(bytes / 1000);

const counts: Readonly<Record<string, () => readonly string[] | number>> = {
  operationsUndescribed: () => operations.filter(([, one]) => !isDescribed(one)).map(([name]) => name),
  parametersUndescribed: () =>
    [...components('parameters'), ...ownParameters]
      .filter(([, one]) => !isDescribed(one))
      .map(([name]) => name),
  propertiesUndescribed: () => properties.filter(([, one]) => !isDescribed(one)).map(([where]) => where),
  sentencesMoreThanThreeTimes: saidTooOften,
  bodiesAndAnswersWithoutExample: () =>
    jsonMedia
      .filter(([, media]) => at(media, 'example') === undefined && at(media, 'examples') === undefined)
      .map(([name]) => name),
  unionsOfObjectsNotToldApart: () =>
    found(
      contract,
      ({ oneOf, discriminator }) =>
        Array.isArray(oneOf) && oneOf.filter(isObject).length > 1 && discriminator === undefined,
    ).map(([where]) => where),
  integersWithoutFormat: () =>
    found(contract, ({ type, format }) => type === 'integer' && format === undefined).map(([where]) => where),
  documentKilobytes: () => kilobytes(JSON.stringify(contract).length),
  clientTypesKilobytes: () =>
    kilobytes(statSync(path.join(import.meta.dirname, '../../libs/sdk/src/generated/schema.ts')).size),
};

describe('what is counted of the contract', () => {
  test.each(Object.entries(counts))('%s is no more than it was', (name, count) => {
    const now = count();
    if (typeof now === 'number') expect(now).toBeLessThanOrEqual(counted[name]);
    else expect(now.slice(0, Math.max(0, now.length - counted[name]))).toEqual([]);
  });

  test('every count has its limit, and something was counted', () => {
    expect(Object.keys(counted).sort()).toEqual(Object.keys(counts).sort());
    expect([operations.length > 100, properties.length > 3000, jsonMedia.length > 150]).toEqual([
      true,
      true,
      true,
    ]);
  });
});

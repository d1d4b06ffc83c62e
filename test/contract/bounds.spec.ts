import 'reflect-metadata';
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { filled, problemsOf } from '../../apps/api/src/edge/dto/field.js';
import { isRecord } from '../../apps/api/src/edge/record.js';
import { Defect, pointer, type Problem } from '#lib/kernel';
import { doors, readers, type Door, type Reader } from './bounds/doors.js';
import { boundsOf, kindsOf, type Bound, type Schema, type Schemas } from './bounds/probes.js';
import { withValue } from './bounds/requests.js';

interface Document {
  readonly paths: Readonly<Record<string, Readonly<Record<string, { readonly requestBody: Body }>>>>;
  readonly components: { readonly schemas: Schemas };
}

interface Body {
  readonly content: Readonly<Record<'application/json', { readonly schema: Schema }>>;
}

const document = JSON.parse(readFileSync(path.join(import.meta.dirname, 'openapi.json'), 'utf8')) as Document;
const { schemas } = document.components;
const bodyOf = ({ path: at, method = 'post', kind }: Reader): Schema => {
  const { schema } = document.paths[at][method].requestBody.content['application/json'];
  if (kind === undefined) return schema;
  const ofKind = kindsOf(schemas, schema).kinds.find(([name]) => name === kind);
  if (ofKind === undefined) throw new Defect(`${at} takes no ${kind}`);
  return ofKind[1];
};

/** What a fault says of the value itself; a fault of any other kind weighs it against its fellows or the catalogue. */
const OF_THE_VALUE = [
  'not-a-flag',
  'not-a-list',
  'not-a-number',
  'not-an-object',
  'not-in-form',
  'not-one-of',
  'not-text',
  'out-of-range',
  'text-length',
  'too-few',
  'too-many',
];

/** A word of an open list is weighed against the catalogue, or against what the request says elsewhere. */
const isOfTheValue = ({ code }: Problem, { schema }: Bound): boolean =>
  OF_THE_VALUE.includes(code) && (code !== 'not-one-of' || schema.enum !== undefined);

/** A door with what is tried at it. */
interface Tried extends Reader {
  readonly room?: Door['room'];
  readonly root: Schema;
}

/** Where contract, reader and room do not say the same of one bound. */
async function contradictionsAt(door: Tried, bound: Bound): Promise<readonly string[]> {
  const at = pointer('', ...bound.steps.map(({ key }) => key));
  const told = async (value: unknown, isInside: boolean): Promise<readonly string[]> => {
    const { root, request } = door;
    const probe = withValue(schemas, { root, request, steps: bound.steps }, value);
    const name = `${at} (${bound.says}) ${String(value).slice(0, 20)}`;
    const says = {
      'the reader': readerSays(door, probe),
      ...(door.room === undefined ? {} : { 'the room': await roomSays(door.room, probe) }),
    };
    return Object.entries(says).flatMap(([who, problems]) => {
      if (isInside)
        return problems
          .filter((one) => one.at === at && isOfTheValue(one, bound))
          .map(({ code }) => `${name}: ${who} refuses it as ${code}`);
      return problems.some((one) => one.at === at || one.at.startsWith(`${at}/`))
        ? []
        : [`${name}: ${who} takes it`];
    });
  };
  const found: string[] = [];
  for (const value of bound.inside) found.push(...(await told(value, true)));
  for (const value of bound.outside) found.push(...(await told(value, false)));
  return found;
}

function readerSays({ dto }: Tried, request: unknown): readonly Problem[] {
  const read = filled(dto, request);
  return isRecord(read) ? problemsOf(read) : [];
}

async function roomSays(room: Door['room'], request: unknown): Promise<readonly Problem[]> {
  const outcome = await room(request as never);
  return outcome.ok ? [] : outcome.problems;
}

describe('the bounds of the contract', () => {
  test.each(doors)(
    '$path takes and refuses alike what its contract, its reader and its room say',
    async (door) => {
      const tried = { ...door, root: bodyOf(door) };
      expect(await roomSays(door.room, door.request)).toEqual([]);
      const bounds = boundsOf(schemas, tried.root);
      // The smallest request has 44; far fewer would mean that the document was not read.
      expect(bounds.length).toBeGreaterThan(40);
      const found: string[] = [];
      for (const bound of bounds) found.push(...(await contradictionsAt(tried, bound)));
      expect(found).toEqual([]);
    },
    600_000,
  );

  test.each(readers)('$path takes and refuses alike what its contract and its reader say', async (reader) => {
    const tried = { ...reader, root: bodyOf(reader) };
    expect(readerSays(tried, reader.request)).toEqual([]);
    const bounds = boundsOf(schemas, tried.root);
    expect(bounds.length).toBeGreaterThan(0);
    const found: string[] = [];
    for (const bound of bounds) found.push(...(await contradictionsAt(tried, bound)));
    expect(found).toEqual([]);
  });

  test('a bound that the reader does not keep is seen', async () => {
    const [door] = doors;
    const root = bodyOf(door);
    const [bound] = boundsOf(schemas, root).filter(({ says }) => says.startsWith('maximum'));
    const lax = { ...bound, outside: bound.inside };
    expect(await contradictionsAt({ ...door, root }, lax)).toHaveLength(2);
    const strict = { ...bound, inside: bound.outside };
    expect(await contradictionsAt({ ...door, root }, strict)).toHaveLength(2);
  });

  test('no two shapes of requests share a name, since the document would show one in place of the other', () => {
    const service = path.join(import.meta.dirname, '../../apps/api/src');
    const names = readdirSync(service, { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.dto.ts'))
      .flatMap((file) => [...readFileSync(path.join(service, file), 'utf8').matchAll(/class (\w+Dto)\b/g)])
      .map(([, name]) => name);
    expect(names.length).toBeGreaterThan(100);
    expect(names.filter((name, index) => names.indexOf(name) < index)).toEqual([]);
  });
});

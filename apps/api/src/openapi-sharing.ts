import type { OpenAPIObject } from '@nestjs/swagger';
import { isRecord } from './edge/dto/field.js';
import { problemKinds } from './edge/problems.js';
import { nameOfPathPart } from './openapi-paths.js';

type Node = Record<string, unknown>;

/** One place in the document where a part stands, and what it would be called among the components. */
interface Use {
  readonly holder: Node | unknown[];
  readonly key: string | number;
  readonly part: Node;
  readonly name: string;
}

/**
 * Says once, under `components`, what several operations say alike: headers first, because answers hold them, then
 * answers that hold nothing or refuse, and parameters. Of two parts that would share a name the one used more often gets it; the other stays inline.
 */
export function shareEqualParts(document: OpenAPIObject, operations: readonly Node[]): void {
  const answers = operations.flatMap((operation) => entriesOf(operation.responses));
  share(
    document,
    'headers',
    answers.flatMap(({ part }) => entriesOf(part.headers)),
  );
  share(document, 'responses', [...answers.flatMap(refusalUse), ...answers.flatMap(emptyUse)]);
  share(document, 'parameters', operations.flatMap(parameterUses));
}

function share(document: OpenAPIObject, section: string, uses: readonly Use[]): void {
  const components: Node = Object.fromEntries(Object.entries(document.components ?? {}));
  const shared: Node = isRecord(components[section]) ? { ...components[section] } : {};
  for (const [name, found] of namedGroups(uses)) {
    if (name in shared) continue;
    shared[name] = found[0].part;
    for (const { holder, key } of found)
      Object.assign(holder, { [key]: { $ref: `#/components/${section}/${name}` } });
  }
  const sorted = Object.entries(shared).sort(([a], [b]) => (a < b ? -1 : 1));
  document.components = Object.assign(components, { [section]: Object.fromEntries(sorted) });
}

/** Equal parts that stand in more than one place, the most used first. */
function namedGroups(uses: readonly Use[]): readonly (readonly [string, readonly Use[]])[] {
  const groups = new Map<string, Use[]>();
  for (const use of uses.filter(({ part }) => !('$ref' in part))) {
    const key = JSON.stringify(use.part);
    groups.set(key, [...(groups.get(key) ?? []), use]);
  }
  return [...groups.values()]
    .filter((group) => group.length > 1)
    .sort((a, b) => b.length - a.length)
    .map((group) => [group[0].name, group]);
}

const entriesOf = (holder: unknown): readonly Use[] =>
  isRecord(holder)
    ? Object.entries(holder).flatMap(([key, part]) =>
        isRecord(part) ? [{ holder, key, part, name: key }] : [],
      )
    : [];

const emptyAnswers: Readonly<Record<string, string>> = { '204': 'Done', '304': 'NotModified' };

/** Answers without a body are named by their status. */
function emptyUse(use: Use): readonly Use[] {
  const isEmpty = typeof use.key === 'string' && use.key in emptyAnswers && use.part.content === undefined;
  return isEmpty ? [{ ...use, name: emptyAnswers[use.key] }] : [];
}

/** Refusals are named by their kind of problem. */
function refusalUse(use: Use): readonly Use[] {
  if (use.key === 'default') return [{ ...use, name: 'Refused' }];
  const kind = Object.entries(problemKinds).find(
    ([, { status, title }]) => String(status) === use.key && `${title}.` === use.part.description,
  )?.[0];
  return kind === undefined ? [] : [{ ...use, name: inPascalCase(kind) }];
}

const parameterUses = ({ parameters }: Node): readonly Use[] =>
  Array.isArray(parameters)
    ? parameters.flatMap((part: unknown, key) =>
        isRecord(part) ? [{ holder: parameters, key, part, name: parameterName(part) }] : [],
      )
    : [];

const parameterName = (part: Node): string => nameOfPathPart(part) ?? inPascalCase(String(part.name));

const inPascalCase = (words: string): string =>
  words.replace(/(?:^|-)(\w)/g, (_, letter: string) => letter.toUpperCase());

import { isRecord } from './edge/dto/field.js';

type Schemas = Readonly<Record<string, unknown>>;

/**
 * What was asked for comes back under the same names, and is described by what was asked: each field of the answer that
 * says nothing of itself takes the words of the request's, and so on downwards. Changes the schemas in place.
 */
export function describeLike(
  schemas: Schemas,
  answer: string,
  request: string,
  seen = new Set<string>(),
): void {
  if (seen.has(answer)) return;
  seen.add(answer);
  alike(schemas[answer], schemas[request], { schemas, seen });
}

/** What stands in for an answer that was not given is a matter of the request, and of the assumptions. */
const withoutDefault = (words: string): string => words.replace(/\.? Absent: .+$|; absent: .+$/s, '.');

interface Walk {
  readonly schemas: Schemas;
  readonly seen: Set<string>;
}

function alike(answer: unknown, request: unknown, walk: Walk): void {
  if (!isRecord(answer) || !isRecord(request)) return;
  const [theirs, ours] = [answer.properties, request.properties];
  if (isRecord(theirs) && isRecord(ours))
    for (const [name, field] of Object.entries(theirs)) describeField(field, ours[name], walk);
}

function describeField(field: unknown, asked: unknown, walk: Walk): void {
  if (!isRecord(field) || !isRecord(asked)) return;
  if (field.description === undefined && typeof asked.description === 'string')
    Object.assign(field, { description: withoutDefault(asked.description) });
  const [answer, request] = [field.items ?? field, asked.items ?? asked];
  const [answerName, requestName] = [nameIn(answer), nameIn(request)];
  if (answerName !== undefined && requestName !== undefined)
    describeLike(walk.schemas, answerName, requestName, walk.seen);
  else alike(answer, requestName === undefined ? request : walk.schemas[requestName], walk);
}

/** The schema that is referred to, itself or among what it is composed of. */
function nameIn(node: unknown): string | undefined {
  if (!isRecord(node)) return undefined;
  if (typeof node.$ref === 'string')
    return node.$ref.replace('#/components/schemas/', '').replace(/Dto$/, 'Input');
  return Array.isArray(node.allOf) ? node.allOf.map(nameIn).find((name) => name !== undefined) : undefined;
}

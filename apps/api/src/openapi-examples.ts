import type { OpenAPIObject } from '@nestjs/swagger';
import { CSV_TYPE } from './edge/media.js';
import { isRecord } from './edge/dto/field.js';
import { recordedExamples } from './schemas/generated/examples.js';

type Node = Record<string, unknown>;

const JSON_TYPE = 'application/json';

/** An example of more characters is shown once for all operations that answer in the same shape; sheets share none. */
const LONG = 3000;

/** An example and the media types that show it. */
interface Shown {
  readonly value: unknown;
  readonly name: string;
  readonly media: Node[];
}

/**
 * Puts what a real run asked and was answered beside the schemas. What several operations show alike stands once among
 * the components; `test/contract/examples.spec.ts` holds that nothing is left without and that each fits its schema.
 */
export function addExamples(document: OpenAPIObject): void {
  const shown = new Map<string, Shown>();
  for (const [path, item] of Object.entries(document.paths))
    for (const [method, operation] of Object.entries(item))
      if (isRecord(operation)) gather(shown, operation, `${method.toUpperCase()} ${path}`);
  const components: Node = {};
  for (const { value, name, media } of shown.values()) {
    if (media.length > 1) components[name] = { value };
    for (const one of media)
      Object.assign(
        one,
        media.length > 1
          ? { examples: { recorded: { $ref: `#/components/examples/${name}` } } }
          : { example: value },
      );
  }
  if (Object.keys(components).length > 0)
    document.components = Object.assign({}, document.components, { examples: components });
}

function gather(shown: Map<string, Shown>, operation: Node, at: string): void {
  if (!Object.hasOwn(recordedExamples, at)) return;
  const { body, answers } = recordedExamples[at];
  const name = `${String(operation.operationId).charAt(0).toUpperCase()}${String(operation.operationId).slice(1)}`;
  for (const media of typeof body === 'string'
    ? sheetIn(operation.requestBody)
    : mediaIn(operation.requestBody))
    note(shown, { value: body, name: `${name}Body` }, media);
  for (const [status, value] of Object.entries(answers))
    for (const media of mediaIn(
      isRecord(operation.responses) ? operation.responses[status] : undefined,
    ).slice(0, 1))
      note(shown, { value, name: `${name}${status}` }, media);
}

/** A merge patch is read as JSON too, and shown the same. */
function mediaIn(holder: unknown): readonly Node[] {
  if (!isRecord(holder) || !isRecord(holder.content)) return [];
  const { content } = holder;
  return [JSON_TYPE, 'application/merge-patch+json'].flatMap((type) => {
    const media = content[type];
    return isRecord(media) ? [media] : [];
  });
}

/** A sheet is shown as the text that it is. */
function sheetIn(holder: unknown): readonly Node[] {
  if (!isRecord(holder) || !isRecord(holder.content)) return [];
  const media = holder.content[CSV_TYPE];
  return isRecord(media) ? [media] : [];
}

function note(shown: Map<string, Shown>, { value, name }: Omit<Shown, 'media'>, media: Node): void {
  if (value === undefined || 'example' in media) return;
  const text = JSON.stringify(value);
  const key = text.length > LONG && typeof value === 'object' ? JSON.stringify(media.schema) : text;
  const known = shown.get(key) ?? { value, name, media: [] };
  known.media.push(media);
  shown.set(key, known);
}

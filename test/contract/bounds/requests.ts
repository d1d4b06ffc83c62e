import { isRecord } from '../../../apps/api/src/edge/record.js';
import { Count, kindsOf, type Schema, type Schemas, type Step } from './probes.js';

/** The request with a value put at a place; whatever stands between is made where it is not there. */
export function withValue(
  schemas: Schemas,
  {
    root,
    request,
    steps,
  }: { readonly root: Schema; readonly request: unknown; readonly steps: readonly Step[] },
  value: unknown,
): unknown {
  const copy: unknown = structuredClone(request);
  put({ schemas, value }, { schema: root, holder: { root: copy }, key: 'root', steps });
  return copy;
}

interface Putting {
  readonly schemas: Schemas;
  readonly value: unknown;
}

interface At {
  readonly schema: Schema;
  readonly holder: object;
  readonly key: string | 0;
  readonly steps: readonly Step[];
  readonly as?: Step['as'];
}

function put({ schemas, value }: Putting, { schema, holder, key, steps, as }: At): void {
  const wanted = ofKind(schemas, schema, as?.kind);
  const [step, ...others] = steps;
  if (step === undefined) {
    const old: unknown = Reflect.get(holder, key);
    Reflect.set(holder, key, value instanceof Count ? listOf(schemas, wanted, old, value.of) : value);
    return;
  }
  if (!isThere(Reflect.get(holder, key), as)) Reflect.set(holder, key, exampleOf(schemas, wanted, as));
  const inner: unknown = Reflect.get(holder, key);
  if (typeof inner !== 'object' || inner === null) return;
  const next = step.key === 0 ? wanted.items : wanted.properties?.[step.key];
  if (next !== undefined)
    put({ schemas, value }, { schema: next, holder: inner, key: step.key, steps: others, as: step.as });
}

const isThere = (found: unknown, as: Step['as']): boolean =>
  typeof found === 'object' &&
  found !== null &&
  (as === undefined || (isRecord(found) && found[as.name] === as.kind));

function ofKind(schemas: Schemas, schema: Schema, kind: string | undefined): Schema {
  const { plain, kinds } = kindsOf(schemas, schema);
  return plain ?? (kinds.find(([name]) => name === kind) ?? kinds[0])[1];
}

/** Entries like the first, told apart by whatever they are named by. */
function listOf(schemas: Schemas, schema: Schema, old: unknown, count: number): readonly unknown[] {
  const there: readonly unknown[] = Array.isArray(old) ? old : [];
  const like = there[0] ?? exampleOf(schemas, schema.items ?? {});
  return Array.from({ length: count }, (_, index) => there[index] ?? toldApart(like, index));
}

const NAMES = ['id', 'code', 'label', 'sku', 'key', 'name'];

function toldApart(like: unknown, index: number): unknown {
  if (!isRecord(like)) return typeof like === 'string' ? `${like}${index}` : structuredClone(like);
  return Object.fromEntries(
    Object.entries(structuredClone(like)).map(([key, value]): readonly [string, unknown] =>
      NAMES.includes(key) ? [key, `x${index}`] : [key, value],
    ),
  );
}

/** The least that a schema takes: what is required, each by its example or by a value within its bounds. */
export function exampleOf(schemas: Schemas, schema: Schema, as?: Step['as']): unknown {
  const { plain, kinds } = kindsOf(schemas, schema);
  if (plain === undefined) return exampleOf(schemas, kinds[0][1], { name: kinds[0][2], kind: kinds[0][0] });
  const { examples, type, properties, required = [], items, minItems = 0, maxItems } = plain;
  if (examples !== undefined) return examples[0];
  if (plain.enum !== undefined) return plain.enum[0];
  switch (type) {
    case 'object':
      return Object.fromEntries(
        required.map((key): readonly [string, unknown] => [
          key,
          key === as?.name ? as.kind : exampleOf(schemas, properties?.[key] ?? {}),
        ]),
      );
    case 'array':
      return minItems === 2 && maxItems === 2
        ? [100, 100]
        : corners
            .slice(0, minItems)
            .map((corner) =>
              items !== undefined && kindsOf(schemas, items).plain?.maxItems === 2
                ? corner
                : exampleOf(schemas, items ?? {}),
            );
    case 'boolean':
      return true;
    case 'string':
      return textFor(plain);
    default:
      return numberWithin(plain);
  }
}

const corners = [
  [100, 100],
  [400, 100],
  [400, 300],
  [100, 300],
] as const;

function textFor({ format, pattern, minLength = 1 }: Schema): string {
  if (format === 'date') return '2026-05-04';
  if (format === 'date-time') return '2026-05-04T08:00:00Z';
  const fits = new RegExp(pattern ?? '', 'u');
  const [found = 'a'] = ['a', 'A', '7'].map((one) => one.repeat(minLength)).filter((text) => fits.test(text));
  return found;
}

/** Near the lower bound, where most things of a deck lie. */
function numberWithin({ type, minimum, exclusiveMinimum, maximum, exclusiveMaximum }: Schema): number {
  const least = minimum ?? exclusiveMinimum ?? 0;
  const most = maximum ?? exclusiveMaximum ?? least + 100;
  const value = least + Math.min((most - least) / 4, 2);
  return type === 'integer' ? Math.ceil(value) : value;
}

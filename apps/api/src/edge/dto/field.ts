import { applyDecorators } from '@nestjs/common';
import { ApiProperty, type ApiPropertyOptions } from '@nestjs/swagger';
import { ValidateBy, ValidateIf, validateSync } from 'class-validator';
import { below, pointer, problem, type Problem, didYouMean } from '#lib/kernel';
import { isRecord } from '../record.js';

/** Looks at one value as sent (or as read) and says what is wrong with it; pointers are relative to the value. */
export type Check = (value: unknown) => readonly Problem[];

export interface FieldRule {
  readonly check: Check;
  /** What a caller should have given, for the words of a missing value. */
  readonly expected: string;
  readonly schema: ApiPropertyOptions;
  readonly optional?: boolean;
  readonly isEarlierName?: boolean;
  /** The class of a nested object, or of the objects of a list. */
  readonly part?: () => DtoClass;
  /** Turns the raw JSON value into what the rooms take; a value it cannot turn passes unchanged to the check. */
  readonly read?: (raw: unknown) => unknown;
}

/** What every field decorator takes beside its own limits. */
export interface Said {
  readonly optional?: boolean;
  readonly description?: string;
  readonly example?: unknown;
  /** Taken for a while under the name it had; the contract shows the field by its present one. */
  readonly isEarlierName?: boolean;
}

export type DtoClass<T extends object = object> = abstract new (...args: never[]) => T;

const rulesByPrototype = new WeakMap<object, Map<string, FieldRule>>();

/**
 * One decorator that checks (class-validator), documents (OpenAPI) and reads a field.
 *
 * Absent is allowed where `optional` says so; null never is, so that a null cannot slip past a required field.
 */
export const Field = (rule: FieldRule): PropertyDecorator =>
  applyDecorators(
    (target: object, key: string | symbol) => {
      remember(target, String(key), rule);
    },
    ValidateIf((_, value: unknown) => value !== undefined || rule.optional !== true),
    ValidateBy({
      name: 'field',
      validator: { validate: (value, given) => isRight(rule, given?.property ?? '', value) },
    }),
    ...(rule.isEarlierName === true
      ? []
      : [ApiProperty(Object.assign({}, rule.schema, { required: rule.optional !== true }))]),
  );

function remember(target: object, key: string, rule: FieldRule): void {
  const known = rulesByPrototype.get(target) ?? new Map<string, FieldRule>();
  known.set(key, rule);
  rulesByPrototype.set(target, known);
}

/** A class is a DTO when some field of it, or of a class it extends, is decorated. */
export const isDto = (type: unknown): type is DtoClass =>
  typeof type === 'function' &&
  typeof type.prototype === 'object' &&
  type.prototype !== null &&
  rulesFor(type.prototype).size > 0;

function rulesOf(prototype: object): ReadonlyMap<string, FieldRule> {
  const own = rulesByPrototype.get(prototype);
  const parent: unknown = Object.getPrototypeOf(prototype);
  if (typeof parent !== 'object' || parent === null || parent === Object.prototype) return own ?? new Map();
  return new Map([...rulesOf(parent), ...(own ?? [])]);
}

/** The rule of a field of a DTO, for readers of other forms than JSON. */
export const ruleOf = (type: DtoClass, key: string): FieldRule | undefined =>
  rulesFor(type.prototype).get(key);

const mergedRules = new WeakMap<object, ReadonlyMap<string, FieldRule>>();

function rulesFor(prototype: object): ReadonlyMap<string, FieldRule> {
  const known = mergedRules.get(prototype);
  if (known !== undefined) return known;
  const merged = rulesOf(prototype);
  mergedRules.set(prototype, merged);
  return merged;
}

export { isRecord };

/** A DTO made from raw JSON, field by field; anything that is not an object is returned as it came. */
export function filled(type: DtoClass, raw: unknown): unknown {
  if (!isRecord(raw)) return raw;
  const rules = rulesFor(type.prototype);
  const dto: object = Object.create(type.prototype);
  for (const [key, value] of Object.entries(raw)) {
    const read = rules.get(key)?.read;
    Reflect.set(dto, key, read === undefined ? value : read(value));
  }
  return dto;
}

/**
 * Problems are gathered here while class-validator walks: it can carry only sentences, and we answer with codes, places
 * and facts. Validation is synchronous, so the innermost list is always that of the object being walked.
 */
const gathering: Problem[][] = [];

/** Everything wrong with a filled DTO. */
export function problemsOf(dto: object): readonly Problem[] {
  const problems: Problem[] = [];
  gathering.push(problems);
  try {
    const faults = validateSync(dto, {
      whitelist: true,
      forbidNonWhitelisted: true,
      forbidUnknownValues: true,
      validationError: { target: false, value: false },
    });
    for (const { property, constraints } of faults) {
      if (constraints?.whitelistValidation !== undefined) problems.push(unknownField(dto, property));
    }
  } finally {
    gathering.pop();
  }
  return problems;
}

function unknownField(dto: object, name: string): Problem {
  const prototype: unknown = Object.getPrototypeOf(dto);
  const known = typeof prototype === 'object' && prototype !== null ? rulesFor(prototype).keys() : [];
  return problem('unknown-field', pointer('', name), { hint: didYouMean(name, known) });
}

function isRight(rule: FieldRule, key: string, value: unknown): boolean {
  const found =
    value === undefined ? [problem('missing', '', { expected: expectedAt(rule) })] : rule.check(value);
  gathering.at(-1)?.push(...below(pointer('', key), found));
  return found.length === 0;
}

/** Of an object that is missing, what must stand in it is said along. */
const expectedAt = ({ expected, part }: FieldRule): string =>
  part === undefined ? expected : `${expected}${withFields(part())}`;

/** " with panel, core": the fields without which an object of the class is refused. */
export function withFields(type: DtoClass): string {
  const required = [...rulesFor(type.prototype)].filter(([, { optional }]) => optional !== true);
  return required.length === 0 ? '' : ` with ${required.map(([name]) => name).join(', ')}`;
}

/** A value as it is repeated to the caller: short, and never a whole document. */
export function shownValue(value: unknown): string {
  if (typeof value === 'string')
    return JSON.stringify(value.length > 60 ? `${value.slice(0, 60)}...` : value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

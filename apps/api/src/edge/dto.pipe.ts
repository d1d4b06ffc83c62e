import { Injectable, type ArgumentMetadata, type PipeTransform } from '@nestjs/common';
import { problem, type Problem } from '#lib/kernel';
import { filled, isDto, isRecord, problemsOf, shownValue, withFields, type DtoClass } from './dto/field.js';
import { HttpProblem, summaryOf } from './problems.js';

/** Turns raw bodies and queries into DTOs, or names everything that is wrong with them. */
@Injectable()
export class DtoPipe implements PipeTransform {
  transform(value: unknown, { metatype, type }: ArgumentMetadata): unknown {
    if (!isDto(metatype)) return value;
    const dto = type === 'body' ? filled(metatype, value) : filled(metatype, value ?? {});
    const problems = isRecord(dto) ? problemsOf(dto) : [notAnObject(metatype, value)];
    if (problems.length === 0) return dto;
    throw type === 'query'
      ? queryProblem(problems)
      : new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
  }
}

const notAnObject = (type: DtoClass, value: unknown): Problem =>
  value === undefined
    ? problem('missing', '', { expected: `JSON: an object${withFields(type)}` })
    : problem('not-an-object', '', { value: shownValue(value) });

const queryProblem = (problems: readonly Problem[]): HttpProblem =>
  new HttpProblem('bad-request', {
    detail: summaryOf(problems),
    problems: problems.map((found) => ({ ...found, parameter: found.at.slice(1) })),
  });

/** A DTO of a class from raw JSON that did not come through a route's parameter. @throws {HttpProblem} unprocessable */
export function checkedAs<T extends object>(type: new () => T, raw: unknown): T {
  const dto = filled(type, raw);
  const problems = isRecord(dto) ? problemsOf(dto) : [notAnObject(type, raw)];
  if (problems.length === 0 && dto instanceof type) return dto;
  throw new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
}

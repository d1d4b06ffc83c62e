import {
  applyDecorators,
  UseInterceptors,
  type CallHandler,
  type ExecutionContext,
  type NestInterceptor,
} from '@nestjs/common';
import { ApiHeader } from '@nestjs/swagger';
import type { Request, Response } from 'express';
import { map, type Observable } from 'rxjs';
import { problem } from '#lib/kernel';
import { keepToLimits } from './answer-limits.js';
import { shownValue } from './dto/field.js';
import { precise } from './precision.js';
import { HttpProblem } from './problems.js';
import { withUsDisplay } from './us-display.js';

/** SI alone, or US customary texts beside it. */
export type Units = 'si' | 'us';

export const UNITS_HEADER = 'Accept-Units';

/** @throws {HttpProblem} bad-request for a word that is neither. */
export const unitsOf = (request: Request): Units => statedUnitsOf(request) ?? 'si';

/** As the header says; undefined where there is none. @throws {HttpProblem} bad-request for a word that is neither. */
export function statedUnitsOf(request: Request): Units | undefined {
  const given = request.get(UNITS_HEADER)?.trim().toLowerCase();
  if (given === undefined || given === 'si' || given === 'us') return given;
  throw new HttpProblem('bad-request', {
    detail: `${UNITS_HEADER} must be si or us.`,
    problems: [
      {
        ...problem('not-one-of', `/${UNITS_HEADER}`, { value: shownValue(given), choices: 'si, us' }),
        header: UNITS_HEADER,
      },
    ],
  });
}

/** What was worked out, in the precision of its units, with the texts of other units where they are asked for. */
const shown = (worked: unknown, units: Units): unknown =>
  units === 'si' ? precise(worked) : withUsDisplay(precise(worked));

/** As it was read, every digit of it, with the texts of other units where they are asked for. */
const exactly = (read: unknown, units: Units): unknown => (units === 'si' ? read : withUsDisplay(read));

/** Refuses unknown units before any work is done, and gives what a handler returns its precision and its texts. */
class UnitsInterceptor implements NestInterceptor {
  constructor(private readonly show: typeof shown) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const http = context.switchToHttp();
    const units = unitsOf(http.getRequest<Request>());
    http.getResponse<Response>().vary(UNITS_HEADER);
    return next.handle().pipe(map((worked) => this.show(worked, units)));
  }
}

/**
 * A route whose answer can be read in US customary units; one that sends its own text uses `inUnits`. What only reads numbers
 * is exact; what works them out gives them the precision of their units.
 */
export const ShowsUnits = ({ isExact = false } = {}): MethodDecorator =>
  applyDecorators(
    UseInterceptors(new UnitsInterceptor(isExact ? exactly : shown)),
    ApiHeader({
      name: UNITS_HEADER,
      required: false,
      schema: { type: 'string', enum: ['si', 'us'], default: 'si' },
      description:
        '`us` adds US customary texts: in JSON a member `us` beside the SI numbers, in documents and drawings instead of them.',
    }),
  );

/** What was worked out as JSON text, for a route that sends its own. */
export function shownJson(units: Units, worked: unknown): string {
  keepToLimits(worked);
  return JSON.stringify(shown(worked, units));
}

/** JSON text that was kept, in the units asked for; it has its precision since it was written. */
export const inUnits = (units: Units, json: string): string =>
  units === 'si' ? json : JSON.stringify(withUsDisplay(JSON.parse(json)));

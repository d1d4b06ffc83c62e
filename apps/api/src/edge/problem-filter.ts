import { Catch, HttpException, type ArgumentsHost, type ExceptionFilter } from '@nestjs/common';
import type { Request, Response } from 'express';
import { detailOf, titleOf } from '#lib/kernel';
import { failureFacts, Log } from './log.js';
import { HttpProblem, problemKinds, type LocatedProblem, type ProblemKind } from './problems.js';
import { currentContext } from './request-context.js';
import { methodsAt } from './routes.js';

export const MOST_ERRORS_SHOWN = 100;

/** One fault as a caller sees it. */
export interface ShownProblem {
  /** JSON Pointer to the field at fault. */
  readonly pointer?: string;
  /** Name of the query or path parameter at fault. */
  readonly parameter?: string;
  /** Name of the header at fault. */
  readonly header?: string;
  /** Of a sheet, as a spreadsheet counts them: the headings are row 1. */
  readonly row?: number;
  /** Heading of the column. */
  readonly column?: string;
  /** Code of the fault, stable over releases. */
  readonly code: string;
  /** Kind of fault in words. */
  readonly title: string;
  /** What is wrong and what would be right. */
  readonly detail: string;
  /** Numbers and words of the detail. */
  readonly facts: LocatedProblem['facts'];
}

/** RFC 9457, with the request's id, and every fault at once up to a number that keeps the answer readable. */
export interface ProblemDocument {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly instance: string;
  readonly requestId: string;
  readonly errors?: readonly ShownProblem[];
  readonly errorCount?: number;
}

/** The only place where a failure becomes an HTTP answer. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  constructor(private readonly log: Log) {}

  catch(failure: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<Request>();
    const response = http.getResponse<Response>();
    if (isQuestion(failure, request)) {
      response.setHeader('Allow', methodsAt(request.app, request.path).join(', '));
      response.status(204).end();
      return;
    }
    // The request took too long and was answered so; what came of it afterwards is no longer asked for.
    if (response.writableEnded) return;
    const problem = this.problemOf(failure, request);
    if (response.headersSent) {
      response.destroy();
      return;
    }
    sendProblem(response, problem, request.path);
  }

  private problemOf(failure: unknown, request: Request): HttpProblem {
    if (failure instanceof HttpProblem) {
      if (failure.kind === 'unavailable')
        this.log.entry('warn', failure.message, failureFacts(failure.cause ?? failure));
      return failure;
    }
    const known = knownFailure(failure, request);
    if (known !== undefined) return known;
    this.log.entry('error', 'A request failed through a fault of the service', failureFacts(failure));
    return new HttpProblem('internal', {
      detail: 'The fault is ours and has been recorded under the request id.',
    });
  }
}

/** No route answers OPTIONS itself: asked of a place that exists, it is told the methods (RFC 9110 §9.3.7). */
const isQuestion = (failure: unknown, request: Request): boolean =>
  request.method === 'OPTIONS' &&
  failure instanceof HttpException &&
  failure.getStatus() === 404 &&
  methodsAt(request.app, request.path).length > 0;

export function sendProblem(response: Response, problem: HttpProblem, path: string): void {
  const { status } = problemKinds[problem.kind];
  for (const [name, value] of Object.entries(problem.headers)) response.setHeader(name, value);
  for (const name of ['ETag', 'Content-Disposition', 'Link']) response.removeHeader(name);
  response.setHeader('Cache-Control', 'no-store');
  response
    .status(status)
    .type('application/problem+json')
    .send(JSON.stringify(documentOf(problem, path)));
}

export function documentOf(problem: HttpProblem, path: string): ProblemDocument {
  const { status, title } = problemKinds[problem.kind];
  const errors = problem.problems.slice(0, MOST_ERRORS_SHOWN).map(shown);
  return {
    type: `/problems/${problem.kind}`,
    title,
    status,
    detail: problem.message,
    instance: path,
    requestId: currentContext()?.requestId ?? '',
    ...(errors.length === 0 ? {} : { errors, errorCount: problem.problems.length }),
  };
}

const shown = (problem: LocatedProblem): ShownProblem => ({
  ...placeOf(problem),
  code: problem.code,
  title: titleOf(problem),
  detail: detailOf(named(problem)),
  facts: problem.facts,
});

/** What is wrong with a parameter or a header is said of it, and not of the document. */
function named(problem: LocatedProblem): LocatedProblem {
  const name = problem.parameter ?? problem.header;
  return problem.at === '' && name !== undefined ? { ...problem, at: `/${name}` } : problem;
}

type Shown = Pick<ShownProblem, 'pointer' | 'parameter' | 'header' | 'row' | 'column'>;

function placeOf({ at, parameter, header, row, column }: LocatedProblem): Shown {
  if (parameter !== undefined) return { parameter };
  if (header !== undefined) return { header };
  return {
    pointer: at,
    ...(row === undefined ? {} : { row }),
    ...(column === undefined ? {} : { column }),
  };
}

/** Failures that the framework itself raises, before or beside our own code. */
function knownFailure(failure: unknown, request: Request): HttpProblem | undefined {
  const status = failure instanceof HttpException ? failure.getStatus() : statusOf(failure);
  if (status === 404) return wrongMethodOrPlace(request);
  const kind = kindsByStatus.get(status);
  return kind === undefined || status >= 500 ? undefined : new HttpProblem(kind);
}

const kindsByStatus = new Map<number, ProblemKind>(kindEntries());

function* kindEntries(): Generator<[number, ProblemKind]> {
  let kind: ProblemKind;
  for (kind in problemKinds) yield [problemKinds[kind].status, kind];
}

const statusOf = (failure: unknown): number =>
  typeof failure === 'object' && failure !== null && 'status' in failure && typeof failure.status === 'number'
    ? failure.status
    : 500;

function wrongMethodOrPlace(request: Request): HttpProblem {
  const allowed = methodsAt(request.app, request.path);
  if (allowed.length === 0)
    return new HttpProblem('not-found', { detail: `There is nothing at ${request.path}; see /docs.` });
  return new HttpProblem('method-not-allowed', {
    detail: `${request.method} does not fit ${request.path}; allowed: ${allowed.join(', ')}.`,
    headers: { Allow: allowed.join(', ') },
  });
}

import { createHash } from 'node:crypto';
import { Injectable, type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { from, lastValueFrom, type Observable } from 'rxjs';
import { HttpProblem } from '../edge/problems.js';
import { KeyTaken, underClaim } from '../idempotency/claim.js';
import { keyOf, reusedKey } from '../idempotency/idempotency-header.js';
import { KeptAnswers } from '../idempotency/kept-answers.js';
import type { Claim } from '../idempotency/key-use.js';
import { remembersKey } from '../idempotency/remembers.js';
import { RunningKeys } from '../idempotency/running-keys.js';
import type { GivenAnswer } from '../idempotency/sealed-answer.js';
import { newId } from '../persistence/ids.js';
import { callerOf } from './caller.js';
import { keyFromHeader } from './key-text.js';

const changing = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);
/** Header fields of an answer that belong to what was made, and are given again with it. */
const keptHeaders = ['Location', 'ETag'] as const;

/** A change asked for twice under one Idempotency-Key is made once, and answered twice. */
@Injectable()
export class OnceInterceptor implements NestInterceptor {
  constructor(
    private readonly reflector: Reflector,
    private readonly running: RunningKeys,
    private readonly answers: KeptAnswers,
  ) {}

  intercept(context: ExecutionContext, next: CallHandler<unknown>): Observable<unknown> {
    const http = context.switchToHttp();
    const request = http.getRequest<Request>();
    const claim = this.claimOf(context, request);
    if (claim === undefined) return next.handle();
    return from(this.once(claim, request, () => lastValueFrom(next.handle(), { defaultValue: undefined })));
  }

  private claimOf(context: ExecutionContext, request: Request): Claim | undefined {
    const given = request.headers['idempotency-key'];
    const caller = callerOf(request);
    if (given === undefined || caller === undefined || !changing.has(request.method)) return undefined;
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<string | undefined>(remembersKey, targets) !== undefined)
      return undefined;
    return {
      organisationId: caller.organisationId,
      // By key, for only that key opens the answer.
      operation: `${request.method} ${request.path} by ${caller.keyId}`,
      key: keyOf(given),
      requestHash: hashOfRequest(request),
      claimId: newId(),
    };
  }

  private once(claim: Claim, request: Request, work: () => Promise<unknown>): Promise<unknown> {
    const callersKey = keyFromHeader(request.headers.authorization) ?? '';
    const response = responseOf(request);
    return this.running.alone([claim.organisationId, claim.operation, claim.key], async () => {
      const earlier = await this.answers.find(claim, callersKey);
      if (earlier !== undefined) return replayed(earlier, response);
      try {
        const body = await underClaim(claim, work);
        await this.answers.keep(claim, answerOf(response, body), callersKey);
        return body;
      } catch (failure) {
        if (!(failure instanceof KeyTaken)) throw failure;
        return replayed((await this.answers.find(claim, callersKey)) ?? neverBoth(), response);
      }
    });
  }
}

function neverBoth(): never {
  throw reusedKey();
}

function responseOf(request: Request): Response {
  if (request.res === undefined) throw new HttpProblem('internal');
  return request.res;
}

const answerOf = (response: Response, body: unknown): GivenAnswer => ({
  status: response.statusCode,
  headers: Object.fromEntries(
    keptHeaders.flatMap((name) => {
      const value = response.getHeader(name);
      return typeof value === 'string' ? [[name, value]] : [];
    }),
  ),
  ...(body === undefined ? {} : { body }),
});

function replayed({ status, headers, body }: GivenAnswer, response: Response): unknown {
  response.status(status);
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  response.setHeader('Idempotency-Replayed', 'true');
  return body;
}

/** Everything that says what is wanted: the address with its query, the version it is based on, and the body. */
function hashOfRequest(request: Request): string {
  const hash = createHash('sha256').update(
    JSON.stringify([request.method, request.originalUrl, request.headers['if-match'] ?? null]),
  );
  const body: unknown = request.body;
  return hash.update(body instanceof Uint8Array ? body : (JSON.stringify(body) ?? '')).digest('hex');
}

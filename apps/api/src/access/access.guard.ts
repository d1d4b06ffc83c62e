import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { HttpProblem } from '../edge/problems.js';
import { publicKey } from '../edge/public.js';
import { rolesKey } from './access.decorators.js';
import { rememberCaller } from './caller.js';
import { KeyRing } from './key-ring.js';
import { SharedLimit } from './shared-limit.js';
import { keyFromHeader } from './key-text.js';
import type { Caller, Role } from './roles.js';

/** Who may pass, and how often. Every route needs a key unless it is marked public. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly keys: KeyRing,
    private readonly limit: SharedLimit,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const request = http.getRequest<Request>();
    const response = http.getResponse<Response>();
    const targets = [context.getHandler(), context.getClass()];
    if (this.reflector.getAllAndOverride<boolean | undefined>(publicKey, targets) === true) return true;
    const caller = await this.callerOf(request, response);
    this.limit.takeFor(caller, response);
    refuseUnlessAllowed(
      caller,
      this.reflector.getAllAndOverride<readonly Role[] | undefined>(rolesKey, targets) ?? [],
    );
    rememberCaller(request, caller);
    return true;
  }

  /** Wrong keys are counted against the address they come from, so that guessing is slow. */
  private async callerOf(request: Request, response: Response): Promise<Caller> {
    const key = keyFromHeader(request.headers.authorization);
    const caller = key === undefined ? undefined : await this.keys.findCaller(key);
    if (caller !== undefined) return caller;
    this.limit.takeForAddress(request.ip ?? '', response);
    throw unauthenticated(request.headers.authorization !== undefined);
  }
}

const unauthenticated = (wasGiven: boolean): HttpProblem =>
  new HttpProblem('unauthenticated', {
    detail: wasGiven
      ? 'The key is not known or was revoked.'
      : 'Send a key as "Authorization: Bearer kp_...".',
    headers: {
      'WWW-Authenticate': wasGiven
        ? 'Bearer realm="kingplank", error="invalid_token"'
        : 'Bearer realm="kingplank"',
    },
  });

function refuseUnlessAllowed(caller: Caller, allowed: readonly Role[]): void {
  if (allowed.length === 0 || caller.roles.some((role) => role === 'operator' || allowed.includes(role)))
    return;
  throw new HttpProblem('forbidden', {
    detail: `The key has the roles ${caller.roles.join(', ')}; this needs one of ${allowed.join(', ')}.`,
  });
}

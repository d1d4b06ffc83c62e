import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { HttpProblem } from '../edge/problems.js';
import { publicKey } from '../edge/public.js';
import { confineRequest, nameCaller } from '../edge/request-context.js';
import { kindsKey, permissionKey } from './access.decorators.js';
import { rememberCaller } from './caller.js';
import { KeyRing } from './key-ring.js';
import { SharedLimit } from './shared-limit.js';
import { keyFromHeader } from './key-text.js';
import { may, rolesThatMay, seesOnlyShared, type Caller, type KeyKind, type Permission } from './roles.js';

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
    nameCaller(caller);
    this.limit.takeFor(caller, request.ip ?? '', response);
    refuseForeignOrigin(caller, request.headers.origin);
    refuseUnlessAllowed(caller, {
      permission: this.reflector.getAllAndOverride<Permission | undefined>(permissionKey, targets),
      kinds: this.reflector.getAllAndOverride<readonly KeyKind[] | undefined>(kindsKey, targets) ?? [],
    });
    confineRequest(confinementOf(caller));
    rememberCaller(request, caller);
    return true;
  }

  /** Wrong keys are counted against the address they come from, so that guessing is slow. */
  private async callerOf(request: Request, response: Response): Promise<Caller> {
    const { authorization } = request.headers;
    const key = keyFromHeader(authorization);
    const caller = key === undefined ? undefined : await this.keys.findCaller(key);
    if (caller !== undefined) return caller;
    this.limit.takeForAddress(request.ip ?? '', response);
    throw unauthenticated(authorization);
  }
}

/** Three mistakes, three answers: nothing sent, something that is no key, a key that opens nothing. */
const unauthenticated = (given: string | undefined): HttpProblem => {
  const isKey = keyFromHeader(given) !== undefined;
  return new HttpProblem('unauthenticated', {
    detail: isKey
      ? 'The key is not known, has expired or was revoked; an organisation-admin of your organisation can make another.'
      : given === undefined || given.trim() === ''
        ? 'Send a key as "Authorization: Bearer kp_...".'
        : 'The Authorization header holds no key of this service; send "Bearer", a space and the whole key: "Authorization: Bearer kp_...".',
    headers: {
      'WWW-Authenticate': isKey
        ? 'Bearer realm="kingplank", error="invalid_token"'
        : 'Bearer realm="kingplank"',
    },
  });
};

/** What the database lets the caller see of its organisation's estimates; undefined for all of them. */
function confinementOf(caller: Caller): string | undefined {
  if (caller.kind === 'holder') return `secret:${caller.secretHash ?? ''}`;
  if (caller.kind === 'publishable') return 'nothing';
  return seesOnlyShared(caller) ? `key:${caller.keyId}` : undefined;
}

/** A browser tells where a page is from and cannot be made to lie about it; a script can, and is held by the limits. */
function refuseForeignOrigin({ kind, page }: Caller, origin: string | undefined): void {
  if (page === undefined) return;
  if (origin === undefined && kind === 'holder') return;
  if (origin !== undefined && page.origins.includes(origin)) return;
  throw new HttpProblem('forbidden', {
    detail:
      origin === undefined
        ? 'A publishable key is for pages: the request must carry the Origin of one.'
        : `The key is not for pages of ${origin.slice(0, 200)}; an organisation-admin can make one that is.`,
  });
}

interface Wanted {
  readonly permission: Permission | undefined;
  readonly kinds: readonly KeyKind[];
}

function refuseUnlessAllowed(caller: Caller, { permission, kinds }: Wanted): void {
  if (caller.kind !== 'secret') {
    if (kinds.includes(caller.kind)) return;
    throw new HttpProblem('forbidden', { detail: wordsOfKind[caller.kind] });
  }
  if (permission !== undefined && may(caller, permission)) return;
  throw new HttpProblem('forbidden', { detail: refusal(caller, permission) });
}

const wordsOfKind = {
  publishable:
    'A publishable key may make an estimate, preview one and read quantities; everything else takes a secret key on a server.',
  holder: 'This secret opens one estimate, and nothing else.',
} as const;

function refusal({ roles, scopes }: Caller, permission: Permission | undefined): string {
  if (permission === undefined) return 'No role may do this.';
  const held = roles.includes('integrator')
    ? `${roles.join(', ')} with scopes ${scopes.join(', ')}`
    : roles.join(', ');
  return `This needs the permission ${permission}, which ${rolesThatMay(permission).join(', ')} can have; the key has the roles ${held}.`;
}

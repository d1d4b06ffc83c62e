import { applyDecorators, createParamDecorator, SetMetadata, type ExecutionContext } from '@nestjs/common';
import { ApiBearerAuth, ApiExtension } from '@nestjs/swagger';
import { Defect } from '#lib/kernel';
import { callerOf } from './caller.js';
import type { Caller, Role } from './roles.js';

export const rolesKey = 'kingplank:roles';

/** A key with one of these roles may call; a key with any role when none is named. */
export const ForRoles = (...allowed: readonly Role[]): MethodDecorator & ClassDecorator =>
  applyDecorators(
    SetMetadata(rolesKey, allowed),
    ApiBearerAuth('key'),
    ApiExtension('x-roles', [...allowed]),
  );

/** The key that the access guard has checked. */
export const CallerParam = createParamDecorator((_: unknown, context: ExecutionContext): Caller => {
  const caller = callerOf(context.switchToHttp().getRequest());
  if (caller === undefined) throw new Defect('A route asked for its caller without being guarded');
  return caller;
});

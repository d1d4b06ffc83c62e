import { applyDecorators, createParamDecorator, SetMetadata, type ExecutionContext } from '@nestjs/common';
import { ApiBearerAuth, ApiExtension } from '@nestjs/swagger';
import { Defect } from '#lib/kernel';
import { callerOf } from './caller.js';
import type { Caller, KeyKind, Permission } from './roles.js';

export const permissionKey = 'kingplank:permission';
export const kindsKey = 'kingplank:kinds';

/** A key with this permission may call. */
export const Needs = (permission: Permission): MethodDecorator & ClassDecorator =>
  applyDecorators(
    SetMetadata(permissionKey, permission),
    ApiBearerAuth('key'),
    ApiExtension('x-permission', permission),
  );

/** Also pages may call: with a publishable key, or as the holder of one estimate's secret. */
export const AlsoFor = (...kinds: readonly Exclude<KeyKind, 'secret'>[]): MethodDecorator & ClassDecorator =>
  applyDecorators(SetMetadata(kindsKey, kinds), ApiExtension('x-also-for', [...kinds]));

/** The key that the access guard has checked. */
export const CallerParam = createParamDecorator((_: unknown, context: ExecutionContext): Caller => {
  const caller = callerOf(context.switchToHttp().getRequest());
  if (caller === undefined) throw new Defect('A route asked for its caller without being guarded');
  return caller;
});

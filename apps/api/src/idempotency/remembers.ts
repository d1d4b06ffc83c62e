import { applyDecorators, SetMetadata } from '@nestjs/common';
import { ApiExtension } from '@nestjs/swagger';

/**
 * What an Idempotency-Key means to a route that is not read-only. Unmarked routes have their answers kept; `itself`
 * keeps what it made by its own means; `nothing` makes nothing, so that asking twice is harmless.
 */
export const remembersKey = 'kingplank:remembers';

/** A calculation: it stores and sends nothing. */
export const StoresNothing = (): MethodDecorator =>
  applyDecorators(SetMetadata(remembersKey, 'nothing'), ApiExtension('x-stores-nothing', true));

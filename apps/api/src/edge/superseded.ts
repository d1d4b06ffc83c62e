import { type CallHandler, type ExecutionContext, type NestInterceptor } from '@nestjs/common';
import type { Response } from 'express';
import type { Observable } from 'rxjs';

/** Since when an address is deprecated, and from when on it may be gone: at least six months later. */
interface End {
  readonly since: Date;
  readonly until: Date;
  readonly successor: string;
}

/** Says of an address that still answers that another has its place (RFC 9745, RFC 8594, RFC 8288). */
export class Superseded implements NestInterceptor {
  constructor(private readonly end: End) {}

  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const { since, until, successor } = this.end;
    const response = context.switchToHttp().getResponse<Response>();
    response.setHeader('Deprecation', `@${since.getTime() / 1000}`);
    response.setHeader('Sunset', until.toUTCString());
    response.setHeader('Link', `<${successor}>; rel="successor-version"`);
    return next.handle();
  }
}

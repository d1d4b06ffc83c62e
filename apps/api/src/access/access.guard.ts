import { Inject, Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import type { Request, Response } from 'express';
import { configurationToken, type Configuration } from '../configuration.js';
import { RateLimit } from '../http/rate-limit.js';

/** Who may pass, and how often. */
@Injectable()
export class AccessGuard implements CanActivate {
  private readonly limit: RateLimit;

  constructor(@Inject(configurationToken) configuration: Configuration) {
    this.limit = new RateLimit(configuration.requestsPerMinute);
  }

  canActivate(context: ExecutionContext): boolean {
    const http = context.switchToHttp();
    const request = http.getRequest<Request>();
    this.limit.take(request.ip ?? 'unknown', http.getResponse<Response>());
    return true;
  }
}

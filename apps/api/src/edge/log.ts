import type { LoggerService } from '@nestjs/common';
import type { LogLevel } from '../settings/configuration.js';
import { currentContext } from './request-context.js';

const weight: Readonly<Record<LogLevel, number>> = { debug: 0, info: 1, warn: 2, error: 3, silent: 4 };

/** One JSON object a line on standard output, each with the request it belongs to. */
export class Log implements LoggerService {
  constructor(
    private readonly least: LogLevel,
    private readonly write: (line: string) => void = (line) => {
      process.stdout.write(line);
    },
  ) {}

  entry(
    level: Exclude<LogLevel, 'silent'>,
    message: string,
    facts: Readonly<Record<string, unknown>> = {},
  ): void {
    if (weight[level] < weight[this.least]) return;
    const context = currentContext();
    const where =
      context === undefined
        ? {}
        : {
            requestId: context.requestId,
            traceId: context.traceId,
            spanId: context.spanId,
            organisationId: context.caller.organisationId,
            keyId: context.caller.keyId,
          };
    this.write(`${JSON.stringify({ time: new Date().toISOString(), level, message, ...where, ...facts })}\n`);
  }

  log(message: unknown, context?: unknown): void {
    this.entry('debug', String(message), { from: context });
  }
  debug(message: unknown, context?: unknown): void {
    this.entry('debug', String(message), { from: context });
  }
  verbose(message: unknown, context?: unknown): void {
    this.entry('debug', String(message), { from: context });
  }
  warn(message: unknown, context?: unknown): void {
    this.entry('warn', String(message), { from: context });
  }
  error(message: unknown, trace?: unknown, context?: unknown): void {
    this.entry('error', String(message), { trace, from: context });
  }
  fatal(message: unknown, trace?: unknown, context?: unknown): void {
    this.error(message, trace, context);
  }
}

/** What a log keeps of a failure: never the values of a request. */
export const failureFacts = (failure: unknown): Readonly<Record<string, unknown>> =>
  failure instanceof Error
    ? {
        failure: failure.name,
        reason: failure.message,
        stack: failure.stack,
        cause: failure.cause instanceof Error ? failure.cause.message : undefined,
      }
    : { failure: typeof failure, reason: String(failure) };

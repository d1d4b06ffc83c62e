import type { NextFunction, Request, RequestHandler, Response } from 'express';
import type { Configuration } from '../settings/configuration.js';
import type { Metrics } from './metrics.js';
import type { Log } from './log.js';
import { sendProblem } from './problem-filter.js';
import { unavailable, type HttpProblem } from './problems.js';
import { contextOf, traceparentOf, withContext } from './request-context.js';

const MS_PER_S = 1000;

/** Every answer, whatever becomes of the request: ids, security headers, one log line, one measurement. */
export const edge =
  (log: Log, metrics: Metrics, { requestTimeoutMs }: Configuration): RequestHandler =>
  (request, response, next) => {
    const wanted = new AbortController();
    const context = contextOf(request, wanted.signal);
    const startedAt = performance.now();
    response.setHeader('X-Request-Id', context.requestId);
    response.setHeader('Traceparent', traceparentOf(context));
    setSecurityHeaders(request, response);
    withContext(context, () => {
      const timer = timeLimit(wanted, requestTimeoutMs, request, response);
      response.once('close', () => {
        clearTimeout(timer);
        if (!response.writableFinished) wanted.abort(callerGone());
        withContext(context, () => {
          record({ request, response, log, metrics, seconds: (performance.now() - startedAt) / MS_PER_S });
        });
      });
      next();
    });
  };

const callerGone = (): HttpProblem => unavailable('The caller went away before the answer was ready.');

/** Whoever works for the request gets this long to say itself that time is up. */
const LAST_WORD_MS = 500;

/** A request takes as long as it may and no longer: what works for it is told to stop, and the caller to come back. */
function timeLimit(
  wanted: AbortController,
  limitMs: number,
  request: Request,
  response: Response,
): NodeJS.Timeout {
  return setTimeout(() => {
    const problem = unavailable(`The answer was not ready within ${limitMs / MS_PER_S} s.`);
    wanted.abort(problem);
    setTimeout(() => {
      if (!response.headersSent && !response.destroyed) sendProblem(response, problem, request.path);
    }, LAST_WORD_MS);
  }, limitMs);
}

interface Answered {
  readonly request: Request;
  readonly response: Response;
  readonly log: Log;
  readonly metrics: Metrics;
  readonly seconds: number;
}

function record({ request, response, log, metrics, seconds }: Answered): void {
  const route = routeOf(request);
  const status = response.writableFinished ? response.statusCode : 499;
  metrics.observe({ method: request.method, route, status, seconds });
  log.entry(status >= 500 ? 'error' : 'info', 'request', {
    method: request.method,
    route,
    status,
    durationMs: Number((seconds * MS_PER_S).toFixed(2)),
    bytes: Number(response.getHeader('content-length') ?? 0),
  });
}

/** The route's pattern, never the path: ids and typed addresses stay out of logs and metric labels. */
const routeOf = (request: Request): string => {
  const route: unknown = request.route;
  return typeof route === 'object' &&
    route !== null &&
    'path' in route &&
    typeof route.path === 'string' &&
    !route.path.includes('*')
    ? route.path
    : 'none';
};

const API_POLICY = "default-src 'none'; frame-ancestors 'none'";
/** Swagger UI sets styles on what it shows, and brings pictures in its style sheet. */
const DOCS_POLICY =
  "default-src 'self'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; frame-ancestors 'none'; base-uri 'none'; form-action 'self'";

function setSecurityHeaders(request: Request, response: Response): void {
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('X-Frame-Options', 'DENY');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Cross-Origin-Resource-Policy', 'same-origin');
  response.setHeader('Content-Security-Policy', request.path.startsWith('/docs') ? DOCS_POLICY : API_POLICY);
  response.setHeader('Cache-Control', 'no-store');
  if (request.secure) response.setHeader('Strict-Transport-Security', 'max-age=31536000; includeSubDomains');
}

const exposed =
  'ETag, Link, Location, RateLimit, RateLimit-Policy, Retry-After, X-Request-Id, Traceparent, Idempotency-Replayed, Content-Disposition, Preference-Applied';

/** Where pages ask with keys that are made for them; what such a key may do there is looked at with the request. */
const forPages = /^\/v1\/(?:estimates(?:\/[^/]+)*|estimating\/(?:preview|quantities))$/;
const pagesKey = /^bearer +kp_(?:pub|es)_/i;

/**
 * Answers browsers of the configured origins, and pages that show a key made for pages. A preflight carries no key, so
 * it is answered for every origin where pages ask; nothing here rests on cookies, and the key's own list of origins
 * counts with the request itself.
 */
export const crossOrigin =
  ({ corsOrigins }: Configuration): RequestHandler =>
  (request: Request, response: Response, next: NextFunction) => {
    const { origin } = request.headers;
    response.vary('Origin');
    const isPreflight =
      request.method === 'OPTIONS' && request.headers['access-control-request-method'] !== undefined;
    const isFromPage = isPreflight
      ? forPages.test(request.path)
      : pagesKey.test(request.headers.authorization ?? '');
    if (origin === undefined || !(isFromPage || corsOrigins.includes(origin))) {
      next();
      return;
    }
    response.setHeader('Access-Control-Allow-Origin', origin);
    response.setHeader('Access-Control-Expose-Headers', exposed);
    response.setHeader('Cross-Origin-Resource-Policy', 'cross-origin');
    if (isPreflight) answerPreflight(response);
    else next();
  };

function answerPreflight(response: Response): void {
  response.setHeader('Access-Control-Allow-Methods', 'GET, HEAD, POST, PUT, PATCH, DELETE');
  response.setHeader(
    'Access-Control-Allow-Headers',
    'Accept, Accept-Units, Authorization, Content-Type, Idempotency-Key, If-Match, If-None-Match, Kingplank-Version, Prefer, Traceparent, X-Request-Id',
  );
  response.setHeader('Access-Control-Max-Age', '600');
  response.status(204).end();
}

import { Injectable, type CanActivate, type ExecutionContext } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import type { Request, Response } from 'express';
import { consumesKey, CSV_TYPE, JSON_TYPE, mostBytesKey, producesKey } from './media.js';
import { HttpProblem } from './problems.js';
import { readBody, USUAL_BODY_BYTES } from './body.js';
import { readStrictJson } from './strict-json.js';

const withBody = new Set(['POST', 'PUT', 'PATCH']);

/** Agrees on the form of the answer, then reads the body in the form the route takes: 406, 413, 415, 400. */
@Injectable()
export class MediaGuard implements CanActivate {
  constructor(private readonly reflector: Reflector) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const request = http.getRequest<Request>();
    const targets = [context.getHandler(), context.getClass()];
    const produced = this.reflector.getAllAndOverride<readonly string[] | undefined>(
      producesKey,
      targets,
    ) ?? [JSON_TYPE];
    agreeOnAnswer(request, http.getResponse<Response>(), produced);
    if (!withBody.has(request.method)) return true;
    const consumed = this.reflector.getAllAndOverride<readonly string[] | undefined>(
      consumesKey,
      targets,
    ) ?? [JSON_TYPE];
    const mostBytes =
      this.reflector.getAllAndOverride<number | undefined>(mostBytesKey, targets) ?? USUAL_BODY_BYTES;
    request.body = await bodyOf(request, consumed, mostBytes);
    return true;
  }
}

/** The agreed type is left on the response, for handlers that answer in several. */
function agreeOnAnswer(request: Request, response: Response, produced: readonly string[]): void {
  if (produced.length > 1) response.vary('Accept');
  const agreed = request.accepts([...produced]);
  if (agreed === false) {
    throw new HttpProblem('not-acceptable', {
      detail: `The answer can be given as ${produced.join(', ')}; Accept names none of them.`,
    });
  }
  response.locals.mediaType = agreed;
}

async function bodyOf(request: Request, consumed: readonly string[], mostBytes: number): Promise<unknown> {
  const type = mediaType(request, consumed);
  const bytes = await readBody(request, mostBytes);
  if (bytes.length === 0 && type === undefined) return undefined;
  if (type === undefined) throw unsupported(request, consumed);
  if (type === CSV_TYPE) return csvText(bytes);
  if (type.startsWith('image/')) return bytes;
  const reading = readStrictJson(bytes);
  if ('value' in reading) return reading.value;
  throw new HttpProblem('bad-request', {
    detail: 'The body is not JSON as it is accepted here; errors names the places.',
    problems: reading.problems,
  });
}

/** Undefined when the request names no type at all, which is right only for an empty body. */
function mediaType(request: Request, consumed: readonly string[]): string | undefined {
  const given = request.headers['content-type'];
  if (given === undefined) return undefined;
  const [type, ...parameters] = given.split(';').map((part) => part.trim().toLowerCase());
  const charset = parameters
    .find((parameter) => parameter.startsWith('charset='))
    ?.slice('charset='.length)
    .replaceAll('"', '');
  const isReadable =
    consumed.includes(type) &&
    (charset === undefined || charset === 'utf-8' || charset === 'utf8' || charset === 'us-ascii');
  const encoding = request.headers['content-encoding'];
  if (!isReadable || (encoding !== undefined && encoding !== 'identity'))
    throw unsupported(request, consumed);
  return type;
}

const unsupported = (request: Request, consumed: readonly string[]): HttpProblem =>
  new HttpProblem('unsupported-media-type', {
    detail: `This resource reads ${consumed.join(', ')} without content coding, text in UTF-8; Content-Type is ${request.headers['content-type'] ?? 'missing'}.`,
    headers:
      request.method === 'PATCH'
        ? { 'Accept-Patch': consumed.join(', ') }
        : { 'Accept-Post': consumed.join(', ') },
  });

function csvText(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new HttpProblem('bad-request', { detail: 'The text is not UTF-8.' });
  }
}

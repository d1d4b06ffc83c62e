import type { RequestHandler, Response } from 'express';
import { gzip } from 'node:zlib';

/** Below this the headers weigh more than what is gained. */
const WORTH_BYTES = 1024;

/** Text in all its forms; pictures and PDF are packed already. */
const WORTH_TYPES = /^(?:text\/|image\/(?:svg\+xml|vnd\.dxf)|application\/(?:dxf|xml|(?:[\w.-]+\+)?json))/;

/** Half the work of the usual level, for a twentieth more bytes. */
const LEVEL = 4;

/**
 * Packs answers of text by gzip (RFC 1952) for callers who can unpack them (RFC 9110 §12.5.3), away from the thread that
 * answers. An ETag stands for a version of what is shown and not for its bytes on the way, so it stays as it is:
 * a caller sends it back with If-Match whether or not it got its answer packed.
 */
export const packed: RequestHandler = (request, response, next) => {
  const send = response.send.bind(response);
  let isPacking = false;
  response.send = (body: unknown): Response => {
    // A route that answered by itself is followed by the empty answer of the framework, which sees no headers sent yet.
    if (isPacking) return response;
    if (!isWorthPacking(body, response)) return send(body);
    response.vary('Accept-Encoding');
    if (request.acceptsEncodings('gzip', 'identity') !== 'gzip') return send(body);
    isPacking = true;
    const { statusCode } = response;
    gzip(body, { level: LEVEL }, (fault, bytes) => {
      if (response.destroyed) return;
      if (fault === null) response.setHeader('Content-Encoding', 'gzip');
      response.status(statusCode);
      send(fault === null ? bytes : body);
    });
    return response;
  };
  next();
};

const isWorthPacking = (body: unknown, response: Response): body is string | Buffer =>
  (typeof body === 'string' || Buffer.isBuffer(body)) &&
  body.length > WORTH_BYTES &&
  WORTH_TYPES.test(response.get('Content-Type') ?? '') &&
  response.getHeader('Content-Encoding') === undefined;

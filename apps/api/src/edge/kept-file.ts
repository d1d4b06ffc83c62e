import type { Request, Response } from 'express';
import { gzipSync } from 'node:zlib';
import { isFresh, tagOfBytes } from './preconditions.js';

/** A file that stays as it is while the service runs: packed once, under a tag of its bytes. */
export interface KeptFile {
  readonly type: string;
  readonly plain: Buffer;
  readonly packed: Buffer;
  readonly tag: string;
}

export const keptFile = (content: Buffer | string, type: string): KeptFile => {
  const plain = Buffer.from(content);
  return { type, plain, packed: gzipSync(plain, { level: 9 }), tag: tagOfBytes(plain) };
};

/** Browsers keep it and ask each time whether it is still the same. */
export function sendKept({ type, plain, packed, tag }: KeptFile, request: Request, response: Response): void {
  response.setHeader('Cache-Control', 'no-cache');
  response.setHeader('ETag', tag);
  response.vary('Accept-Encoding');
  if (isFresh(request, tag)) {
    response.status(304).end();
    return;
  }
  const isPacked = request.acceptsEncodings('gzip') === 'gzip';
  if (isPacked) response.setHeader('Content-Encoding', 'gzip');
  response.setHeader('Content-Type', type);
  response.setHeader('Content-Length', isPacked ? packed.length : plain.length);
  response.end(request.method === 'HEAD' ? undefined : isPacked ? packed : plain);
}

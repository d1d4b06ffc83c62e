import type { Request } from 'express';
import { keepDocumentToLimit } from './answer-limits.js';
import { isFresh, tagOfBytes } from './preconditions.js';

/** A document as it goes out. */
export interface Content {
  readonly mediaType: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly content: Uint8Array;
}

/**
 * Sends a document under an ETag made of its own bytes, or 304 to a caller who has them. Equal input gives equal bytes,
 * so the tag stays as long as nothing that the document shows has changed.
 */
export function sendContent({ mediaType, headers, content }: Content, request: Request): void {
  const response = request.res;
  if (response === undefined) return;
  keepDocumentToLimit(content);
  const etag = tagOfBytes(content);
  response.setHeader('ETag', etag);
  response.setHeader('Cache-Control', 'private, no-cache');
  if (isFresh(request, etag)) {
    response.status(304).end();
    return;
  }
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  response.type(mediaType).send(Buffer.from(content));
}

/** A name to save the document under, with nothing in it that a header or a file system would stumble over. */
export const attached = (filename: string): Readonly<Record<string, string>> => ({
  'Content-Disposition': `attachment; filename="${filename.replace(/[^A-Za-z0-9._-]/g, '-')}"`,
});

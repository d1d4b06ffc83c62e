import compression from 'compression';
import type { RequestHandler } from 'express';

/** Text, though no register of media types says that it is worth packing. */
const DRAWINGS = /^(?:image\/vnd\.dxf|application\/dxf)/;

/**
 * Packs answers of text above 1 kB for callers who can unpack them (RFC 9110 §12.5.3). An ETag stands for a version of what is
 * shown and not for its bytes on the way, so it stays as it is: a caller sends it back with If-Match whether or not it got its
 * answer packed.
 */
export const packed: RequestHandler = compression({
  filter: (request, response) =>
    DRAWINGS.test(String(response.getHeader('Content-Type'))) || compression.filter(request, response),
});

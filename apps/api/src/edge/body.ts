import type { IncomingMessage } from 'node:http';
import { HttpProblem } from './problems.js';

/** Unless a route says that it takes more. */
export const USUAL_BODY_BYTES = 1_048_576;

/** The whole body, or a 413 as soon as it is known to be too large; what still arrives is then thrown away. */
export function readBody(request: IncomingMessage, mostBytes: number): Promise<Buffer> {
  const announced = Number(request.headers['content-length'] ?? 0);
  if (announced > mostBytes) {
    request.resume();
    return Promise.reject(tooLarge(mostBytes));
  }
  return new Promise((resolve, reject) => {
    collect(request, mostBytes, { resolve, reject });
  });
}

function collect(
  request: IncomingMessage,
  mostBytes: number,
  {
    resolve,
    reject,
  }: { readonly resolve: (bytes: Buffer) => void; readonly reject: (reason: Error) => void },
): void {
  const chunks: Buffer[] = [];
  let length = 0;
  const onData = (chunk: Buffer): void => {
    length += chunk.length;
    chunks.push(chunk);
    if (length <= mostBytes) return;
    chunks.length = 0;
    request.off('data', onData);
    request.resume();
    reject(tooLarge(mostBytes));
  };
  request.on('data', onData);
  request.once('end', () => {
    resolve(chunks.length === 1 ? chunks[0] : Buffer.concat(chunks));
  });
  request.once('error', reject);
  request.once('aborted', () => {
    reject(new HttpProblem('bad-request', { detail: 'The request ended before its body did.' }));
  });
}

const tooLarge = (mostBytes: number): HttpProblem =>
  new HttpProblem('content-too-large', {
    detail: `A request body may have at most ${mostBytes} bytes.`,
  });

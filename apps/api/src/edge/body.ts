import type { IncomingMessage } from 'node:http';
import { HttpProblem } from './problems.js';

export const LARGEST_BODY_BYTES = 1_048_576;

/** The whole body, or a 413 as soon as it is known to be too large; what still arrives is then thrown away. */
export function readBody(request: IncomingMessage): Promise<Buffer> {
  const announced = Number(request.headers['content-length'] ?? 0);
  if (announced > LARGEST_BODY_BYTES) {
    request.resume();
    return Promise.reject(tooLarge());
  }
  return new Promise((resolve, reject) => {
    collect(request, resolve, reject);
  });
}

function collect(
  request: IncomingMessage,
  resolve: (bytes: Buffer) => void,
  reject: (reason: Error) => void,
): void {
  const chunks: Buffer[] = [];
  let length = 0;
  const onData = (chunk: Buffer): void => {
    length += chunk.length;
    chunks.push(chunk);
    if (length <= LARGEST_BODY_BYTES) return;
    chunks.length = 0;
    request.off('data', onData);
    request.resume();
    reject(tooLarge());
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

const tooLarge = (): HttpProblem =>
  new HttpProblem('content-too-large', {
    detail: `A request body may have at most ${LARGEST_BODY_BYTES} bytes.`,
  });

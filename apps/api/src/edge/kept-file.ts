import type { Response } from 'express';
import { tagOfBytes } from './preconditions.js';

/** A file that stays as it is while the service runs, under a tag of its bytes. */
export interface KeptFile {
  readonly type: string;
  readonly content: Buffer;
  readonly tag: string;
}

export const keptFile = (file: Buffer | string, type: string): KeptFile => {
  const content = Buffer.from(file);
  return { type, content, tag: tagOfBytes(content) };
};

/** Browsers keep it and ask each time whether it is still the same. */
export function sendKept({ type, content, tag }: KeptFile, response: Response): void {
  response.setHeader('Cache-Control', 'no-cache');
  response.setHeader('ETag', tag);
  response.setHeader('Content-Type', type);
  response.send(content);
}

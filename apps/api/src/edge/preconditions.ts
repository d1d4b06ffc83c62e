import type { Request } from 'express';
import { HttpProblem } from './problems.js';

/** The entity tag of a version of a mutable resource. */
export const tagOf = (version: number): string => `"v${version}"`;

/** If-None-Match (RFC 9110 §13.1.2), with weak comparison as GET has it. */
export function isFresh(request: Request, etag: string): boolean {
  const given = request.headers['if-none-match'];
  if (given === undefined) return false;
  return given.trim() === '*' || tagsIn(given).some((tag) => tag.replace(/^W\//, '') === etag);
}

/**
 * The version that a writer has seen, from If-Match: without it nobody would know whose change was overwritten.
 *
 * @throws {HttpProblem} precondition-required, precondition-failed
 */
export function refuseUnlessMatch(request: Request, version: number): void {
  const given = request.headers['if-match'];
  if (given === undefined) {
    throw new HttpProblem('precondition-required', {
      detail: 'Send If-Match with the ETag of the version that is to be changed.',
    });
  }
  if (given.trim() === '*' || tagsIn(given).includes(tagOf(version))) return;
  throw staleVersion();
}

export const staleVersion = (): HttpProblem =>
  new HttpProblem('precondition-failed', {
    detail: 'The resource was changed since that version; read it again and decide anew.',
  });

const tagsIn = (header: string): readonly string[] => header.match(/(?:W\/)?"[^"]*"/g) ?? [];

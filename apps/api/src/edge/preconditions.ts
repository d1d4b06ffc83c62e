import { createHash } from 'node:crypto';
import type { Request } from 'express';
import { HttpProblem, notInForm } from './problems.js';

/** The entity tag of a version of a mutable resource. */
export const tagOf = (version: number): string => `"v${version}"`;

/** The entity tag of a document, made of its own bytes: it stays as long as nothing in them has changed. */
export const tagOfBytes = (bytes: Uint8Array): string =>
  `"${createHash('sha256').update(bytes).digest('base64url').slice(0, 32)}"`;

/** If-None-Match (RFC 9110 §13.1.2), with weak comparison as GET has it. */
export function isFresh(request: Request, etag: string): boolean {
  const given = request.headers['if-none-match'];
  if (given === undefined) return false;
  return given.trim() === '*' || tagsIn(given).some((tag) => tag.replace(/^W\//, '') === etag);
}

/** If-None-Match: * (RFC 9110 §13.1.2) with a change: only where nothing stands yet. */
export const isForNewOnly = (request: Request): boolean => request.headers['if-none-match']?.trim() === '*';

/**
 * The version that a writer has seen, from If-Match: without it nobody would know whose change was overwritten.
 *
 * @throws {HttpProblem} precondition-required, precondition-failed, bad-request
 */
export function refuseUnlessMatch(request: Request, version: number): void {
  const given = request.headers['if-match'];
  if (given === undefined) {
    throw new HttpProblem('precondition-required', {
      detail: 'Send If-Match with the ETag of the version that is to be changed.',
    });
  }
  const tags = tagsIn(given);
  if (given.trim() === '*' || tags.includes(tagOf(version))) return;
  if (tags.length === 0) throw noTag(given);
  throw new StaleVersion(versionsIn(tags));
}

/** The version that was seen is not the present one. */
export class StaleVersion extends HttpProblem {
  /** Of the newest version that the writer named; undefined when it named none of ours. */
  readonly seen: number | undefined;

  constructor(seen: number | undefined, changes = '') {
    super('precondition-failed', {
      detail: `The resource was changed since that version${changes}; read it again and decide anew.`,
    });
    this.seen = seen;
  }
}

export const staleVersion = (): HttpProblem => new StaleVersion(undefined);

const versionsIn = (tags: readonly string[]): number | undefined => {
  const versions = tags.flatMap((tag) => {
    const digits = /^"v(\d{1,9})"$/.exec(tag)?.[1];
    return digits === undefined ? [] : [Number(digits)];
  });
  return versions.length === 0 ? undefined : Math.max(...versions);
};

const noTag = (given: string): HttpProblem =>
  new HttpProblem('bad-request', {
    detail: 'If-Match holds no entity tag.',
    problems: [
      notInForm(
        { header: 'If-Match' },
        given,
        'the ETag of an answer with its quotation marks, such as "v3"',
      ),
    ],
  });

const tagsIn = (header: string): readonly string[] => header.match(/(?:W\/)?"[^"]*"/g) ?? [];

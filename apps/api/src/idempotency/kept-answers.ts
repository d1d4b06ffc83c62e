import { Injectable } from '@nestjs/common';
import { HttpProblem } from '../edge/problems.js';
import { Database } from '../persistence/database.js';
import type { Claim, KeyUse } from './key-use.js';
import { reusedKey } from './idempotency-header.js';
import type { IdempotencyKeyRow } from './idempotency-key.entity.js';
import { IdempotencyRepository } from './idempotency.repository.js';
import { opened, sealed, type GivenAnswer } from './sealed-answer.js';

/** Longer than any request may run: whoever has not kept an answer by then never will. */
const STILL_RUNNING_MS = 120_000;

/** Answers to changes, kept under the keys they were asked with. */
@Injectable()
export class KeptAnswers {
  constructor(private readonly database: Database) {}

  /** @throws {HttpProblem} unprocessable for another request, conflict for one whose answer is not there */
  async find(use: KeyUse, callersKey: string): Promise<GivenAnswer | undefined> {
    const row = await this.database.inOrganisation(use.organisationId, (tx) =>
      IdempotencyRepository.in(tx).find(use),
    );
    if (row === null) return undefined;
    if (row.requestHash !== use.requestHash) throw reusedKey();
    const answer = row.answer === null ? undefined : opened(row.answer, callersKey);
    if (answer === undefined) throw withoutAnswer(row);
    return answer;
  }

  async keep(claim: Claim, answer: GivenAnswer, callersKey: string): Promise<void> {
    await this.database.inOrganisation(claim.organisationId, (tx) =>
      IdempotencyRepository.in(tx).keepAnswer(claim, sealed(answer, callersKey)),
    );
  }
}

/** The deed is done and its answer not kept: another copy is about to, or stopped between the two. */
function withoutAnswer({ createdAt, subject, subjectCode }: IdempotencyKeyRow): HttpProblem {
  if (Date.now() - createdAt.getTime() < STILL_RUNNING_MS)
    return new HttpProblem('conflict', {
      detail: 'A request with this Idempotency-Key is still running; ask again for its answer.',
      headers: { 'Retry-After': '1' },
    });
  return new HttpProblem('conflict', {
    detail: `This was done (${subject ?? 'a change'} ${subjectCode ?? ''}), but its answer was lost with the process that gave it; read the resource, and for a lost key revoke it and make another.`,
  });
}

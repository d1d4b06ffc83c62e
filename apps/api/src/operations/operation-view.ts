import type { LongOperation } from './long-operation.js';
import type { OperationRow } from './operation.entity.js';

export type OperationState = Omit<OperationRow, 'content' | 'task'>;

export const operationView = ({
  id,
  status,
  createdAt,
  startedAt,
  finishedAt,
  expiresAt,
  mediaType,
  resultHref,
  problem,
}: OperationState): LongOperation => ({
  id,
  status,
  createdAt: createdAt.toISOString(),
  ...(startedAt === null ? {} : { startedAt: startedAt.toISOString() }),
  ...(finishedAt === null ? {} : { finishedAt: finishedAt.toISOString() }),
  expiresAt: expiresAt.toISOString(),
  ...(mediaType === null ? {} : { result: { href: resultHref ?? `/v1/operations/${id}/result`, mediaType } }),
  ...(problem === null ? {} : { problem }),
});

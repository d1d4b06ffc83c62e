import { Text } from '../../edge/dto/index.js';

/** An estimate to be made later, as it lies in the queue. */
export class EstimateTaskDto {
  /** The record in the order of members in which it came, which a column of JSON would not keep. */
  @Text({ atMost: 10_000_000 })
  readonly recordJson!: string;

  @Text()
  readonly keyId!: string;

  @Text()
  readonly keyName!: string;

  /** The caller's own, or one made for this task: a worker that dies after it wrote must not write twice. */
  @Text({ atMost: 300 })
  readonly idempotencyKey!: string;

  /** Of a revision: the estimate that is revised. */
  @Text({ optional: true })
  readonly estimateId?: string;

  /** Of a revision: why. */
  @Text({ optional: true, atMost: 10_000 })
  readonly reason?: string;
}

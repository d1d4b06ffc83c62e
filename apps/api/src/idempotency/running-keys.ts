import { Injectable } from '@nestjs/common';
import { HttpProblem } from '../edge/problems.js';

/**
 * Requests under way in this copy of the service. A second request with the same key is told to wait; between copies,
 * the primary key of `idempotency_key` decides, and the slower one answers with the result of the faster one.
 */
@Injectable()
export class RunningKeys {
  private readonly running = new Set<string>();

  /** @throws {HttpProblem} conflict, when the same key is being worked on */
  async alone<T>(key: readonly string[], work: () => Promise<T>): Promise<T> {
    const name = JSON.stringify(key);
    if (this.running.has(name)) {
      throw new HttpProblem('conflict', {
        detail: 'A request with this Idempotency-Key is still running; ask again for its answer.',
        headers: { 'Retry-After': '1' },
      });
    }
    this.running.add(name);
    try {
      return await work();
    } finally {
      this.running.delete(name);
    }
  }
}

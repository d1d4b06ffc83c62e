import { afterAll, beforeAll } from '@jest/globals';
import { databaseOfTest, type TestDatabase } from '../e2e/database-of-test.js';
import { runService, type RunningService } from './running-service.js';

/** Processes on one database of a test: to be called inside `describe`, which ends them all and removes the database. */
export function servicesOfTest(): {
  readonly environment: () => Readonly<Record<string, string>>;
  /** With settings beside those of the database. */
  readonly started: (settings?: Readonly<Record<string, string>>) => Promise<RunningService>;
} {
  let place: TestDatabase;
  const running: RunningService[] = [];
  beforeAll(async () => {
    place = await databaseOfTest();
  });
  afterAll(async () => {
    for (const { child } of running) child.kill('SIGKILL');
    await Promise.all(running.map(({ ended }) => ended));
    await place.remove();
  });
  const environment = (): Readonly<Record<string, string>> => ({ ...place.environment });
  const started = async (settings: Readonly<Record<string, string>> = {}): Promise<RunningService> => {
    const service = await runService({ ...environment(), ...settings });
    running.push(service);
    return service;
  };
  return { environment, started };
}

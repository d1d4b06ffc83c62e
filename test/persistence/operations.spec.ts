import 'reflect-metadata';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import { AccessRepository } from '../../apps/api/src/access/access.repository.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { Readiness } from '../../apps/api/src/edge/readiness.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { OperationsRepository, type Claim } from '../../apps/api/src/operations/operations.repository.js';
import { entities } from '../../apps/api/src/features.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { databaseOfTest, type TestDatabase } from '../e2e/database-of-test.js';

jest.setTimeout(60_000);

const broken = {
  type: '/problems/internal',
  title: 'The service failed',
  status: 500,
  detail: 'It never came to an end.',
};
const page = { mediaType: 'text/html', headers: {}, content: Buffer.from('<p>done</p>') };

describe('the queue of operations', () => {
  let place: TestDatabase;
  let database: Database;
  let ours: string;
  let theirs: string;
  beforeAll(async () => {
    place = await databaseOfTest();
    database = new Database(
      readConfiguration(place.environment),
      new Log('silent'),
      new Readiness(),
      entities,
    );
    await database.open();
    [ours, theirs] = await Promise.all(
      ['Ours', 'Theirs'].map(async (name) => {
        const id = newId();
        await database.asOperator((tx) => AccessRepository.in(tx).addOrganisation({ id, name }));
        return id;
      }),
    );
  });
  afterAll(async () => {
    await database.close();
    await place.remove();
  });

  const placed = (organisationId: string, taskHash: string) =>
    database.inOrganisation(organisationId, (tx) =>
      OperationsRepository.in(tx).place({
        id: newId(),
        organisationId,
        kind: 'test',
        task: { taskHash },
        taskHash,
      }),
    );
  const found = (organisationId: string, id: string) =>
    database.inOrganisation(organisationId, (tx) => OperationsRepository.in(tx).find(id));
  const claimed = (leaseS = 60) => database.asWorker((tx) => OperationsRepository.in(tx).claim(3, leaseS));
  const asWorker = (work: (operations: OperationsRepository) => Promise<void>) =>
    database.asWorker((tx) => work(OperationsRepository.in(tx)));
  const emptied = () => database.asWorker((tx) => tx.query('DELETE FROM operation'));

  test('shows an organisation its own, and the worker all operations and nothing else of anybody', async () => {
    await emptied();
    const operation = await placed(ours, 'a');
    expect((await found(ours, operation.id))?.status).toBe('waiting');
    expect(await found(theirs, operation.id)).toBeNull();
    const seen = (table: string) =>
      database.asWorker(async (tx) =>
        Number((await tx.query<{ count: string }[]>(`SELECT count(*) FROM ${table}`))[0].count),
      );
    expect([
      await seen('operation'),
      await seen('estimate'),
      await seen('organisation'),
      await seen('letterhead'),
      await seen('api_key'),
    ]).toEqual([1, 0, 0, 0, 0]);
    await expect(
      database.inOrganisation(ours, (tx) =>
        OperationsRepository.in(tx).place({
          id: newId(),
          organisationId: theirs,
          kind: 'test',
          task: {},
          taskHash: 'stolen',
        }),
      ),
    ).rejects.toThrow(/row-level security/);
  });

  test('gives the same task the same operation in one organisation, and a failed one a new try', async () => {
    await emptied();
    const [first, again, elsewhere] = [
      await placed(ours, 'a'),
      await placed(ours, 'a'),
      await placed(theirs, 'a'),
    ];
    expect(again.id).toBe(first.id);
    expect(elsewhere.id).not.toBe(first.id);
    const claim = await claimed();
    expect(claim?.id).toBe(first.id);
    await asWorker((operations) => operations.fail(claim!, broken));
    expect(await found(ours, first.id)).toMatchObject({ status: 'failed', problem: broken });
    expect(await placed(ours, 'a')).toMatchObject({ status: 'waiting', attempts: 0 });
  });

  test('hands each task to one worker, however many ask at once', async () => {
    await emptied();
    const ids = await Promise.all(
      Array.from({ length: 6 }, async (_, index) => (await placed(ours, `task ${index}`)).id),
    );
    const claims = await Promise.all(Array.from({ length: 9 }, () => claimed()));
    expect(claims.flatMap((claim) => (claim === undefined ? [] : [claim.id])).sort()).toEqual(
      [...ids].sort(),
    );
  });

  test('passes a task on when its lease has ended, and takes no answer from who lost it', async () => {
    await emptied();
    const { id } = await placed(ours, 'a');
    const late: Claim = (await claimed(0))!;
    const next: Claim = (await claimed())!;
    expect([late.attempt, next.attempt, next.id]).toEqual([1, 2, id]);
    await asWorker((operations) => operations.finish(late, page));
    expect((await found(ours, id))?.status).toBe('running');
    await asWorker((operations) => operations.finish(next, page));
    expect((await found(ours, id))?.status).toBe('done');
    const content = await database.inOrganisation(ours, (tx) => OperationsRepository.in(tx).findContent(id));
    expect(Buffer.from(content!.content).toString()).toBe('<p>done</p>');
    expect(await claimed()).toBeUndefined();
  });

  test('keeps a task for who shows signs of life, and gives one back that was not begun in earnest', async () => {
    await emptied();
    const { id } = await placed(ours, 'a');
    const claim = (await claimed(0))!;
    await asWorker((operations) => operations.renew(claim, 60));
    expect(await claimed()).toBeUndefined();
    await asWorker((operations) => operations.giveBack(claim, 0));
    expect(await found(ours, id)).toMatchObject({ status: 'waiting', attempts: 0 });
  });

  test('fails a task over which three workers died', async () => {
    await emptied();
    const { id } = await placed(ours, 'a');
    for (let attempt = 1; attempt <= 3; attempt += 1) expect((await claimed(0))?.attempt).toBe(attempt);
    expect(await claimed(0)).toBeUndefined();
    await asWorker((operations) => operations.sweep(3, broken));
    expect(await found(ours, id)).toMatchObject({ status: 'failed', problem: broken });
  });

  test('forgets an operation and its result when their time is over', async () => {
    await emptied();
    const { id } = await placed(ours, 'a');
    const claim = (await claimed())!;
    await asWorker((operations) => operations.finish(claim, page));
    await database.asWorker((tx) => tx.query("UPDATE operation SET expires_at = now() - interval '1 s'"));
    expect(await found(ours, id)).toBeNull();
    await asWorker((operations) => operations.sweep(3, broken));
    expect(
      Number(
        (await database.asWorker((tx) => tx.query<{ count: string }[]>('SELECT count(*) FROM operation')))[0]
          .count,
      ),
    ).toBe(0);
  });
});

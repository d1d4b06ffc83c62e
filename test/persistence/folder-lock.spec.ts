import { spawn } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { build } from 'esbuild';
import { lockFolder } from '../../apps/api/src/persistence/folder-lock.js';

const starter = `
import { appendFileSync, mkdirSync, rmdirSync } from 'node:fs';
import { lockFolder } from './folder-lock.js';
const [folder, fate] = process.argv.slice(2);
try {
  const lock = await lockFolder(folder, folder);
  mkdirSync(folder + '/held');            // fails if somebody else holds the folder at this moment
  await new Promise((resolve) => setTimeout(resolve, 150));
  rmdirSync(folder + '/held');
  appendFileSync(folder + '/outcomes', 'held\\n');
  if (fate === 'killed') process.kill(process.pid, 'SIGKILL');
  await lock.release();
} catch (failure) {
  appendFileSync(folder + '/outcomes', failure.name + '\\n');
}
`;

describe('the lock on a data folder', () => {
  let folder: string;
  let program: string;
  beforeAll(async () => {
    folder = await mkdtemp(path.join(tmpdir(), 'kp-lock-'));
    const entry = path.join(import.meta.dirname, '../../apps/api/src/persistence/starter.mjs');
    program = path.join(folder, 'starter.mjs');
    await build({
      stdin: { contents: starter, resolveDir: path.dirname(entry), sourcefile: entry },
      bundle: true,
      platform: 'node',
      format: 'esm',
      outfile: program,
      logLevel: 'silent',
    });
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));

  const run = (lockedFolder: string, fate: string): Promise<void> =>
    new Promise((resolve, reject) => {
      const child = spawn(process.execPath, [program, lockedFolder, fate], {
        stdio: ['ignore', 'ignore', 'inherit'],
      });
      child.once('error', reject);
      child.once('exit', () => {
        resolve();
      });
    });

  test('of eight processes that start at once one holds the folder, round after round, though each holder is killed', async () => {
    const shared = await mkdtemp(path.join(tmpdir(), 'kp-shared-'));
    for (const fate of ['killed', 'killed', 'released']) {
      await writeFile(path.join(shared, 'outcomes'), '');
      await Promise.all(Array.from({ length: 8 }, () => run(shared, fate)));
      const outcomes = (await readFile(path.join(shared, 'outcomes'), 'utf8')).trim().split('\n');
      expect(outcomes).toHaveLength(8);
      expect(outcomes.filter((outcome) => outcome !== 'held' && outcome !== 'FolderInUse')).toEqual([]);
      expect(outcomes).toContain('held');
    }
    await rm(shared, { recursive: true, force: true });
  }, 60_000);

  test('forty starters in one process: exactly one wins, and the folder is free after its release', async () => {
    const shared = await mkdtemp(path.join(tmpdir(), 'kp-shared-'));
    const outcomes = await Promise.allSettled(Array.from({ length: 40 }, () => lockFolder(shared, shared)));
    const winners = outcomes.flatMap((outcome) => (outcome.status === 'fulfilled' ? [outcome.value] : []));
    expect(winners).toHaveLength(1);
    for (const outcome of outcomes)
      if (outcome.status === 'rejected') expect(outcome.reason).toMatchObject({ name: 'FolderInUse' });
    await winners[0].release();
    const next = await lockFolder(shared, shared);
    await next.release();
    await rm(shared, { recursive: true, force: true });
  });

  test('a folder last used on another machine is not taken over by guess', async () => {
    const shared = await mkdtemp(path.join(tmpdir(), 'kp-shared-'));
    await writeFile(
      path.join(shared, 'lock-7'),
      JSON.stringify({ socketPath: '/tmp/of-another-machine.sock', host: 'elsewhere', pid: 1 }),
    );
    await expect(lockFolder(shared, shared)).rejects.toThrow('it was last used on elsewhere');
    await writeFile(path.join(shared, 'lock-7'), 'half a rec');
    await expect(lockFolder(shared, shared)).rejects.toThrow('cannot be read');
    await rm(shared, { recursive: true, force: true });
  });
});

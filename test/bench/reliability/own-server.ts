import { spawn, type ChildProcess } from 'node:child_process';
import { chownSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';

/** A database server of the bench's own, that may be killed: nobody else uses it. */
export interface OwnServer {
  readonly url: string;
  /** Ends every process of the server at once, as a power cut would, and starts it again. Milliseconds until it answers. */
  readonly killAndStart: () => Promise<number>;
  readonly remove: () => Promise<void>;
}

interface Place {
  readonly bin: string;
  readonly folder: string;
  readonly port: number;
  /** A server refuses to run as root. */
  readonly uid: number | undefined;
}

/** `POSTGRES_BIN` is the folder of initdb and postgres; `POSTGRES_UID` is who runs them where the bench runs as root. */
export async function ownServer(bin: string, uid: number | undefined): Promise<OwnServer> {
  const folder = mkdtempSync(path.join(tmpdir(), 'kp-kills-'));
  if (uid !== undefined) chownSync(folder, uid, uid);
  const place = { bin, folder, port: await freePort(), uid };
  await ended(run(place, 'initdb', ['-D', path.join(folder, 'data'), '-U', 'bench', '-A', 'trust', '-N']));
  let server = await started(place);
  const endedWithBench = (): void => {
    process.kill(-(server.pid ?? 0), 'SIGKILL');
    rmSync(folder, { recursive: true, force: true });
  };
  process.on('exit', endedWithBench);
  return {
    url: `postgresql://bench@127.0.0.1:${place.port}/postgres`,
    killAndStart: async () => {
      const gone = ended(server);
      process.kill(-(server.pid ?? 0), 'SIGKILL');
      await gone;
      const before = performance.now();
      server = await started(place);
      return performance.now() - before;
    },
    remove: async () => {
      process.off('exit', endedWithBench);
      const gone = ended(server);
      server.kill('SIGINT');
      await gone;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** In a group of its own, so that its children can be killed with it. */
const run = ({ bin, uid }: Place, program: string, options: readonly string[]): ChildProcess =>
  spawn(path.join(bin, program), options, {
    stdio: 'ignore',
    detached: true,
    cwd: tmpdir(),
    ...(uid === undefined ? {} : { uid, gid: uid }),
  });

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve, reject) => {
    if (child.exitCode !== null) resolve();
    child.once('error', reject);
    child.once('exit', () => {
      resolve();
    });
  });

const FIRST_WAIT_MS = 50;
const MOST_TRIES = 600;

/** Tried until it answers: what an earlier server held is given back a moment after its end. */
async function started(place: Place): Promise<ChildProcess> {
  const { folder, port } = place;
  const options = ['-D', path.join(folder, 'data'), '-p', String(port), '-k', folder, '-h', '127.0.0.1'];
  let server = run(place, 'postgres', options);
  for (let turn = 0; turn < MOST_TRIES; turn += 1) {
    if (await answers(port)) return server;
    await new Promise((resolve) => {
      setTimeout(resolve, FIRST_WAIT_MS);
    });
    if (server.exitCode !== null) server = run(place, 'postgres', options);
  }
  throw new Error(`The database server of the bench does not answer at port ${port}`);
}

async function answers(port: number): Promise<boolean> {
  const client = new pg.Client({ host: '127.0.0.1', port, user: 'bench', database: 'postgres' });
  client.on('error', () => undefined);
  try {
    await client.connect();
    await client.query('SELECT 1');
    return true;
  } catch {
    return false;
  } finally {
    await client.end().catch(() => undefined);
  }
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const holder = createServer();
    holder.once('error', reject);
    holder.listen(0, '127.0.0.1', () => {
      const { port } = holder.address() as AddressInfo;
      holder.close(() => {
        resolve(port);
      });
    });
  });

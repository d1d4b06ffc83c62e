import { createHash } from 'node:crypto';
import { chmod, mkdir, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { Worker } from 'node:worker_threads';
import { lockFolder, type FolderLock } from './folder-lock.js';
import { projectRoot } from '../settings/project-root.js';

/** A Postgres in a folder, without a server to install. Safe against a killed process, not against a power cut. */
export interface EmbeddedDatabase {
  /** Folder of the socket; the driver takes it for a host name. */
  readonly host: string;
  readonly port: number;
  readonly user: string;
  readonly database: string;
  readonly close: () => Promise<void>;
  /** Ends one that no longer answers, without asking it. */
  readonly abandon: () => Promise<void>;
}

const PORT = 5432;
/** One connection for work; one more lets a fresh connection in while a broken one is being cleared away. */
const CONNECTIONS = 2;
/** The kernel takes 107 bytes for a socket's path; the names below it need 30. */
const LONGEST_SOCKET_FOLDER = 75;

type OnFault = (fault: string) => void;

export async function openEmbeddedDatabase(dataDir: string, onFault: OnFault): Promise<EmbeddedDatabase> {
  await mkdir(dataDir, { recursive: true, mode: 0o700 });
  const socketFolder = await privateFolder(dataDir);
  const lock = await lockFolder(dataDir, socketFolder);
  try {
    return await opened(dataDir, socketFolder, { lock, onFault });
  } catch (failure) {
    await lock.release();
    throw failure;
  }
}

async function privateFolder(dataDir: string): Promise<string> {
  const inside = path.join(dataDir, 'socket');
  const digest = createHash('sha256').update(dataDir).digest('hex').slice(0, 16);
  const folder =
    inside.length <= LONGEST_SOCKET_FOLDER
      ? inside
      : path.join(os.tmpdir(), `kingplank-${os.userInfo().uid}-${digest}`);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  await chmod(folder, 0o700);
  return folder;
}

interface Surroundings {
  readonly lock: FolderLock;
  readonly onFault: OnFault;
}

async function opened(
  dataDir: string,
  socketFolder: string,
  { lock, onFault }: Surroundings,
): Promise<EmbeddedDatabase> {
  const socketPath = path.join(socketFolder, `.s.PGSQL.${PORT}`);
  await rm(socketPath, { force: true });
  const worker = new Worker(path.join(projectRoot, 'apps/api/embedded/worker.mjs'), {
    workerData: { folder: path.join(dataDir, 'postgres'), socketPath, connections: CONNECTIONS },
  });
  await message(worker, 'ready');
  worker.on('message', (said: unknown) => {
    if (typeof said === 'object' && said !== null && 'fault' in said) onFault(String(said.fault));
  });
  worker.on('error', (failure) => {
    onFault(String(failure));
  });
  await chmod(socketPath, 0o600);
  return {
    host: socketFolder,
    port: PORT,
    user: 'postgres',
    database: 'postgres',
    close: async () => {
      const closed = message(worker, 'closed');
      worker.postMessage('close');
      await closed;
      await worker.terminate();
      await lock.release();
    },
    abandon: async () => {
      await worker.terminate();
      await lock.release();
    },
  };
}

function message(worker: Worker, word: string): Promise<void> {
  return new Promise((resolve, reject) => {
    worker.once('error', reject);
    worker.once('exit', (code) => {
      reject(new Error(`The embedded database ended with ${code} before it was ${word}`));
    });
    worker.on('message', (said: unknown) => {
      if (typeof said === 'object' && said !== null && word in said) resolve();
    });
  });
}

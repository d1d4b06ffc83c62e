import { randomUUID } from 'node:crypto';
import { link, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import net from 'node:net';
import os from 'node:os';
import path from 'node:path';
import { isRecord } from '../edge/record.js';

/** Another living process owns the folder, or may own it. */
export class FolderInUse extends Error {
  override readonly name = 'FolderInUse';
}

export interface FolderLock {
  readonly release: () => Promise<void>;
}

/** Who holds a generation of the lock: alive exactly as long as somebody listens on the socket. */
interface Holder {
  readonly socketPath: string;
  readonly host: string;
  readonly pid: number;
}

/**
 * Takes a folder for this process alone: two processes on one embedded database would corrupt it.
 *
 * Generations of the lock are files `lock-1`, `lock-2`, ... A starter reads the newest; when its holder no longer
 * listens, the starter makes the next generation with `link`, which fails if somebody else was first. The newest
 * generation is never removed, so a starter that slept between looking and linking cannot win by mistake: either its
 * number is taken, or it finds a newer one afterwards and steps back. A holder is alive as long as its socket accepts
 * a connection: the kernel answers for a busy or stopped process, and falls silent when the process is gone, so neither
 * a reused process id nor a crash can mislead.
 *
 * @throws {FolderInUse}
 */
export async function lockFolder(folder: string, socketFolder: string): Promise<FolderLock> {
  const socketPath = path.join(socketFolder, `alive-${randomUUID().slice(0, 8)}.sock`);
  const server = await listening(socketPath);
  try {
    const generation = await takeNext(folder, { socketPath, host: os.hostname(), pid: process.pid });
    await removeOlder(folder, generation);
  } catch (failure) {
    server.close();
    throw failure;
  }
  return {
    release: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
      }),
  };
}

async function takeNext(folder: string, self: Holder): Promise<number> {
  const newest = await newestGeneration(folder);
  if (newest > 0) await refuseIfAlive(folder, newest);
  const mine = newest + 1;
  if (!(await made(folder, mine, self))) throw inUse(folder, 'another process was starting at the same time');
  if ((await newestGeneration(folder)) === mine) return mine;
  await rm(lockPath(folder, mine), { force: true });
  throw inUse(folder, 'another process was faster');
}

async function refuseIfAlive(folder: string, generation: number): Promise<void> {
  const holder = await holderOf(folder, generation);
  if (holder === undefined)
    throw inUse(folder, `${lockPath(folder, generation)} cannot be read; remove it if no service runs`);
  if (await isListening(holder.socketPath))
    throw inUse(folder, `process ${holder.pid} on ${holder.host} holds it`);
  // A socket outside the shared folder says nothing about a process on another machine or in another container.
  const isVisible = holder.host === os.hostname() || holder.socketPath.startsWith(folder + path.sep);
  if (!isVisible)
    throw inUse(
      folder,
      `it was last used on ${holder.host}; remove ${lockPath(folder, generation)} if no service runs there`,
    );
}

const inUse = (folder: string, why: string): FolderInUse =>
  new FolderInUse(`The data folder ${folder} is in use: ${why}.`);

const lockPath = (folder: string, generation: number): string => path.join(folder, `lock-${generation}`);

async function newestGeneration(folder: string): Promise<number> {
  const generations = (await readdir(folder)).map((name) => Number(/^lock-(\d+)$/.exec(name)?.[1] ?? 0));
  return Math.max(0, ...generations);
}

/** `link` gives a file its name together with its content, and only if the name is free. */
async function made(folder: string, generation: number, self: Holder): Promise<boolean> {
  const draft = path.join(folder, `draft-${randomUUID()}`);
  await writeFile(draft, JSON.stringify(self), { mode: 0o600 });
  try {
    await link(draft, lockPath(folder, generation));
    return true;
  } catch (failure) {
    if (codeOf(failure) === 'EEXIST') return false;
    throw failure;
  } finally {
    await rm(draft, { force: true });
  }
}

async function removeOlder(folder: string, mine: number): Promise<void> {
  const names = await readdir(folder);
  const older = names.filter((name) => Number(/^lock-(\d+)$/.exec(name)?.[1] ?? Infinity) < mine);
  await Promise.all(older.map((name) => rm(path.join(folder, name), { force: true })));
}

async function holderOf(folder: string, generation: number): Promise<Holder | undefined> {
  try {
    const read: unknown = JSON.parse(await readFile(lockPath(folder, generation), 'utf8'));
    if (
      !isRecord(read) ||
      typeof read.socketPath !== 'string' ||
      typeof read.host !== 'string' ||
      typeof read.pid !== 'number'
    )
      return undefined;
    return { socketPath: read.socketPath, host: read.host, pid: read.pid };
  } catch {
    return undefined;
  }
}

function listening(socketPath: string): Promise<net.Server> {
  const server = net.createServer((socket) => {
    socket.destroy();
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(socketPath, () => {
      server.unref();
      resolve(server);
    });
  });
}

/** A refused or missing socket is a dead holder; anything else (a full queue, no permission) may be a living one. */
function isListening(socketPath: string): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = net.connect(socketPath);
    socket.once('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', (failure) => {
      resolve(codeOf(failure) !== 'ECONNREFUSED' && codeOf(failure) !== 'ENOENT');
    });
  });
}

const codeOf = (failure: unknown): string =>
  typeof failure === 'object' && failure !== null && 'code' in failure && typeof failure.code === 'string'
    ? failure.code
    : '';

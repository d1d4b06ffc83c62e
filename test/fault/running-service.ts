import { spawn, type ChildProcess } from 'node:child_process';
import { compiledFile } from '../support/compiled.js';

/** The built service in a process of its own, as customers run it, so that it can be killed. */
export interface RunningService {
  readonly url: string;
  readonly child: ChildProcess;
  /** What it has logged so far, oldest first. */
  readonly log: readonly Readonly<Record<string, unknown>>[];
  /** Resolves with the exit code, or null when a signal ended it. */
  readonly ended: Promise<number | null>;
}

export async function runService(environment: Readonly<Record<string, string>>): Promise<RunningService> {
  const child = spawn(process.execPath, [compiledFile('apps/api/src/main.ts')], {
    env: { ...process.env, PORT: '0', LOG_LEVEL: 'info', REQUESTS_PER_MINUTE: '1000000', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => {
      resolve(code);
    });
  });
  const log: Record<string, unknown>[] = [];
  return { url: await urlFrom(child, ended, log), child, log, ended };
}

function urlFrom(
  child: ChildProcess,
  ended: Promise<number | null>,
  log: Record<string, unknown>[],
): Promise<string> {
  return new Promise((resolve, reject) => {
    let rest = '';
    let output = '';
    child.stdout?.setEncoding('utf8').on('data', (chunk: string) => {
      const lines = (rest + chunk).split('\n');
      rest = lines.pop() ?? '';
      for (const line of lines) {
        output += `${line}\n`;
        if (!line.startsWith('{')) continue;
        const entry = JSON.parse(line) as Record<string, unknown>;
        log.push(entry);
        if (entry.message === 'listening') resolve(String(entry.url));
      }
    });
    child.stderr?.setEncoding('utf8').on('data', (chunk: string) => {
      output += chunk;
    });
    void ended.then((code) => {
      reject(new Error(`The service ended with ${String(code)} before it listened:\n${output}`));
    });
  });
}

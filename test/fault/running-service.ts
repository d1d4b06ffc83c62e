import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync } from 'node:fs';
import path from 'node:path';

/** From the root of the project, where tests and benches are run. */
const main = path.resolve('dist/apps/api/src/main.js');

/** The built service in a process of its own, so that it can be killed. */
export interface RunningService {
  readonly url: string;
  readonly child: ChildProcess;
  /** Resolves with the exit code, or null when a signal ended it. */
  readonly ended: Promise<number | null>;
}

export async function runService(environment: Readonly<Record<string, string>>): Promise<RunningService> {
  if (!existsSync(main)) throw new Error('The service is not built: npm run build');
  const child = spawn(process.execPath, [main], {
    env: { ...process.env, PORT: '0', LOG_LEVEL: 'info', REQUESTS_PER_MINUTE: '1000000', ...environment },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', (code) => {
      resolve(code);
    });
  });
  return { url: await urlFrom(child, ended), child, ended };
}

function urlFrom(child: ChildProcess, ended: Promise<number | null>): Promise<string> {
  return new Promise((resolve, reject) => {
    let output = '';
    const read = (chunk: unknown): void => {
      output += String(chunk);
      const url = /"message":"listening","url":"([^"]+)"/.exec(output)?.[1];
      if (url !== undefined) resolve(url);
    };
    child.stdout?.on('data', read);
    child.stderr?.on('data', read);
    void ended.then((code) => {
      reject(new Error(`The service ended with ${String(code)} before it listened:\n${output}`));
    });
  });
}

import { spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

export interface RunningService {
  readonly url: string;
  readonly apiKey: string;
  readonly stop: () => Promise<void>;
}

/** Starts the compiled service in a process of its own, as `npm start` does, with a key that the caller knows. */
export function startService(dataDir: string): Promise<RunningService> {
  const apiKey = `kp_${randomBytes(32).toString('base64url')}`;
  const child = spawn(process.execPath, [join(process.cwd(), 'dist/apps/api/src/main.js')], {
    env: { ...process.env, DATA_DIR: dataDir, PORT: '0', FIRST_KEY: apiKey, DATABASE_URL: '' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const stop = (): Promise<void> =>
    new Promise((resolve) => {
      child.once('exit', () => {
        resolve();
      });
      child.kill('SIGTERM');
    });
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => {
      reject(new Error(`The service ended with code ${code} before it was ready`));
    });
    createInterface({ input: child.stdout }).on('line', (line) => {
      const url = urlIn(line);
      if (url !== undefined) resolve({ url, apiKey, stop });
    });
  });
}

/** The service says where it listens in one line of its JSON log. */
function urlIn(line: string): string | undefined {
  if (!line.includes('"listening"')) return undefined;
  return /"url":"([^"]+)"/.exec(line)?.[1];
}

import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const above = path.resolve(import.meta.dirname, '../..');

/** A bench is itself compiled, and finds its own build. */
const root = path.basename(above) === 'dist' ? path.dirname(above) : above;

/** The compiled file of a source, as customers run it. @throws when the build is older than what it was made from */
export function compiledFile(source: string): string {
  requireFreshBuild();
  return path.join(root, 'dist', source.replace(/\.ts$/, '.js'));
}

/** The same for modules that a test uses by their functions. */
export const compiledModule = <T>(source: string): Promise<T> =>
  import(pathToFileURL(compiledFile(source)).href);

let isFresh = false;

function requireFreshBuild(): void {
  if (isFresh) return;
  const stamp = path.join(root, 'dist/.tsbuildinfo');
  const builtAt = existsSync(stamp) ? statSync(stamp).mtimeMs : 0;
  const changed = ['apps/api/src', 'libs']
    .flatMap((folder) => sourcesBelow(path.join(root, folder)))
    .find((file) => statSync(file).mtimeMs > builtAt);
  if (changed !== undefined)
    throw new Error(`${path.relative(root, changed)} is newer than the build: run npm run -s build`);
  isFresh = true;
}

/** What the build is made from: neither specs nor the client as it is packed. */
const sourcesBelow = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && /(?<!\.spec|\.d)\.ts$/.test(entry.name))
    .map((entry) => path.join(entry.parentPath, entry.name));

import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { PublishedCase } from './published-case.js';

const folder = join(dirname(fileURLToPath(import.meta.url)), 'cases');

/** Every array of published cases exported from `cases/`, so that a new file needs no registration. */
export async function allCases(): Promise<readonly PublishedCase[]> {
  const files = readdirSync(folder).filter((name) => /\.(ts|js)$/.test(name) && !name.endsWith('.d.ts'));
  const cases: PublishedCase[] = [];
  // One after the other: the test runner's module loader loses shared imports when files are linked side by side.
  for (const name of files) {
    const module: Record<string, unknown> = await import(pathToFileURL(join(folder, name)).href);
    cases.push(...Object.values(module).filter(Array.isArray).flat());
  }
  return cases;
}

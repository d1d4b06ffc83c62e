import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { PublishedCase } from './published-case.js';

const folder = join(dirname(fileURLToPath(import.meta.url)), 'cases');

/** Every array of published cases exported from `cases/`, so that a new file needs no registration. */
export async function allCases(): Promise<readonly PublishedCase[]> {
  const files = readdirSync(folder).filter((name) => /\.(ts|js)$/.test(name) && !name.endsWith('.d.ts'));
  const modules = await Promise.all(files.map((name) => import(pathToFileURL(join(folder, name)).href)));
  return modules.flatMap((module: Record<string, unknown>) => Object.values(module).filter(Array.isArray).flat());
}

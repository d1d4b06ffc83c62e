import { existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { Defect } from '#lib/kernel';

/** The folder of package.json, whether this file runs from `apps` or, compiled, from `dist/apps`. */
export const projectRoot = rootAbove(path.dirname(fileURLToPath(import.meta.url)));

function rootAbove(folder: string): string {
  if (existsSync(path.join(folder, 'package.json'))) return folder;
  const parent = path.dirname(folder);
  if (parent === folder) throw new Defect('No package.json above the settings');
  return rootAbove(parent);
}

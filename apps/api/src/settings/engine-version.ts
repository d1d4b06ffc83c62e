import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Defect } from '#lib/kernel';
import { projectRoot } from './project-root.js';

/** The version of the program, which every estimate keeps. */
export const engineVersion = versionOf(
  JSON.parse(readFileSync(path.join(projectRoot, 'package.json'), 'utf8')),
);

function versionOf(manifest: unknown): string {
  const version =
    typeof manifest === 'object' && manifest !== null && 'version' in manifest ? manifest.version : undefined;
  if (typeof version === 'string') return version;
  throw new Defect('package.json states no version');
}

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Injectable } from '@nestjs/common';
import type { Catalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type EstimateWithWhy } from '#lib/estimate';
import { Defect, type Outcome } from '#lib/kernel';
import { isRecord } from '../http/dto/field.js';
import { projectRoot } from '../persistence/project-root.js';

/** The version of the program, which every estimate keeps. */
export const engineVersion = versionOf(JSON.parse(readFileSync(path.join(projectRoot, 'package.json'), 'utf8')));

/** Where estimates are computed; a promise, so that the work can move to threads without anybody noticing. */
@Injectable()
export class Engine {
  estimate(record: DefectRecord, catalogue: Catalogue): Promise<Outcome<EstimateWithWhy>> {
    return Promise.resolve().then(() => estimate(record, catalogue, engineVersion));
  }
}

function versionOf(manifest: unknown): string {
  if (isRecord(manifest) && typeof manifest.version === 'string') return manifest.version;
  throw new Defect('package.json states no version');
}

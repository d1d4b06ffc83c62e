import 'reflect-metadata';
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { readConfiguration } from './settings/configuration.js';
import { Log } from './edge/log.js';
import { openApiDocument } from './openapi-document.js';
import { assemble } from './service.js';

/** Writes the OpenAPI document to the file named as argument, without a database and without a port. */
async function main(): Promise<void> {
  const target = process.argv[2] ?? path.join('test', 'contract', 'openapi.json');
  const app = await assemble(readConfiguration({}), new Log('silent'));
  mkdirSync(path.dirname(target), { recursive: true });
  writeFileSync(target, `${JSON.stringify(openApiDocument(app), undefined, 2)}\n`);
  process.stdout.write(`${target}\n`);
}

main().then(
  () => {
    process.exit(0);
  },
  (failure: unknown) => {
    process.stderr.write(`${String(failure)}\n`);
    process.exit(1);
  },
);

import { readFileSync, writeFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import openapiTS, { astToString } from 'openapi-typescript';

/** Writes the client's types from the API contract; with `--check` it writes nothing and fails when they are stale. */
const root = process.cwd();
const contract = join(root, 'test', 'contract', 'openapi.json');
const target = join(root, 'libs', 'sdk', 'src', 'generated', 'schema.ts');

const ast = await openapiTS(readFileSync(contract, 'utf8'), {
  alphabetize: true,
  immutable: true,
  exportType: true,
});
const text = `/** Generated from test/contract/openapi.json by \`npm run contract\`; never edited by hand. */\n${astToString(ast)}`;
const isFresh = existsSync(target) && readFileSync(target, 'utf8') === text;

if (process.argv.includes('--check')) {
  if (!isFresh) {
    console.error('The client types are stale: run `npm run contract` and commit the result.');
    process.exit(1);
  }
} else if (!isFresh) {
  writeFileSync(target, text);
  console.log(`Wrote ${target}`);
}

import { readFileSync, writeFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import openapiTS, { astToString } from 'openapi-typescript';

/** Writes the client's types from the API contract; with `--check` it writes nothing and fails when they are stale. */
const root = process.cwd();
const contract = join(root, 'test', 'contract', 'openapi.json');
const generated = join(root, 'libs', 'sdk', 'src', 'generated');
const made = '/** Generated from test/contract/openapi.json by `npm run contract`; never edited by hand. */';

const document: { readonly components: { readonly schemas: Readonly<Record<string, unknown>> } } = JSON.parse(
  readFileSync(contract, 'utf8'),
);

/** Examples are for the reader of the contract; in the comments of types they would be more than the types. */
const withoutExamples: unknown = JSON.parse(readFileSync(contract, 'utf8'), (key, value: unknown) => {
  if (typeof value !== 'object' || value === null) return value;
  if ('schema' in value && ('example' in value || 'examples' in value)) return { schema: value.schema };
  return key === 'components' ? Object.assign({}, value, { examples: undefined }) : value;
});
const ast = await openapiTS(JSON.stringify(withoutExamples), {
  alphabetize: true,
  immutable: true,
  exportType: true,
});

/** Every schema by its own name, so that a program need not dig for it. */
const names = Object.keys(document.components.schemas)
  .sort()
  .map((name) => `export type ${name} = components['schemas']['${name}'];`);

const files = {
  'schema.ts': `${made}\n${astToString(ast)}`,
  'names.ts': `${made}\nimport type { components } from './schema.js';\n\n${names.join('\n')}\n`,
};

for (const [name, text] of Object.entries(files)) {
  const target = join(generated, name);
  if (existsSync(target) && readFileSync(target, 'utf8') === text) continue;
  if (process.argv.includes('--check')) {
    console.error('The client types are stale: run `npm run contract` and commit the result.');
    process.exit(1);
  }
  writeFileSync(target, text);
  console.log(`Wrote ${target}`);
}

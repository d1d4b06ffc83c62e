import { readFileSync, writeFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import openapiTS, { astToString } from 'openapi-typescript';

/** Writes the client's types from the API contract; with `--check` it writes nothing and fails when they are stale. */
const root = process.cwd();
const contract = join(root, 'test', 'contract', 'openapi.json');
const generated = join(root, 'libs', 'sdk', 'src', 'generated');
const made = '/** Generated from test/contract/openapi.json by `npm run contract`; never edited by hand. */';

interface Described {
  readonly description?: string;
}

const document: {
  readonly components: { readonly schemas: Readonly<Record<string, Described | undefined>> };
} = JSON.parse(readFileSync(contract, 'utf8'));

type Node = Readonly<Record<string, unknown>>;

/**
 * What is for the reader of the contract alone would be more than the types: examples, and header fields, which the client
 * sets and reads by itself.
 */
function withoutReading(key: string, node: Node): Node {
  if ('schema' in node && ('example' in node || 'examples' in node)) return { schema: node.schema };
  if (key === 'components') return { ...node, examples: undefined };
  if (node.in === 'header') return { ...node, description: undefined };
  return 'headers' in node && 'description' in node ? { ...node, headers: undefined } : node;
}

/** A member that says nothing beside its reference is hovered over with the words of what it refers to. */
function withWordsOfReferred(key: string, node: Node): Node {
  const { $ref, description } = node;
  const name = String($ref).replace('#/components/schemas/', '');
  const isMember = key !== 'schema' && description === undefined && name !== 'UsText';
  return isMember && name in schemas ? { ...node, description: schemas[name]?.description } : node;
}

const { schemas } = document.components;
const readable: unknown = JSON.parse(readFileSync(contract, 'utf8'), (key, value: unknown) =>
  isNode(value) ? withWordsOfReferred(key, withoutReading(key, value)) : value,
);

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

const ast = await openapiTS(JSON.stringify(readable), {
  alphabetize: true,
  immutable: true,
  exportType: true,
});

/** Every schema by its own name, so that a program need not dig for it. */
const names = Object.keys(document.components.schemas)
  .sort()
  .map((name) => `export type ${name} = components['schemas']['${name}'];`);

const files = {
  'schema.ts': `${made}\n${concise(astToString(ast))}`,
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

/** Without what is the same everywhere: a third of the file would be steps of four spaces, a tag, cookies, methods and header fields that nothing is said of. */
function concise(text: string): string {
  return text
    .replace(/^ *readonly (?:cookie|options|head|trace)\?: never;\n/gm, '')
    .replace(/^ *headers: \{\n *readonly \[name: string\]: unknown;\n *\};\n/gm, '')
    .replace(/^( *(?:\/\*)?\*\*? ?)@description /gm, '$1')
    .replace(/^ +/gm, (indent) => ' '.repeat(Math.ceil(indent.length / 2)));
}

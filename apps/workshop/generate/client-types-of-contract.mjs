import openapiTS, { astToString } from 'openapi-typescript';

/**
 * What is for the reader of the contract alone would be more than the types: examples, and header fields, which the client
 * sets and reads by itself.
 */
function withoutReading(key, node) {
  if ('schema' in node && ('example' in node || 'examples' in node)) return { schema: node.schema };
  if (key === 'components') return { ...node, examples: undefined };
  if (node.in === 'header') return { ...node, description: undefined };
  return 'headers' in node && 'description' in node ? { ...node, headers: undefined } : node;
}

/** A member that says nothing beside its reference is hovered over with the words of what it refers to. */
function withWordsOfReferred(key, node, schemas) {
  const { $ref, description } = node;
  const name = String($ref).replace('#/components/schemas/', '');
  const isMember = key !== 'schema' && description === undefined && name !== 'UsText';
  return isMember && name in schemas ? { ...node, description: schemas[name].description } : node;
}

const isNode = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * The texts of `schema.ts` (every shape of the contract) and `names.ts` (every schema by its own name, so that a program
 * need not dig for it).
 *
 * @param {string} contract the OpenAPI document as JSON
 * @returns {Promise<readonly string[]>}
 */
export async function clientTypesOf(contract) {
  const { schemas } = JSON.parse(contract).components;
  const readable = JSON.parse(contract, (key, value) =>
    isNode(value) ? withWordsOfReferred(key, withoutReading(key, value), schemas) : value,
  );
  const ast = await openapiTS(JSON.stringify(readable), {
    alphabetize: true,
    immutable: true,
    exportType: true,
  });
  const names = Object.keys(schemas)
    .sort()
    .map((name) => `export type ${name} = components['schemas']['${name}'];`);
  return [
    concise(astToString(ast)),
    `import type { components } from './schema.js';\n\n${names.join('\n')}\n`,
  ];
}

/** Without what is the same everywhere: a third of the file would be steps of four spaces, a tag, cookies, methods and header fields that nothing is said of. */
function concise(text) {
  return (
    text
      .replace(/^ *readonly (?:cookie|options|head|trace)\?: never;\n/gm, '')
      .replace(/^ *headers: \{\n *readonly \[name: string\]: unknown;\n *\};\n/gm, '')
      .replace(/^( *(?:\/\*)?\*\*? ?)@description /gm, '$1')
      .replace(/ \(enum property replaced by openapi-typescript\)/g, '')
      // The union beside it says so already; a comment that then has one line is written as one.
      .replace(/^ *\* @enum \{\w+\}\n/gm, '')
      .replace(/^( *)\/\*\*\n *\* (.*)\n *\*\/$/gm, '$1/** $2 */')
      .replace(/^ *\/\*\*\n *\*\/\n/gm, '')
      .replace(/^ +/gm, (indent) => ' '.repeat(Math.ceil(indent.length / 2)))
  );
}

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf, root, writeMade } from './made-file.mjs';

/** What a type may be made of: all that is compiled of the rooms and of the service, less what is made itself. */
const sources = () =>
  ['apps/api/src', 'libs'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => name.endsWith('.ts') && !name.endsWith('.spec.ts'))
      .filter((name) => !/node_modules|generated|\/dist\//.test(name))
      .sort()
      .map((name) => join(root, folder, name)),
  );

/** JSON Schemas of the types that answers are documented by. Reading the types takes seconds, so it is done when they change. */
export const writeSchemas = () =>
  writeMade({
    from: 'the types of the rooms',
    digest: digestOf(
      [...sources(), join(import.meta.dirname, 'schemas-of-types.mjs'), join(root, 'tsconfig.json')],
      typescriptVersion(),
    ),
    files: [join(root, 'apps/api/src/schemas/generated/schemas.ts')],
    make: async () => {
      const { schemasOfTypes } = await import('./schemas-of-types.mjs');
      const literal = JSON.stringify(schemasOfTypes(), undefined, 2);
      return [`export const generatedSchemas: Readonly<Record<string, object>> = ${literal};\n`];
    },
  });

const typescriptVersion = () =>
  JSON.parse(readFileSync(join(root, 'node_modules/typescript/package.json'), 'utf8')).version;

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf, root, sourcesBelow, writeMade } from './made-file.mjs';

/** JSON Schemas of the types that answers are documented by. Reading the types takes seconds, so it is done when they change. */
export const writeSchemas = () =>
  writeMade({
    from: 'the types of the rooms',
    digest: digestOf(
      [
        ...['apps/api/src', 'libs'].flatMap(sourcesBelow),
        join(import.meta.dirname, 'schemas-of-types.mjs'),
        join(root, 'tsconfig.json'),
      ],
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

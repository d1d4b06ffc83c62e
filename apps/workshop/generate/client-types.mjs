import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { digestOf, root, writeMade } from './made-file.mjs';

const contract = join(root, 'test/contract/openapi.json');
const generated = join(root, 'libs/sdk/src/generated');

/** The client's types: all of the contract's shapes, and each by its own name. */
export const writeClientTypes = () =>
  writeMade({
    from: 'test/contract/openapi.json',
    digest: digestOf([contract, join(import.meta.dirname, 'client-types-of-contract.mjs')]),
    files: ['schema.ts', 'names.ts'].map((name) => join(generated, name)),
    make: async () => {
      const { clientTypesOf } = await import('./client-types-of-contract.mjs');
      return await clientTypesOf(readFileSync(contract, 'utf8'));
    },
  });

/**
 * Writes what the compiler reads and nobody writes: the shipped catalogue from its data, the schemas of answers from the
 * types of the rooms, and the client's types from the contract. None of it is committed; each part is written only when
 * what it is made from has changed.
 */
import { writeCatalogue } from './generate/catalogue.mjs';
import { writeClientTypes } from './generate/client-types.mjs';
import { writeSchemas } from './generate/schemas.mjs';

writeCatalogue();
await writeSchemas();
await writeClientTypes();

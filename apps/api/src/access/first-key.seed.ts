import type { Seed } from '../persistence/seeding.js';
import { newId } from '../persistence/ids.js';
import { AccessRepository } from './access.repository.js';
import { keyOf, newKey } from './key-text.js';
import { roles, scopes } from './roles.js';

/** An organisation and a key in a database that has none; the text of a key that was made up is shown once. */
export const seedFirstKey: Seed = async (tx, configuration) => {
  const access = AccessRepository.in(tx);
  if (await access.hasOrganisations()) return undefined;
  const key = configuration.firstKey === undefined ? newKey() : keyOf(configuration.firstKey);
  const organisation = await access.addOrganisation({ id: newId(), name: 'First organisation' });
  await access.addKey({
    id: newId(),
    organisationId: organisation.id,
    name: 'First key',
    keyHash: key.hash,
    prefix: key.prefix,
    roles,
    scopes,
  });
  return configuration.firstKey === undefined ? key.text : undefined;
};

import { notFound } from '../edge/problems.js';
import type { Transaction } from '../persistence/database.js';
import { isId } from '../persistence/ids.js';
import type { OrganisationRow } from './access.entities.js';
import { AccessRepository } from './access.repository.js';

/** @throws {HttpProblem} not-found, also for what the transaction may not see */
export async function organisationIn(tx: Transaction, id: string): Promise<OrganisationRow> {
  const row = isId(id) ? await AccessRepository.in(tx).findOrganisation(id) : null;
  if (row === null) throw notFound(`Organisation ${JSON.stringify(id.slice(0, 60))}`);
  return row;
}

import { shippedCatalogue } from '#lib/catalogue';
import type { Seed } from '../persistence/seeding.js';
import { EditionsRepository } from './editions.repository.js';

/** The edition that comes with the program, where the database does not hold it yet. */
export const seedShippedEdition: Seed = async (tx) => {
  await EditionsRepository.in(tx).addShipped(shippedCatalogue);
  return undefined;
};

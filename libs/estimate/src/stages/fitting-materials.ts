import { materialsOf, type Catalogue, type Coating } from '#lib/catalogue';
import type { Problem } from '#lib/kernel';

/** Resins of the catalogue with a hardener that may be used at a temperature, by name. */
export const resinsFor = (catalogue: Catalogue, deckC: number): readonly string[] =>
  materialsOf(catalogue, 'resin').flatMap(({ name, hardeners }) => {
    const fitting = hardeners.filter(
      ({ lowestTemperatureC, highestTemperatureC }) =>
        lowestTemperatureC.value <= deckC && deckC <= highestTemperatureC.value,
    );
    return fitting.length === 0 ? [] : [`${name} (${fitting.map((one) => one.name).join(', ')})`];
  });

/** Coatings of the same kind that may be laid at a temperature, by name. */
export const coatingsFor = (catalogue: Catalogue, kind: string, deckC: number): readonly string[] =>
  materialsOf(catalogue, 'coating')
    .filter(
      ({ coating, lowestTemperatureC }: Coating) => coating === kind && lowestTemperatureC.value <= deckC,
    )
    .map(({ name }) => name);

/** A refusal for the cold names what of the catalogue would cure. */
export const namingResins = (problems: readonly Problem[], catalogue: Catalogue): readonly Problem[] =>
  problems.map((one) => {
    if (one.code !== 'resin-too-cold') return one;
    const names = resinsFor(catalogue, Number(one.facts.value));
    return names.length === 0 ? one : { ...one, facts: { ...one.facts, instead: names.join(' or ') } };
  });

import { describe, expect, test } from '@jest/globals';
import { readdirSync } from 'node:fs';
import { exceptions, facets, ownMessages, type Facet } from './facets.js';
import { blockThatSets, configAt, covers, lint, rulesFiredBy } from './linting.js';
import { harmless, plants, suppressed, type Plant } from './plants.js';
import { floors, sameFloorEdges } from './room-floors.mjs';

const withSetting = (plant: Plant, rule: string, setting: Facet['without']): readonly string[] => {
  const whole = configAt(plant.at);
  return lint(plant.text, plant.at, { ...whole, rules: { ...whole.rules, [rule]: setting } }).map(
    ({ rule: fired }) => fired,
  );
};

/** Whether a plant is caught by this facet alone: caught as things stand, and let pass once it is deleted. */
const isProvenBy = ({ block, rule, without }: Facet, plant: Plant): boolean =>
  blockThatSets(rule, plant.at) === block && withSetting(plant, rule, without).length === 0;

describe('a planted violation is caught, and by one rule only', () => {
  test.each(plants.map((plant) => [plant.rule, plant.at, plant.text, plant] as const))(
    '%s in %s: %j',
    (rule, at, text) => {
      expect([...new Set(rulesFiredBy(text, at))]).toEqual([rule]);
    },
  );
});

describe('to delete it from the configuration lets a planted violation pass', () => {
  test.each(facets.map((facet) => [facet.rule, facet.entry, facet.block.files, facet] as const))(
    '%s %s of %j',
    (rule, _entry, _files, facet) => {
      const ofRule = plants.filter((plant) => plant.rule === rule);
      expect(ofRule.some((plant) => isProvenBy(facet, plant))).toBe(true);
    },
  );

  test.each(ownMessages.map(({ rule, id, message }) => [rule, id, message] as const))(
    'the reason %s/%s',
    (rule, _id, message) => {
      const start = new RegExp(
        `^${message.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(/\{\{\w+\}\}/g, '.*')}$`,
      );
      const given = plants
        .filter((plant) => plant.rule === rule)
        .flatMap(({ text, at }) => lint(text, at).map((fired) => fired.message));
      expect(given.some((text) => start.test(text))).toBe(true);
    },
  );

  test('a comment switches nothing off', () => {
    const { at, text, rule } = suppressed;
    expect(rulesFiredBy(text, at)).toContain(rule);
    expect(lint(text, at, { ...configAt(at), linterOptions: {} })).toEqual([]);
  });
});

describe('an exception lifts its rule where it says, and nowhere else', () => {
  test.each(
    exceptions.flatMap(({ block, rule }) =>
      (block.files ?? []).flat().map((files) => [rule, files, block] as const),
    ),
  )('%s in %s', (rule, files, block) => {
    const at = files
      .replace('**/*', 'plant')
      .replace('**', 'plant.ts')
      .replace(/\{(\w+)[^}]*\}/, '$1');
    expect(covers(block, at)).toBe(true);
    const planted = plants.filter((plant) => plant.rule === rule);
    expect(planted.length).toBeGreaterThan(0);
    for (const { text } of planted) expect(rulesFiredBy(text, at)).not.toContain(rule);
  });
});

describe('the floors', () => {
  const rooms = floors.flat();
  const floorOf = (room: string): number => floors.findIndex((floor) => floor.includes(room));

  test('hold every room once', () => {
    const folders = readdirSync('libs').filter(
      (name) => !['sdk', 'deck-element'].includes(name) && !name.includes('.'),
    );
    expect([...rooms].sort()).toEqual(folders.sort());
  });

  test('two edges inside a floor are decisions', () => {
    expect(sameFloorEdges).toEqual({ geometry: ['units'], catalogue: ['provenance'] });
  });

  test.each(rooms)('judge every edge of %s', (from) => {
    for (const to of rooms.filter((room) => room !== from)) {
      const isAllowed = floorOf(to) < floorOf(from) || (sameFloorEdges[from] ?? []).includes(to);
      const fired = rulesFiredBy(`export { x } from '#lib/${to}';\n`, `libs/${from}/src/plant.ts`);
      expect([from, to, fired.includes('rooms/floors')]).toEqual([from, to, !isAllowed]);
    }
  });
});

test.each(harmless)('%s: %j passes', (at, text) => {
  expect(rulesFiredBy(text, at)).toEqual([]);
});

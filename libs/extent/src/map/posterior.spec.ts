import { describe, expect, test } from '@jest/globals';
import { normalCdf, randomStream } from '#lib/kernel';
import { rectangle, regionOf } from '#lib/geometry';
import { givenOn, sevenReadings } from '../../../../test/reference/cases/extent-posterior.js';
import {
  banded,
  addTo,
  entryOf,
  factorised,
  inverseWithinBand,
  logDeterminant,
  solveUpper,
  solveWith,
} from './banded.js';
import { fieldOn } from './field.js';
import { fromReadings } from './from-readings.js';
import { fromUnknowns } from './from-unknowns.js';
import { withHearing } from './hearing.js';
import { latticeOver } from './lattice.js';
import { fillNormal } from './normal-draws.js';
import { noSites, type Given, type Heard } from './heard.js';
import { levelAlone, makeupOf } from './observed.js';
import { posteriorOf } from './posterior.js';
import { SYMPTOM_EDGE } from './reading-odds.js';

const DRAWS = 30_000;

test('chances agree with draws of the prior weighed by the likelihood: to 0.04 between readings, to 0.1 on one', () => {
  const { lattice, prior, readings, rangeMm } = sevenReadings;
  const field = fieldOn(lattice, rangeMm);
  const factor = factorised(field.precision);
  const random = randomStream(20_261_125);
  const [sum, noise, level] = [
    new Float64Array(lattice.nodes.length),
    new Float64Array(lattice.nodes.length),
    new Float64Array(2),
  ];
  let total = 0;
  for (let draw = 0; draw < DRAWS; draw += 1) {
    fillNormal(noise, random);
    fillNormal(level, random);
    solveUpper(factor, noise);
    const heights = noise.map(
      (value, node) => prior.level + prior.levelSd * level[0] + value / field.scale[node],
    );
    const weight = readings.reduce(
      (product, { node, ifBad, ifSound, edge }) =>
        product * (ifSound + (ifBad - ifSound) * normalCdf(heights[node] / edge)),
      1,
    );
    total += weight;
    heights.forEach((height, node) => {
      sum[node] += height > 0 ? weight : 0;
    });
  }
  const { chance } = posteriorOf(givenOn(field, readings, prior), noSites(readings.length));
  const read = new Set(readings.map(({ node }) => node));
  for (const node of lattice.nodes.keys())
    expect(Math.abs(chance[node] - sum[node] / total)).toBeLessThan(read.has(node) ? 0.1 : 0.04);
});

test('without readings every place is as likely bad as was believed before', () => {
  const lattice = latticeOver(regionOf(rectangle(0, 0, 900, 500)), 200);
  const { chance, logEvidence } = posteriorOf(
    givenOn(fieldOn(lattice, 300), [], { level: -0.5, levelSd: 0.7 }),
    noSites(0),
  );
  for (const value of chance) expect(value).toBeCloseTo(normalCdf(-0.5 / Math.hypot(1, 0.7)), 9);
  expect(logEvidence).toBeCloseTo(0, 9);
});

test('evidence of a single reading is its chance before it was made', () => {
  const lattice = latticeOver(regionOf(rectangle(0, 0, 900, 500)), 200);
  const reading = { node: 40, ifBad: 0.8, ifSound: 0.2, edge: SYMPTOM_EDGE };
  const { logEvidence } = posteriorOf(
    givenOn(fieldOn(lattice, 300), [reading], { level: -0.5, levelSd: 0.7 }),
    noSites(1),
  );
  expect(logEvidence).toBeCloseTo(
    Math.log(0.2 + 0.6 * normalCdf(-0.5 / Math.sqrt(1 + 0.49 + SYMPTOM_EDGE ** 2))),
    4,
  );
});

test('a banded matrix is factorised, solved and inverted within its band', () => {
  const matrix = banded(7, 2);
  const random = randomStream(5);
  for (let i = 0; i < 7; i += 1) {
    addTo(matrix, i, i, 4 + random());
    for (let j = Math.max(0, i - 2); j < i; j += 1) addTo(matrix, i, j, random() - 0.5);
  }
  const factor = factorised(matrix);
  const inverse = inverseWithinBand(factor);
  for (let i = 0; i < 7; i += 1) {
    const column = new Float64Array(7);
    column[i] = 1;
    solveWith(factor, column);
    const around = [...column.keys()].filter((j) => Math.abs(i - j) <= 2);
    expect(around.reduce((sum, j) => sum + entryOf(matrix, i, j) * column[j], 0)).toBeCloseTo(1, 12);
    for (let j = Math.max(0, i - 2); j <= Math.min(6, i + 2); j += 1)
      expect(entryOf(inverse, i, j)).toBeCloseTo(column[j], 12);
  }
  const two = banded(2, 1);
  addTo(two, 0, 0, 3);
  addTo(two, 1, 1, 2);
  addTo(two, 1, 0, 1);
  expect(Math.exp(logDeterminant(factorised(two)))).toBeCloseTo(5, 12);
});

test('the field varies alike everywhere, at the edge of the panel and round a hatch too', () => {
  const lattice = latticeOver(regionOf(rectangle(0, 0, 900, 500), [rectangle(300, 200, 500, 300)]), 300);
  const field = fieldOn(lattice, 300);
  const { sd } = posteriorOf(givenOn(field, [], { level: 0, levelSd: 0.7 }), noSites(0));
  for (const value of sd) expect(value).toBeCloseTo(Math.hypot(1, 0.7), 9);
});

describe('worked out among the readings and among the unknowns of the field the posterior is the same, to 1e-8:', () => {
  const lattice = latticeOver(regionOf(rectangle(0, 0, 1400, 700)), 300);
  const field = fieldOn(lattice, 300);
  const effects = levelAlone(-0.8, 0.6);
  const random = randomStream(20_261_129);
  const places = Array.from({ length: 24 }, () => [1400 * random(), 700 * random()] as const);
  const evidence = places.map(() => ({ ifBad: 0.9, ifSound: 0.1, edge: SYMPTOM_EDGE }));
  const sites = {
    weight: Float64Array.from(places, () => 3 * random()),
    pull: Float64Array.from(places, () => 4 * random() - 2),
  };
  const hearing = withHearing(
    field,
    places,
    places.map((_, index) => index % 3 !== 0),
  );

  const apart = (one: Float64Array, other: Float64Array): number =>
    Math.max(...one.map((value, index) => Math.abs(value - other[index])));

  function compared(given: Given): void {
    const [few, many]: readonly Heard[] = [fromReadings(given)(sites), fromUnknowns(given)(sites)];
    const [nodesOfFew, nodesOfMany] = [few.atNodes(), many.atNodes()];
    expect(apart(few.means, many.means)).toBeLessThan(1e-8);
    expect(apart(few.variances, many.variances)).toBeLessThan(1e-8);
    expect(apart(nodesOfFew.mean, nodesOfMany.mean)).toBeLessThan(1e-8);
    expect(apart(nodesOfFew.sd, nodesOfMany.sd)).toBeLessThan(1e-8);
    expect(few.logEvidence).toBeCloseTo(many.logEvidence, 8);
    expect(Math.min(...nodesOfMany.sd)).toBeLessThan(0.9 * Math.max(...nodesOfMany.sd));
  }

  test('of the deck alone', () => {
    compared({ field, effects, makeup: makeupOf(field, places, effects), evidence });
  });

  test('with an observer who errs in patches', () => {
    const makeup = makeupOf(hearing.field, places, effects, { of: hearing, sd: 0.9 });
    compared({ field: hearing.field, effects, makeup, evidence });
  });
});

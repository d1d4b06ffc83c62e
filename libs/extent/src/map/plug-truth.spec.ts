import { expect, test } from '@jest/globals';
import { normalCdf, randomStream } from '#lib/kernel';
import { rectangle, regionOf, type Point } from '#lib/geometry';
import type { Reading } from '../reading.js';
import { fieldOn } from './field.js';
import { noSites, type Given } from './heard.js';
import { latticeWithStep } from './lattice.js';
import { fillNormal } from './normal-draws.js';
import { levelAlone, makeupOf } from './observed.js';
import { plugGrounds, withPlugTruth } from './plug-truth.js';
import { posteriorOf } from './posterior.js';
import { tiesTo } from './interpolation.js';

const lattice = latticeWithStep(regionOf(rectangle(0, 0, 600, 400)), 50);
const field = fieldOn(lattice, 400);
const effects = levelAlone(-0.3, 0.7);
const plugAt: Point = [lattice.nodes[60].place[0] + 16, lattice.nodes[60].place[1] - 12];
const readings: readonly Reading[] = [
  { kind: 'sounding', at: [100, 100], sound: 'void' },
  { kind: 'sounding', at: [250, 220], sound: 'void' },
  { kind: 'plug', at: plugAt, condition: 'dry-sound' },
  { kind: 'sounding', at: [500, 300], sound: 'dull' },
];
const taps = { ifBad: 0.9, ifSound: 0.1, edge: 0.1 };
const given: Given = {
  field,
  effects,
  makeup: makeupOf(
    field,
    readings.map(({ at }) => at),
    effects,
  ),
  evidence: [taps, taps, { ifBad: 1e-6, ifSound: 1, edge: 0.01 }, taps],
};
const posterior = posteriorOf(given, noSites(readings.length));
const evenness = field.sdAt(
  tiesTo(
    lattice,
    lattice.nodes.map(({ place }) => place),
  ),
);
const part = {
  rangeMm: 400,
  hearingSd: 0,
  given,
  posterior,
  team: {},
  bridge: tiesTo(
    lattice,
    lattice.nodes.map(({ place }) => place),
  ),
  evenness,
  weight: 1,
};
const before = { part, mean: posterior.mean, sd: posterior.sd, chance: posterior.chance };
const grounds = plugGrounds({ readings }, lattice, posterior.chance);
const exact = withPlugTruth(before, grounds, lattice);

/** Prior draws of the field, each weighed by how likely it makes the four readings: shares nothing with the posterior. */
function byWeighingDraws(nodes: readonly number[], draws: number): readonly number[] {
  const empty: Given = { ...given, makeup: makeupOf(field, [], effects), evidence: [] };
  const next = posteriorOf(empty, noSites(0)).sampler(11);
  const level = (values: Float64Array, reading: number): number => {
    const { width, unknowns, shares } = given.makeup;
    const nodeOf = Int32Array.from(field.unknownOf, (_, index) => field.unknownOf.indexOf(index));
    let sum = 0;
    for (let one = width * reading; one < width * (reading + 1); one += 1)
      sum += shares[one] * field.scale[nodeOf[unknowns[one]]] * values[nodeOf[unknowns[one]]];
    return sum;
  };
  const random = randomStream(5);
  const own = new Float64Array(1);
  let total = 0;
  const bad = nodes.map(() => 0);
  for (let draw = 0; draw < draws; draw += 1) {
    for (const values of next()) {
      fillNormal(own, random);
      const weight = given.evidence.reduce(
        (product, { ifBad, ifSound, edge }, reading) =>
          product * (ifSound + (ifBad - ifSound) * normalCdf(level(values, reading) / edge)),
        1,
      );
      total += weight;
      for (const [index, node] of nodes.entries()) bad[index] += values[node] > 0 ? weight : 0;
    }
  }
  return bad.map((sum) => sum / total);
}

test('round a plug that voids speak against, the chances are those of prior draws weighed by the readings', () => {
  const near = grounds[0].nodes;
  const drawn = byWeighingDraws(near, 8000);
  const off = near.map((node, index) => Math.abs(exact[node] - drawn[index]));
  const offBefore = near.map((node, index) => Math.abs(posterior.chance[node] - drawn[index]));
  expect(Math.max(...off)).toBeLessThan(0.03);
  expect(Math.max(...offBefore)).toBeGreaterThan(2 * Math.max(...off));
});

test('core that came out with the plug is as the plug showed it', () => {
  const there = lattice.nodes[60].place;
  const [own] = withPlugTruth(before, [{ index: 2, at: there, nodes: [60] }], lattice).slice(60);
  expect(own).toBeLessThan(1e-5);
});

test('nothing changes farther away than a plug reaches', () => {
  const near = new Set(grounds.flatMap(({ nodes }) => nodes));
  expect(near.size).toBeGreaterThan(8);
  expect(
    [...exact.keys()].filter((node) => !near.has(node) && exact[node] !== posterior.chance[node]),
  ).toEqual([]);
});

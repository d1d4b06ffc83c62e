import { rectangle, regionOf, type Point } from '#lib/geometry';
import { fieldOn, type Field } from '../../../libs/extent/src/map/field.js';
import { latticeOver } from '../../../libs/extent/src/map/lattice.js';
import { levelAlone } from '../../../libs/extent/src/map/observed.js';
import { noSites, type Given } from '../../../libs/extent/src/map/heard.js';
import { posteriorOf } from '../../../libs/extent/src/map/posterior.js';
import { SYMPTOM_EDGE, type Evidence } from '../../../libs/extent/src/map/reading-odds.js';
import type { PublishedCase } from '../published-case.js';

const lattice = latticeOver(regionOf(rectangle(0, 0, 240, 120)), 32);
const prior = { level: -0.5, levelSd: 0.7 };
const nodeNear = ([x, y]: Point): number =>
  lattice.nodes.reduce(
    (best, { place }, node) =>
      Math.hypot(place[0] - x, place[1] - y) <
      Math.hypot(lattice.nodes[best].place[0] - x, lattice.nodes[best].place[1] - y)
        ? node
        : best,
    0,
  );

const seen = (place: Point, odds: number) => ({
  node: nodeNear(place),
  ifBad: odds / (1 + odds),
  ifSound: 1 / (1 + odds),
  edge: SYMPTOM_EDGE,
});
const seven = [
  seen([45, 45], 8),
  seen([75, 75], 8),
  seen([105, 45], 1 / 4),
  seen([165, 75], 1 / 4),
  seen([195, 45], 1 / 4),
  seen([45, 75], 4),
  seen([165, 45], 3),
];

interface SeenAt extends Evidence {
  readonly node: number;
}

/** Each reading stands on one node, whose value varies by 1. */
export const givenOn = (
  field: Field,
  seenAt: readonly SeenAt[],
  { level, levelSd }: typeof prior,
): Given => ({
  field,
  effects: levelAlone(level, levelSd),
  evidence: seenAt,
  makeup: {
    width: 1,
    unknowns: Int32Array.from(seenAt, ({ node }) => node),
    shares: Float64Array.from(seenAt, ({ node }) => 1 / field.scale[node]),
    effects: 1,
    design: Float64Array.from(seenAt, () => 1),
  },
});

/** The method's own answer; the printed one is that of weighed draws, made from 60,000 of them; `posterior.spec.ts` holds every node against fewer. */
const at = (name: string, place: Point, printed: string): PublishedCase => ({
  id: `extent-posterior-${name}`,
  room: 'extent',
  title: `Chance of bad core at (${place.join(', ')}) mm after seven readings`,
  source: 'RASMUSSEN-WILLIAMS-2006',
  locus: 'section 3.6 against weighed draws of the prior',
  unit: '1',
  printed,
  kind: 'independent-method',
  ours: () => chanceAt(place),
  tolerance: {
    absolute: 0.035,
    because: 'the method gives each place a normal distribution; 60,000 draws leave 0.003',
  },
});

export const sevenReadings = { lattice, prior, readings: seven, rangeMm: 200 };
const chances = (): Float64Array =>
  posteriorOf(givenOn(fieldOn(lattice, 200), seven, prior), noSites(seven.length)).chance;
const chanceAt = (place: Point): number => chances()[nodeNear(place)];

const reason =
  'at a reading itself the true distribution is skewed, as if cut off at the boundary; a normal one spreads past it, and the chance is drawn towards one half';

export const posteriorAgainstDraws: readonly PublishedCase[] = [
  at('beside-bad', [75, 45], '0.773'),
  at('between', [105, 75], '0.566'),
  at('middle', [135, 45], '0.366'),
  at('beside-sound', [195, 105], '0.258'),
  { ...at('on-bad', [45, 45], '0.914'), disagreement: { oursShouldBe: 0.8772, relative: 0.002, reason } },
  { ...at('on-sound', [165, 75], '0.229'), disagreement: { oursShouldBe: 0.2722, relative: 0.002, reason } },
];

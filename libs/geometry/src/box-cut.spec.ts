import { expect, test } from '@jest/globals';
import { Clipper64, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { randomStream, type RandomStream } from '#lib/kernel';
import { cutByBox } from './box-cut.js';

/** An outline with notches: corners at growing angles round a middle, so that it never crosses itself. */
function notched(random: RandomStream, size: number, grain: number): Path64 {
  const count = 3 + Math.floor(random() * 40);
  return Array.from({ length: count }, (_, place) => {
    const angle = (2 * Math.PI * (place + 0.8 * random())) / count;
    const reach = size * (0.2 + random());
    return {
      x: grain * Math.round((reach * Math.cos(angle)) / grain),
      y: grain * Math.round((reach * Math.sin(angle)) / grain),
    };
  });
}

function box(random: RandomStream, size: number, grain: number): Path64 {
  const at = (): number => grain * Math.round((1.4 * size * (2 * random() - 1)) / grain);
  const [a, b, c, d] = [at(), at(), at(), at()];
  const [x0, x1, y0, y1] = [Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)];
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}

function swept(kind: ClipType, subject: Paths64, other: Paths64): Paths64 {
  const kernel = new Clipper64();
  kernel.preserveCollinear = false;
  if (subject.length > 0) kernel.addSubject(subject);
  if (other.length > 0) kernel.addClip(other);
  const found: Paths64 = [];
  kernel.execute(kind, FillRule.NonZero, found);
  return found;
}

const areaOf = (paths: Paths64): number =>
  paths.reduce(
    (sum, path) =>
      sum +
      path.reduce((twice, { x, y }, place) => {
        const after = path[(place + 1) % path.length];
        return twice + (x * after.y - after.x * y) / 2;
      }, 0),
    0,
  );

const edgesOf = (paths: Paths64): number =>
  paths.reduce(
    (sum, path) =>
      sum +
      path.reduce((all, { x, y }, place) => {
        const after = path[(place + 1) % path.length];
        return all + Math.hypot(after.x - x, after.y - y);
      }, 0),
    0,
  );

interface Compared {
  readonly told: number;
  /** Greatest width of what the two do not share, spread along the edges, in micrometres. */
  readonly apartUm: number;
  readonly otherCorners: number;
}

/** `grain` in micrometres: a coarse one puts many corners on the sides of the box. */
function compared(seed: number, grain: number): Compared {
  const random = randomStream(seed);
  let [told, apartUm, otherCorners] = [0, 0, 0];
  for (let round = 0; round < 1000; round += 1) {
    const size = 10 ** (4.5 + 2 * random());
    // As every region comes from the kernel: nothing crosses itself.
    const subject = swept(ClipType.Union, [notched(random, size, grain)], []).slice(0, 1);
    const cutter = [box(random, size, grain)];
    const cut = cutByBox(subject, cutter);
    if (cut === undefined) continue;
    told += 1;
    const kernel = swept(ClipType.Intersection, subject, cutter);
    const shared = areaOf(swept(ClipType.Intersection, cut, kernel));
    const apart = areaOf(cut) + areaOf(kernel) - 2 * shared;
    apartUm = Math.max(apartUm, apart / (edgesOf(kernel) || 1));
    otherCorners += cut.flat().length === kernel.flat().length ? 0 : 1;
  }
  return { told, apartUm, otherCorners };
}

test.each([1, 1000, 20_000])(
  'a box cuts what the kernel cuts to two micrometres, corners on a grid of %d',
  (grain) => {
    const { told, apartUm, otherCorners } = compared(20_261_130 + grain, grain);
    expect(told).toBeGreaterThan(700);
    expect(apartUm).toBeLessThan(2);
    expect(otherCorners / told).toBeLessThan(0.01);
  },
);

const path = (...corners: readonly (readonly [number, number])[]): Path64 =>
  corners.map(([x, y]) => ({ x: 1000 * x, y: 1000 * y }));

test('a box over both arms of a U leaves two parts, and one under it a part with three sides of the box', () => {
  const u = [path([0, 0], [30, 0], [30, 30], [20, 30], [20, 10], [10, 10], [10, 30], [0, 30])];
  expect(cutByBox(u, [path([-5, 20], [35, 20], [35, 40], [-5, 40])])).toEqual([
    path([30, 20], [30, 30], [20, 30], [20, 20]),
    path([10, 20], [10, 30], [0, 30], [0, 20]),
  ]);
  expect(areaOf(cutByBox(u, [path([-5, -5], [15, -5], [15, 20], [-5, 20])]) ?? [])).toBe(250e6);
});

test('a cutter that is no box, an outline with a hole and one that touches a side twice are left to the kernel', () => {
  const box30 = path([0, 0], [30, 0], [30, 30], [0, 30]);
  expect(cutByBox([box30], [path([0, 0], [30, 0], [30, 30])])).toBeUndefined();
  expect(cutByBox([box30, path([10, 10], [10, 20], [20, 20], [20, 10])], [box30])).toBeUndefined();
  const twice = path([0, 0], [40, 0], [40, 40], [0, 40], [20, 20]);
  expect(cutByBox([twice], [path([-5, -5], [20, -5], [20, 45], [-5, 45])])).toBeUndefined();
});

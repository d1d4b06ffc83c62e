import { expect, test } from '@jest/globals';
import { Clipper64, ClipType, FillRule, type Path64, type Paths64 } from 'clipper2-ts';
import { randomStream, type RandomStream } from '#lib/kernel';
import { plainAnswer } from './plain-shapes.js';

/** Corners on an ellipse, some a few micrometres apart; runs from x towards y, whole micrometres. */
function convexPath(random: RandomStream, around: number): Path64 {
  const count = 3 + Math.floor(random() * 20);
  const angles = Array.from({ length: count }, () => 2 * Math.PI * random()).sort((a, b) => a - b);
  const [wide, high] = [around * (0.02 + random()), around * (0.02 + random())];
  const [x0, y0] = [around * (random() - 0.5), around * (random() - 0.5)];
  return angles.map((angle) => ({
    x: Math.round(x0 + wide * Math.cos(angle)),
    y: Math.round(y0 + high * Math.sin(angle)),
  }));
}

const kinds = {
  union: ClipType.Union,
  difference: ClipType.Difference,
  intersection: ClipType.Intersection,
} as const;

function swept(kind: keyof typeof kinds, subject: Paths64, other: Paths64): Paths64 {
  const kernel = new Clipper64();
  kernel.preserveCollinear = false;
  kernel.addSubject(subject);
  if (other.length > 0) kernel.addClip(other);
  const found: Paths64 = [];
  kernel.execute(kinds[kind], FillRule.NonZero, found);
  return found;
}

/** Written from the least corner round, so that equal paths are equal texts. */
function written(paths: readonly Path64[]): readonly string[] {
  return paths
    .map((path) => {
      const corners = path.map(({ x, y }) => `${x},${y}`);
      const least = path.reduce(
        (best, { x, y }, place) =>
          x < path[best].x || (x === path[best].x && y < path[best].y) ? place : best,
        0,
      );
      return [...corners.slice(least), ...corners.slice(0, least)].join(' ');
    })
    .sort();
}

function told(answer: NonNullable<ReturnType<typeof plainAnswer>>, subject: Paths64, other: Paths64) {
  if (answer.kind === 'nothing') return [];
  return answer.kind === 'first' ? subject : [subject[0], [...other[0]].reverse()];
}

test('what is told by looking is what the kernel sweeps out, to the micrometre', () => {
  const random = randomStream(20_261_130);
  const answers = { nothing: 0, first: 0, hollow: 0, swept: 0 };
  for (let round = 0; round < 6000; round += 1) {
    const size = 10 ** (1.3 + 5 * random());
    const subject = [convexPath(random, size)];
    const other = random() < 0.3 ? [] : [convexPath(random, size * (random() < 0.5 ? 0.3 : 3))];
    for (const kind of ['union', 'difference', 'intersection'] as const) {
      const answer = plainAnswer(kind, subject, other);
      answers[answer?.kind ?? 'swept'] += 1;
      if (answer === undefined) continue;
      expect(written(told(answer, subject, other))).toEqual(written(swept(kind, subject, other)));
    }
  }
  expect(Math.min(...Object.values(answers))).toBeGreaterThan(100);
});

test('a star that turns round twice and a path that runs the other way are left to the kernel', () => {
  const star = [0, 2, 4, 1, 3].map((place) => ({
    x: Math.round(1e5 * Math.cos((2 * Math.PI * place) / 5)),
    y: Math.round(1e5 * Math.sin((2 * Math.PI * place) / 5)),
  }));
  const square = [
    { x: 0, y: 0 },
    { x: 1000, y: 0 },
    { x: 1000, y: 1000 },
    { x: 0, y: 1000 },
  ];
  expect(plainAnswer('union', [star], [])).toBeUndefined();
  expect(plainAnswer('union', [[...square].reverse()], [])).toBeUndefined();
  expect(plainAnswer('union', [square], [])).toEqual({ kind: 'first' });
  expect(plainAnswer('union', [], [])).toEqual({ kind: 'nothing' });
});

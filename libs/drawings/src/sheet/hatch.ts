import { line, type PathMark } from './marks.js';
import { boxOf, type Point, type Ring } from './shapes.js';

/** Patterns told apart by direction and density alone, never by colour. */
export type Hatch = 'diagonal' | 'back-diagonal' | 'crossed' | 'level' | 'upright' | 'sparse';

interface Family {
  readonly angleDeg: number;
  readonly spacingMm: number;
}

export const hatches: Readonly<Record<Hatch, readonly Family[]>> = {
  'diagonal': [{ angleDeg: 45, spacingMm: 2 }],
  'back-diagonal': [{ angleDeg: -45, spacingMm: 2 }],
  'crossed': [
    { angleDeg: 45, spacingMm: 1.8 },
    { angleDeg: -45, spacingMm: 1.8 },
  ],
  'level': [{ angleDeg: 0, spacingMm: 1.6 }],
  'upright': [{ angleDeg: 90, spacingMm: 1.6 }],
  'sparse': [{ angleDeg: 45, spacingMm: 4 }],
};

/** Hatch lines clipped to the rings by the even-odd rule, as plain lines that every viewer draws alike. */
export const hatched = (rings: readonly Ring[], hatch: Hatch): readonly PathMark[] =>
  hatches[hatch].flatMap(({ angleDeg, spacingMm }) => lined(rings, angleDeg, spacingMm));

/** Parallel lines at any angle, for instance along the grain. */
export function lined(rings: readonly Ring[], angleDeg: number, spacingMm: number): readonly PathMark[] {
  const [cos, sin] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  const turned = rings.map((ring) => ring.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]));
  const { y, height } = boxOf(turned.flat());
  const first = Math.ceil(y / spacingMm);
  const last = Math.floor((y + height) / spacingMm);
  const marks: PathMark[] = [];
  for (let index = first; index <= last; index += 1) {
    const level = index * spacingMm + 1e-6;
    for (const [from, to] of spansAt(turned, level)) {
      marks.push(
        line(
          'hatch',
          [from * cos - level * sin, from * sin + level * cos],
          [to * cos - level * sin, to * sin + level * cos],
        ),
      );
    }
  }
  return marks.length === 0 ? [] : [{ ...marks[0], rings: marks.flatMap((mark) => mark.rings) }];
}

/** A shorter piece of hatching cannot be seen. */
const SHORTEST_MM = 0.05;

function spansAt(rings: readonly Ring[], level: number): readonly (readonly [number, number])[] {
  const crossings = rings
    .flatMap((ring) =>
      ring.flatMap(([x, y], index) => {
        const [nextX, nextY] = ring[(index + 1) % ring.length];
        const isCrossed = y > level !== nextY > level;
        return isCrossed ? [x + ((level - y) / (nextY - y)) * (nextX - x)] : [];
      }),
    )
    .sort((a, b) => a - b);
  return crossings.flatMap((from, index) =>
    index % 2 === 0 && crossings[index + 1] - from > SHORTEST_MM
      ? [[from, crossings[index + 1]] as const]
      : [],
  );
}

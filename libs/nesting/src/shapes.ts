import { grown, mostGrowth, regionFrom } from './no-fit.js';
import { NoFitTable, type TurnedShape } from './no-fit-table.js';
import {
  boxOf,
  doubleArea,
  isRectilinear,
  regionShifted,
  regionTurned,
  ringsOf,
  type Box,
  type Region,
  type Ring,
} from './ring.js';

/** A shape as it was asked for, on the grid, with the turns it may take. */
export interface Shape {
  readonly region: Region;
  readonly turnsDeg: readonly number[];
}

/** How a turned shape stands to the shape it came from: turned about the origin, then moved by the shift. */
export interface Turning {
  readonly turnDeg: number;
  readonly shiftX: number;
  readonly shiftY: number;
}

/** All shapes in all their turns, and for each shape the numbers of its turned shapes. */
export interface ShapeSet {
  readonly table: NoFitTable;
  readonly turnings: readonly Turning[];
  readonly choicesOf: readonly (readonly number[])[];
}

/** Turns that look the same (a rectangle half a turn round) are kept once. Blocks follow the shapes and get no padding. */
export function shapeSetOf(shapes: readonly Shape[], blocks: readonly Shape[], padding: number): ShapeSet {
  const bases: Region[] = [];
  const turned: TurnedShape[] = [];
  const turnings: Turning[] = [];
  const seen = new Map<string, number>();
  const choicesOf = [...shapes, ...blocks].map(({ region, turnsDeg }, index) => {
    const room = index < shapes.length ? padding : 0;
    const baseOf = new Map<number, number>();
    const numbers = turnsDeg.map((turnDeg) => {
      const { turning, outline } = standing(region, turnDeg);
      const look = `${room} ${lookOf(outline)}`;
      const known = seen.get(look);
      if (known !== undefined) return known;
      const rest = turnDeg % 90;
      const base = baseOf.get(rest) ?? bases.push(paddedBy(regionTurned(region, rest), room)) - 1;
      baseOf.set(rest, base);
      turned.push(turnedShape({ base, quarter: Math.floor(turnDeg / 90), outline, turning }, bases[base]));
      turnings.push(turning);
      seen.set(look, turned.length - 1);
      return turned.length - 1;
    });
    return [...new Set(numbers)];
  });
  return { table: new NoFitTable(bases, turned), turnings, choicesOf };
}

/** Via the exact quarter turn of the turned base, so that an outline and its no-fit regions come from one rounding. */
function standing(region: Region, turnDeg: number): { readonly turning: Turning; readonly outline: Region } {
  const outline = regionTurned(regionTurned(region, turnDeg % 90), 90 * Math.floor(turnDeg / 90));
  const { minX, minY } = boxOf(outline.outer);
  return {
    turning: { turnDeg, shiftX: -minX, shiftY: -minY },
    outline: regionShifted(outline, -minX, -minY),
  };
}

function turnedShape(
  {
    base,
    quarter,
    outline,
    turning,
  }: Pick<TurnedShape, 'base' | 'quarter' | 'outline'> & { readonly turning: Turning },
  padded: Region,
): TurnedShape {
  const { maxX, maxY } = boxOf(outline.outer);
  const { shiftX, shiftY } = turning;
  const standingPadded = regionShifted(regionTurned(padded, 90 * quarter), shiftX, shiftY);
  return {
    base,
    quarter,
    outline,
    width: maxX,
    height: maxY,
    shiftX,
    shiftY,
    padded: standingPadded,
    box: roomyBox(standingPadded.outer),
  };
}

function roomyBox(ring: Ring): Box {
  const { minX, minY, maxX, maxY } = boxOf(ring);
  const room = mostGrowth / 2;
  return { minX: minX - room, minY: minY - room, maxX: maxX + room, maxY: maxY + room };
}

/** The same text for the same outline, wherever its ring starts. */
function lookOf(region: Region): string {
  return ringsOf(region).map(ringLook).sort().join(' ');
}

function ringLook(ring: Ring): string {
  const points = Array.from({ length: ring.length / 2 }, (_, i) => `${ring[2 * i]},${ring[2 * i + 1]}`);
  const start = points.reduce((least, point, i) => (point < points[least] ? i : least), 0);
  return [...points.slice(start), ...points.slice(0, start)].join(';');
}

/** With a band of at least `padding` steps round it; exactly that for outlines along the axes. */
export function paddedBy(region: Region, padding: number): Region {
  if (padding === 0) return region;
  const rings = grown(ringsOf(region), ringsOf(region).every(isRectilinear) ? padding : padding + 1);
  const [outer, ...holes] = [...rings].sort((p, q) => Math.abs(doubleArea(q)) - Math.abs(doubleArea(p)));
  return regionFrom(outer, holes);
}

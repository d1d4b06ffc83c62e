import { noFitRings } from './no-fit.js';
import { boxOf, mirrored, regionTurned, shifted, turned, type Box, type Region, type Ring } from './ring.js';
import { slabsOf, type Slabs } from './slabs.js';

/** A shape in one of its turns: reference point at the lower left of the box of the true outline. */
export interface TurnedShape {
  /** Shapes that differ by quarter turns share a base, and so their no-fit regions. */
  readonly base: number;
  readonly quarter: number;
  /** True outline and the outline with half the kerf round it, both seen from the reference point. */
  readonly outline: Region;
  readonly padded: Region;
  /** Of the padded outline, and as much more that two shapes whose boxes are apart lie outside each other's no-fit region. */
  readonly box: Box;
  readonly width: number;
  readonly height: number;
  /** From the padded base turned by `quarter` to `padded`. */
  readonly shiftX: number;
  readonly shiftY: number;
}

/** No-fit region of an ordered pair of turned shapes, ready for line queries. Index 0 is x, 1 is y. */
export interface NoFit {
  readonly low: readonly [number, number];
  readonly high: readonly [number, number];
  readonly slabs: readonly [Slabs, Slabs];
}

/** Measured: a region takes about as long for each pair of edges as it takes to look at so many pairs of placed pieces. */
export const LOOKS_PER_EDGE_PAIR = 10;

/** Numbers kept at most (8 bytes each); beyond it the table starts afresh, which costs time and never changes an answer. */
const mostNumbersKept = 12_000_000;

/** Computes no-fit regions when first asked for and keeps them, quarter turns and exchanged pairs from one computation. */
export class NoFitTable {
  private rows: (NoFit[] | undefined)[] = [];
  private rings = new Map<number, readonly Ring[]>();
  private kept = 0;
  /** What the regions computed so far took, in pairs of pieces looked at. */
  built = 0;

  constructor(
    private readonly bases: readonly Region[],
    readonly shapes: readonly TurnedShape[],
  ) {}

  /** The region for `moving` around `fixed`. */
  between(fixed: number, moving: number): NoFit {
    return this.rows[moving]?.[fixed] ?? this.filled(fixed, moving);
  }

  private filled(fixed: number, moving: number): NoFit {
    const noFit = this.build(fixed, moving);
    const row = this.rows[moving] ?? (this.rows[moving] = []);
    row[fixed] = noFit;
    return noFit;
  }

  private build(fixed: number, moving: number): NoFit {
    if (this.kept > mostNumbersKept) this.forget();
    const rings = this.ringsBetween(this.shapes[fixed], this.shapes[moving]);
    const slabs = [slabsOf(rings, 0), slabsOf(rings, 1)] as const;
    this.kept += slabs.reduce((sum, { height, edge }) => sum + 1.5 * height.length + 1.5 * edge.length, 100);
    const boxes = rings.map(boxOf);
    return {
      low: [Math.min(...boxes.map(({ minX }) => minX)), Math.min(...boxes.map(({ minY }) => minY))],
      high: [Math.max(...boxes.map(({ maxX }) => maxX)), Math.max(...boxes.map(({ maxY }) => maxY))],
      slabs,
    };
  }

  private forget(): void {
    this.rows = [];
    this.rings = new Map();
    this.kept = 0;
  }

  private ringsBetween(fixed: TurnedShape, moving: TurnedShape): readonly Ring[] {
    const [dx, dy] = [fixed.shiftX - moving.shiftX, fixed.shiftY - moving.shiftY];
    return this.ringsOfPair(fixed, moving).map((ring) => shifted(ring, dx, dy));
  }

  /** For the bases turned by their quarters, each about its own origin. */
  private ringsOfPair(fixed: TurnedShape, moving: TurnedShape): readonly Ring[] {
    if (fixed.base > moving.base) return this.ringsOfPair(moving, fixed).map(mirrored);
    const between = (moving.quarter - fixed.quarter + 4) % 4;
    const key = (fixed.base * this.bases.length + moving.base) * 4 + between;
    const known = this.rings.get(key) ?? this.computed(fixed.base, moving.base, between);
    this.rings.set(key, known);
    return known.map((ring) => turned(ring, 90 * fixed.quarter));
  }

  private computed(fixed: number, moving: number, quarters: number): readonly Ring[] {
    const [still, turning] = [this.bases[fixed], this.bases[moving]];
    this.built += LOOKS_PER_EDGE_PAIR * still.outer.length * turning.outer.length;
    return noFitRings(still, regionTurned(turning, 90 * quarters));
  }
}

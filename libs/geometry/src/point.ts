/** A place in the plane of the deck, mm. */
export type Point = readonly [number, number];

/** Corners in order round the edge; open, the last corner is not repeated. */
export type Ring = readonly Point[];

/** `outer` runs from x towards y (positive signed area); each hole runs the other way. */
export interface Polygon {
  /** Outer ring, points in order. */
  readonly outer: Ring;
  /** Rings that are left out. */
  readonly holes: readonly Ring[];
}

/** Polygons that do not overlap; the empty list is the empty region. */
export type Region = readonly Polygon[];

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Decks are far too small for the squares to overflow, and `Math.hypot` is many times slower. */
export const distance = (a: Point, b: Point): number => Math.sqrt((b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2);

export const ringsOf = (region: Region): readonly Ring[] =>
  region.flatMap(({ outer, holes }) => [outer, ...holes]);

/** Corner pairs of a closed ring. */
export const edgesOf = (ring: Ring): readonly (readonly [Point, Point])[] =>
  ring.map((corner, index) => [corner, ring[(index + 1) % ring.length]] as const);

const mapRegion = (region: Region, change: (point: Point) => Point): Region =>
  region.map(({ outer, holes }) => ({
    outer: outer.map(change),
    holes: holes.map((hole) => hole.map(change)),
  }));

export const movePoint = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy];

export const translate = (region: Region, by: Point): Region =>
  mapRegion(region, (point) => movePoint(point, by));

/** Turns by `angleRad` from x towards y about `about`. */
export function rotatePoint([x, y]: Point, angleRad: number, [aboutX, aboutY]: Point = [0, 0]): Point {
  const [cos, sin] = [Math.cos(angleRad), Math.sin(angleRad)];
  const [dx, dy] = [x - aboutX, y - aboutY];
  return [aboutX + cos * dx - sin * dy, aboutY + sin * dx + cos * dy];
}

export const rotate = (region: Region, angleRad: number, about: Point = [0, 0]): Region =>
  mapRegion(region, (point) => rotatePoint(point, angleRad, about));

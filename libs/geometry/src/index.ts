export {
  circle,
  convexHull,
  interiorPoint,
  largestPolygon,
  principalAxisRad,
  rectangle,
  simplifyRing,
} from './shape.js';
export { leastRectangle, type LeastRectangle } from './least-rectangle.js';
export { cutByLine, type CutRegion } from './cut.js';
export {
  difference,
  fromLeast,
  intersection,
  offset,
  regionOf,
  strip,
  union,
  type JoinKind,
} from './clip.js';
export {
  areaMm2,
  bounds,
  boundsOfPoints,
  centroid,
  perimeterMm,
  ringAreaMm2,
  ringLengthMm,
  signedAreaMm2,
} from './measure.js';
export { FARTHEST_MM, MOST_CORNERS, readOutline, readPoint } from './outline.js';
export {
  distance,
  edgesOf,
  movePoint,
  ringsOf,
  rotate,
  rotatePoint,
  translate,
  type Bounds,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from './point.js';
export { roundCorners, roundedCorners, type CornerRadii, type RoundedCorner } from './rounded.js';
export {
  containsPoint,
  distanceToEdge,
  distanceToRegion,
  squaredToSegment,
  distanceToRing,
  distanceToSegment,
  isInsideRing,
  lineCrossing,
  nearestOnRing,
  nearestOnSegment,
  segmentIntersection,
  segmentWithin,
} from './segment.js';
export { selfCrossing } from './self-crossing.js';

import {
  areaMm2,
  difference,
  edgesOf,
  distance,
  offset,
  regionOf,
  ringsOf,
  simplifyRing,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import type { DesignWork } from './design-work.js';
import type { Rules } from './rules.js';
import type { SupportShape } from './request.js';

/** The panel, what it rests on, and what its cuts keep to. */
export interface DeckUnderCut {
  readonly panel: Region;
  readonly insetMm: number;
  readonly supports: readonly SupportShape[];
  readonly rules: Rules;
  readonly taperWidthMm: number;
}

/** What of the rules decides where a cut runs; openings are designed once for all requests that agree in it. */
export type CutRules = Pick<
  Rules,
  | 'cutMarginMm'
  | 'flangeMm'
  | 'cornerRadiusMm'
  | 'supportClearanceMm'
  | 'undercutReachMm'
  | 'cutHPerM'
  | 'openedHPerM2'
  | 'openingH'
  | 'cornerH'
>;

/** The part of a deck that may be cut, as openings are designed on it. */
export interface Ground {
  readonly panel: Region;
  readonly insetMm: number;
  readonly supports: readonly SupportShape[];
  readonly rules: CutRules;
  /** Skin that stays between two cuts is at least as wide. */
  readonly neededBridgeMm: number;
  /** Far enough from every edge and hole; with few corners, so that cuts along it are straight lines. */
  readonly permitted: Region;
  /** Directions of the panel's longest edges, rad in [0, pi/2): cuts are laid along them. */
  readonly directions: readonly number[];
  /** What looking for better openings has taken and may take. */
  readonly work: DesignWork;
}

/** How far a straight cut may stray from a curved edge's parallel, inwards. */
const STRAIGHTEN_MM = 8;

export const groundOf = (site: Omit<Ground, 'permitted' | 'directions'>): Ground => ({
  ...site,
  permitted: straightened(offset(site.panel, -site.insetMm, 'miter')),
  directions: edgeDirections(site.panel),
});

/** Fewer corners, and nowhere outside the region it replaces. */
function straightened(region: Region): Region {
  const straight = region
    .map(({ outer, holes }) =>
      regionOf(
        simplifyRing(outer, STRAIGHTEN_MM),
        holes.map((hole) => simplifyRing(hole, STRAIGHTEN_MM)),
      ),
    )
    .flat();
  if (areaMm2(difference(straight, region)) < 1) return straight;
  const inside = offset(straight, -STRAIGHTEN_MM, 'miter');
  return inside.length > 0 && areaMm2(difference(inside, region)) < 1 ? inside : region;
}

const QUARTER_TURN = Math.PI / 2;

/** Up to three directions, longest edges first, that differ by more than 3 degrees. */
function edgeDirections(panel: Region): readonly number[] {
  const edges = panel
    .flatMap((polygon) => ringsOf([polygon]))
    .flatMap((ring: Ring) => edgesOf(simplifyRing(ring, STRAIGHTEN_MM)));
  const byLength = [...edges].sort((one, other) => wholeMm(...other) - wholeMm(...one));
  return byLength.reduce<readonly number[]>((kept, [a, b]) => {
    const direction = directionOf(a, b);
    return kept.length < 3 && kept.every((other) => quarterApart(direction, other) > 0.05)
      ? [...kept, direction]
      : kept;
  }, []);
}

/** Edges of one length keep their order round the panel. */
const wholeMm = (a: Point, b: Point): number => Math.round(distance(a, b));

const directionOf = (a: Point, b: Point): number => wrapped(Math.atan2(b[1] - a[1], b[0] - a[0]));
const wrapped = (angle: number): number => ((angle % QUARTER_TURN) + QUARTER_TURN) % QUARTER_TURN;

export function quarterApart(one: number, other: number): number {
  const apart = wrapped(one - other);
  return Math.min(apart, QUARTER_TURN - apart);
}

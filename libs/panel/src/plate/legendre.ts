/**
 * Polynomials on [-1, 1] for the smooth part of a plate's answer: orthonormal Legendre polynomials for the rotations, and
 * their integrals, which vanish at both ends, for what an edge holds fast. A bubble's slope is a Legendre polynomial, so
 * a thin plate can turn exactly as it deflects and does not lock.
 */
export interface LegendreBasis {
  readonly degree: number;
  /** Integral of bubble i times bubble j; rows 0 and 1 unused. */
  readonly bubbleMass: readonly Float64Array[];
  /** Integral of slope of Legendre i times slope of Legendre j. */
  readonly legendreStiffness: readonly Float64Array[];
  /** Share of bubble j in the sine wave of n half waves over the edge: row n - 1, column j. */
  readonly sineShares: readonly Float64Array[];
}

/** Values, slopes of the orthonormal Legendre polynomials, and the bubbles, at one place. */
export interface BasisAt {
  readonly legendre: Float64Array;
  readonly legendreSlope: Float64Array;
  readonly bubble: Float64Array;
}

const NODE_COUNT = 64;
/** Waves of an edge rotation that are carried over to polynomials; the rest falls with the fourth power. */
export const SINE_WAVES = 48;
const kept = new Map<number, LegendreBasis>();

export function legendreBasis(degree: number): LegendreBasis {
  const known = kept.get(degree);
  if (known !== undefined) return known;
  const made = makeBasis(degree);
  kept.set(degree, made);
  return made;
}

function makeBasis(degree: number): LegendreBasis {
  const { nodes, weights } = gaussRule(NODE_COUNT);
  const square = (): Float64Array[] => Array.from({ length: degree + 1 }, () => new Float64Array(degree + 1));
  const bubbleMass = square();
  const legendreStiffness = square();
  const sineShares = Array.from({ length: SINE_WAVES }, () => new Float64Array(degree + 1));
  nodes.forEach((node, at) => {
    const { legendreSlope, bubble } = basisAt(degree, node);
    for (let i = 0; i <= degree; i += 1) {
      for (let j = 0; j <= degree; j += 1) {
        bubbleMass[i][j] += weights[at] * bubble[i] * bubble[j];
        legendreStiffness[i][j] += weights[at] * legendreSlope[i] * legendreSlope[j];
      }
    }
    addSineShares(sineShares, node, weights[at], legendreSlope);
  });
  return { degree, bubbleMass, legendreStiffness, sineShares };
}

/** A bubble's slope is orthonormal, so its share is the integral of slope times slope, here integrated by parts. */
function addSineShares(
  shares: readonly Float64Array[],
  node: number,
  weight: number,
  legendreSlope: Float64Array,
): void {
  shares.forEach((row, before) => {
    const wave = weight * Math.sin(((before + 1) * Math.PI * (1 + node)) / 2);
    for (let j = 2; j < row.length; j += 1) row[j] -= wave * legendreSlope[j - 1];
  });
}

/** Source: [ARITHMETIC] three-term recurrence of the Legendre polynomials. */
export function basisAt(degree: number, at: number): BasisAt {
  const plain = new Float64Array(degree + 1);
  const slope = new Float64Array(degree + 1);
  plain[0] = 1;
  if (degree > 0) {
    plain[1] = at;
    slope[1] = 1;
  }
  for (let i = 2; i <= degree; i += 1) {
    plain[i] = ((2 * i - 1) * at * plain[i - 1] - (i - 1) * plain[i - 2]) / i;
    slope[i] = slope[i - 2] + (2 * i - 1) * plain[i - 1];
  }
  const bubble = new Float64Array(degree + 1);
  for (let i = 2; i <= degree; i += 1) bubble[i] = (plain[i] - plain[i - 2]) / Math.sqrt(2 * (2 * i - 1));
  const norm = (value: number, i: number): number => value * Math.sqrt((2 * i + 1) / 2);
  return { legendre: plain.map(norm), legendreSlope: slope.map(norm), bubble };
}

/** Gauss-Legendre points by Newton steps on the Legendre polynomial. Source: [ARITHMETIC]. */
export function gaussRule(count: number): { readonly nodes: Float64Array; readonly weights: Float64Array } {
  const nodes = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    let node = Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let step = 0; step < 8; step += 1) {
      const [value, before] = plainLegendre(count, node);
      slope = (count * (node * value - before)) / (node * node - 1);
      node -= value / slope;
    }
    nodes[i] = node;
    weights[i] = 2 / ((1 - node * node) * slope * slope);
  }
  return { nodes, weights };
}

function plainLegendre(degree: number, at: number): readonly [number, number] {
  let before = 1;
  let value = at;
  for (let i = 2; i <= degree; i += 1)
    [before, value] = [value, ((2 * i - 1) * at * value - (i - 1) * before) / i];
  return [value, before];
}

/** Where along a span the answer is wanted, and where the load lies. */
export interface LoadedSpan {
  readonly span: number;
  readonly from: number;
  readonly to: number;
  readonly at: number;
}

/** Value and slope of an answer as complex numbers: (re, im, slope re, slope im). Reused to spare the memory. */
export type WaveAnswer = Float64Array;
export const newWaveAnswer = (): WaveAnswer => new Float64Array(4);

/**
 * k^2 times the answer of u'' = k^2 u - 1 on the loaded part of a span with u = 0 at both ends, less the constant 1 that
 * stands under the load. Written in falling exponentials, so that nothing overflows.
 *
 * Source: [PANEL-DERIVED] Green's function of a string on springs, integrated over the load.
 * Worked: libs/panel/src/plate/wave-answer.spec.ts
 */
export function waveAnswer(
  kRe: number,
  kIm: number,
  { span, from, to, at }: LoadedSpan,
  into: WaveAnswer,
): void {
  into.fill(0);
  const isLeft = at < from;
  const isRight = at > to;
  if (isLeft) {
    addEdge(kRe, kIm, { span, x: span - at, from: span - from, sign: 1, slopeSign: -1 }, into);
    addEdge(kRe, kIm, { span, x: span - at, from: span - to, sign: -1, slopeSign: 1 }, into);
  } else if (isRight) {
    addEdge(kRe, kIm, { span, x: at, from: to, sign: 1, slopeSign: 1 }, into);
    addEdge(kRe, kIm, { span, x: at, from, sign: -1, slopeSign: -1 }, into);
  } else {
    addEdge(kRe, kIm, { span, x: at, from, sign: -1, slopeSign: -1 }, into);
    addEdge(kRe, kIm, { span, x: span - at, from: span - to, sign: -1, slopeSign: 1 }, into);
  }
}

interface Edge {
  readonly span: number;
  readonly x: number;
  readonly from: number;
  readonly sign: number;
  readonly slopeSign: number;
}

/** Adds cosh(k from) sinh(k (span - x)) / sinh(k span) and its slope, for x at or beyond `from`. */
function addEdge(kRe: number, kIm: number, edge: Edge, into: WaveAnswer): void {
  const isFarFromEnds = kRe * Math.min(edge.x + edge.from, 2 * (edge.span - edge.x)) > FADED;
  if (isFarFromEnds) addNearEdge(kRe, kIm, edge, into);
  else if (kIm === 0) addRealEdge(kRe, edge, into);
  else addComplexEdge(kRe, kIm, edge, into);
}

/** A wave that has fallen by e^-40 is below the last digit. */
const FADED = 40;

/** Neither end of the span is felt: only the falling wave from the edge of the load is left. */
function addNearEdge(kRe: number, kIm: number, { x, from, sign, slopeSign }: Edge, into: WaveAnswer): void {
  const size = Math.exp(kRe * (from - x)) / 2;
  if (size < GONE) return;
  const re = kIm === 0 ? size : size * Math.cos(kIm * (x - from));
  const im = kIm === 0 ? 0 : -size * Math.sin(kIm * (x - from));
  into[0] += sign * re;
  into[1] += sign * im;
  into[2] -= slopeSign * (kRe * re - kIm * im);
  into[3] -= slopeSign * (kRe * im + kIm * re);
}

const GONE = 1e-20;

function addRealEdge(k: number, { span, x, from, sign, slopeSign }: Edge, into: WaveAnswer): void {
  const head = (Math.exp(k * (from - x)) + Math.exp(-k * (x + from))) / (2 * (1 - Math.exp(-2 * k * span)));
  const end = Math.exp(-2 * k * (span - x));
  into[0] += sign * head * (1 - end);
  into[2] -= slopeSign * k * head * (1 + end);
}

function addComplexEdge(
  kRe: number,
  kIm: number,
  { span, x, from, sign, slopeSign }: Edge,
  into: WaveAnswer,
): void {
  const near = Math.exp(-kRe * (x - from));
  const far = Math.exp(-kRe * (x + from));
  const end = Math.exp(-2 * kRe * (span - x));
  const whole = Math.exp(-2 * kRe * span);
  const topRe = (near * Math.cos(kIm * (x - from)) + far * Math.cos(kIm * (x + from))) / 2;
  const topIm = -(near * Math.sin(kIm * (x - from)) + far * Math.sin(kIm * (x + from))) / 2;
  const downRe = 1 - whole * Math.cos(2 * kIm * span);
  const downIm = whole * Math.sin(2 * kIm * span);
  const size = downRe * downRe + downIm * downIm;
  const headRe = (topRe * downRe + topIm * downIm) / size;
  const headIm = (topIm * downRe - topRe * downIm) / size;
  const endRe = end * Math.cos(2 * kIm * (span - x));
  const endIm = -end * Math.sin(2 * kIm * (span - x));
  into[0] += sign * (headRe * (1 - endRe) + headIm * endIm);
  into[1] += sign * (headIm * (1 - endRe) - headRe * endIm);
  const turnRe = headRe * (1 + endRe) - headIm * endIm;
  const turnIm = headIm * (1 + endRe) + headRe * endIm;
  into[2] -= slopeSign * (kRe * turnRe - kIm * turnIm);
  into[3] -= slopeSign * (kRe * turnIm + kIm * turnRe);
}

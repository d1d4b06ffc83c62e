export { Defect, unreachable } from './defect.js';
export { inOrder, type InOrder } from './in-order.js';
export { didYouMean, nearest } from './nearest.js';
export { given } from './given.js';
export { normalCdf, normalDensity, normalQuantile } from './normal.js';
export {
  allOf,
  allOfList,
  andThen,
  mapValue,
  refusal,
  success,
  unlessProblems,
  type Outcome,
  type Refusal,
  type Success,
} from './outcome.js';
export {
  below,
  detailOf,
  pointer,
  problem,
  titleOf,
  type Fact,
  type Problem,
  type ProblemCode,
} from './problem.js';
export { isKnown, type Known } from './known.js';
export { lazily } from './lazily.js';
export { laidOver } from './laid-over.js';
export { liesWithin, rangeInWords, type Range } from './range.js';
export { randomStream, type RandomStream } from './random.js';
export { problemWords } from './problem-words.js';
export {
  scaled,
  triangularMean,
  triangularQuantile,
  triangularVariance,
  type ThreePoint,
} from './three-point.js';

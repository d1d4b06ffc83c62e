export { combinationWith, jobLadder, withoutRungs, type JobLadder, type PlaceChoice } from './combine.js';
export { slabDrying } from './drying.js';
export { flangeForTaper, liftsFor, pastePerMetre } from './edges.js';
export {
  liningKinds,
  type CoreState,
  type DeckFacts,
  type EdgeFacts,
  type FittingFacts,
  type LiningKind,
  type MethodFacts,
  type PlaceFacts,
} from './facts.js';
export { formulas } from './formulas.js';
export { usualCards, type SealantKind, type UsualCard } from './hardware/cards.js';
export {
  clampLoad,
  plateSideByArea,
  plateSidePerBolt,
  plateThickness,
  railMoment,
  sealantVolume,
  washerPressure,
} from './hardware/formulas.js';
export { fittingHours, type FittingHours, type FittingTimes } from './hardware/hours.js';
export {
  cardFaults,
  fittingCard,
  torqueFor,
  type BackingPlate,
  type DeckStack,
  type FittingCard,
  type FittingStated,
  type Insert,
} from './hardware/schedule.js';
export { gapVolume, holesPerM2, plugVolume, pocketDiameter, poursFor } from './holes.js';
export { judged, ladderFor, rungNamed, type JudgedRung, type PlaceLadder } from './ladder.js';
export { leakAnswer, leakCauses, leakRemedies, type LeakAnswer, type LeakCause } from './leak.js';
export { limits, solidOverCoreKgPerM2 } from './limits.js';
export {
  rungCodes,
  verdicts,
  type Method,
  type Reach,
  type Reason,
  type RungCode,
  type Verdict,
} from './method.js';
export { caulkPerM2, screwsPerM2 } from './overlay.js';
export { methods } from './rungs/all.js';
export { fillFor } from './rungs/edge.js';
export { closedAlone } from './rungs/leak.js';

import { leakAnswer, type FittingCard, type JudgedRung, type PlaceChoice, type Reason } from '#lib/methods';
import type {
  HardwareCard,
  LeakSection,
  MethodsSection,
  PlaceSection,
  Range,
  RungNamed,
  RungReason,
  RungSection,
} from '../document/estimate-document.js';
import type { Job } from '../job/job.js';
import { isTakenOff } from '../stages/coatings.js';
import { leakCauseIn } from '../ladder/leak-work.js';
import type { LadderWork } from '../ladder/method-ladder.js';
import type { PricedRung } from '../ladder/priced-ladder.js';

/** The ladder as a reader sees it: every rung with its reason, what it takes, and what is planned. */
export function methodsSection(work: LadderWork, rungs: readonly PricedRung[]): MethodsSection {
  const { recommended, runnerUp } = work.ladder;
  return {
    ...(recommended === undefined ? {} : { recommended: rungNamed(recommended) }),
    ...(runnerUp === undefined ? {} : { runnerUp: rungNamed(runnerUp) }),
    planned: { ...rungNamed(work.chosen), isNamedInRecord: work.isNamed },
    rungs: rungs.map(rungSection),
    places: work.combination.map(placeSection),
  };
}

export const placeSection = ({ place, rung }: PlaceChoice): PlaceSection => ({
  place: place.id,
  badAreaM2: place.badAreaM2,
  ...rungNamed(rung),
});

export const rungNamed = ({ method, deciding }: JudgedRung): RungNamed => ({
  rung: method.code,
  title: method.title,
  because: deciding.text,
});

export function rungSection({ rung, takes, isRough, notWorkedOut }: PricedRung): RungSection {
  const { method, verdict, deciding, conditions, leavesUndone } = rung;
  return {
    rung: method.code,
    title: method.title,
    verdict,
    deciding: reasonOf(deciding),
    conditions: conditions.map(reasonOf),
    leavesUndone,
    stages: method.stages,
    isRough,
    ...(notWorkedOut === undefined ? {} : { notWorkedOut }),
    ...(takes === undefined ? {} : { ...takes.times, priceRange: takes.price }),
  };
}

const reasonOf = ({ code, text, value, limit, unit, cite, wouldFit }: Reason): RungReason => ({
  code,
  text,
  ...(value === undefined ? {} : { value }),
  ...(limit === undefined ? {} : { limit }),
  ...(unit === undefined ? {} : { unit }),
  source: cite.source,
  ...(wouldFit === undefined ? {} : { wouldFit }),
});

const range = ({ low, likely, high }: FittingCard['offH']): Range => ({ p10: low, p50: likely, p90: high });

export const hardwareCard = (card: FittingCard): HardwareCard => ({
  id: card.id,
  kind: card.kind,
  fasteners: card.fasteners,
  fastenerMm: card.fastenerMm,
  fastenerLengthMm: card.fastenerLengthMm,
  plugMm: card.plugMm,
  plugMl: card.plugMl,
  pours: card.pours,
  baseMm: card.baseMm,
  ...(card.insert === undefined ? {} : { insert: card.insert }),
  ...(card.plate === undefined ? {} : { plate: card.plate }),
  sealant: card.sealant,
  tightening: card.tightening,
  offH: range(card.offH),
  onH: range(card.onH),
  needsSecondPerson: card.needsSecondPerson,
  ...(card.referral === undefined ? {} : { referral: card.referral }),
  ...(card.note === undefined ? {} : { note: card.note }),
  assumed: card.assumed,
  source: card.cite.source,
});

export function leakSection(
  { record }: Job,
  { method }: JudgedRung,
  { cards, isTreated }: { readonly cards: readonly FittingCard[]; readonly isTreated: boolean },
): LeakSection {
  return leakAnswer(leakCauseIn(record), {
    bedded: cards.map(({ kind }) => kind),
    takesOverlayOff: isTakenOff(record.panel.overlay),
    railOff: method.edgeWork === 'rail',
    isTreated,
  });
}

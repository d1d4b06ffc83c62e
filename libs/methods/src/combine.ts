import type { DeckFacts, PlaceFacts } from './facts.js';
import { ladderFor, refuting, rungNamed, type JudgedRung, type PlaceLadder } from './ladder.js';
import type { Reason, RungCode } from './method.js';

/** What is done at one place. */
export interface PlaceChoice {
  readonly place: PlaceFacts;
  readonly rung: JudgedRung;
}

/** The ladder of a job: judged where the defect is largest, and what each place gets. */
export interface JobLadder {
  readonly places: readonly PlaceLadder[];
  /** The place that decides what kind of job this is. */
  readonly governing: PlaceLadder;
  /** Absent where no rung is fit: that finding is then the answer. */
  readonly recommended?: JudgedRung;
  readonly runnerUp?: JudgedRung;
  /** Rung by place, where one was found for each. */
  readonly combination: readonly PlaceChoice[];
}

/** Judges every place; the largest governs, and the others take what suits them beside it. */
export function jobLadder(
  deck: DeckFacts,
  places: readonly [PlaceFacts, ...(readonly PlaceFacts[])],
): JobLadder {
  const ladders = places.map((place) => ladderFor({ deck, place }));
  return combined(
    ladders,
    ladders.reduce((most, one) => (weightOf(one) > weightOf(most) ? one : most)),
  );
}

/** The same job with rungs refused at the governing place, because planning them showed that they cannot be carried out. */
export function withoutRungs(
  { places, governing }: JobLadder,
  deck: DeckFacts,
  reasons: ReadonlyMap<RungCode, Reason>,
): JobLadder {
  const again = refuting(governing, { deck, place: governing.place }, reasons);
  return combined(
    places.map((one) => (one === governing ? again : one)),
    again,
  );
}

function combined(ladders: readonly PlaceLadder[], governing: PlaceLadder): JobLadder {
  const [recommended, runnerUp] = governing.inOrder;
  return {
    places: ladders,
    governing,
    ...(recommended === undefined ? {} : { recommended }),
    ...(runnerUp === undefined ? {} : { runnerUp }),
    combination:
      recommended === undefined
        ? []
        : ladders.flatMap((one) => choiceAt(one, { governing, chosen: recommended.method.code })),
  };
}

/** Bad core first, by its area; then fittings with something wet; then those that only want bedding. */
const weightOf = ({ place, inOrder }: PlaceLadder): number =>
  place.badAreaM2 * 1000 +
  (inOrder.at(0)?.method.code === 'rebed' ? 0 : 1) +
  (place.kind === 'zone' ? 0.5 : 0);

interface Chosen {
  readonly governing: PlaceLadder;
  readonly chosen: RungCode;
}

/** The combination for a rung that the record names, or for the recommended one. */
export const combinationWith = (ladder: JobLadder, chosen: RungCode): readonly PlaceChoice[] =>
  ladder.places.flatMap((one) => choiceAt(one, { governing: ladder.governing, chosen }));

function choiceAt(one: PlaceLadder, { governing, chosen }: Chosen): readonly PlaceChoice[] {
  const named = rungNamed(one, chosen);
  if (one === governing) return [{ place: one.place, rung: named }];
  const [own] = one.inOrder;
  const takesNamed = named.verdict !== 'unfit' && (own === undefined || sharesTheOpening(named, own));
  const rung = takesNamed ? named : own;
  return rung === undefined ? [] : [{ place: one.place, rung }];
}

/** Where the deck is opened anyway, a second opening in the same way costs least: its set-up is paid. */
const sharesTheOpening = (named: JudgedRung, own: JudgedRung): boolean =>
  named.method.reach === 'opening' && own.method.reach === 'opening';

import { Defect } from '#lib/kernel';
import type { MethodFacts, PlaceFacts } from './facts.js';
import type { Method, Reason, RungCode, Verdict } from './method.js';
import { methods } from './rungs/all.js';

/** One rung judged on one place. */
export interface JudgedRung {
  readonly method: Method;
  readonly verdict: Verdict;
  /** The one reason that decides, with its number. */
  readonly deciding: Reason;
  readonly conditions: readonly Reason[];
  readonly leavesUndone: readonly string[];
}

/** The ladder of one place, and what a repairer would take there. */
export interface PlaceLadder {
  readonly place: PlaceFacts;
  readonly rungs: readonly JudgedRung[];
  /** From the best to the least of the rungs that are not refused. */
  readonly inOrder: readonly JudgedRung[];
}

/** Judges every rung: the first refusal decides; without one, conditions make it conditional. */
export const ladderFor = (facts: MethodFacts): PlaceLadder =>
  ordered(
    facts,
    methods.map((method) => judged(method, facts)),
  );

/** The same ladder with rungs refused that suit the place and cannot be carried out; the reason was found by planning them. */
export const refuting = (
  ladder: PlaceLadder,
  facts: MethodFacts,
  reasons: ReadonlyMap<RungCode, Reason>,
): PlaceLadder =>
  ordered(
    facts,
    ladder.rungs.map((rung) => {
      const reason = reasons.get(rung.method.code);
      return reason === undefined || rung.verdict === 'unfit'
        ? rung
        : { ...rung, verdict: 'unfit', deciding: reason, conditions: [] };
    }),
  );

function ordered(facts: MethodFacts, rungs: readonly JudgedRung[]): PlaceLadder {
  const inOrder = rungs
    .filter(({ verdict }) => verdict !== 'unfit')
    .sort((a, b) => burden(a, facts) - burden(b, facts));
  return { place: facts.place, rungs, inOrder };
}

export function judged(method: Method, facts: MethodFacts): JudgedRung {
  const refused = firstOf(method, facts);
  const leavesUndone = method.leavesUndone(facts);
  if (refused !== undefined)
    return { method, verdict: 'unfit', deciding: refused, conditions: [], leavesUndone };
  const conditions = method.conditions.flatMap((test) => test(facts) ?? []);
  const [first] = conditions;
  return first === undefined
    ? { method, verdict: 'fit', deciding: method.suits(facts), conditions, leavesUndone }
    : { method, verdict: 'fit-with-conditions', deciding: first, conditions, leavesUndone };
}

const firstOf = ({ refusals }: Method, facts: MethodFacts): Reason | undefined => {
  for (const test of refusals) {
    const found = test(facts);
    if (found !== undefined) return found;
  }
  return undefined;
};

/** A condition that has to be settled first weighs as much as a step or two on the ladder. Judgement, no published source. */
const FIRST_CONDITION = 15;
const FURTHER_CONDITION = 3;

const burden = ({ method, conditions }: JudgedRung, facts: MethodFacts): number =>
  method.rank(facts) +
  (conditions.length === 0 ? 0 : FIRST_CONDITION + FURTHER_CONDITION * (conditions.length - 1));

export function rungNamed({ rungs }: PlaceLadder, code: RungCode): JudgedRung {
  const found = rungs.find(({ method }) => method.code === code);
  if (found === undefined) throw new Defect(`No rung is called ${code}`);
  return found;
}

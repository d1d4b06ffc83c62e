import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import {
  combinationWith,
  jobLadder,
  leakRemedies,
  rungNamed,
  withoutRungs,
  type DeckFacts,
  type JobLadder,
  type JudgedRung,
  type PlaceChoice,
  type RungCode,
} from '#lib/methods';
import type { DefectRecord, MethodChoice } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import { keptWork, type KeptWork } from '../kept-work.js';
import { extentOf, type ExtentWork } from '../stages/extent-stage.js';
import { nothingFound } from '../stages/scope-stage.js';
import { reasonsAmong, refutedBy, type Against } from './carried-out.js';
import { deckFactsOf } from './deck-facts.js';
import { leakCauseIn } from './leak-work.js';
import { isPlugsAtFittings, isSoundInPlugs, leakPlaces, placesOf } from './places.js';

/** Every way to mend this deck judged, and the one that is planned. */
export interface LadderWork {
  readonly ladder: JobLadder;
  readonly chosen: JudgedRung;
  /** Whether the record named the rung, or the ladder recommends it. */
  readonly isNamed: boolean;
  readonly combination: readonly PlaceChoice[];
  /** Absent where nothing but fittings is looked after. */
  readonly extent?: ExtentWork;
  /** What was asked to judge the rungs and need not be asked again. */
  readonly kept: KeptWork;
}

/** Whether somebody is shown every rung; who wants the planned one alone is spared the cuts of the others. */
export type RungsShown = 'all' | 'planned';

/** Judges the ladder and takes the rung that the record names, or the recommended one; an unfit one is refused with its reason. */
export function ladderOf(job: Job, kept: KeptWork, shown: RungsShown): Outcome<LadderWork> {
  const extent = mappedExtent(job, kept);
  const judged = judgedWith(job, extent, { kept, shown });
  if (!judged.ok) return judged;
  const { ladder } = judged.value;
  const named = namedIn(job.record.method, ladder);
  const chosen = named ?? ladder.recommended;
  if (chosen === undefined) return refusal(...nothingFits(ladder));
  if (chosen.verdict === 'unfit') return refusal(unfit(chosen, ladder, pointerTo(job.record.method)));
  return success({
    ladder,
    chosen,
    isNamed: named !== undefined,
    kept,
    combination: combinationWith(ladder, chosen.method.code),
    ...(extent.ok ? { extent: extent.value } : {}),
  });
}

/** The ladder alone, before anything is chosen: also where no rung is fit. */
export function judgedLadder(job: Job): Outcome<Pick<LadderWork, 'ladder' | 'extent'>> {
  const kept = keptWork();
  return judgedWith(job, mappedExtent(job, kept), { kept, shown: 'all' });
}

function judgedWith(
  job: Job,
  extent: Outcome<ExtentWork>,
  { kept, shown }: { readonly kept: KeptWork; readonly shown: RungsShown },
): Outcome<Pick<LadderWork, 'ladder' | 'extent'>> {
  const found = placesOf(job, extent.ok ? extent.value.zones : []);
  const isMapped = extent.ok || isSoundInPlugs(job);
  const places = found.length > 0 || !isMapped ? found : leakPlaces(job);
  const [first, ...others] = places;
  if (first === undefined || (!extent.ok && (job.record.zones ?? []).length > 0))
    return extent.ok ? refusal(nothingBad(job)) : extent;
  const deck = deckFactsOf(job, places);
  const ladder = jobLadder(deck, [first, ...others]);
  if (!extent.ok || first.kind === 'leak') return success({ ladder });
  const against = refutedBy(job, ladder, extent.value, kept);
  return success({
    ladder:
      shown === 'all'
        ? withoutRungs(ladder, deck, reasonsAmong(ladder.governing.rungs, against))
        : standing(job.record.method, ladder, { deck, against }),
    extent: extent.value,
  });
}

interface Standing {
  readonly deck: DeckFacts;
  readonly against: Against;
}

/** Until what is named and what is recommended can be carried out, or nothing is left. */
function standing(
  method: MethodChoice | undefined,
  ladder: JobLadder,
  { deck, against }: Standing,
): JobLadder {
  const chosen = [namedIn(method, ladder), ladder.recommended].flatMap((rung) => rung ?? []);
  const reasons = reasonsAmong(chosen, against);
  return reasons.size === 0
    ? ladder
    : standing(method, withoutRungs(ladder, deck, reasons), { deck, against });
}

/** A few plugs beside fittings map nothing: they speak for those holes alone. Nor do plugs that are all sound. */
const mappedExtent = (job: Job, kept: KeptWork): Outcome<ExtentWork> =>
  isPlugsAtFittings(job) || isSoundInPlugs(job) ? refusal(nothingBad(job)) : extentOf(job, kept);

/** Readings that show nothing, or a record without any. */
const nothingBad = ({ record }: Job): Problem =>
  record.survey === undefined
    ? problem('nothing-to-repair', '/zones')
    : problem('not-supported', '/survey/readings', { why: `${nothingFound}${leakAlone(record)}` });

/** A crack or a joint over dry core wants its own remedy, and no deck is opened for it. */
function leakAlone(record: DefectRecord): string {
  const leak = leakCauseIn(record);
  return leak === 'not-known'
    ? ''
    : `; what lets the water in is mended by itself: ${leakRemedies[leak].remedy}`;
}

/** Whoever names access or skin has named a rung too. */
function namedIn(method: MethodChoice | undefined, ladder: JobLadder): JudgedRung | undefined {
  const code = codeNamed(method);
  return code === undefined ? undefined : rungNamed(ladder.governing, code);
}

function codeNamed(method: MethodChoice | undefined): RungCode | undefined {
  if (method?.rung !== undefined) return method.rung;
  if (method?.access === 'from-below') return 'from-below';
  if (method?.skin === 're-bed') return 'above-old-skin';
  return method?.skin === 'relay' || method?.access === 'from-above' ? 'above-new-skin' : undefined;
}

const pointerTo = (method: MethodChoice | undefined): string =>
  method?.rung !== undefined
    ? '/method/rung'
    : method?.access !== undefined
      ? '/method/access'
      : '/method/skin';

function unfit({ method, deciding }: JudgedRung, { recommended }: JobLadder, at: string): Problem {
  return problem('method-unfit', at, {
    method: method.title,
    rule: deciding.code,
    reason: deciding.text,
    instead:
      recommended === undefined
        ? 'no other rung fits either'
        : `${recommended.method.title.toLowerCase()} (${recommended.method.code}) fits: ${recommended.deciding.text}`,
    ...(deciding.value === undefined ? {} : { value: deciding.value }),
    ...(deciding.limit === undefined ? {} : { limit: deciding.limit }),
  });
}

/** Each rung with the one reason that decides; that is then the answer. */
const nothingFits = ({ governing }: JobLadder): readonly Problem[] =>
  governing.rungs.map(({ method, deciding }) =>
    problem('no-method-fits', '', {
      method: method.title,
      reason: deciding.text,
      wouldFit: deciding.wouldFit ?? 'nothing that is known',
    }),
  );

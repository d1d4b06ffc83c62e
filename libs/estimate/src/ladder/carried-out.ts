import { reachOfPlan } from '#lib/extent';
import { areaMm2, intersection, offset, type Region } from '#lib/geometry';
import { detailOf, isKnown, type Outcome, type Problem } from '#lib/kernel';
import {
  combinationWith,
  limits,
  type JobLadder,
  type JudgedRung,
  type Reason,
  type RungCode,
} from '#lib/methods';
import type { PanelRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import type { KeptWork } from '../kept-work.js';
import type { ExtentWork } from '../stages/extent-stage.js';
import { stackFor } from '../stages/core-stage.js';
import { pressOf } from '../stages/process-stage.js';
import { scopeOf, type ScopeWork } from '../stages/scope-stage.js';
import { openedIn } from './opened-in.js';
import { takingRung } from './taking-rung.js';

/** What stands against carrying out a rung that suits the place. */
export type Against = (rung: JudgedRung) => Reason | undefined;

/**
 * Rungs that suit the place and still cannot be carried out, by what their own cut shows: it does not get at the bad core,
 * or nothing presses what is bedded in it. Worked out before anything is priced, for the rungs that are asked about.
 */
export function refutedBy(job: Job, ladder: JobLadder, extent: ExtentWork, kept: KeptWork): Against {
  const known = new Map<string, Reason | undefined>();
  return (rung) => {
    if (rung.method.reach !== 'opening' || rung.verdict === 'unfit') return undefined;
    const zones = openedIn(combinationWith(ladder, rung.method.code), extent.zones);
    const taken = takingRung(job, rung);
    const { access, skin, flangeMm } = taken.answers.method;
    const key = [
      access.value,
      skin.value,
      flangeMm.value,
      rung.method.fill,
      ...zones.map(({ id }) => id),
    ].join();
    if (!known.has(key)) known.set(key, reasonAgainst(taken, rung, scopeOf(taken, zones, kept)));
    return known.get(key);
  };
}

export const reasonsAmong = (rungs: readonly JudgedRung[], against: Against): ReadonlyMap<RungCode, Reason> =>
  new Map(
    rungs.flatMap((rung): [RungCode, Reason][] => {
      const reason = against(rung);
      return reason === undefined ? [] : [[rung.method.code, reason]];
    }),
  );

function reasonAgainst(job: Job, { method }: JudgedRung, scope: Outcome<ScopeWork>): Reason | undefined {
  if (!scope.ok) return noCut(scope.problems.map(detailOf).join(' '));
  return (
    outOfReach(job, scope.value) ??
    (method.fill === 'solid' ? undefined : (unfollowed(job) ?? unfilled(job) ?? unpressed(job, scope.value)))
  );
}

/** Builders laid squares of 100 to 150 mm of plain core on a camber; smaller ones are tiles, and more joint than core. From memory. */
const LEAST_TILE_MM = 100;

/** A camber so tight that plain core of this kind follows it only in tiles. */
function unfollowed(job: Job): Reason | undefined {
  const camber = stackFor(job)?.camber;
  if (camber?.way !== 'shorter-pieces' || camber.longestFlatPieceMm >= LEAST_TILE_MM) return undefined;
  return {
    code: 'core-does-not-follow',
    text: `${camber.words}, and pieces under ${LEAST_TILE_MM} mm are more joint than core`,
    value: camber.longestFlatPieceMm,
    limit: LEAST_TILE_MM,
    unit: 'mm',
    cite: { source: 'DECK-REPAIR-PRACTICE' },
    wouldFit: 'scored or thinner core',
  };
}

/** So far below flush is made up with one more ply or a thicker bed, so far above the deck around is faired up to it. Source: [FROM-MEMORY]. */
const MADE_UP_MM = { low: 3, proud: 2, flush: 0 } as const;

/** Sheets that leave the new skin deep in a hole, or stand above the deck, are no core for this cavity. */
function unfilled(job: Job): Reason | undefined {
  const stack = stackFor(job);
  if (stack === undefined || stack.check.verdict === 'holds') return undefined;
  const { governs, beyondMm, words } = stack.check;
  if (beyondMm <= MADE_UP_MM[governs]) return undefined;
  return {
    code: 'core-does-not-fill',
    text: `no sheets of ${job.core.name.toLowerCase()} fill the ${job.answers.core.cavityMm.value} mm between the skins: ${words}`,
    value: beyondMm,
    limit: MADE_UP_MM[governs],
    unit: 'mm',
    cite: { source: 'FROM-MEMORY' },
    wouldFit:
      governs === 'low'
        ? 'a core sold in thicker sheets, or the height of the cavity measured again at a plug'
        : 'a core sold in thinner sheets, or solid laminate in a cavity so low',
  };
}

const noCut = (text: string): Reason => ({
  code: 'no-cut',
  text,
  cite: { source: 'METHODS-EDGES' },
  wouldFit: 'another way in, or another cut',
});

/** The cut with what tools ream out under its lip, against each zone and its margin where the deck is cored. */
function outOfReach({ record: { panel } }: Job, { zones, plan }: ScopeWork): Reason | undefined {
  const cored = coredGround(panel);
  const reachTo = reachOfPlan(plan.openings, {
    panel: cored,
    undercutReachMm: limits.lipReachMm,
    marginMm: limits.provenMarginMm,
  });
  for (const { id, outline, holes = [] } of zones) {
    const bad = intersection([{ outer: outline, holes }], cored);
    const reach = reachTo(bad);
    if (!reach.isReached && areaMm2(bad) > 0)
      return {
        code: 'plan-does-not-reach',
        text: `the cut and ${limits.lipReachMm} mm of reaming under its lip leave ${reach.unreachedM2.toFixed(3)} m2 of zone ${id} and the ${limits.provenMarginMm} mm round it`,
        value: reach.unreachedM2,
        limit: 0,
        unit: 'm2',
        cite: { source: 'METHODS-EDGES' },
        wouldFit: 'a narrower flange, plies wrapped up the edge, the rail off, or work from below',
      };
  }
  return undefined;
}

/** The panel without its hatches and without the solid laminate at its edges, where somebody measured it. */
function coredGround({ outline, holes = [], coreEndsMm }: PanelRecord): Region {
  const panel: Region = [{ outer: outline, holes }];
  return coreEndsMm === undefined || coreEndsMm === 0 ? panel : offset(panel, -coreEndsMm, 'miter');
}

/** The reason alone: a reader of the ladder has no use for the field's name. */
const whyOf = (found: Problem): string =>
  typeof found.facts.why === 'string' ? found.facts.why : detailOf(found);

function unpressed(job: Job, scope: ScopeWork): Reason | undefined {
  const press = pressOf(job, scope);
  if (!press.ok)
    return {
      code: 'nothing-presses',
      text: press.problems.map(whyOf).join(' '),
      cite: { source: 'METHODS-IN-PRINT' },
      wouldFit: 'scored or thinner core',
    };
  const { method, refusals, requiredKPa } = press.value;
  if (method !== undefined) return undefined;
  return {
    code: 'nothing-presses',
    text: `nothing presses the bed to ${requiredKPa.toFixed(1)} kPa: ${refusals.join('; ')}`,
    value: requiredKPa,
    unit: 'kPa',
    cite: { source: 'METHODS-IN-PRINT' },
    wouldFit: isKnown(job.answers.panel.isInnerSkinAirtight)
      ? 'props from below, or scored core'
      : 'props from below, scored core, or an inner skin that a drop test shows to be airtight',
  };
}

import { andThen, problem, refusal, success, type Outcome } from '#lib/kernel';
import { openingMethodQuestions, type OpeningPlan, type OpeningRequest, type ZoneShape } from '#lib/extent';
import type { Job } from '../job/job.js';
import type { KeptWork } from '../kept-work.js';

/** Where to saw and what lies there. */
export interface ScopeWork {
  readonly zones: readonly ZoneShape[];
  readonly plan: OpeningPlan;
}

/** Plans the openings for zones that were drawn or found; with none there is nothing to price, and the findings say why. */
export const scopeOf = (
  job: Job,
  zones: readonly ZoneShape[],
  { openings }: Pick<KeptWork, 'openings'>,
): Outcome<ScopeWork> =>
  zones.length === 0
    ? refusal(problem('not-supported', '/survey/readings', { why: nothingFound }))
    : andThen(openings(openingRequestOf(job, zones)), (plan) =>
        plan.openings.length === 0
          ? refusal(
              problem('not-supported', '/zones', {
                why: plan.findings.map(({ text }) => text).join(' ') || nothingToCut,
              }),
            )
          : success({ zones, plan }),
      );

export const nothingFound =
  'they show no place where bad core is likely enough to cut the deck; read closer together where it sounds dull, take a plug there, or draw the zone that is known';
const nothingToCut = 'nothing is left to cut out; draw each zone as large as the bad core was found';

/** Left to the room of openings, which says why it is usual. */
const USUAL_FLANGE_MM = openingMethodQuestions.flangeMm.otherwise.value;

export function openingRequestOf(
  { record, answers: { outerSkin, innerSkin, core, method } }: Job,
  zones: readonly ZoneShape[],
): OpeningRequest {
  return {
    panel: record.panel,
    outerSkin: { thicknessMm: outerSkin.thicknessMm.value },
    innerSkin: { thicknessMm: innerSkin.thicknessMm.value },
    core: { thicknessMm: core.thicknessMm.value },
    zones,
    ...(record.fittings === undefined ? {} : { fittings: record.fittings }),
    ...(record.survey === undefined ? {} : { survey: record.survey }),
    method: {
      skin: method.skin.value,
      access: method.access.value,
      taperRatio: method.taperRatio.value,
      ...(record.method?.cutMarginMm === undefined ? {} : { cutMarginMm: record.method.cutMarginMm }),
      ...(record.method?.flangeMm === undefined && method.flangeMm.value === USUAL_FLANGE_MM
        ? {}
        : { flangeMm: method.flangeMm.value }),
    },
  };
}

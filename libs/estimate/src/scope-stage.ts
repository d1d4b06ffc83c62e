import { mapValue, type Outcome } from '#lib/kernel';
import { planOpenings, type OpeningPlan, type OpeningRequest, type ZoneShape } from '#lib/extent';
import type { Job } from './job.js';

/** Where to saw and what lies there. */
export interface ScopeWork {
  readonly zones: readonly ZoneShape[];
  readonly plan: OpeningPlan;
}

/** Plans the openings for zones that were drawn or found. */
export const scopeOf = (job: Job, zones: readonly ZoneShape[]): Outcome<ScopeWork> =>
  mapValue(planOpenings(openingRequestOf(job, zones)), (plan) => ({ zones, plan }));

export function openingRequestOf({ record, skin, access, numbers }: Job, zones: readonly ZoneShape[]): OpeningRequest {
  return {
    panel: record.panel,
    outerSkin: { thicknessMm: numbers.outerSkinMm.value },
    innerSkin: { thicknessMm: numbers.innerSkinMm.value },
    core: { thicknessMm: numbers.coreMm.value },
    zones,
    ...(record.fittings === undefined ? {} : { fittings: record.fittings }),
    ...(record.survey === undefined ? {} : { survey: record.survey }),
    method: {
      skin: skin.value,
      access: access.value,
      taperRatio: numbers.taperRatio.value,
      ...(record.method?.cutMarginMm === undefined ? {} : { cutMarginMm: record.method.cutMarginMm }),
      ...(record.method?.flangeMm === undefined ? {} : { flangeMm: record.method.flangeMm }),
    },
  };
}

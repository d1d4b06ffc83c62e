import { andThen, mapValue, success, type Outcome } from '#lib/kernel';
import { estimateExtent, type Extent } from './estimate-extent.js';
import type { MapSettings } from './extent-request.js';
import { planOpenings, type OpeningPlan } from './openings/plan.js';
import type { OpeningRequest, ZoneShape } from './openings/request.js';
import type { EvidenceGrade } from './reading.js';

/** What somebody knows about one panel: zones, readings or both. */
export interface ExtentAndOpeningsRequest extends Omit<OpeningRequest, 'zones'> {
  readonly zones?: readonly ZoneShape[];
  readonly evidence?: EvidenceGrade;
  readonly map?: MapSettings;
}

export interface ExtentAndOpenings {
  /** Where the core is likely bad. */
  readonly extent: Extent;
  /** Absent when nothing on the panel is worth opening; a finding of the extent says so. */
  readonly plan?: OpeningPlan;
}

/** From taps on the deck to the cut line. */
export const extentAndOpenings = (request: ExtentAndOpeningsRequest): Outcome<ExtentAndOpenings> =>
  andThen(estimateExtent(request), (extent): Outcome<ExtentAndOpenings> =>
    extent.zones.length === 0
      ? success({ extent })
      : mapValue(planOpenings({ ...request, zones: extent.zones }), (plan) => ({ extent, plan })),
  );

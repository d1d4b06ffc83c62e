import type { Outcome } from '#lib/kernel';
import {
  panelCheck,
  type FittingRequest,
  type PanelCheck,
  type PanelCheckRequest,
  type PlateSource,
} from '#lib/panel';
import type { CoreWork } from './core-stage.js';
import type { Job } from '../job/job.js';
import type { LaminateWork } from './laminate-stage.js';
import { extentOfOutline } from '../job/outline-size.js';
import { asBuilt, bayOf, craftOf, repairedWith } from './panel-values.js';
import type { ScopeWork } from './scope-stage.js';
import type { OldSkins } from './skins.js';

export interface CheckContext {
  readonly job: Job;
  readonly scope: ScopeWork;
  readonly skins: OldSkins;
  readonly core: CoreWork;
  readonly laminate: LaminateWork;
  readonly clampPressureKPa: number;
  readonly plates: PlateSource;
}

/** The panel as built, as found, opened and repaired. */
export const panelCheckOf = (context: CheckContext): Outcome<PanelCheck> =>
  panelCheck(requestOf(context), context.plates);

function requestOf(context: CheckContext): PanelCheckRequest {
  const {
    job,
    scope: { plan },
    skins,
    core,
    laminate,
    clampPressureKPa,
  } = context;
  const [lengthXMm, widthYMm] = bayOf(job);
  const opening = extentOfOutline(plan.openings[0]?.area.outer ?? job.record.panel.outline);
  const craft = craftOf(job);
  return {
    panel: { lengthXMm, widthYMm, edges: job.answers.panel.edges.value },
    asBuilt: asBuilt(job, skins),
    repaired: repairedWith(job, { skins, coreMm: core.coreMm, schedule: laminate.schedule }),
    asFound: { degradedFraction: Math.min(1, plan.openedAreaM2 / plan.panelAreaM2) },
    // An opening that runs over a support leaves no more inner skin unsupported than the bay is long.
    opened: {
      lengthXMm: Math.min(opening.maxX - opening.minX, lengthXMm),
      widthYMm: Math.min(opening.maxY - opening.minY, widthYMm),
      clampPressureKPa,
    },
    ...(craft === undefined ? {} : { craft }),
    fittings: fittingRequests(context),
  };
}

const USUAL_BOLT_MM = 8;
/** Holes are opened to twice the fastener and potted: common practice, no published source. */
const POTTED_OVER_BOLT = 2;

function fittingRequests({ job, scope: { plan } }: CheckContext): readonly FittingRequest[] {
  return plan.fittings
    .filter(({ work, holes }) => work.includes('pot') && holes > 0)
    .map(({ id, kind, holes, work }) => {
      const recorded = job.record.fittings?.find((fitting) => fitting.id === id);
      const boltMm = recorded?.holeDiameterMm ?? USUAL_BOLT_MM;
      const plateMm = recorded?.baseMm;
      return {
        id,
        kind,
        bolts: holes,
        boltMm,
        pottedMm: boltMm * POTTED_OVER_BOLT,
        ...(work.includes('plate') && plateMm !== undefined
          ? { backingPlate: { lengthMm: plateMm, widthMm: plateMm } }
          : {}),
      };
    });
}

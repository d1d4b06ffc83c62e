import type { Outcome } from '#lib/kernel';
import {
  panelCheck,
  type FittingRequest,
  type PanelCheck,
  type PanelCheckRequest,
  type PlateSource,
} from '#lib/panel';
import { cardsFor, offIn } from '../ladder/hardware.js';
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

/** The check reads no wider pocket; a wider one carries more than it says. */
const WIDEST_POCKET_MM = 200;

/** Bolts, pockets and plates by the cards; through a solid insert the pocket is as wide as the insert. */
const fittingRequests = ({ job, scope: { plan } }: CheckContext): readonly FittingRequest[] =>
  cardsFor(job, offIn(plan.fittings)).flatMap((card) => {
    const kind = plan.fittings.find(({ id }) => id === card.id)?.kind;
    const { insert, plate, isOnSolid } = card;
    return kind === undefined || card.fasteners === 0
      ? []
      : [
          {
            id: card.id,
            kind,
            bolts: card.fasteners,
            boltMm: card.fastenerMm,
            pottedMm:
              isOnSolid === true
                ? WIDEST_POCKET_MM
                : Math.min(WIDEST_POCKET_MM, insert?.widthMm ?? card.plugMm),
            ...(plate === undefined
              ? {}
              : { backingPlate: { lengthMm: plate.lengthMm, widthMm: plate.widthMm } }),
          },
        ];
  });

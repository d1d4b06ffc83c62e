import type { ResinStepRequest } from '#lib/resin';
import type { BesideWork } from '../ladder/beside-opening.js';
import { jointTapes } from '../ladder/joint-tapes.js';
import { cardsFor, offIn, pottedCards, pottingSteps } from '../ladder/hardware.js';
import { isGelcoated, isStyrenated } from './coatings.js';
import type { CoreWork } from './core-stage.js';
import type { Job } from '../job/job.js';
import type { JobQuantities } from './labour-drivers.js';
import type { LaminateWork } from './laminate-stage.js';
import { overlaySteps } from './overlay-needs.js';
import type { OpenedScope } from './three-areas.js';

/** Of the new core only what takes resin. */
export type CoreToBed = Pick<CoreWork, 'beddedM2' | 'solid' | 'pieces' | 'scores' | 'jointTapeM'>;

export interface ResinContext {
  readonly job: Job;
  readonly scope: OpenedScope;
  readonly core: CoreToBed;
  readonly laminate: LaminateWork;
  readonly quantities: JobQuantities;
  readonly beside: Pick<BesideWork, 'steps'>;
}

/** Every step that takes resin, in the order of the work. */
export const resinStepsOf = (context: ResinContext): readonly ResinStepRequest[] => [
  ...beddingSteps(context),
  ...jointSteps(context),
  ...closingSteps(context),
  ...overlaySteps(context.job, context.quantities),
  ...pottingSteps(context.job, pottedCards(cardsFor(context.job, offIn(context.scope.plan.fittings)))),
  ...context.beside.steps,
  ...fairingStep(context),
];

function beddingSteps({ job, core, quantities }: ResinContext): readonly ResinStepRequest[] {
  const areaM2 = quantities.baredM2.value;
  const facesM2 = beddedFaces(core.beddedM2.value, quantities.keptCoreM2.value);
  const beddedM2 = core.beddedM2.value;
  const undercut: readonly ResinStepRequest[] =
    core.solid === undefined ? [] : [{ step: 'undercut', ...core.solid }];
  const prewet: ResinStepRequest = {
    step: 'prewet',
    areaM2: facesM2,
    litresPerM2: job.core.wetOutLPerM2.value,
  };
  // An area without a piece is what arithmetic left of ground that is filled solid.
  if (beddedM2 === 0 || core.pieces.length === 0)
    return [
      ...(areaM2 === 0 ? [] : [sealStep(job, areaM2)]),
      ...undercut,
      ...(facesM2 === 0 ? [] : [prewet]),
    ];
  const scores: readonly ResinStepRequest[] =
    core.scores === undefined
      ? []
      : [
          {
            step: 'core-kerfs',
            areaM2: beddedM2,
            spacingMm: core.scores.spacingMm,
            widthMm: core.scores.widthMm,
            depthMm: core.scores.depthMm,
            openFraction: 1,
          },
        ];
  return [
    sealStep(job, areaM2),
    ...undercut.map((step) => ({ ...step, ...stifferOnCamber(job) })),
    prewet,
    { step: 'bed-core', areaM2: beddedM2, pieces: core.pieces, ...stifferOnCamber(job) },
    ...scores,
  ];
}

/** The skin that stays is wetted out where it was ground: from below that is the outer one. */
export const sealStep = ({ answers }: Pick<Job, 'answers'>, areaM2: number): ResinStepRequest => ({
  step: 'seal',
  ...(answers.method.access.value === 'from-below' ? { title: 'Seal the underside of the outer skin' } : {}),
  areaM2,
});

/** The tapes over joints of plywood. */
function jointSteps({ job, core }: ResinContext): readonly ResinStepRequest[] {
  const plies = jointTapes(job, core);
  return plies.length === 0
    ? []
    : [
        {
          step: 'closing-plies',
          title: 'Tape over the joints of the plywood',
          plies: plies.map(({ label, areaM2, fabric, fibreMassFraction }) => ({
            label,
            areaM2: areaM2.value,
            arealMassGPerM2: fabric.arealMassGPerM2.value,
            fibreMassFraction,
          })),
        },
      ];
}

/** Of core that stays one face is wetted where new core has two. */
const beddedFaces = (newM2: number, keptM2: number): number => newM2 + keptM2 / 2;

/**
 * Parts of filler to a hundred of mixed resin that hold a bed on a cambered deck, where the usual 5 run downhill: 6 to
 * 10, judgement of the trade.
 */
const PARTS_ON_CAMBER = 8;

const stifferOnCamber = ({ record }: Job): Pick<ResinStepRequest, 'fillerPartsPerHundred'> =>
  record.panel.camberRadiusMm === undefined ? {} : { fillerPartsPerHundred: PARTS_ON_CAMBER };

function closingSteps({
  job,
  scope: { plan },
  laminate,
  quantities,
}: ResinContext): readonly ResinStepRequest[] {
  const plies = laminate.plies.map(({ label, areaM2, fabric, fibreMassFraction }) => ({
    label,
    areaM2: areaM2.value,
    arealMassGPerM2: fabric.arealMassGPerM2.value,
    fibreMassFraction,
  }));
  if (job.answers.method.skin.value === 'relay') {
    return [
      { step: 'top-laminate', plies },
      { step: 'weave-fill', areaM2: quantities.fairedM2.value, coats: 3 },
    ];
  }
  return [
    {
      step: 'bed-skin',
      areaM2: quantities.openedM2.value,
      pieces: plan.openings.flatMap(({ skinPieces }) =>
        skinPieces.map(({ label, areaM2 }) => ({ label, areaM2 })),
      ),
    },
    {
      step: 'cut-kerf',
      lengthM: quantities.cutM.value,
      heightMm: job.answers.outerSkin.thicknessMm.value + job.answers.core.thicknessMm.value,
    },
    { step: 'closing-plies', plies },
  ];
}

/** Fairing compound is a product of its own; resin is thickened for it where none is priced, or where gelcoat would not hold on it. */
function fairingStep({ job, quantities }: ResinContext): readonly ResinStepRequest[] {
  const isSold = job.catalogue.materials.some(
    (material) => material.kind === 'coating' && material.coating === 'fairing-compound',
  );
  const isOfResin = !isSold || (isGelcoated(job) && isStyrenated(job));
  return !isOfResin || job.answers.method.access.value === 'from-below'
    ? []
    : [{ step: 'fairing', areaM2: quantities.fairedM2.value }];
}

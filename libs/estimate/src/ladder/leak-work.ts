import { findMaterial } from '#lib/catalogue';
import type { LeakCause, Method } from '#lib/methods';
import { assumed, derived, entered, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import type { NeedRequest } from '#lib/takeoff';
import { l, m } from '#lib/units';
import type { DefectRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import { counted, tapesOf } from './place-work.js';
import type { Besides } from '../stages/labour-drivers.js';
import type { PlyWork } from '../stages/laminate-stage.js';

/** What stops the water where nothing else in the plan does: hours, cloth, paste and sealant of its own. */
export interface LeakWork {
  readonly isTreated: boolean;
  readonly besides: Besides;
  readonly steps: readonly ResinStepRequest[];
  readonly plies: readonly PlyWork[];
  readonly needs: readonly NeedRequest[];
  /** Kinds of fittings that come off for the leak, whether or not the record lists one. */
  readonly unlisted: readonly string[];
}

const nothing: LeakWork = { isTreated: false, besides: {}, steps: [], plies: [], needs: [], unlisted: [] };

/** A record that names a leaking fitting has named the cause. */
export const leakCauseIn = ({ cause, fittings }: DefectRecord): LeakCause =>
  cause?.leak ??
  (cause?.cause === 'leaking-fitting' || fittings?.some(({ isLeaking }) => isLeaking === true) === true
    ? 'fittings'
    : 'not-known');

/** The remedy of the cause that the record states, unless fittings, rail or overlay of the plan are that remedy. */
export function leakWork(
  job: Job,
  { edgeWork }: Pick<Method, 'edgeWork'>,
  bedded: readonly string[],
): LeakWork {
  switch (job.record.cause?.leak) {
    case 'hull-deck-joint':
      return edgeWork === 'rail' ? nothing : taped(job, 'joint-m', lengthOf(job, jointM(job)));
    case 'crack':
      return taped(job, 'crack-m', lengthOf(job, USUAL_CRACK_M));
    case 'hatch':
      return bedded.includes('hatch') ? nothing : frame(job);
    case 'chainplate':
      return bedded.includes('chainplate') ? nothing : slot(job);
    case 'not-known':
      return { ...nothing, besides: { 'leak-hunt': counted('search for the way in of the water', 1) } };
    case 'fittings':
    case 'overlay-screws':
    case undefined:
      return nothing;
  }
}

const MM_PER_M = 1000;
/** A hand's length past the bad core on both sides. Source: [FROM-MEMORY]. */
const BEYOND_M = 0.6;
const USUAL_CRACK_M = 0.3;

/** Along the longest side of what is bad: water runs from the joint to where it shows. */
function jointM({ record: { zones = [] } }: Job): number {
  const spans = zones.map(({ outline }) => {
    const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
    return Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  });
  return Math.max(0, ...spans) / MM_PER_M + BEYOND_M;
}

function lengthOf({ record: { cause } }: Job, usualM: number): Figure<'m'> {
  const meaning = 'length of joint or crack that is closed';
  return cause?.lengthMm === undefined
    ? assumed('m', m(usualM), meaning, {
        at: '/cause/lengthMm',
        because:
          'nobody measured it: a crack as long as a hand is wide and more, a joint along the bad core and past it',
        cite: { source: 'FROM-MEMORY' },
      })
    : entered('m', m(cause.lengthMm / MM_PER_M), meaning, '/cause/lengthMm');
}

function taped(job: Job, driver: 'joint-m' | 'crack-m', lengthM: Figure<'m'>): LeakWork {
  const plies = tapesOf(job, lengthM.value, 'L');
  return {
    ...nothing,
    isTreated: true,
    besides: { [driver]: lengthM },
    plies,
    steps: [
      {
        step: 'closing-plies',
        title: driver === 'joint-m' ? 'Tapes over the joint' : 'Tapes over the crack',
        plies: plies.map(({ label, areaM2, fabric, fibreMassFraction }) => ({
          label,
          areaM2: areaM2.value,
          arealMassGPerM2: fabric.arealMassGPerM2.value,
          fibreMassFraction,
        })),
      },
    ],
  };
}

/** A frame of 0.5 by 0.5 m, its core dug back half an inch. Source: [METHODS-IN-PRINT]. */
const FRAME_M = 2;
const RING_MM = 12;
const FRAME_SEALANT_L = 0.125;

const frame = (job: Job): LeakWork => ({
  ...nothing,
  isTreated: true,
  besides: { 'leak-frame': counted('frame whose core is sealed', 1) },
  unlisted: ['hatch'],
  steps: [
    {
      step: 'undercut',
      title: 'Seal the core round the frame',
      lengthM: FRAME_M,
      widthMm: RING_MM,
      heightMm: job.answers.core.thicknessMm.value,
    },
  ],
  needs: sealant(job, 'consumable-sealant-polyurethane', FRAME_SEALANT_L),
});

/** The block under the cover of a chainplate. Source: [FROM-MEMORY]. */
const BLOCK_MM = 60;
const SLOT_SEALANT_L = 0.06;

const slot = (job: Job): LeakWork => ({
  ...nothing,
  isTreated: true,
  besides: { 'leak-slot': counted('slot filled and cut anew', 1) },
  unlisted: ['chainplate'],
  steps: [
    {
      step: 'potting',
      title: 'Fill the block under the chainplate cover',
      holes: 1,
      diameterMm: BLOCK_MM,
      depthMm: job.answers.core.thicknessMm.value,
    },
  ],
  needs: sealant(job, 'consumable-sealant-polysulphide', SLOT_SEALANT_L),
});

function sealant({ catalogue }: Job, code: string, litres: number): readonly NeedRequest[] {
  const found = findMaterial(catalogue, 'consumable', code);
  return found === undefined
    ? []
    : [
        {
          id: `leak-${code}`,
          title: `${found.name}, for the leak`,
          material: code,
          unit: 'l',
          purpose: 'consumable',
          netQuantity: derived('l', l(litres), 'sealant for the leak', {
            formula: 'scope.hardware',
            title: 'Taken from the card of such a fitting',
            symbol: 'V',
            cite: { source: 'METHODS-IN-PRINT' },
            inputs: {},
          }),
        },
      ];
}

import type { JudgedRung, PlaceFacts } from '#lib/methods';
import { derived, type Figure } from '#lib/provenance';
import { fraction, m2, m2FromMm2, mm2 } from '#lib/units';
import type { Job } from '../job/job.js';
import type { Besides } from '../stages/labour-drivers.js';
import { isLaidAgain, isTakenOff } from '../stages/coatings.js';
import { netAreaMm2 } from './deck-facts.js';
import { length } from './place-work.js';

interface Opened {
  readonly openedM2: Figure<'m2'>;
  readonly places: readonly PlaceFacts[];
}

/** What a rung and this deck take besides the opening itself: overlay, lining by its kind, bows, upstand, rail. */
export const besidesOf = (job: Job, rung: JudgedRung, opened: Opened): Besides => ({
  ...overlayBesides(job, opened),
  ...liningBesides(job, opened),
  ...edgeBesides(rung, opened),
  ...bowBesides(job, opened),
});

const count = (meaning: string, value: number): Figure<'1'> =>
  derived('1', fraction(value), meaning, {
    formula: 'scope.count',
    title: 'Counted from the opening',
    symbol: 'n',
    cite: { source: 'METHODS-FROM-BELOW' },
    inputs: {},
  });
const area = (meaning: string, valueM2: number, from: Figure): Figure<'m2'> =>
  derived('m2', m2(valueM2), meaning, {
    formula: 'scope.area-besides',
    title: 'Opened area with what is taken off round it',
    symbol: 'A',
    cite: { source: 'METHODS-IN-PRINT' },
    inputs: { opened: from },
  });
/** Planks are lifted to the next butt or this far past the cut. Source: [FROM-MEMORY]. */
const PAST_THE_CUT_M = 0.3;

/** Area of overlay that comes off: the panel where paint follows, the opening and a hand past it where planks go back. */
export function overlayBesides({ record: { panel } }: Job, { openedM2 }: Pick<Opened, 'openedM2'>): Besides {
  const { overlay } = panel;
  if (!isTakenOff(overlay)) return {};
  const panelM2 = m2FromMm2(mm2(netAreaMm2(panel)));
  const sideM = Math.sqrt(openedM2.value) + 2 * PAST_THE_CUT_M;
  const offM2 = isLaidAgain(overlay) ? Math.min(panelM2, sideM * sideM) : panelM2;
  const off = area('overlay to take off', offM2, openedM2);
  return {
    [overlay.kind === 'screwed-planks' ? 'overlay-screwed-m2' : 'overlay-glued-m2']: off,
    ...(isLaidAgain(overlay) ? { 'overlay-relay-m2': off } : {}),
  };
}

const liningDrivers = {
  'zipped-vinyl': 'lining-zipped-m2',
  'screwed-panels': 'lining-panel-m2',
  'glued-vinyl': 'lining-glued-m2',
} as const;

function liningBesides({ record: { panel }, answers }: Job, { openedM2 }: Opened): Besides {
  const { lining } = panel;
  if (
    answers.panel.accessBelow.value !== 'lined' ||
    lining === undefined ||
    lining === 'none' ||
    lining === 'moulded-liner'
  )
    return {};
  return { [liningDrivers[lining]]: area('lining to take out', LINING_REACH * openedM2.value, openedM2) };
}

/** A hand wider than the opening all round. Common practice, no published source. */
const LINING_REACH = 1.3;

/** The lining is counted by its kind where that is known. */
export const isLiningByKind = ({ record: { panel } }: Job): boolean =>
  panel.lining !== undefined && panel.lining !== 'none' && panel.lining !== 'moulded-liner';

function edgeBesides({ method: { edgeWork } }: JudgedRung, { places }: Opened): Besides {
  const edgeM = places.reduce((sum, { edge, longMm }) => sum + (edge === 'none' ? 0 : longMm / 1000), 0);
  if (edgeM === 0) return {};
  switch (edgeWork) {
    case 'upstand':
      return { 'upstand-m': length('upstand that the plies turn up', edgeM) };
    case 'rail':
      return { 'rail-m': length('rail off and on', edgeM + RAIL_BEYOND_M) };
    case 'none':
      return {};
  }
}

/** A rail comes off past the opening on both sides. Source: [FROM-MEMORY]. */
const RAIL_BEYOND_M = 0.6;

/** Bows every foot across a deck that is opened from below. */
const BOW_SPACING_M = 0.3;
const bowBesides = ({ answers }: Job, { openedM2 }: Opened): Besides =>
  answers.method.access.value === 'from-below'
    ? {
        bow: count(
          'bows across the deck',
          Math.max(2, Math.ceil(Math.sqrt(openedM2.value) / BOW_SPACING_M) + 1),
        ),
      }
    : {};

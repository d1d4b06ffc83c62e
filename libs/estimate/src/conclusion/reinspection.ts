import type { EstimateBody, ReinspectionPoint } from '../document/estimate-document.js';
import { digits } from './speaking.js';

/** What is to be seen, measured and accepted, by whom, before what is closed. */
export const reinspectionPoints = (estimate: EstimateBody): readonly ReinspectionPoint[] => [
  ...(estimate.core === undefined ? closedPoints(estimate) : openedPoints(estimate)),
  {
    when: 'after the repair',
    before: 'the file is closed',
    look: 'the way in of the water',
    accept: estimate.leak.verify,
    by: 'surveyor',
    source: 'METHODS-IN-PRINT',
  },
];

function openedPoints({ laminate, process, hardware, scope }: EstimateBody): readonly ReinspectionPoint[] {
  return [
    {
      when: 'core out',
      before: 'anything is closed (hold point)',
      look: 'extent, and the core all round the edge of the opening',
      accept: `pale, hard and bonded all round; ${moistureLimit(process)}`,
      by: 'surveyor, with the owner’s consent to what is found',
      source: 'COMMON-PRACTICE',
    },
    {
      when: 'core bedded',
      before: 'the skin goes on',
      look: 'hammer over every piece, resin at each bleed hole',
      accept: 'no hollow wider than 50 mm; resin seen at every hole',
      by: 'foreman',
      source: 'FROM-MEMORY',
    },
    ...(laminate === undefined || laminate.plies.length === 0
      ? []
      : [
          {
            when: 'skin cured',
            before: isFromBelow(scope) ? 'the lining goes back' : 'it is faired',
            look: 'plies counted and photographed as they go on; hammer; straight edge',
            accept: `${laminate.plies.length} plies, ${digits(laminate.totalThicknessMm, 2)} mm; no hollow; ${isFromBelow(scope) ? 'nothing sags or drips' : 'at most 1 mm low and nowhere proud'}`,
            by: 'surveyor or foreman',
            source: 'COMMON-PRACTICE',
          },
        ]),
    ...(hardware.length === 0
      ? []
      : [
          {
            when: 'fittings on',
            before: 'the lining goes back',
            look: 'plates, solid and bedding from below; hose on each fitting',
            accept: 'bedding seen all round each base and bolt; no drop below',
            by: 'surveyor',
            source: 'COMMON-PRACTICE',
          },
        ]),
  ];
}

/** Holes that are dug out are looked into before they are filled; a joint or crack that is closed, when it is clean. */
const closedPoints = ({ methods }: EstimateBody): readonly ReinspectionPoint[] =>
  methods.planned.rung === 'close-leak' ? [leakClean] : holesDug;

const leakClean: ReinspectionPoint = {
  when: 'joint, crack or core edge clean',
  before: 'it is closed',
  look: 'the ground laminate and the core that shows',
  accept: 'sound laminate without a crack to be seen; core pale, dry and hard',
  by: 'surveyor or foreman',
  source: 'COMMON-PRACTICE',
};

const holesDug: readonly ReinspectionPoint[] = [
  {
    when: 'holes dug and dry',
    before: 'they are filled',
    look: 'the last shavings from each hole',
    accept: 'dry and pale all round; no water when pressed',
    by: 'surveyor or foreman',
    source: 'METHODS-IN-PRINT',
  },
];

const isFromBelow = ({ method }: EstimateBody['scope']): boolean =>
  method.some(({ value }) => value === 'from-below');

/** As the gate of the bonding says it, so that both ask for the same. */
const moistureLimit = ({ gates }: EstimateBody['process']): string =>
  gates.flatMap(({ requires }) => requires).find((one) => one.includes('moisture')) ??
  'two equal readings a few days apart';

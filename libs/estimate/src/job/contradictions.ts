import { pointer, problem, type Problem } from '#lib/kernel';
import { distanceToRegion, regionOf } from '#lib/geometry';
import type { DefectRecord } from './defect-record.js';

const MOST_OLD_BOND_MM = 10;

/** Answers that are good by themselves and contradict each other. */
export const contradictionsIn = (record: DefectRecord): readonly Problem[] => [
  ...cavityFaults(record),
  ...strayFittings(record),
  ...extentFaults(record),
  ...warmthWithoutForecast(record),
];

/** The cavity holds the core: it cannot be thinner, and much thicker means that one of the two is wrong. */
function cavityFaults({ core: { thicknessMm, cavityMm } }: DefectRecord): readonly Problem[] {
  if (cavityMm === undefined || (cavityMm >= thicknessMm && cavityMm <= thicknessMm + MOST_OLD_BOND_MM))
    return [];
  return [
    problem('contradiction', '/core/cavityMm', {
      other: '/core/thicknessMm',
      why: `a core of ${thicknessMm} mm lies in a cavity of ${thicknessMm} to ${thicknessMm + MOST_OLD_BOND_MM} mm`,
    }),
  ];
}

/** A fitting that far from the panel is a slip of the keyboard, and would be left out without a word. */
const FARTHEST_FITTING_MM = 1000;

function strayFittings({ panel: { outline }, fittings = [] }: DefectRecord): readonly Problem[] {
  const whole = regionOf(outline);
  return fittings.flatMap(({ at }, index) => {
    const awayMm = Math.round(distanceToRegion(at, whole));
    if (!(awayMm > FARTHEST_FITTING_MM)) return [];
    return [
      problem('contradiction', pointer('/fittings', index, 'at'), {
        other: '/panel/outline',
        why: `it stands ${awayMm} mm from the panel; at most ${FARTHEST_FITTING_MM} mm can belong to the job`,
      }),
    ];
  });
}

function extentFaults({ zones, survey }: DefectRecord): readonly Problem[] {
  const hasZones = zones !== undefined && zones.length > 0;
  const hasReadings = survey !== undefined && survey.readings.length > 0;
  if (hasZones || hasReadings) return [];
  return [
    problem('missing', '/zones', {
      expected: 'draw at least one zone of bad core, or give `survey.readings`',
    }),
  ];
}

function warmthWithoutForecast({ conditions }: DefectRecord): readonly Problem[] {
  if (conditions?.warmth === undefined || conditions.forecast !== undefined) return [];
  return [
    problem('missing', '/conditions/forecast', {
      expected:
        'a forecast whose air the warmth counts above; without one state temperatureC, which is that of the deck',
    }),
  ];
}

import type { CoreReadings } from '#lib/cautions';
import { MOST_CORE_MOISTURE_PERCENT } from '#lib/cure';
import type { OpeningPlan, Plug, Reading, Survey } from '#lib/extent';
import { containsPoint, type Region } from '#lib/geometry';
import type { Known } from '#lib/kernel';

/** What plugs and the meter say about core that stays and core that comes out. */
export interface CoreFound {
  readonly wettestPlugPercent: Known<number>;
  readonly readings: CoreReadings;
}

export function coreFoundBy(survey: Survey | undefined, taken: Region): CoreFound {
  const all = survey?.readings ?? [];
  const staying = all.filter(({ at }) => !containsPoint(taken, at));
  const leaving = all.filter(({ at }) => containsPoint(taken, at));
  const count = (readings: readonly Reading[], wanted: 'dry' | 'wet'): number =>
    readings.filter((reading) => stateOf(reading, survey?.meter) === wanted).length;
  const percents = staying.flatMap((reading) =>
    reading.kind === 'plug' && reading.moisturePercent !== undefined ? [reading.moisturePercent] : [],
  );
  return {
    wettestPlugPercent: percents.length === 0 ? 'unknown' : Math.max(...percents),
    readings: {
      dryStays: count(staying, 'dry'),
      wetStays: count(staying, 'wet'),
      dryOut: count(leaving, 'dry'),
    },
  };
}

/** Core comes out of every opening, and from under the skin beside it. */
export const coreTakenOut = ({ openings }: OpeningPlan): Region =>
  openings.flatMap(({ area, undercut }) => [area, ...undercut]);

/** A meter within two points of the dry reading of the same deck reads dry. Source: [INJECTION-LIMITS]. */
const DRY_WITHIN_POINTS = 2;

function stateOf(reading: Reading, meter: Survey['meter']): Known<'dry' | 'wet'> {
  switch (reading.kind) {
    case 'plug':
      return stateOfPlug(reading);
    case 'moisture':
      return meter === undefined || reading.isUnreliable === true
        ? 'unknown'
        : wetAbove(reading.value, meter.dryReference + DRY_WITHIN_POINTS);
    case 'sounding':
      return 'unknown';
  }
}

const wetAbove = (value: number, limit: number): 'dry' | 'wet' => (value <= limit ? 'dry' : 'wet');

/** A figure counts before what the eye saw. */
function stateOfPlug({ condition, moisturePercent }: Plug): 'dry' | 'wet' {
  if (moisturePercent !== undefined) return wetAbove(moisturePercent, MOST_CORE_MOISTURE_PERCENT);
  return condition === 'dry-sound' || condition === 'debonded-dry' ? 'dry' : 'wet';
}

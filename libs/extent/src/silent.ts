import { triangularQuantile, type RandomStream, type ThreePoint } from '#lib/kernel';
import { distance } from '#lib/geometry';
import type { Survey } from './reading.js';
import { verdictOf, type ReadingOdds } from './map/reading-odds.js';

/** Plugs against what symptoms miss: how many found core sound, and how many found bad core where nothing near them had said so. */
export interface PlugCount {
  readonly sound: number;
  readonly silent: number;
}

/** A symptom this near to a plug speaks of the core that the plug showed. */
const PLUG_SHOWS_MM = 100;

export function plugCount({ readings, meter }: Survey, odds: ReadingOdds): PlugCount {
  const reliable = readings.filter(({ isUnreliable }) => isUnreliable !== true);
  const alarms = reliable.filter((one) => one.kind !== 'plug' && verdictOf(one, meter, odds) === 'bad');
  const plugs = reliable.filter(({ kind }) => kind === 'plug');
  const isBad = (plug: Survey['readings'][number]) => verdictOf(plug, meter, odds) === 'bad';
  return {
    sound: plugs.filter((plug) => !isBad(plug)).length,
    silent: plugs.filter(
      (plug) => isBad(plug) && !alarms.some(({ at }) => distance(at, plug.at) <= PLUG_SHOWS_MM),
    ).length,
  };
}

/** An area of bad core and how much it counts. */
export interface WeighedArea {
  readonly areaMm2: number;
  readonly weight: number;
}

/**
 * Areas once what symptoms miss is added. A growth g beyond the mapped area A means that a place which symptoms call sound is
 * bad with chance q = (g - 1) A / (P - A), P being the panel; n plugs there of which k are bad are then seen with chance
 * q^k (1 - q)^(n - k), by which each draw is weighed: every plug that agrees with the symptoms makes a large silent part less
 * likely everywhere.
 * Source: [GELMAN-2013] section 2.1 (counting), section 10.4 (weighing draws)
 * Worked: libs/extent/src/silent.spec.ts
 */
export function withSilent(
  areas: Float64Array,
  growth: ThreePoint,
  {
    sound,
    silent,
    panelMm2,
    random,
  }: PlugCount & { readonly panelMm2: number; readonly random: RandomStream },
): readonly WeighedArea[] {
  return Array.from(areas, (area) => {
    const factor = triangularQuantile(growth, random());
    const chance = Math.min(0.999, ((factor - 1) * area) / Math.max(1, panelMm2 - area));
    return { areaMm2: area * factor, weight: (0.02 + chance) ** silent * (1 - chance) ** sound };
  });
}

import { triangularQuantile, type RandomStream, type ThreePoint } from '#lib/kernel';
import { distance } from '#lib/geometry';
import type { Survey } from './reading.js';
import { verdictOf, type ReadingOdds } from './map/reading-odds.js';

/** Plugs where the symptoms near them call the core sound: how many agree, and how many found it bad. */
export interface PlugCount {
  readonly sound: number;
  readonly silent: number;
}

/** A symptom this near to a plug speaks of the core that the plug showed. */
const PLUG_SHOWS_MM = 100;

export function plugCount({ readings, meter }: Survey, odds: ReadingOdds): PlugCount {
  const said = readings
    .filter(({ isUnreliable }) => isUnreliable !== true)
    .map((reading) => ({ kind: reading.kind, at: reading.at, verdict: verdictOf(reading, meter, odds) }));
  const symptoms = said.filter(({ kind }) => kind !== 'plug');
  const calledSound = said.filter(({ kind, at }) => {
    if (kind !== 'plug') return false;
    const near = symptoms.filter((symptom) => distance(symptom.at, at) <= PLUG_SHOWS_MM);
    return near.some(({ verdict }) => verdict === 'sound') && !near.some(({ verdict }) => verdict === 'bad');
  });
  return {
    sound: calledSound.filter(({ verdict }) => verdict === 'sound').length,
    silent: calledSound.filter(({ verdict }) => verdict === 'bad').length,
  };
}

/** An area of bad core and how much it counts. */
export interface WeighedArea {
  readonly areaMm2: number;
  readonly weight: number;
}

/**
 * Areas once what symptoms miss is added. Where nothing is bad or everything is, they miss nothing; with a growth g, a mapped area
 * A and a panel P, a place that symptoms call sound is bad with chance q = (g - 1) A / P, which adds q (P - A). n plugs there of which k are bad are then seen with chance
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
    const chance = Math.min(0.999, ((factor - 1) * area) / panelMm2);
    const grown = area + chance * Math.max(0, panelMm2 - area);
    return { areaMm2: grown, weight: (0.02 + chance) ** silent * (1 - chance) ** sound };
  });
}

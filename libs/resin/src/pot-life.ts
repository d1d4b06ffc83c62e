import type { Hardener, PotLife, ResinSystem } from '#lib/catalogue';
import { computeChecked, type Figure } from '#lib/provenance';
import { rateRatioOf, timeBetweenTemperatures } from '#lib/cure';
import { catalogueIn, enteredIn, workedOut } from '#lib/asking';
import {
  courseOf,
  layerLossTimeMin,
  peakOf,
  potLossTimeMin,
  rateForPotLife,
  type PotMatter,
} from './pot-heat.js';

/** How long a pot of any size lasts at one temperature. */
export interface PotClock {
  readonly at100G: Figure<'min'>;
  /** Pot life (min), and how far the pot has warmed when half of it has passed. */
  readonly lifeOf: (massG: number) => { readonly lifeMin: number; readonly warmingK: number };
  /** Hottest that a forgotten pot gets. */
  readonly potPeakC: (massG: number) => number;
  /** Hottest that a layer of this thickness gets where it lies. */
  readonly layerPeakC: (thicknessMm: number) => number;
}

/** Masses between which the pot is worked out, g; lives between them are interpolated on the logarithm of the mass. */
const tableMassesG = [25, 100, 400, 1600, 6400] as const;

export function potClock(resin: ResinSystem, hardener: Hardener, temperatureC: number): PotClock {
  const at100G = potLifeFigure(resin, hardener, temperatureC);
  const matter = matterOf(resin);
  const ratePerMin = rateForPotLife(matter, temperatureC, {
    massG: referenceOf(hardener).massG,
    potLifeMin: at100G.value,
  });
  const potCase = (lossTimeMin: number) => ({ matter, airC: temperatureC, ratePerMin, lossTimeMin });
  const table = tableMassesG.map((massG) => courseOf(potCase(potLossTimeMin(matter, massG))));
  return {
    at100G,
    lifeOf: (massG) =>
      between(
        massG,
        table.map(({ gelMin, halfTimeC }) => ({ lifeMin: gelMin, warmingK: halfTimeC - temperatureC })),
      ),
    potPeakC: rememberedPeak((massG) => peakOf(potCase(potLossTimeMin(matter, massG)))),
    layerPeakC: (thicknessMm) => peakOf(potCase(layerLossTimeMin(matter, thicknessMm))),
  };
}

/** Pots of one job are much alike; the peak is worked out once for each ten grams. */
function rememberedPeak(peakAt: (massG: number) => number): (massG: number) => number {
  const known = new Map<number, number>();
  return (massG) => {
    const size = Math.max(10, Math.round(massG / 10) * 10);
    const found = known.get(size) ?? peakAt(size);
    known.set(size, found);
    return found;
  };
}

type PotState = ReturnType<PotClock['lifeOf']>;

function between(massG: number, states: readonly PotState[]): PotState {
  const place = Math.min(Math.max(Math.log2(massG / tableMassesG[0]) / 2, 0), states.length - 1.000001);
  const [below, above, share] = [
    states[Math.floor(place)],
    states[Math.floor(place) + 1],
    place - Math.floor(place),
  ];
  const blend = (pick: (state: PotState) => number): number =>
    pick(below) * (1 - share) + pick(above) * share;
  return { lifeMin: blend(({ lifeMin }) => lifeMin), warmingK: blend(({ warmingK }) => warmingK) };
}

export const matterOf = (resin: ResinSystem): PotMatter => ({
  heatJPerG: resin.heatOfReactionJPerG.value,
  specificHeatJPerGK: resin.specificHeatJPerGK.value,
  activationEnergyKJPerMol: resin.activationEnergyKJPerMol.value,
  densityGPerCm3: resin.densityGPerCm3.value,
});

const referenceOf = ({ potLives }: Hardener): PotLife => potLives[0];

/** Pot life of the reference mass: along the spec's own two temperatures where it has them, else by Arrhenius. */
export function potLifeFigure(resin: ResinSystem, hardener: Hardener, temperatureC: number): Figure<'min'> {
  const first = referenceOf(hardener);
  const second = hardener.potLives.find(
    ({ massG, temperatureC: at }) => massG === first.massG && at !== first.temperatureC,
  );
  return second === undefined
    ? byArrhenius(resin, hardener, temperatureC)
    : byTwoTemperatures({ resin, hardener, first, second }, temperatureC);
}

interface TwoLives {
  readonly resin: ResinSystem;
  readonly hardener: Hardener;
  readonly first: PotLife;
  readonly second: PotLife;
}

function byTwoTemperatures({ resin, hardener, first, second }: TwoLives, atC: number): Figure<'min'> {
  const place = { item: resin.code, field: `${hardener.code}/potLives` };
  return computeChecked(timeBetweenTemperatures, {
    timeA: catalogueIn('min', first.minutes, 'pot life', place),
    temperatureA: enteredIn('degC', first.temperatureC, 'temperature of the pot life', '/resin'),
    timeB: catalogueIn('min', second.minutes, 'pot life', place),
    temperatureB: enteredIn('degC', second.temperatureC, 'temperature of the pot life', '/resin'),
    atC: enteredIn('degC', atC, 'temperature of the pot', '/temperatureC'),
  });
}

function byArrhenius(resin: ResinSystem, hardener: Hardener, atC: number): Figure<'min'> {
  const first = referenceOf(hardener);
  const life = catalogueIn('min', first.minutes, 'pot life', {
    item: resin.code,
    field: `${hardener.code}/potLives`,
  });
  const energy = catalogueIn('kJ/mol', resin.activationEnergyKJPerMol, 'activation energy', {
    item: resin.code,
    field: 'activationEnergyKJPerMol',
  });
  const ratio = rateRatioOf(energy.value, first.temperatureC, atC);
  return workedOut('min', life.value / ratio, 'pot life of the reference mass', {
    formula: 'process.rate-ratio',
    title: 'Pot life carried by one activation energy',
    symbol: 't',
    cite: { source: 'ARRHENIUS' },
    inputs: { life, energy, atC: enteredIn('degC', atC, 'temperature of the pot', '/temperatureC') },
  });
}

/** Low and high pot life: the spread of the sheet, and of the activation energy where only that carries it. */
export function potLifeBand(
  resin: ResinSystem,
  hardener: Hardener,
  temperatureC: number,
): { readonly low: number; readonly high: number } {
  const figure = potLifeFigure(resin, hardener, temperatureC);
  const { minutes, temperatureC: at } = referenceOf(hardener);
  const spread = {
    low: (minutes.low ?? minutes.value) / minutes.value,
    high: (minutes.high ?? minutes.value) / minutes.value,
  };
  const { value, low = value, high = value } = resin.activationEnergyKJPerMol;
  const carried =
    hardener.potLives.length > 1
      ? [1]
      : [low, high].map(
          (energy) => rateRatioOf(value, at, temperatureC) / rateRatioOf(energy, at, temperatureC),
        );
  return {
    low: figure.value * spread.low * Math.min(1, ...carried),
    high: figure.value * spread.high * Math.max(1, ...carried),
  };
}

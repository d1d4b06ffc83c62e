import { rateRatioOf } from '#lib/cure';
import { operations } from '#lib/work';
import type { Job } from '../job/job.js';

/** What is bedded before the first of it sets, and why it is no more. */
interface BayInOpenTime {
  readonly bayM2: number;
  readonly words: string;
}

/** Temperature at which gel times of a film stand in the catalogue. */
const FILM_C = 25;
/** Share of the gel time in which a bed still takes a piece. Source: [FROM-MEMORY]. */
const OPEN_SHARE = 0.5;
/** A crew beds no more than this in one go however slow the resin is. Source: [FROM-MEMORY]. */
const USUAL_BAY_M2 = 1;
/** Less is no bay but a piece. */
const LEAST_BAY_M2 = 0.2;

/**
 * Core that these hands bed within the open time of the slowest hardener that may be used at this temperature; absent where that
 * is as much as is bedded in one go anyway.
 *
 * Worked: two people at 1.2 h for a square metre, 1.6 h open: 2.7 m2; one person in 0.76 h: 0.64 m2.
 */
export function bayInOpenTime({ resin, answers: { conditions, crew } }: Job): BayInOpenTime | undefined {
  const bedH = operations.find(({ code }) => code === 'bed-core')?.hours.likely;
  const deckC = conditions.temperatureC.value;
  const openH = OPEN_SHARE * filmGelH(resin, deckC);
  if (bedH === undefined || openH <= 0) return undefined;
  const people = crew.people.value;
  const bayM2 = Math.max(LEAST_BAY_M2, (people * openH) / bedH);
  return bayM2 >= USUAL_BAY_M2
    ? undefined
    : {
        bayM2,
        words: `core is bedded in bays of at most ${bayM2.toFixed(2)} m2: so much ${people === 1 ? 'one person presses' : `${people} people press`} in the ${Math.round(60 * openH)} minutes in which a bed takes a piece at ${deckC} degC`,
      };
}

function filmGelH({ hardeners, activationEnergyKJPerMol }: Job['resin'], deckC: number): number {
  const usable = hardeners.filter(
    ({ lowestTemperatureC, highestTemperatureC }) =>
      lowestTemperatureC.value <= deckC && deckC <= highestTemperatureC.value,
  );
  const slowestH = Math.max(0, ...usable.map(({ gelH }) => gelH.value));
  return slowestH / rateRatioOf(activationEnergyKJPerMol.value, FILM_C, deckC);
}

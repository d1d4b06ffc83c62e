import { rateRatioOf } from '#lib/cure';

/** Gel of a diepoxide with a four-functional amine, 1/sqrt(3) of the bonds made. Source: [FLORY-1953], from memory. */
export const GEL_CONVERSION = 1 / Math.sqrt(3);

/** Still air with radiation on the outside of a pot or the face of a layer, W/(m2 K). From memory, band 7 to 15. */
export const SURFACE_LOSS_W_PER_M2K = 10;

export interface PotMatter {
  readonly heatJPerG: number;
  readonly specificHeatJPerGK: number;
  readonly activationEnergyKJPerMol: number;
  readonly densityGPerCm3: number;
}

/** What heats and what cools: the rate at the air's temperature (1/min) and the time constant of loss (min). */
export interface PotCase {
  readonly matter: PotMatter;
  readonly airC: number;
  readonly ratePerMin: number;
  readonly lossTimeMin: number;
}

export interface PotCourse {
  readonly gelMin: number;
  /** Temperature when half of the time to gel has passed, which is when a pot should be empty. */
  readonly halfTimeC: number;
}

/**
 * Time constant of a pot as wide as it is high, with all its faces open: m cp / (h S), S = 1.5 pi D2, D = (4V/pi)^(1/3).
 *
 * m  massG  g   result  min
 *
 * Valid:  one temperature in the whole pot (small pots); a deep drum is hotter inside.
 * Source: [FROM-MEMORY] surface loss; geometry by hand
 * Worked: libs/resin/src/pot-heat.spec.ts
 */
export function potLossTimeMin(matter: PotMatter, massG: number): number {
  const volumeCm3 = massG / matter.densityGPerCm3;
  const diameterCm = Math.cbrt((4 * volumeCm3) / Math.PI);
  const surfaceM2 = (1.5 * Math.PI * diameterCm ** 2) / 10_000;
  return (massG * matter.specificHeatJPerGK) / (SURFACE_LOSS_W_PER_M2K * surfaceM2 * 60);
}

/** The same for a layer spread out, one face open: rho t cp / h. */
export const layerLossTimeMin = (matter: PotMatter, thicknessMm: number): number =>
  (matter.densityGPerCm3 * 1000 * thicknessMm * matter.specificHeatJPerGK) / (SURFACE_LOSS_W_PER_M2K * 60);

const MOST_CONVERSION_STEP = 0.015;
const MOST_WARMING_STEP_K = 3;
const MOST_STEPS = 4000;

interface PotState {
  readonly minutes: number;
  readonly temperatureC: number;
  readonly conversion: number;
}

/**
 * First-order cure that heats itself: da/dt = k(T)(1 - a); dT/dt = (H/cp) da/dt - (T - Ta)/tau.
 *
 * Each step holds the rate and lets the temperature relax exactly towards its momentary balance, so that thin layers
 * (small tau) are as stable as deep pots.
 * Valid:  a planning model of the self-heating of a pot, calibrated on the pot life printed for 100 g.
 * Source: [LEE-LOOS-SPRINGER-1982] heat balance; kinetics reduced to one step
 * Worked: libs/resin/src/pot-heat.spec.ts (adiabatic and isothermal limits)
 */
export function courseOf(pot: PotCase): PotCourse {
  const toGel = untilGel(pot);
  const gelMin = toGel[toGel.length - 1].minutes;
  return { gelMin, halfTimeC: temperatureAt(toGel, gelMin / 2) };
}

/** The hottest it gets, if nobody empties it. */
export const peakOf = (pot: PotCase): number => peakAfter(pot, untilGel(pot));

/** Minutes until the pot gels. */
export const gelMinutesOf = (pot: PotCase): number => {
  const toGel = untilGel(pot);
  return toGel[toGel.length - 1].minutes;
};

function untilGel(pot: PotCase): readonly PotState[] {
  const states: PotState[] = [{ minutes: 0, temperatureC: pot.airC, conversion: 0 }];
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const last = states[states.length - 1];
    const next = advanced(pot, last);
    if (next.conversion >= GEL_CONVERSION) return [...states, meeting(last, next)];
    states.push(next);
  }
  return states;
}

/** The state at the moment of gel, between the last step before it and the first after. */
function meeting(before: PotState, after: PotState): PotState {
  const share = (GEL_CONVERSION - before.conversion) / (after.conversion - before.conversion);
  return {
    minutes: before.minutes + share * (after.minutes - before.minutes),
    temperatureC: before.temperatureC + share * (after.temperatureC - before.temperatureC),
    conversion: GEL_CONVERSION,
  };
}

function advanced(
  { matter, airC, ratePerMin, lossTimeMin }: PotCase,
  { minutes, temperatureC, conversion }: PotState,
): PotState {
  const rise = matter.heatJPerG / matter.specificHeatJPerGK;
  const speed = ratePerMin * rateRatioOf(matter.activationEnergyKJPerMol, airC, temperatureC);
  const rate = speed * (1 - conversion);
  const warming = rate * rise - (temperatureC - airC) / lossTimeMin;
  const dt = Math.min(MOST_CONVERSION_STEP / rate, MOST_WARMING_STEP_K / Math.max(Math.abs(warming), 1e-12));
  const converted = (1 - conversion) * (1 - Math.exp(-speed * dt));
  const balanceC = airC + (converted / dt) * rise * lossTimeMin;
  return {
    minutes: minutes + dt,
    temperatureC: balanceC + (temperatureC - balanceC) * Math.exp(-dt / lossTimeMin),
    conversion: conversion + converted,
  };
}

function peakAfter(pot: PotCase, toGel: readonly PotState[]): number {
  let state = toGel[toGel.length - 1];
  let peakC = toGel.reduce((most, { temperatureC }) => Math.max(most, temperatureC), pot.airC);
  for (let step = 0; step < MOST_STEPS && state.conversion < 0.98; step += 1) {
    state = advanced(pot, state);
    if (state.temperatureC < peakC - 1) return peakC;
    peakC = Math.max(peakC, state.temperatureC);
  }
  return peakC;
}

function temperatureAt(states: readonly PotState[], minutes: number): number {
  const after = states.findIndex((state) => state.minutes >= minutes);
  const [a, b] = [states[Math.max(after - 1, 0)], states[after]];
  const share = b.minutes === a.minutes ? 0 : (minutes - a.minutes) / (b.minutes - a.minutes);
  return a.temperatureC + share * (b.temperatureC - a.temperatureC);
}

const MOST_TURNS = 25;

/**
 * The rate (1/min at the air's temperature) with which a pot of `massG` gels after `potLifeMin`.
 *
 * Gel time falls steadily with the rate; a secant on both logarithms finds it in a few turns, held inside a bracket.
 */
export function rateForPotLife(
  matter: PotMatter,
  airC: number,
  { massG, potLifeMin }: { readonly massG: number; readonly potLifeMin: number },
): number {
  const lossTimeMin = potLossTimeMin(matter, massG);
  const excess = (logRate: number): number =>
    Math.log(gelMinutesOf({ matter, airC, ratePerMin: Math.exp(logRate), lossTimeMin }) / potLifeMin);
  const isothermal = Math.log(-Math.log(1 - GEL_CONVERSION) / potLifeMin);
  let [slow, fast] = [isothermal - Math.log(40), isothermal + 0.1];
  let [slowExcess, fastExcess] = [excess(slow), excess(fast)];
  for (let turn = 0; turn < MOST_TURNS && fast - slow > 1e-6; turn += 1) {
    const secant = slow + ((fast - slow) * slowExcess) / (slowExcess - fastExcess);
    const middle = turn % 3 === 2 ? (slow + fast) / 2 : secant;
    const found = excess(middle);
    if (Math.abs(found) < 1e-4) return Math.exp(middle);
    if (found > 0) [slow, slowExcess] = [middle, found];
    else [fast, fastExcess] = [middle, found];
  }
  return Math.exp((slow + fast) / 2);
}

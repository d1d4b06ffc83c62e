import { rateRatioOf } from './arrhenius.js';

/** Temperature of the deck over time: one value for each step, held to be straight between them. */
export interface TemperatureCourse {
  readonly stepH: number;
  readonly temperaturesC: Float64Array;
}

export interface AgeLaw {
  readonly referenceC: number;
  readonly activationEnergyKJPerMol: number;
  /** Below this the cure stands still. */
  readonly stopsBelowC: number;
}

const HALVES = 4;

/**
 * Equivalent age at the reference temperature after each step, h: the sum of exp[-Ea/R (1/T - 1/Tr)] dt, nothing below the stop.
 *
 * Each step is cut into four with Simpson's rule over the pair-wise straight course.
 * Valid:  a maturity measure, as concrete practice uses it; vitrification of a cold cure is not in it.
 * Source: [ASTM-C1074] form, [FIB-MC-2010] eq. for temperature-adjusted age
 * Worked: test/reference/cases/cure-rates.ts
 */
export function equivalentAges({ stepH, temperaturesC }: TemperatureCourse, law: AgeLaw): Float64Array {
  const ages = new Float64Array(temperaturesC.length);
  // A deck that stays as it is ages as in the step before: most of a long course is steady.
  let [steadyC, steadyPace] = [Number.NaN, 0];
  let age = 0;
  for (let step = 1; step < temperaturesC.length; step += 1) {
    const fromC = temperaturesC[step - 1];
    const toC = temperaturesC[step];
    if (fromC === toC && fromC !== steadyC) {
      steadyC = fromC;
      steadyPace = paceAt(fromC, law);
    }
    age += (fromC === toC ? steadyPace : ageOver(fromC, toC, law)) * stepH;
    ages[step] = age;
  }
  return ages;
}

function ageOver(fromC: number, toC: number, law: AgeLaw): number {
  let sum = 0;
  for (let part = 0; part <= HALVES; part += 1) {
    const weight = part === 0 || part === HALVES ? 1 : part % 2 === 1 ? 4 : 2;
    sum += weight * paceAt(fromC + ((toC - fromC) * part) / HALVES, law);
  }
  return sum / (3 * HALVES);
}

export const paceAt = (
  temperatureC: number,
  { referenceC, activationEnergyKJPerMol, stopsBelowC }: AgeLaw,
): number =>
  temperatureC < stopsBelowC ? 0 : rateRatioOf(activationEnergyKJPerMol, referenceC, temperatureC);

/** Hours until the age is reached, straight within a step; undefined when the course ends before. */
export function hoursToAge(ages: Float64Array, stepH: number, ageH: number): number | undefined {
  if (ageH <= 0) return 0;
  const last = ages.length - 1;
  if (last < 0 || ages[last] < ageH) return undefined;
  let [low, high] = [0, last];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (ages[middle] < ageH) low = middle;
    else high = middle;
  }
  return (low + (ageH - ages[low]) / (ages[high] - ages[low])) * stepH;
}

/** Nurse-Saul maturity, degC h or degC d: the sum of (T - T0) dt, nothing below the datum. Source: [NURSE-SAUL]. */
export const temperatureTimeSum = (
  segments: readonly { readonly duration: number; readonly temperatureC: number }[],
  datumC: number,
): number =>
  segments.reduce(
    (sum, { duration, temperatureC }) => sum + Math.max(0, temperatureC - datumC) * duration,
    0,
  );

/** Temperature-adjusted age of the model code: the sum of exp[13.65 - 4000/(273 + T)] dt; 0.998 at 20 degC, not 1. Source: [FIB-MC-2010]. */
export const temperatureAdjustedAge = (
  segments: readonly { readonly duration: number; readonly temperatureC: number }[],
): number =>
  segments.reduce(
    (sum, { duration, temperatureC }) => sum + duration * Math.exp(13.65 - 4000 / (273 + temperatureC)),
    0,
  );

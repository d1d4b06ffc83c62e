import { kg, type DegC, type GPerM2, type Kg, type L, type M2, type Mm } from './brands.js';

const SIXTEENTHS = 16;
const MM_PER_INCH = 25.4;
const MM_PER_FOOT = 304.8;

/** A length as a tape measure shows it: whole inches and the nearest sixteenth, feet from 3 ft on. */
export function usLength(length: Mm): string {
  const sixteenths = Math.round((Math.abs(length) / MM_PER_INCH) * SIXTEENTHS);
  const sign = length < 0 && sixteenths > 0 ? '-' : '';
  const isLong = Math.abs(length) >= 3 * MM_PER_FOOT;
  const inches = Math.floor(sixteenths / SIXTEENTHS);
  const feet = isLong ? Math.floor(inches / 12) : 0;
  const rest = mixedInches(inches - feet * 12, sixteenths % SIXTEENTHS);
  return isLong ? `${sign}${feet} ft ${rest} in` : `${sign}${rest} in`;
}

function mixedInches(whole: number, sixteenths: number): string {
  if (sixteenths === 0) return String(whole);
  const divisor = greatestCommonDivisor(sixteenths, SIXTEENTHS);
  const part = `${sixteenths / divisor}/${SIXTEENTHS / divisor}`;
  return whole === 0 ? part : `${whole} ${part}`;
}

const greatestCommonDivisor = (a: number, b: number): number => (b === 0 ? a : greatestCommonDivisor(b, a % b));

const FT2_PER_M2 = 1 / 0.09290304;
const LB_PER_KG = 1 / 0.45359237;
const GAL_PER_L = 1 / 3.785411784;
const OZ_PER_YD2_PER_G_PER_M2 = 0.83612736 / 28.349523125;

export const usArea = (area: M2): string => `${(area * FT2_PER_M2).toFixed(2)} ft2`;
export const usMass = (mass: Kg): string => `${(mass * LB_PER_KG).toFixed(mass < kg(10) ? 2 : 1)} lb`;
export const usVolume = (volume: L): string => `${(volume * GAL_PER_L).toFixed(2)} gal`;
export const usTemperature = (temperature: DegC): string => `${((temperature * 9) / 5 + 32).toFixed(0)} degF`;
export const usArealMass = (areal: GPerM2): string => `${(areal * OZ_PER_YD2_PER_G_PER_M2).toFixed(1)} oz/yd2`;

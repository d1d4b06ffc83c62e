import type { HammerSound, Reading } from '../reading.js';

/** How often a sound is heard over bad core against over sound core. */
type Odds = Readonly<Record<HammerSound, number>>;
type Shares = Readonly<Record<HammerSound, number>>;

/** How often each sound is heard over bad core and over sound core; the shares of each sum to 1. */
export interface HammerRates {
  readonly overBad: Shares;
  readonly overSound: Shares;
}

const SOUNDS: readonly HammerSound[] = ['sharp', 'dull', 'void'];

/** Rates that the readings suggest are weighed against those taken beforehand as against so many readings over either core. */
export const READINGS_BEFOREHAND = 10;

/**
 * Rates behind odds. Odds leave one thing open, how often a void is heard against a dull sound; over bad core both are
 * taken to be alike. With x for each of them, sharp s, dull d and void v for the odds: 1 - 2 x = s (1 - x / d - x / v).
 */
export function ratesBehind({ sharp, dull, void: hollow }: Odds): HammerRates {
  const each = (1 - sharp) / (2 - sharp * (1 / dull + 1 / hollow));
  return {
    overBad: { sharp: 1 - 2 * each, dull: each, void: each },
    overSound: { sharp: 1 - each / dull - each / hollow, dull: each / dull, void: each / hollow },
  };
}

/**
 * Rates anew from the chance that each sounding stood over bad core: one step of the estimation of observers' error rates
 * without a judge. Unreliable soundings teach nothing.
 * Source: [DAWID-SKENE-1979] section 3
 * Worked: test/reference/cases/extent-hammer.ts
 */
export function learntRates(
  before: HammerRates,
  readings: readonly Reading[],
  badAt: Float64Array,
): HammerRates {
  const heard = readings.flatMap((reading, index) =>
    reading.kind === 'sounding' && reading.isUnreliable !== true
      ? [{ sound: reading.sound, bad: badAt[index] }]
      : [],
  );
  return {
    overBad: sharesOf(
      before.overBad,
      heard.map(({ sound, bad }) => ({ sound, weight: bad })),
    ),
    overSound: sharesOf(
      before.overSound,
      heard.map(({ sound, bad }) => ({ sound, weight: 1 - bad })),
    ),
  };
}

function sharesOf(
  before: Shares,
  heard: readonly { readonly sound: HammerSound; readonly weight: number }[],
): Shares {
  const total = READINGS_BEFOREHAND + heard.reduce((sum, { weight }) => sum + weight, 0);
  const share = (wanted: HammerSound): number =>
    (READINGS_BEFOREHAND * before[wanted] +
      heard.reduce((sum, { sound, weight }) => sum + (sound === wanted ? weight : 0), 0)) /
    total;
  return { sharp: share('sharp'), dull: share('dull'), void: share('void') };
}

/** Logarithm of how well rates agree with those taken beforehand, but for a constant (Dirichlet's density). */
export const agreementWith = (before: HammerRates, { overBad, overSound }: HammerRates): number =>
  READINGS_BEFOREHAND *
  SOUNDS.reduce(
    (sum, sound) =>
      sum +
      before.overBad[sound] * Math.log(overBad[sound]) +
      before.overSound[sound] * Math.log(overSound[sound]),
    0,
  );

export function averageRates(
  parts: readonly { readonly weight: number; readonly rates: HammerRates }[],
): HammerRates {
  const average = (over: keyof HammerRates): Shares => {
    const share = (sound: HammerSound): number =>
      parts.reduce((sum, { weight, rates }) => sum + weight * rates[over][sound], 0);
    return { sharp: share('sharp'), dull: share('dull'), void: share('void') };
  };
  return { overBad: average('overBad'), overSound: average('overSound') };
}

export const greatestChange = (one: HammerRates, other: HammerRates): number =>
  Math.max(
    ...SOUNDS.map((sound) =>
      Math.max(
        Math.abs(one.overBad[sound] - other.overBad[sound]),
        Math.abs(one.overSound[sound] - other.overSound[sound]),
      ),
    ),
  );

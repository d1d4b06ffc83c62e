import type { Survey } from '../reading.js';
import {
  agreementWith,
  averageRates,
  greatestChange,
  learntRates,
  READINGS_BEFOREHAND,
  type HammerRates,
} from './hammer-rates.js';
import { learntResponse, METERED_BEFOREHAND, type MeterResponse } from './meter-response.js';

/** How this survey's hammer and meter err; a part is absent where the record states its odds. */
export interface Team {
  readonly hammer?: HammerRates;
  readonly meter?: MeterResponse;
}

/**
 * Where learning begins: a hammer that seldom errs. From a doubtful start a few dull taps side by side are put down to the hammer
 * before anything else has spoken, and learning from them never leads back; from a trusting one the rest corrects it.
 */
export const trusting = ({ hammer, ...rest }: Team): Team =>
  hammer === undefined
    ? rest
    : {
        ...rest,
        hammer: { overBad: shifted(hammer.overBad, -TRUST), overSound: shifted(hammer.overSound, TRUST) },
      };

/** On the logit of a sharp sound. */
const TRUST = 1.5;

/** One step of learning from the chance that each reading stood over bad core. */
export const learnt = (before: Team, survey: Survey, badAt: Float64Array): Team => ({
  ...(before.hammer === undefined ? {} : { hammer: learntRates(before.hammer, survey.readings, badAt) }),
  ...(before.meter === undefined ? {} : { meter: learntResponse(before.meter, survey, badAt) }),
});

export const movedBy = (one: Team, other: Team): number =>
  Math.max(
    one.hammer === undefined || other.hammer === undefined ? 0 : greatestChange(one.hammer, other.hammer),
    one.meter === undefined || other.meter === undefined
      ? 0
      : Math.max(
          Math.abs(one.meter.overBad - other.meter.overBad),
          Math.abs(one.meter.overSound - other.meter.overSound),
          Math.abs(one.meter.sd - other.meter.sd),
        ),
  );

/** Logarithm of how well learnt errors agree with what was taken beforehand. */
export const agreement = (before: Team, now: Team): number =>
  (before.hammer === undefined || now.hammer === undefined ? 0 : agreementWith(before.hammer, now.hammer)) +
  (before.meter === undefined || now.meter === undefined ? 0 : meterAgreement(before.meter, now.meter));

function meterAgreement(before: MeterResponse, { overBad, overSound, sd }: MeterResponse): number {
  const away = (overBad - before.overBad) ** 2 + (overSound - before.overSound) ** 2;
  const spread = 2 * METERED_BEFOREHAND * (Math.log(before.sd / sd) + (1 - (before.sd / sd) ** 2) / 2);
  return (-METERED_BEFOREHAND * away) / (2 * sd ** 2) + spread;
}

/** A direction in which the errors are not known exactly: twice the same step, down and up. */
export interface Doubt {
  readonly low: Team;
  readonly high: Team;
}

/**
 * How far the errors may lie from the learnt ones, one direction for bad core missed and one for false alarms: a standard
 * deviation of the logit as so many readings over that core leave it.
 */
export function doubts(
  { hammer, meter }: Team,
  survey: Survey,
  badAt: Float64Array,
  steps: number,
): readonly Doubt[] {
  if (hammer === undefined) return [];
  const heard = survey.readings.flatMap((reading, index) =>
    reading.kind === 'sounding' && reading.isUnreliable !== true ? [badAt[index]] : [],
  );
  const overBad = READINGS_BEFOREHAND + heard.reduce((sum, bad) => sum + bad, 0);
  const overSound = READINGS_BEFOREHAND + heard.reduce((sum, bad) => sum + 1 - bad, 0);
  const at = (missedBy: number, alarmBy: number): Team => ({
    ...(meter === undefined ? {} : { meter }),
    hammer: {
      overBad: shifted(hammer.overBad, missedBy * sdOfLogit(hammer.overBad.sharp, overBad)),
      overSound: shifted(hammer.overSound, alarmBy * sdOfLogit(hammer.overSound.sharp, overSound)),
    },
  });
  return [
    { low: at(-steps, 0), high: at(steps, 0) },
    { low: at(0, -steps), high: at(0, steps) },
  ];
}

/** Half of what such readings tell is lost, because nobody saw the core: their number counts half. */
const sdOfLogit = (share: number, count: number): number => 1 / Math.sqrt((count / 2) * share * (1 - share));

/** The share of sharp sounds moved on the logit; dull and void keep their proportion. */
function shifted(shares: HammerRates['overBad'], by: number): HammerRates['overBad'] {
  const odds = (shares.sharp / (1 - shares.sharp)) * Math.exp(by);
  const sharp = odds / (1 + odds);
  const rest = (1 - sharp) / (1 - shares.sharp);
  return { sharp, dull: rest * shares.dull, void: rest * shares.void };
}

export function averageTeam(parts: readonly { readonly weight: number; readonly team: Team }[]): Team {
  const hammers = parts.flatMap(({ weight, team: { hammer } }) =>
    hammer === undefined ? [] : [{ weight, rates: hammer }],
  );
  const meters = parts.flatMap(({ weight, team: { meter } }) =>
    meter === undefined ? [] : [{ weight, meter }],
  );
  const average = (of: (meter: MeterResponse) => number) =>
    meters.reduce((sum, { weight, meter }) => sum + weight * of(meter), 0);
  return {
    ...(hammers.length === 0 ? {} : { hammer: averageRates(hammers) }),
    ...(meters.length === 0
      ? {}
      : {
          meter: {
            overBad: average((one) => one.overBad),
            overSound: average((one) => one.overSound),
            sd: average((one) => one.sd),
          },
        }),
  };
}

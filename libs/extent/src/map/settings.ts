import { normalQuantile, pointer, type Problem } from '#lib/kernel';
import { assumed, type Figure } from '#lib/provenance';
import { fraction } from '#lib/units';
import { leaveCostFigure } from '../cut-choice.js';
import type { MapSettings } from '../extent-request.js';
import { answeredIn, faultsIn, optionalFaults, saidOr } from '#lib/asking';
import type { Survey } from '../reading.js';
import { ratesBehind, READINGS_BEFOREHAND } from './hammer-rates.js';
import { usualResponse } from './meter-response.js';
import { mapQuestions } from './questions.js';
import { levelAlone, type Effects } from './observed.js';
import { oddsCite, usualOdds, type ReadingOdds } from './reading-odds.js';
import { withSources, type Source } from './sources.js';
import type { Team } from './team.js';

/** Settings in force. */
export interface Settings {
  readonly contourProbabilities: readonly number[];
  readonly usualBadShare: number;
  readonly draws: number;
  readonly seed: number;
  readonly odds: ReadingOdds;
  readonly effects: Effects;
  /** Beforehand; a part is absent where its odds are given. */
  readonly team: Team;
}

export const LEVEL_SD = 1;

export function settingsOf(map: MapSettings = {}, sources: readonly Source[] = []): Settings {
  const usualBadShare = saidOr(mapQuestions.usualBadShare, map.usualBadShare);
  return {
    usualBadShare,
    contourProbabilities: saidOr(mapQuestions.contourProbabilities, map.contourProbabilities),
    draws: saidOr(mapQuestions.draws, map.draws),
    seed: saidOr(mapQuestions.seed, map.seed),
    odds: {
      plug: { ...usualOdds.plug, ...map.odds?.plug },
      sounding: { ...usualOdds.sounding, ...map.odds?.sounding },
      meterWet: map.odds?.meterWet ?? usualOdds.meterWet,
      unreliableShare: map.odds?.unreliableShare ?? usualOdds.unreliableShare,
    },
    // The share that is bad is the chance that level + field lies above 0.
    effects: withSources(
      levelAlone(normalQuantile(usualBadShare) * Math.sqrt(1 + LEVEL_SD ** 2), LEVEL_SD),
      sources,
    ),
    team: {
      ...(map.odds?.sounding === undefined ? { hammer: ratesBehind(usualOdds.sounding) } : {}),
      ...(map.odds?.meterWet === undefined ? { meter: usualResponse } : {}),
    },
  };
}

export function settingProblems(map: MapSettings = {}): readonly Problem[] {
  const odd = { from: 1 / 10_000, upTo: 10_000, unit: '(odds)' };
  const proof = { from: 1e-6, upTo: 1e6, unit: '(odds)' };
  const { plug = {}, sounding = {}, meterWet, unreliableShare } = map.odds ?? {};
  return [
    ...faultsIn(map, mapQuestions, '/map'),
    ...Object.entries(plug).flatMap(([name, value]) =>
      optionalFaults(pointer('/map/odds/plug', name), value, proof),
    ),
    ...Object.entries(sounding).flatMap(([name, value]) =>
      optionalFaults(pointer('/map/odds/sounding', name), value, odd),
    ),
    ...optionalFaults('/map/odds/meterWet', meterWet, odd),
    ...optionalFaults('/map/odds/unreliableShare', unreliableShare, { from: 0, upTo: 1, unit: '(share)' }),
  ];
}

/** Every default that the map of this survey rests on. */
export function mapAssumptions(map: MapSettings = {}, { readings }: Survey): readonly Figure[] {
  return [
    ...(map.cutProbability === undefined && map.leaveCostHPerM2 === undefined
      ? [leaveCostFigure(undefined)]
      : []),
    ...(map.usualBadShare === undefined
      ? [answeredIn(mapQuestions.usualBadShare, undefined, '/map/usualBadShare')]
      : []),
    ...oddsAssumptions(map, readings),
  ];
}

function oddsAssumptions({ odds: said }: MapSettings, readings: Survey['readings']): readonly Figure[] {
  const usual = 'keeps the order everyone agrees on: plugs outrank soundings, soundings outrank meters';
  const odds = (value: number, meaning: string, at: string, because = usual): Figure<'1'> =>
    assumed('1', fraction(value), meaning, { at, because, cite: oddsCite });
  const begun =
    said?.sounding === undefined
      ? `${usual}; the readings correct it, against the weight of ${READINGS_BEFOREHAND} readings`
      : usual;
  const sounds = [
    ...new Set(readings.flatMap((reading) => (reading.kind === 'sounding' ? [reading.sound] : []))),
  ];
  const conditions = [
    ...new Set(readings.flatMap((reading) => (reading.kind === 'plug' ? [reading.condition] : []))),
  ];
  const hasMeter = readings.some(({ kind }) => kind === 'moisture');
  const hasUnreliable = readings.some(({ isUnreliable }) => isUnreliable === true);
  return [
    ...sounds
      .filter((sound) => said?.sounding?.[sound] === undefined)
      .map((sound) =>
        odds(
          usualOdds.sounding[sound],
          `odds of bad core that a ${sound} sound speaks for`,
          `/map/odds/sounding/${sound}`,
          begun,
        ),
      ),
    ...conditions
      .filter((condition) => said?.plug?.[condition] === undefined)
      .map((condition) =>
        odds(
          usualOdds.plug[condition],
          `odds of bad core that a plug found ${condition} speaks for`,
          `/map/odds/plug/${condition}`,
        ),
      ),
    ...(hasMeter && said?.meterWet === undefined
      ? [
          odds(
            usualOdds.meterWet,
            'odds of bad core that a meter at its wet reference speaks for',
            '/map/odds/meterWet',
          ),
        ]
      : []),
    ...(hasUnreliable && said?.unreliableShare === undefined
      ? [
          odds(
            usualOdds.unreliableShare,
            'share of its weight that an unreliable reading keeps',
            '/map/odds/unreliableShare',
          ),
        ]
      : []),
  ];
}

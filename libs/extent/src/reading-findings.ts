import { containsPoint, distance, distanceToRegion, union, type Point, type Region } from '#lib/geometry';
import { finding, roundTo, toWholeMm, type Finding } from './finding.js';
import type { SurveyMap } from './map/survey-map.js';
import { verdictOf, type ReadingOdds } from './map/reading-odds.js';
import type { Reading, Survey } from './reading.js';

/** Two readings nearer than this speak of the same core. */
const SAME_PLACE_MM = 30;

/** Readings this near to one line tell nothing across it. */
const LINE_WIDTH_MM = 20;

/** Less of the panel without a reading in range is not worth a word. */
const SPARSE_SHARE = 0.2;

/** What the readings themselves leave open, before any map is made of them. */
export const readingFindings = (survey: Survey, odds: ReadingOdds): readonly Finding[] => [
  ...contradictions(survey, odds),
  ...plugFindings(survey, odds),
  ...unreliableFindings(survey, odds),
  ...lineFindings(survey.readings),
  ...alikeFindings(survey, odds),
];

/** A symptom this near to a plug speaks of the core that the plug showed. */
const PLUG_SHOWS_MM = 100;

/** A plug that contradicts the symptoms round it says more about them than about the place. */
function plugFindings({ readings, meter }: Survey, odds: ReadingOdds): readonly Finding[] {
  const said = readings
    .filter(({ isUnreliable }) => isUnreliable !== true)
    .map((reading) => ({ kind: reading.kind, at: reading.at, verdict: verdictOf(reading, meter, odds) }))
    .filter(({ verdict }) => verdict !== 'undecided');
  const symptoms = said.filter(({ kind }) => kind !== 'plug');
  const against = said.filter(
    ({ kind, at, verdict }) =>
      kind === 'plug' &&
      symptoms.some((symptom) => symptom.verdict !== verdict && distance(symptom.at, at) <= PLUG_SHOWS_MM) &&
      !symptoms.some((symptom) => symptom.verdict === verdict && distance(symptom.at, at) <= PLUG_SHOWS_MM),
  );
  const [first] = against;
  return first === undefined
    ? []
    : [
        finding('plug-contradicts', {
          count: against.length,
          withinMm: PLUG_SHOWS_MM,
          xMm: toWholeMm(first.at[0]),
          yMm: toWholeMm(first.at[1]),
        }),
      ];
}

function unreliableFindings({ readings }: Survey, { unreliableShare }: ReadingOdds): readonly Finding[] {
  const count = readings.filter(({ isUnreliable }) => isUnreliable === true).length;
  return count === 0
    ? []
    : [
        finding('readings-unreliable', {
          count,
          all: readings.length,
          share: roundTo(100 * unreliableShare, 0),
        }),
      ];
}

/** Plugs outweigh whatever stands beside them, and two of them differ because the core does. */
function contradictions({ readings, meter }: Survey, odds: ReadingOdds): readonly Finding[] {
  const said = readings
    .filter(({ kind }) => kind !== 'plug')
    .map((reading) => ({ at: reading.at, verdict: verdictOf(reading, meter, odds) }))
    .filter(({ verdict }) => verdict !== 'undecided');
  const byX = [...said].sort((a, b) => a.at[0] - b.at[0]);
  const places: Point[] = [];
  for (const [index, one] of byX.entries()) {
    for (let next = index + 1; next < byX.length && byX[next].at[0] - one.at[0] <= SAME_PLACE_MM; next += 1) {
      if (byX[next].verdict !== one.verdict && distance(byX[next].at, one.at) <= SAME_PLACE_MM)
        places.push(one.at);
    }
  }
  const [first] = places;
  return first === undefined
    ? []
    : [
        finding('readings-contradict', {
          count: places.length,
          withinMm: SAME_PLACE_MM,
          xMm: toWholeMm(first[0]),
          yMm: toWholeMm(first[1]),
        }),
      ];
}

function lineFindings(readings: readonly Reading[]): readonly Finding[] {
  const places = readings.map(({ at }) => at);
  const [first] = places;
  const far = places.reduce((best, at) => (distance(first, at) > distance(first, best) ? at : best), first);
  const end = places.reduce((best, at) => (distance(far, at) > distance(far, best) ? at : best), far);
  const lengthMm = distance(far, end);
  const widest = places.reduce(
    (most, at) =>
      Math.max(most, Math.abs((end[0] - far[0]) * (at[1] - far[1]) - (end[1] - far[1]) * (at[0] - far[0]))),
    0,
  );
  return lengthMm === 0 || widest / lengthMm < LINE_WIDTH_MM / 2 ? [finding('readings-in-line', {})] : [];
}

function alikeFindings({ readings, meter }: Survey, odds: ReadingOdds): readonly Finding[] {
  const verdicts = new Set(readings.map((reading) => verdictOf(reading, meter, odds)));
  const [only] = verdicts;
  return verdicts.size === 1 ? [finding('readings-all-alike', { verdict: only })] : [];
}

/** How much of the panel no reading speaks for. */
export function sparseFindings(
  { lattice, rangeMm }: SurveyMap,
  readings: readonly Reading[],
): readonly Finding[] {
  const within = Math.min(rangeMm, 600) / 2;
  const [covered, all] = lattice.nodes.reduce(
    ([near, total], { place, areaMm2 }) => {
      const isNear =
        areaMm2 > 0 &&
        readings.some(({ at }) => Math.abs(at[0] - place[0]) <= within && distance(at, place) <= within);
      return [near + (isNear ? areaMm2 : 0), total + areaMm2];
    },
    [0, 0],
  );
  const share = 1 - covered / all;
  return share > SPARSE_SHARE
    ? [finding('readings-sparse', { share: roundTo(100 * share, 0), rangeMm: toWholeMm(within) })]
    : [];
}

/** Readings against zones that somebody drew. */
export function zoneFindings(
  zones: readonly Region[],
  { readings, meter }: Survey,
  odds: ReadingOdds,
): readonly Finding[] {
  const drawn = union(...zones);
  const said = readings.map((reading) => ({ at: reading.at, verdict: verdictOf(reading, meter, odds) }));
  const outside = said.filter(({ at, verdict }) => verdict === 'bad' && !containsPoint(drawn, at));
  const inside = said.filter(({ at, verdict }) => verdict === 'sound' && containsPoint(drawn, at));
  const place = ({ at }: { readonly at: Point }) => ({ xMm: toWholeMm(at[0]), yMm: toWholeMm(at[1]) });
  return [
    ...(outside.length === 0
      ? []
      : [
          finding('bad-reading-outside-zone', {
            count: outside.length,
            ...place(outside[0]),
            distanceMm: toWholeMm(distanceToRegion(outside[0].at, drawn)),
          }),
        ]),
    ...(inside.length === 0
      ? []
      : [finding('sound-reading-in-zone', { count: inside.length, ...place(inside[0]) })]),
  ];
}

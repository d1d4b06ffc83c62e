import { isKnown } from '#lib/kernel';
import { containsPoint, type Region } from '#lib/geometry';
import { assumptionsOf, type Figure } from '#lib/provenance';
import { m2FromMm2, mm2 } from '#lib/units';
import { finding, roundTo, toWholeMm, type Finding } from '../finding.js';
import type { ReadingOdds } from '../map/reading-odds.js';
import type { SurveyMap } from '../map/survey-map.js';
import { quantilesOf } from '../quantiles.js';
import type { Place } from '../reading.js';
import { batchOf, type Candidate, type Picked } from './batch.js';
import { foresightOf, type Foresight, type Stakes } from './foresight.js';
import { kindsOf, minutesOf, readingWords } from './kinds.js';
import { candidatesAmong, reachableBy, type Deck } from './places.js';
import type { NextAnswers, ReadingKind } from './questions.js';
import { chanceOfAll, standingsOf } from './standing.js';
import { toldBy } from './telling.js';

/** Where to tap or plug next, what that is worth, and when to stop. */
export interface NextReadings {
  /** Readings to take next, the best first. */
  readonly readings: readonly NextReading[];
  /** Working time of all of them. */
  readonly minutes: number;
  /** Working hours that deciding after them is expected to save. */
  readonly worthH: number;
  /** Whether they save more than their own time. */
  readonly isWorthIt: boolean;
  /** Width of the range of bad core from P10 to P90: now, and as expected after these readings. */
  readonly areaRangeM2: {
    /** Spread of the bad area as it is known. */
    readonly now: number;
    /** Spread expected when the readings are taken. */
    readonly after: number;
  };
  /** Whether to go on or to stop, in words. */
  readonly advice: Finding;
  /** What was taken about the value of a reading. */
  readonly assumptions: readonly Figure[];
}

/** A reading worth taking next, and what it would be worth. */
export interface NextReading {
  /** As on the drawing. */
  readonly number: number;
  /** What to do there: tap, hold a meter, or drill a plug. */
  readonly kind: ReadingKind;
  /** Where to take it, [xMm, yMm]. */
  readonly at: Place;
  /** Chance of bad core there, as far as is known. */
  readonly chance: number;
  /** Time that it takes. */
  readonly minutes: number;
  /** Its part of the hours saved by all of them, beyond the readings before it. */
  readonly worthH: number;
}

/** What the next readings are looked for from. */
export interface Search {
  readonly map: SurveyMap;
  readonly deck: Deck;
  readonly answers: NextAnswers;
  readonly odds: ReadingOdds;
  readonly seed: number;
  /** Core that is taken out as things stand. */
  readonly opened: Region;
  /** Chance from which opening a place costs less than leaving it. */
  readonly cutProbability: number;
  readonly leaveHPerM2: number;
  /** Area of bad core as the map leaves it open: draws, mm2. */
  readonly areas: Float64Array;
}

/**
 * The best next readings of a survey. What perfect knowledge of a place would save is what it would cost to be wrong there: a
 * sound place opened is opened for nothing, a bad one left is come back to. A reading is chosen by how much of the doubt it is
 * expected to remove wherever it is tied to, weighed by that cost; the worth of the whole batch is then worked out by making up
 * its answers, and shared out.
 * Source: [RAIFFA-SCHLAIFER-1961]
 */
export function nextReadingsOf(search: Search): NextReadings {
  const { map, answers, odds, seed } = search;
  const standings = standingsOf(map);
  const chance = chanceOfAll(standings);
  const stakes = stakesOf(search);
  const doubtH = doubtOf(search, stakes, chance);
  const candidates = candidatesOf(search, { doubtH, chance, standings });
  const batch = batchOf(candidates, doubtH, limitsOf(answers), map.lattice);
  const foresight =
    batch.length === 0
      ? { savedH: 0, areaVarianceM4: 0 }
      : foresightOf({ standings, batch, stakes, odds, seed });
  return described(search, batch, foresight, chance);
}

function stakesOf({ map: { lattice }, cutProbability, leaveHPerM2 }: Search): Stakes {
  return {
    areasM2: Float64Array.from(lattice.nodes, ({ areaMm2 }) => m2FromMm2(mm2(areaMm2))),
    takeHPerM2: cutProbability * leaveHPerM2,
    leaveHPerM2,
  };
}

/** Hours that perfect knowledge would save at each node, as the cut stands. */
function doubtOf(
  { map: { lattice }, opened }: Search,
  { areasM2, takeHPerM2, leaveHPerM2 }: Stakes,
  chance: Float64Array,
): Float64Array {
  return areasM2.map((area, node) => {
    if (area === 0) return 0;
    return containsPoint(opened, lattice.nodes[node].place)
      ? area * takeHPerM2 * (1 - chance[node])
      : area * (leaveHPerM2 - takeHPerM2) * chance[node];
  });
}

interface Doubt {
  readonly doubtH: Float64Array;
  readonly chance: Float64Array;
  readonly standings: ReturnType<typeof standingsOf>;
}

function candidatesOf(
  { map: { lattice }, deck, answers, odds }: Search,
  { doubtH, chance, standings }: Doubt,
): readonly Candidate[] {
  const canRead = reachableBy(deck, answers);
  const kinds = kindsOf(answers, deck.survey);
  const placeOf = (node: number): Place => lattice.nodes[node].place;
  const isAtStake = (node: number): boolean => doubtH[node] > 0;
  const nodes = candidatesAmong(lattice, doubtH, (node) =>
    kinds.some((kind) => canRead(kind, placeOf(node))),
  );
  return nodes.flatMap((node) =>
    kinds
      .filter((kind) => canRead(kind, placeOf(node)))
      .map((kind) => ({
        node,
        kind,
        hours: minutesOf(kind, answers).value / 60,
        told: toldBy(kind, node, standings, { odds, chance, isAtStake }),
      })),
  );
}

const limitsOf = ({ count, minutes }: NextAnswers) => ({
  count: count.value,
  ...(isKnown(minutes) ? { hours: minutes.value / 60 } : {}),
});

function described(
  { map: { lattice }, answers, areas }: Search,
  batch: readonly Picked[],
  { savedH, areaVarianceM4 }: Foresight,
  chance: Float64Array,
): NextReadings {
  const chosenFor = batch.reduce((sum, { worthH }) => sum + worthH, 0);
  const readings = batch.map(({ node, kind, worthH }, index) => ({
    number: index + 1,
    kind,
    at: wholePlace(lattice.nodes[node].place),
    chance: roundTo(chance[node], 3),
    minutes: minutesOf(kind, answers).value,
    worthH: roundTo((savedH * worthH) / chosenFor, 3),
  }));
  const minutes = readings.reduce((sum, one) => sum + one.minutes, 0);
  const facts = { minutes, worthH: roundTo(savedH, 2), areaRangeM2: rangeOf(areas, areaVarianceM4) };
  const isWorthIt = savedH * 60 > minutes;
  return {
    readings,
    ...facts,
    isWorthIt,
    advice: adviceOn(readings, { ...facts, isWorthIt }),
    assumptions: [...new Set(readings.map(({ kind }) => kind))].flatMap((kind) =>
      assumptionsOf(minutesOf(kind, answers)),
    ),
  };
}

const wholePlace = ([x, y]: Place): Place => [toWholeMm(x), toWholeMm(y)];

/** The width shrinks as the standard deviation does. */
function rangeOf(areas: Float64Array, areaVarianceM4: number): NextReadings['areaRangeM2'] {
  const m2s = areas.map((area) => m2FromMm2(mm2(area)));
  const middle = m2s.reduce((sum, area) => sum + area, 0) / m2s.length;
  const variance = m2s.reduce((sum, area) => sum + (area - middle) ** 2, 0) / m2s.length;
  const { p10, p90 } = quantilesOf(m2s);
  const left = variance > 0 ? Math.sqrt(Math.max(0, 1 - areaVarianceM4 / variance)) : 0;
  return { now: roundTo(p90 - p10, 3), after: roundTo((p90 - p10) * left, 3) };
}

function adviceOn(
  readings: readonly NextReading[],
  { minutes, worthH, areaRangeM2, isWorthIt }: Omit<NextReadings, 'readings' | 'advice' | 'assumptions'>,
): Finding {
  if (!isWorthIt)
    return finding('readings-enough', {
      count: readings.length,
      minutes,
      worthMinutes: roundTo(60 * worthH, 0),
    });
  return finding('readings-worth-taking', {
    count: readings.length,
    kinds: kindsInWords(readings),
    minutes: roundTo(minutes, 1),
    worthH,
    nowM2: areaRangeM2.now,
    afterM2: areaRangeM2.after,
  });
}

function kindsInWords(readings: readonly NextReading[]): string {
  const kinds = [...new Set(readings.map(({ kind }) => kind))];
  return kinds
    .map((kind) => {
      const count = readings.filter((one) => one.kind === kind).length;
      return `${count} ${readingWords[kind]}${count === 1 ? '' : 's'}`;
    })
    .join(', ');
}
